import type { FiledBill } from '../../model/shapes/bill.ts';
import type { Evidence } from '../../model/shapes/evidence.ts';
import { billSumsSentence } from '../../words/bill-sums.ts';
import { say } from '../../words/say.ts';
import { readBill } from '../bill-sums/bill-lines-draft.ts';
import { draftOfBill } from '../bill-sums/draft-of-bill.ts';
import type { FiledBillOpened } from '../bill-sums/filed-bill.ts';
import { sumsOf, tariffOfBill } from '../bill-sums/sums-of.ts';
import { useHousehold } from '../household-context.tsx';
import { daysWords } from './day-words.ts';

/** The bills that a kept file prints, each with what its sums come to; a press opens them line by line. */
export function FiledBills(props: { readonly one: Evidence; readonly onOpen: (filed: FiledBillOpened) => void }) {
  const { household } = useHousehold();
  const bills = props.one.series.flatMap((series) => (series.bills ?? []).map((filed) => ({ series, filed })));
  if (bills.length === 0) return null;
  const verdict = ({ bill }: FiledBill): string => {
    const reading = readBill(draftOfBill(bill));
    if (reading.kind === 'wanting') return say('Something is missing for its sums.');
    return billSumsSentence(sumsOf(reading.bill, tariffOfBill(household.tariffs, bill), household));
  };
  return (
    <details className="small">
      <summary>
        {say('{count, plural, one {# bill} other {# bills}} with prices in it', { count: bills.length })}
      </summary>
      <ul className="filed-bills">
        {bills.map(({ series, filed }) => (
          <li key={`${series.id} ${filed.row}`}>
            <span>
              {daysWords(filed.bill)}. {verdict(filed)}
            </span>
            <button
              type="button"
              className="plain"
              onClick={() => props.onOpen({ fileName: props.one.fileName, ...filed })}
            >
              {say('Check its sums')}
              <span className="unseen">, {say('line {row}', { row: String(filed.row) })}</span>
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
