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
        <ChargeLine
          // biome-ignore lint/suspicious/noArrayIndexKey: a line is its place on the bill.
          key={at}
          line={line}
          unit={unitOf(draft)}
          isLater={isLater(at)}
          isOnly={lines.length === 1}
          onChange={(part) => put(at, part)}
          onName={(name) => rename(line.name, name)}
          onLater={() => insertAfter(at, laterLine(line))}
          onRemove={() => onChange({ lines: lines.filter((_, i) => i !== at) })}
        />
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

/** One line: a register, or a later price of the one above it. */
function ChargeLine(props: {
  readonly line: LineDraft;
  readonly unit: string;
  readonly isLater: boolean;
  readonly isOnly: boolean;
  readonly onChange: (part: Partial<LineDraft>) => void;
  readonly onName: (name: string) => void;
  readonly onLater: () => void;
  readonly onRemove: () => void;
}) {
  const { line, unit, isLater, isOnly, onChange, onName, onLater, onRemove } = props;
  return (
    <fieldset className="sums-line">
      <legend className="unseen">{isLater ? say('{name}, later price', { name: nameOf(line) }) : nameOf(line)}</legend>
      <div className="sums-fields">
        {isLater ? (
          <Day
            label={say('{name}, price from', { name: nameOf(line) })}
            value={line.from}
            onChange={(from) => onChange({ from })}
          />
        ) : (
          <>
            {!isOnly ? <TextField label={say('Register')} value={line.name} maxLength={60} onChange={onName} /> : null}
            <Amount
              label={say('First reading')}
              unit={unit}
              value={line.opening}
              onChange={(opening) => onChange({ opening })}
            />
            <Amount
              label={say('Last reading')}
              unit={unit}
              value={line.closing}
              onChange={(closing) => onChange({ closing })}
            />
          </>
        )}
        {unit === 'kWh' || isLater || line.opening !== undefined ? null : (
          <Amount
            label={say('Volume used')}
            unit={unit}
            value={line.metered}
            onChange={(metered) => onChange({ metered })}
          />
        )}
        <Amount label={say('kWh')} unit="kWh" value={line.kWh} onChange={(kWh) => onChange({ kWh })} />
        <Amount
          label={say('Price')}
          unit={`${penceSign()}/kWh`}
          value={line.pencePerKWh}
          onChange={(pencePerKWh) => onChange({ pencePerKWh })}
        />
        <Amount
          label={say('Charge')}
          unit={moneySign()}
          value={line.pounds}
          onChange={(pounds) => onChange({ pounds })}
        />
        {isLater || !line.estimated ? null : (
          <Amount
            label={say('kWh by your own readings')}
            unit="kWh"
            value={line.ownKWh}
            onChange={(ownKWh) => onChange({ ownKWh })}
          />
        )}
      </div>
      <div className="actions">
        {isLater ? null : (
          <label className="tick">
            <input
              type="checkbox"
              checked={line.estimated}
              onChange={(event) => onChange({ estimated: event.target.checked, ownKWh: undefined })}
            />
            <span>{say('a reading is estimated')}</span>
          </label>
        )}
        <button type="button" className="plain" onClick={onLater}>
          {say('Another price from a later day')}
          <span className="unseen">: {nameOf(line)}</span>
        </button>
        {!isOnly ? (
          <button type="button" className="plain" onClick={onRemove}>
            {say('Remove')}
            <span className="unseen"> {nameOf(line)}</span>
          </button>
        ) : null}
      </div>
    </fieldset>
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
