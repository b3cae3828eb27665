import { exactPounds, grouped, roundedUnits } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { WatchRow } from './page.ts';

/** The winter months as they should come, and above which number of units to call. */
export function WatchTable({ rows }: { readonly rows: readonly WatchRow[] }) {
  return (
    <table className="walk-table">
      <thead>
        <tr>
          <th scope="col">{say('Month')}</th>
          <th scope="col" className="number">
            {say('kWh to expect')}
          </th>
          <th scope="col" className="number">
            {say('Cost')}
          </th>
          <th scope="col" className="number">
            {say('Call us above')}
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.month}>
            <th scope="row">{row.month}</th>
            <td className="number">{grouped(roundedUnits(row.units))}</td>
            <td className="number">{exactPounds(row.pence)}</td>
            <td className="number">{grouped(roundedUnits(row.callAbove))}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
