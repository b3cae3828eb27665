import { NumberField } from '../shared/number-field.tsx';
import { TextField } from '../shared/text-field.tsx';
import { type BillDraft, type LineDraft, laterLine, lineNamed } from './bill-draft.ts';
import { Day } from './bill-head.tsx';

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
  const freeName = ['day', 'night', 'evening', 'other'].find((name) => !lines.some((line) => line.name === name));
  const addRegister = () => {
    const [first] = lines;
    const named = lines.length === 1 && first!.name === 'all hours' ? [{ ...first!, name: 'day' }] : lines;
    onChange({ lines: [...named, lineNamed(named === lines ? (freeName ?? '') : 'night')] });
  };
  return (
    <section className="sums-part">
      <h3>Units</h3>
      {lines.map((line, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a line is its place on the bill.
        <fieldset key={at} className="sums-line">
          <legend className="unseen">
            {line.name || 'register without a name'}
            {isLater(at) ? ', later price' : ''}
          </legend>
          <div className="sums-fields">
            {isLater(at) ? (
              <Day label={`${line.name}, price from`} value={line.from} onChange={(from) => put(at, { from })} />
            ) : (
              <>
                {lines.length > 1 ? (
                  <TextField
                    label="Register"
                    value={line.name}
                    maxLength={60}
                    onChange={(name) => rename(line.name, name)}
                  />
                ) : null}
                <Amount
                  label="First reading"
                  unit={unitOf(draft)}
                  value={line.opening}
                  onChange={(opening) => put(at, { opening })}
                />
                <Amount
                  label="Last reading"
                  unit={unitOf(draft)}
                  value={line.closing}
                  onChange={(closing) => put(at, { closing })}
                />
              </>
            )}
            {draft.meterUnit === 'kWh' || isLater(at) || line.opening !== undefined ? null : (
              <Amount
                label="Volume used"
                unit={unitOf(draft)}
                value={line.metered}
                onChange={(metered) => put(at, { metered })}
              />
            )}
            <Amount label="Units" unit="kWh" value={line.kWh} onChange={(kWh) => put(at, { kWh })} />
            <Amount
              label="Price"
              unit="p/kWh"
              value={line.pencePerKWh}
              onChange={(pencePerKWh) => put(at, { pencePerKWh })}
            />
            <Amount label="Charge" unit="£" value={line.pounds} onChange={(pounds) => put(at, { pounds })} />
            {isLater(at) || !line.estimated ? null : (
              <Amount
                label="Units by your own readings"
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
                <span>a reading is estimated</span>
              </label>
            )}
            <button type="button" className="plain" onClick={() => insertAfter(at, laterLine(line))}>
              Another price from a later day<span className="unseen"> for {line.name}</span>
            </button>
            {lines.length > 1 ? (
              <button
                type="button"
                className="plain"
                onClick={() => onChange({ lines: lines.filter((_, i) => i !== at) })}
              >
                Take out<span className="unseen"> {line.name}</span>
              </button>
            ) : null}
          </div>
        </fieldset>
      ))}
      {draft.fuel === 'electricity' && lines.length < 8 ? (
        <div className="actions">
          <button type="button" className="plain" onClick={addRegister}>
            Add a register, such as night
          </button>
        </div>
      ) : null}
    </section>
  );
}

const unitOf = (draft: BillDraft): string => (draft.meterUnit === 'hundred ft³' ? '100 ft³' : draft.meterUnit);

export function Amount(props: {
  readonly label: string;
  readonly unit: string;
  readonly value: number | undefined;
  readonly onChange: (value: number | undefined) => void;
}) {
  const low = props.unit === '£' || props.unit === 'p/kWh' ? -1_000_000 : 0;
  return (
    <NumberField
      label={props.label}
      value={props.value}
      limits={{ min: low, max: 10_000_000, unit: props.unit }}
      onChange={props.onChange}
    />
  );
}
