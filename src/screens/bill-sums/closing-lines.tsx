import { PickField } from '../shared/choice-field.tsx';
import { TextField } from '../shared/text-field.tsx';
import type { AdjustmentDraft, BillDraft, StandingDraft } from './bill-draft.ts';
import { Day } from './bill-head.tsx';
import { Amount } from './charge-lines.tsx';

const KINDS = [
  { value: 'discount', label: 'discount' },
  { value: 'credit', label: 'credit' },
  { value: 'charge', label: 'charge' },
] as const;
const PRICES = [
  { value: 'out', label: 'VAT comes on top' },
  { value: 'in', label: 'VAT is in the prices' },
] as const;
const RATES: readonly { readonly value: string; readonly label: string }[] = [
  { value: '5', label: '5%' },
  { value: '20', label: '20%' },
  { value: '0', label: 'none' },
];
const ownRate = (percent: string) => ({ value: percent, label: `${percent}%` });

/** Standing charge, discounts and credits, VAT and total. */
export function ClosingLines(props: {
  readonly draft: BillDraft;
  readonly onChange: (part: Partial<BillDraft>) => void;
}) {
  const { draft, onChange } = props;
  const { standing, adjustments } = draft;
  const putStanding = (at: number, part: Partial<StandingDraft>) =>
    onChange({ standing: standing.map((line, i) => (i === at ? { ...line, ...part } : line)) });
  const putAdjustment = (at: number, part: Partial<AdjustmentDraft>) =>
    onChange({ adjustments: adjustments.map((line, i) => (i === at ? { ...line, ...part } : line)) });
  return (
    <>
      <section className="sums-part">
        <h3>Standing charge</h3>
        {standing.map((line, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a line is its place on the bill.
          <div key={at} className="sums-fields">
            {at === 0 ? null : <Day label="From" value={line.from} onChange={(from) => putStanding(at, { from })} />}
            <Amount label="Days" unit="" value={line.days} onChange={(days) => putStanding(at, { days })} />
            <Amount
              label="Standing charge"
              unit="p a day"
              value={line.pencePerDay}
              onChange={(pencePerDay) => putStanding(at, { pencePerDay })}
            />
            <Amount label="Charge" unit="£" value={line.pounds} onChange={(pounds) => putStanding(at, { pounds })} />
          </div>
        ))}
        <div className="actions">
          <button type="button" className="plain" onClick={() => onChange({ standing: [...standing, { from: '' }] })}>
            Another standing charge from a later day
          </button>
          {standing.length > 1 ? (
            <button type="button" className="plain" onClick={() => onChange({ standing: standing.slice(0, -1) })}>
              Take the last one out
            </button>
          ) : null}
        </div>
      </section>
      <section className="sums-part">
        <h3>Discounts and credits</h3>
        {adjustments.map((line, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a line is its place on the bill.
          <div key={at} className="sums-fields">
            <TextField
              label="What it is called"
              value={line.name}
              maxLength={80}
              onChange={(name) => putAdjustment(at, { name })}
            />
            <Amount label="Amount" unit="£" value={line.pounds} onChange={(pounds) => putAdjustment(at, { pounds })} />
            <PickField
              label="It is a"
              value={line.kind}
              choices={KINDS}
              onChange={(kind) => putAdjustment(at, { kind, vat: kind === 'discount' ? 'before' : 'after' })}
            />
            <button
              type="button"
              className="plain"
              onClick={() => onChange({ adjustments: adjustments.filter((_, i) => i !== at) })}
            >
              Take out<span className="unseen"> {line.name || line.kind}</span>
            </button>
          </div>
        ))}
        <div className="actions">
          <button
            type="button"
            className="plain"
            onClick={() => onChange({ adjustments: [...adjustments, { kind: 'discount', name: '', vat: 'before' }] })}
          >
            Add a discount, credit or charge
          </button>
        </div>
      </section>
      <section className="sums-part">
        <h3>VAT and total</h3>
        <div className="sums-fields">
          <PickField
            label="Prices"
            value={draft.vatIncluded ? 'in' : 'out'}
            choices={PRICES}
            onChange={(vat) => onChange({ vatIncluded: vat === 'in' })}
          />
          <PickField
            label="VAT on the bill"
            value={draft.vatPercent}
            choices={
              RATES.some(({ value }) => value === draft.vatPercent) ? RATES : [...RATES, ownRate(draft.vatPercent)]
            }
            onChange={(vatPercent) => onChange({ vatPercent })}
          />
          <Amount label="VAT" unit="£" value={draft.vatPounds} onChange={(vatPounds) => onChange({ vatPounds })} />
          <Amount
            label="Before VAT"
            unit="£"
            value={draft.netPounds}
            onChange={(netPounds) => onChange({ netPounds })}
          />
          <Amount
            label="Total"
            unit="£"
            value={draft.totalPounds}
            onChange={(totalPounds) => onChange({ totalPounds })}
          />
        </div>
      </section>
    </>
  );
}
