import { penceSign } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { NumberField } from '../shared/number-field.tsx';
import { TextField } from '../shared/text-field.tsx';
import { BlockEditor } from './block-editor.tsx';
import { type BandDraft, NIGHT, type WindowDraft } from './tariff-draft.ts';
import { WindowEditor } from './window-editor.tsx';

/** One price with the times it holds at. */
export function BandEditor(props: {
  readonly band: BandDraft;
  readonly isOnly: boolean;
  readonly hasBankHolidays: boolean;
  readonly onChange: (band: BandDraft) => void;
  readonly onDrop: () => void;
}) {
  const { band, onChange, isOnly } = props;
  const windows = band.windows ?? [];
  const setWindow = (index: number, window: WindowDraft) =>
    onChange({ ...band, windows: windows.map((before, at) => (at === index ? window : before)) });
  return (
    <div className="band">
      <div className="band-price">
        {isOnly ? null : (
          <TextField
            label={say('Name')}
            value={band.name}
            maxLength={60}
            onChange={(name) => onChange({ ...band, name })}
          />
        )}
        <NumberField
          label={isOnly ? say('Price per kWh') : say('Price')}
          value={band.pencePerKWh}
          limits={{ min: -200, max: 500, unit: `${penceSign()}/kWh` }}
          onChange={(pencePerKWh) => onChange({ ...band, pencePerKWh })}
        />
      </div>
      {isOnly ? null : (
        <div className="band-times">
          <label className="tick">
            <input
              type="checkbox"
              checked={band.windows === null}
              onChange={(event) => onChange({ ...band, windows: event.target.checked ? null : [NIGHT] })}
            />
            <span>{say('at all other times')}</span>
          </label>
          {windows.map((window, index) => (
            <WindowEditor
              // biome-ignore lint/suspicious/noArrayIndexKey: a window has no name.
              key={index}
              window={window}
              about={band.name || say('this price')}
              hasBankHolidays={props.hasBankHolidays}
              onChange={(next) => setWindow(index, next)}
              onDrop={
                windows.length > 1
                  ? () => onChange({ ...band, windows: windows.filter((_, at) => at !== index) })
                  : undefined
              }
            />
          ))}
          <div className="actions">
            {band.windows === null ? null : (
              <button
                type="button"
                className="plain"
                onClick={() => onChange({ ...band, windows: [...windows, NIGHT] })}
              >
                {say('Add a time')}
              </button>
            )}
            <button type="button" className="plain" onClick={props.onDrop}>
              {say('Remove this price')}
            </button>
          </div>
        </div>
      )}
      <BlockEditor band={band} onChange={onChange} />
    </div>
  );
}
