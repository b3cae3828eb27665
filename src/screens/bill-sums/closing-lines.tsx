import { exactPercent, moneySign, penceSign } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import { PickField, sayChoices } from '../shared/choice-field.tsx';
import { TextField } from '../shared/text-field.tsx';
import { Day } from './bill-head.tsx';
import type { AdjustmentDraft, BillDraft, StandingDraft } from './bill-lines-draft.ts';
import { Amount } from './charge-lines.tsx';

const KINDS = [
  { value: 'discount', label: phrase('discount') },
  { value: 'credit', label: phrase('credit') },
  { value: 'charge', label: phrase('charge') },
] as const;
const PRICES = [
  { value: 'out', label: phrase('VAT comes on top') },
  { value: 'in', label: phrase('VAT is in the prices') },
] as const;
const RATES = ['5', '20', '0'];
const rateChoice = (rate: string) => ({
  value: rate,
  label: rate === '0' ? say('none') : exactPercent(Number(rate) / 100),
});

interface LinesProps {
  readonly draft: BillDraft;
  readonly onChange: (part: Partial<BillDraft>) => void;
}

/** Standing charge, discounts and credits, VAT and total. */
export function ClosingLines(props: LinesProps) {
  return (
    <>
      <StandingLines {...props} />
      <AdjustmentLines {...props} />
      <TotalLines {...props} />
    </>
  );
}

function StandingLines({ draft: { standing }, onChange }: LinesProps) {
  const putStanding = (at: number, part: Partial<StandingDraft>) =>
    onChange({ standing: standing.map((line, i) => (i === at ? { ...line, ...part } : line)) });
  return (
    <section className="sums-part">
      <h3>{say('Standing charge')}</h3>
      {standing.map((line, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a line is its place on the bill.
        <div key={at} className="sums-fields">
          {at === 0 ? null : (
            <Day label={say('From')} value={line.from} onChange={(from) => putStanding(at, { from })} />
          )}
          <Amount label={say('Days')} unit="" value={line.days} onChange={(days) => putStanding(at, { days })} />
          <Amount
            label={say('Standing charge')}
            unit={say('{sign} a day', { sign: penceSign() })}
            value={line.pencePerDay}
            onChange={(pencePerDay) => putStanding(at, { pencePerDay })}
          />
          <Amount
            label={say('Charge')}
            unit={moneySign()}
            value={line.pounds}
            onChange={(pounds) => putStanding(at, { pounds })}
          />
        </div>
      ))}
      <div className="actions">
        <button type="button" className="plain" onClick={() => onChange({ standing: [...standing, { from: '' }] })}>
          {say('Another standing charge from a later day')}
        </button>
        {standing.length > 1 ? (
          <button type="button" className="plain" onClick={() => onChange({ standing: standing.slice(0, -1) })}>
            {say('Remove the last one')}
          </button>
        ) : null}
      </div>
    </section>
  );
}

function AdjustmentLines({ draft: { adjustments }, onChange }: LinesProps) {
  const putAdjustment = (at: number, part: Partial<AdjustmentDraft>) =>
    onChange({ adjustments: adjustments.map((line, i) => (i === at ? { ...line, ...part } : line)) });
  return (
    <section className="sums-part">
      <h3>{say('Discounts and credits')}</h3>
      {adjustments.map((line, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a line is its place on the bill.
        <div key={at} className="sums-fields">
          <TextField
            label={say('What it is called')}
            value={line.name}
            maxLength={80}
            onChange={(name) => putAdjustment(at, { name })}
          />
          <Amount
            label={say('Amount')}
            unit={moneySign()}
            value={line.pounds}
            onChange={(pounds) => putAdjustment(at, { pounds })}
          />
          <PickField
            label={say('It is a')}
            value={line.kind}
            choices={sayChoices(KINDS)}
            onChange={(kind) => putAdjustment(at, { kind, vat: kind === 'discount' ? 'before' : 'after' })}
          />
          <button
            type="button"
            className="plain"
            onClick={() => onChange({ adjustments: adjustments.filter((_, i) => i !== at) })}
          >
            {say('Remove')}
            <span className="unseen"> {line.name || say(line.kind)}</span>
          </button>
        </div>
      ))}
      <div className="actions">
        <button
          type="button"
          className="plain"
          onClick={() => onChange({ adjustments: [...adjustments, { kind: 'discount', name: '', vat: 'before' }] })}
        >
          {say('Add a discount, credit or charge')}
        </button>
      </div>
    </section>
  );
}

function TotalLines({ draft, onChange }: LinesProps) {
  return (
    <section className="sums-part">
      <h3>{say('VAT and total')}</h3>
      <div className="sums-fields">
        <PickField
          label={say('Prices')}
          value={draft.vatIncluded ? 'in' : 'out'}
          choices={sayChoices(PRICES)}
          onChange={(vat) => onChange({ vatIncluded: vat === 'in' })}
        />
        <PickField
          label={say('VAT on the bill')}
          value={draft.vatPercent}
          choices={[...new Set([...RATES, draft.vatPercent])].map(rateChoice)}
          onChange={(vatPercent) => onChange({ vatPercent })}
        />
        <Amount
          label={say('VAT')}
          unit={moneySign()}
          value={draft.vatPounds}
          onChange={(vatPounds) => onChange({ vatPounds })}
        />
        <Amount
          label={say('Before VAT')}
          unit={moneySign()}
          value={draft.netPounds}
          onChange={(netPounds) => onChange({ netPounds })}
        />
        <Amount
          label={say('Total')}
          unit={moneySign()}
          value={draft.totalPounds}
          onChange={(totalPounds) => onChange({ totalPounds })}
        />
      </div>
    </section>
  );
}
