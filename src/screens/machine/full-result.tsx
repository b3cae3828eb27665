/** What the machine's worked-out year comes to: factors at each boundary, electricity by use, what it hangs on. */

import { BOUNDARIES } from '../../model/heat-pump/boundaries.ts';
import type { Balance } from '../../model/heat-pump/full/year.ts';
import { drivesSentence, electricUseName } from '../../words/full-year.ts';
import { boundaryName } from '../../words/machine.ts';
import { capitalised, exactKWh, grouped, monthNames, percent } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { FigureButton } from '../shared/spoken.tsx';
import { listUses, type WorkedYear } from './full-year.ts';

const DECIMALS = 2;
const factorText = (balance: Balance, boundary: (typeof BOUNDARIES)[number]) =>
  balance.factors === null ? say('none') : grouped(balance.factors[boundary], DECIMALS);

export function FullResult({ worked }: { readonly worked: WorkedYear }) {
  const { year, monthly } = worked.full;
  const { appraisal, openWorking } = useHousehold();
  const heatKWh = (balance: Balance) => balance.spaceHeatKWh + balance.waterHeatKWh + balance.resistanceHeatKWh;
  return (
    <section>
      <h3>{say('The year, half-hour by half-hour')}</h3>
      <p className="explain voice full-drives">{drivesSentence(worked.drives)}</p>
      <div className="full-tables">
        <table className="narrow">
          <caption>{say('kWh of heat for each kWh bought (SPF), by what is counted')}</caption>
          <tbody>
            {BOUNDARIES.map((boundary) => (
              <tr key={boundary} className={boundary === 'H4' ? 'ours' : undefined}>
                <th scope="row">{capitalised(boundaryName(boundary))}</th>
                <td className="number">
                  {boundary === 'H4' ? (
                    <FigureButton
                      text={factorText(year, boundary)}
                      working={appraisal.machine.whole.working}
                      onOpen={openWorking}
                    />
                  ) : (
                    factorText(year, boundary)
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
        <table className="narrow">
          <caption>{say('Where the electricity goes in a year')}</caption>
          <tbody>
            {listUses(year).map(({ use, kWh, share }) => (
              <tr key={use}>
                <th scope="row">{electricUseName(use)}</th>
                <td className="number">{exactKWh(kWh)}</td>
                <td className="number quiet">{percent(share)}</td>
              </tr>
            ))}
            <tr className="ours">
              <th scope="row">{say('All of it')}</th>
              <td className="number">{exactKWh(worked.full.electricityKWh)}</td>
              <td />
            </tr>
          </tbody>
        </table>
      </div>
      <details className="notes">
        <summary>{say('Month by month')}</summary>
        <div className="scroll-x">
          <table className="full-months">
            <caption className="unseen">{say('Heat, electricity and factors by month')}</caption>
            <thead>
              <tr>
                <th scope="col">{say('Month')}</th>
                <th scope="col" className="number">
                  {say('Heat')}
                </th>
                <th scope="col" className="number">
                  {say('Electricity')}
                </th>
                {BOUNDARIES.map((boundary) => (
                  <th key={boundary} scope="col" className="number">
                    {boundary}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {monthly.map((balance, month) => (
                <tr key={monthNames()[month]}>
                  <th scope="row">{monthNames()[month]}</th>
                  <td className="number">{exactKWh(heatKWh(balance))}</td>
                  <td className="number">{exactKWh(listUses(balance).reduce((sum, { kWh }) => sum + kWh, 0))}</td>
                  {BOUNDARIES.map((boundary) => (
                    <td key={boundary} className="number">
                      {factorText(balance, boundary)}
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </details>
    </section>
  );
}
