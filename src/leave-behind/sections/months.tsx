import { monthlyWarnings } from '../../model/bill-gap/expected-range.ts';
import { penceOfMonth, type SystemResult } from '../../model/shapes/appraisal.ts';
import { reference } from '../../reference/index.ts';
import { exactPounds, grouped, monthNames } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { systemName } from '../../words/systems.ts';
import { warningSentence } from '../../words/watch.ts';
import { NumberHead } from '../number-head.tsx';
import type { EstimateParts } from '../parts.ts';

/** What each month should bring, beside what each month of the other brings. */
export function MonthsPart({ parts }: { readonly parts: EstimateParts }) {
  const { pump, beside, appraisal } = parts;
  const shown = [pump, ...(beside ? [beside] : [])];
  const name = (system: SystemResult) => systemName(system.id, system.kind, appraisal.machine.source);
  const warnings = monthlyWarnings(appraisal, pump, reference.spread);
  return (
    <section>
      <h2>{say('Month by month')}</h2>
      <div className="wide">
        <table className="months">
          <thead>
            <tr>
              <th scope="col">{say('Typical year')}</th>
              {shown.flatMap((system) => [
                <NumberHead key={`${system.id}-units`}>{`${name(system)}, kWh`}</NumberHead>,
                <NumberHead key={`${system.id}-cost`}>{say('{name}, cost', { name: name(system) })}</NumberHead>,
                ...(system === pump ? [<NumberHead key="call">{say('Call us above')}</NumberHead>] : []),
              ])}
            </tr>
          </thead>
          <tbody>
            {monthNames().map((month, index) => (
              <tr key={month}>
                <th scope="row">{month}</th>
                {shown.flatMap((system) => [
                  <td key={`${system.id}-units`} className="number">
                    {grouped(system.monthly.boughtKWh[index]!)}
                  </td>,
                  <td key={`${system.id}-cost`} className="number">
                    {exactPounds(penceOfMonth(system, index))}
                  </td>,
                  ...(system === pump
                    ? [
                        <td key="call" className="number">
                          {grouped(warnings[index]!)}
                        </td>,
                      ]
                    : []),
                ])}
              </tr>
            ))}
            <tr className="sum">
              <th scope="row">{say('Together')}</th>
              {shown.flatMap((system) => [
                <td key={`${system.id}-units`} className="number">
                  {grouped(system.bought.value)}
                </td>,
                <td key={`${system.id}-cost`} className="number">
                  {exactPounds(system.cost.value)}
                </td>,
                ...(system === pump
                  ? [
                      <td key="call" className="number">
                        {grouped(pump.bought.high)}
                      </td>,
                    ]
                  : []),
              ])}
            </tr>
          </tbody>
        </table>
      </div>
      <p className="plain quiet">
        {say('Standing charge and service are shared out over the months. Real months differ with the weather.')}{' '}
        {warningSentence(pump.bought.high)}
      </p>
    </section>
  );
}
