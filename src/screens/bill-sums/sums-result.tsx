import type { CheckedBill } from '../../model/bill/check-bill-sums.ts';
import type { BillRow } from '../../model/bill/compare-rows.ts';
import { billCauseSentence, NO_EXPLANATION, reachSentence, rowName, rowSum, rowValue } from '../../words/bill-sums.ts';
import { keepTogether } from '../../words/keep-together.ts';
import { say } from '../../words/say.ts';

/** What would explain a difference; then line by line what is on the bill, worked out, and apart. */
export function SumsResult({ checked }: { readonly checked: CheckedBill }) {
  const several = checked.rows.filter(({ kind }) => kind === 'energy').length > 1;
  return (
    <>
      {checked.agrees ? null : (
        <div className="ask" role="status">
          {checked.explanations.length === 0 ? <p>{say(NO_EXPLANATION)}</p> : null}
          {checked.explanations.map((one) => (
            <div key={one.causes.map(({ code }) => code).join(' ')}>
              <p className="quiet small">{reachSentence(one)}</p>
              {one.causes.map((cause) => (
                <p key={cause.code}>{billCauseSentence(cause)}</p>
              ))}
            </div>
          ))}
        </div>
      )}
      <h3>{say('Line by line')}</h3>
      <div className="scroll-x">
        <table className="sums-table">
          <thead>
            <tr>
              <th scope="col">{say('Line')}</th>
              <th scope="col" className="number">
                {say('On the bill')}
              </th>
              <th scope="col" className="number">
                {say('Worked out')}
              </th>
              <th scope="col" className="number">
                {say('Difference')}
              </th>
            </tr>
          </thead>
          <tbody>
            {checked.rows.map((row, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place in the list.
              <tr key={at} className={row.kind === 'total' ? 'sums-total' : undefined}>
                <th scope="row">
                  {rowName(row, several)}
                  {rowSum(row) === '' ? null : (
                    <span className="quiet small sums-how">{keepTogether(rowSum(row))}</span>
                  )}
                </th>
                <td className="number">
                  {keepTogether(rowValue(row, row.printed)) || <span className="quiet">{say('not given')}</span>}
                </td>
                <td className="number">{keepTogether(rowValue(row, row.reckoned))}</td>
                <td className="number">{differenceOf(row)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}

/** With its sign; a difference below what is shown is none. */
function differenceOf(row: BillRow) {
  const { difference } = row;
  if (difference === undefined) return '';
  const least = row.unit === 'kWh' ? 0.05 : 0.5;
  if (Math.abs(difference) < least) return <span className="quiet">{say('none')}</span>;
  const text = keepTogether(rowValue(row, difference));
  return <strong>{difference > 0 ? `+${text}` : text}</strong>;
}
