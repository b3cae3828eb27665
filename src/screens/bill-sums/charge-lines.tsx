import { moneySign, penceSign } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { NumberField } from '../shared/number-field.tsx';
import { TextField } from '../shared/text-field.tsx';
import { Day } from './bill-head.tsx';
import { type BillDraft, type LineDraft, laterLine, lineNamed } from './bill-lines-draft.ts';

/** Readings, units, price and charge of each register; a later price is a line of its own. */
export function ChargeLines(props: {
  readonly draft: BillDraft;
  readonly onChange: (part: Partial<BillDraft>) => void;
}) {
  const { draft, onChange } = props;
  const { lines } = draft;
  const put = (at: number, part: Partial<LineDraft>) =>
    onChange({ lines: lines.map((line, i) => (i === at ? { ...line, ...part } : line)) });
  const isLater = (at: number) => lines.slice(0, at).some(({ name }) => name === lines[at]!.name);
  const insertAfter = (at: number, line: LineDraft) =>
    onChange({ lines: [...lines.slice(0, at + 1), line, ...lines.slice(at + 1)] });
  /** Another name for a register goes through all its lines. */
  const rename = (before: string, name: string) =>
    onChange({ lines: lines.map((line) => (line.name === before ? { ...line, name } : line)) });
  const freeName = [say('day'), say('night'), say('evening'), say('other')].find(
    (name) => !lines.some((line) => line.name === name),
  );
  const addRegister = () => {
    const [first] = lines;
    const named = lines.length === 1 && first!.name === 'all hours' ? [{ ...first!, name: say('day') }] : lines;
    onChange({ lines: [...named, lineNamed(named === lines ? (freeName ?? '') : say('night'))] });
  };
  return (
    <section className="sums-part">
      <h3>{say('kWh')}</h3>
      {lines.map((line, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a line is its place on the bill.
        <fieldset key={at} className="sums-line">
          <legend className="unseen">
            {isLater(at) ? say('{name}, later price', { name: nameOf(line) }) : nameOf(line)}
          </legend>
          <div className="sums-fields">
            {isLater(at) ? (
              <Day
                label={say('{name}, price from', { name: nameOf(line) })}
                value={line.from}
                onChange={(from) => put(at, { from })}
              />
            ) : (
              <>
                {lines.length > 1 ? (
                  <TextField
                    label={say('Register')}
                    value={line.name}
                    maxLength={60}
                    onChange={(name) => rename(line.name, name)}
                  />
                ) : null}
                <Amount
                  label={say('First reading')}
                  unit={unitOf(draft)}
                  value={line.opening}
                  onChange={(opening) => put(at, { opening })}
                />
                <Amount
                  label={say('Last reading')}
                  unit={unitOf(draft)}
                  value={line.closing}
                  onChange={(closing) => put(at, { closing })}
                />
              </>
            )}
            {draft.meterUnit === 'kWh' || isLater(at) || line.opening !== undefined ? null : (
              <Amount
                label={say('Volume used')}
                unit={unitOf(draft)}
                value={line.metered}
                onChange={(metered) => put(at, { metered })}
              />
            )}
            <Amount label={say('kWh')} unit="kWh" value={line.kWh} onChange={(kWh) => put(at, { kWh })} />
            <Amount
              label={say('Price')}
              unit={`${penceSign()}/kWh`}
              value={line.pencePerKWh}
              onChange={(pencePerKWh) => put(at, { pencePerKWh })}
            />
            <Amount
              label={say('Charge')}
              unit={moneySign()}
              value={line.pounds}
              onChange={(pounds) => put(at, { pounds })}
            />
            {isLater(at) || !line.estimated ? null : (
              <Amount
                label={say('kWh by your own readings')}
                unit="kWh"
                value={line.ownKWh}
                onChange={(ownKWh) => put(at, { ownKWh })}
              />
            )}
          </div>
          <div className="actions">
            {isLater(at) ? null : (
              <label className="tick">
                <input
                  type="checkbox"
                  checked={line.estimated}
                  onChange={(event) => put(at, { estimated: event.target.checked, ownKWh: undefined })}
                />
                <span>{say('a reading is estimated')}</span>
              </label>
            )}
            <button type="button" className="plain" onClick={() => insertAfter(at, laterLine(line))}>
              {say('Another price from a later day')}
              <span className="unseen">: {nameOf(line)}</span>
            </button>
            {lines.length > 1 ? (
              <button
                type="button"
                className="plain"
                onClick={() => onChange({ lines: lines.filter((_, i) => i !== at) })}
              >
                {say('Remove')}
                <span className="unseen"> {nameOf(line)}</span>
              </button>
            ) : null}
          </div>
        </fieldset>
      ))}
      {draft.fuel === 'electricity' && lines.length < 8 ? (
        <div className="actions">
          <button type="button" className="plain" onClick={addRegister}>
            {say('Add a register, such as night')}
          </button>
        </div>
      ) : null}
    </section>
  );
}

const nameOf = ({ name }: LineDraft): string => sayTold(name) || say('register without a name');
const unitOf = (draft: BillDraft): string => (draft.meterUnit === 'hundred ft³' ? '100 ft³' : draft.meterUnit);

export function Amount(props: {
  readonly label: string;
  readonly unit: string;
  readonly value: number | undefined;
  readonly onChange: (value: number | undefined) => void;
}) {
  const low = [moneySign(), `${penceSign()}/kWh`].includes(props.unit) ? -1_000_000 : 0;
  return (
    <NumberField
      label={props.label}
      value={props.value}
      limits={{ min: low, max: 10_000_000, unit: props.unit }}
      onChange={props.onChange}
    />
  );
}
