/** A bill typed from the paper or taken from a file, worked out again line by line. */

import { useEffect, useRef, useState } from 'react';
import { leavesPricesOpen } from '../../model/bill/recompute-lines.ts';
import { billSumsSentence } from '../../words/bill-sums.ts';
import { phrase, say } from '../../words/say.ts';
import { call } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { ChoiceField } from '../shared/choice-field.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import { BillHead } from './bill-head.tsx';
import { type BillDraft, emptyBill, periodOf, readBill } from './bill-lines-draft.ts';
import './bill-sums.css';
import { Refused } from '../shared/refused.tsx';
import { ChargeLines } from './charge-lines.tsx';
import { ClosingLines } from './closing-lines.tsx';
import { draftOfBill } from './draft-of-bill.ts';
import type { FiledBillOpened } from './filed-bill.ts';
import { fittingTariffs, sumsOf, tariffOfBill } from './sums-of.ts';
import { SumsResult } from './sums-result.tsx';

const NO_TARIFF = phrase('Type the tariff under Prices, and the prices on the bill are checked too.');
const WITH_TARIFF = phrase('With a tariff the prices are checked too, also where they change within the bill.');
const PRICES_OPEN = phrase(
  'Some unit prices are taken from the bill: no price of this tariff has the name of the register, or it has steps or half-hours.',
);

export function BillSums(props: {
  readonly filed?: FiledBillOpened;
  readonly onDone: (message: string) => Promise<void>;
  readonly onLeave: () => void;
}) {
  const { filed } = props;
  const { household } = useHousehold();
  const burnsGas = household.present.system.startsWith('gas');
  const [draft, setDraft] = useState<BillDraft>(() =>
    filed ? draftOfBill(filed.bill) : emptyBill(burnsGas ? 'gas' : 'electricity'),
  );
  const [tariffId, setTariffId] = useState(() => (filed ? tariffOfBill(household.tariffs, filed.bill)?.id : undefined));
  const [asked, setAsked] = useState(false);
  const [failure, setFailure] = useState<string | null>(null);
  const head = useRef<HTMLElement>(null);
  // Opened from far down a list, the answer stands at the top.
  useEffect(() => {
    head.current?.scrollIntoView();
  }, []);
  const set = (part: Partial<BillDraft>) => setDraft((before) => ({ ...before, ...part }));

  const fitting = fittingTariffs(household.tariffs, draft.fuel);
  const tariff = fitting.find(({ id }) => id === tariffId);
  const reading = readBill(draft);
  const checked = reading.kind === 'whole' ? sumsOf(reading.bill, tariff, household) : null;
  const open = tariff !== undefined && reading.kind === 'whole' && leavesPricesOpen(reading.bill, tariff);
  const keep = async () => {
    setAsked(true);
    if (reading.kind !== 'whole' || !checked) return;
    try {
      await call('evidence.type', { householdId: household.id, ...periodOf(reading.bill, checked) });
      await props.onDone(say('The bill is saved. It counts in the heat needed and in the bill check.'));
    } catch (reason) {
      setFailure(describeFailure(reason));
    }
  };

  return (
    <>
      <header className="stage-head sums-head" aria-live="polite" ref={head}>
        <p className="quiet">
          {filed
            ? say('A bill’s sums, line {row} of {fileName}', { row: String(filed.row), fileName: filed.fileName })
            : say('A bill’s sums')}
        </p>
        <h2 className="voice">{checked ? billSumsSentence(checked) : say('Type the bill, and we check its sums.')}</h2>
      </header>
      <div className={filed ? 'sums sums-filed' : 'sums'}>
        <div className="sums-form">
          <BillHead draft={draft} onChange={set} onFuel={(fuel) => setDraft(emptyBill(fuel))} />
          <ChargeLines draft={draft} onChange={set} />
          <ClosingLines draft={draft} onChange={set} />
          <ChoiceField
            label={say('Compared with')}
            value={tariff?.id}
            emptyLabel={say('the prices on the bill itself')}
            choices={fitting.map(({ id, name }) => ({ value: id, label: name }))}
            onChange={setTariffId}
            note={say(fitting.length === 0 ? NO_TARIFF : open ? PRICES_OPEN : WITH_TARIFF)}
          />
        </div>
        <section className="sums-result" aria-label={say('Line by line')}>
          {checked ? (
            <SumsResult checked={checked} />
          ) : (
            <>
              <h3>{say('Still to type')}</h3>
              <ul className={asked ? 'refusal' : 'quiet'} role={asked ? 'alert' : undefined}>
                {(reading.kind === 'wanting' ? reading.sentences : []).map((sentence) => (
                  <li key={sentence}>{sentence}</li>
                ))}
              </ul>
            </>
          )}
        </section>
      </div>
      <Refused text={failure} />
      {filed ? (
        <div className="actions stand-low">
          <button type="button" className="main" onClick={props.onLeave}>
            {say('Back to bills and readings')}
          </button>
          <span className="quiet small">
            {say('The bill is saved with its file. What you change here changes only these sums.')}
          </span>
        </div>
      ) : (
        <div className="actions stand-low">
          <button type="button" className="main" onClick={keep}>
            {say('Save this bill')}
          </button>
          <button type="button" onClick={props.onLeave}>
            {say('Cancel')}
          </button>
          <span className="quiet small">{say('It then counts in the heat needed and in the bill check.')}</span>
        </div>
      )}
    </>
  );
}
