import type { SystemResult } from '../../model/shapes/appraisal.ts';
import { exactPounds, grouped } from '../../words/numbers.ts';
import { yearAtPrices } from '../../words/prices.ts';
import { say } from '../../words/say.ts';
import { systemName } from '../../words/systems.ts';
import { NumberHead } from '../number-head.tsx';
import type { EstimateParts } from '../parts.ts';

/** A part that costs nothing is a dash, as on a bill. */
const partOfCost = (pence: number) => (pence === 0 ? '–' : exactPounds(pence));

/** Ways of heating with the parts of their cost, and one more column of each. */
export function CostTable(props: {
  readonly parts: EstimateParts;
  readonly systems: readonly SystemResult[];
  readonly last: string;
  readonly lastOf: (system: SystemResult) => string;
}) {
  const { parts, systems, last, lastOf } = props;
  const { source } = parts.appraisal.machine;
  const grid = systems.some(({ split }) => split.standingPence < 0);
  return (
    <div className="wide">
      <table>
        <thead>
          <tr>
            <th scope="col">{yearAtPrices(parts.appraisal)}</th>
            <NumberHead>{say('kWh bought')}</NumberHead>
            <NumberHead>{say('for energy')}</NumberHead>
            <NumberHead>{grid ? say('standing, less what the grid takes off') : say('standing')}</NumberHead>
            <NumberHead>{say('service')}</NumberHead>
            <NumberHead>{say('together')}</NumberHead>
            <NumberHead>{last}</NumberHead>
          </tr>
        </thead>
        <tbody>
          {systems.map((system) => (
            <tr key={system.id} className={system.id === 'heat-pump' ? 'ours' : undefined}>
              <th scope="row">{systemName(system.id, system.kind, source)}</th>
              <td className="number">{grouped(system.bought.value)}</td>
              <td className="number">{partOfCost(system.split.unitsPence)}</td>
              <td className="number">{partOfCost(system.split.standingPence)}</td>
              <td className="number">{partOfCost(system.split.servicePence)}</td>
              <td className="number">{exactPounds(system.cost.value)}</td>
              <td className="number">{lastOf(system)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
