/** A bill typed from the paper, worked out again line by line. */
import { useState } from 'react';
import { type CheckedBill, checkBillSums } from '../../model/bill/check-bill-sums.ts';
import { leavesPricesOpen } from '../../model/bill/expected-terms.ts';
import { findTariffFaults } from '../../model/tariff/check-tariff.ts';
import { reference } from '../../reference/index.ts';
import { billSumsSentence } from '../../words/bill-sums.ts';
import { call } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { ChoiceField } from '../shared/choice-field.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import { type BillDraft, emptyBill, readBill } from './bill-draft.ts';
import { BillHead } from './bill-head.tsx';
import './bill-sums.css';
import { ChargeLines } from './charge-lines.tsx';
import { ClosingLines } from './closing-lines.tsx';
import { periodOf } from './keep-bill.ts';
import { SumsResult } from './sums-result.tsx';

/** On domestic fuel and power; VAT Notice 701/19. */
const DOMESTIC_VAT = 0.05;

const NO_TARIFF = 'Type the tariff under Prices, and the prices on the bill are checked too.';
const WITH_TARIFF = 'With a tariff the prices are checked too, also where they change within the bill.';
const PRICES_OPEN =
  'Some unit prices are taken from the bill: no price of this tariff has the name of the register, or it has steps or half-hours.';

export function BillSums(props: { readonly onDone: (message: string) => Promise<void>; readonly onLeave: () => void }) {
  const { household } = useHousehold();
  const burnsGas = household.present.system.startsWith('gas');
  const [draft, setDraft] = useState<BillDraft>(() => emptyBill(burnsGas ? 'gas' : 'electricity'));
  const [tariffId, setTariffId] = useState<string | undefined>();
  const [asked, setAsked] = useState(false);
  const [failure, setFailure] = useState<string | null>(null);
  const set = (part: Partial<BillDraft>) => setDraft((before) => ({ ...before, ...part }));

  const fitting = household.tariffs.filter((one) => one.fuel === draft.fuel && !isRefused(one));
  const tariff = fitting.find(({ id }) => id === tariffId);
  const reading = readBill(draft);
  const checked = reading.kind === 'whole' ? check(reading.bill, tariff) : null;
  const open = tariff !== undefined && reading.kind === 'whole' && leavesPricesOpen(reading.bill, tariff);
  const keep = async () => {
    setAsked(true);
    if (reading.kind !== 'whole' || !checked) return;
    try {
      await call('evidence.type', { householdId: household.id, ...periodOf(reading.bill, checked) });
      await props.onDone('The bill is kept. It counts in the heat and in the bill check.');
    } catch (reason) {
      setFailure(describeFailure(reason));
    }
  };

  return (
    <>
      <header className="stage-head" aria-live="polite">
        <p className="quiet">A bill’s sums</p>
        <h2 className="voice">{checked ? billSumsSentence(checked) : 'Copy the bill, and its sums are done again.'}</h2>
      </header>
      <div className="sums">
        <div className="sums-form">
          <BillHead draft={draft} onChange={set} onFuel={(fuel) => setDraft(emptyBill(fuel))} />
          <ChargeLines draft={draft} onChange={set} />
          <ClosingLines draft={draft} onChange={set} />
          <ChoiceField
            label="Held against"
            value={tariff?.id}
            emptyLabel="the prices on the bill itself"
            choices={fitting.map(({ id, name }) => ({ value: id, label: name }))}
            onChange={setTariffId}
            note={fitting.length === 0 ? NO_TARIFF : open ? PRICES_OPEN : WITH_TARIFF}
          />
        </div>
        <section className="sums-result" aria-label="Line by line">
          {checked ? (
            <SumsResult checked={checked} />
          ) : (
            <>
              <h3>Still to type</h3>
              <ul className={asked ? 'refusal' : 'quiet'} role={asked ? 'alert' : undefined}>
                {(reading.kind === 'wanting' ? reading.sentences : []).map((sentence) => (
                  <li key={sentence}>{sentence}</li>
                ))}
              </ul>
            </>
          )}
        </section>
      </div>
      {failure === null ? null : (
        <p className="refusal" role="alert">
          {failure}
        </p>
      )}
      <div className="actions stand-low">
        <button type="button" className="main" onClick={keep}>
          Keep this bill, to count as evidence
        </button>
        <button type="button" onClick={props.onLeave}>
          Leave it
        </button>
        <span className="quiet small">It then counts in the heat and in the bill check.</span>
      </div>
    </>
  );
}

type Tariff = Parameters<typeof findTariffFaults>[0];
const isRefused = (tariff: Tariff) => findTariffFaults(tariff).some(({ weight }) => weight === 'refusal');

function check(bill: Parameters<typeof periodOf>[0], tariff: Tariff | undefined): CheckedBill {
  const { correction, imperialM3PerHundredCubicFeet, calorificMJPerM3 } = reference.gasVolume;
  const gas = {
    correction: correction.value,
    imperialM3PerHundredCubicFeet: imperialM3PerHundredCubicFeet.value,
    calorificMJPerM3: calorificMJPerM3.value,
  };
  return checkBillSums({ bill, gas, vatRate: DOMESTIC_VAT, tariff });
}
