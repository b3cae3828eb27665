import type { SystemResult } from '../../model/shapes/appraisal.ts';
import { exactKWh, exactPounds, grouped } from '../../words/numbers.ts';
import { yearAtPrices } from '../../words/prices.ts';
import { say } from '../../words/say.ts';
import { systemName } from '../../words/systems.ts';
import { NumberHead } from '../number-head.tsx';
import type { EstimateParts } from '../parts.ts';

/** A part that costs nothing is a dash, as on a bill. */
const part = (pence: number) => (pence === 0 ? '–' : exactPounds(pence));

/** Which rows the first page has room for: the heat pump, what it is held against, the cheapest other. */
export function shortList({ appraisal, pump, beside }: EstimateParts): SystemResult[] {
  const others = appraisal.systems
    .filter((system) => system !== pump && system !== beside)
    .toSorted((a, b) => a.cost.value - b.cost.value);
  return [pump, ...(beside ? [beside] : []), ...others.slice(0, beside ? 1 : 2)];
}

export function CostTable({ parts, short = false }: { readonly parts: EstimateParts; readonly short?: boolean }) {
  const rows = short ? shortList(parts) : parts.appraisal.systems;
  const { source } = parts.appraisal.machine;
  return (
    <div className="wide">
      <table>
        <thead>
          <tr>
            <th scope="col">{yearAtPrices(parts.appraisal)}</th>
            <NumberHead>{short ? say('units bought') : say('units bought (kWh)')}</NumberHead>
            <NumberHead>{say('for units')}</NumberHead>
            <NumberHead>{say('standing')}</NumberHead>
            <NumberHead>{say('service')}</NumberHead>
            <NumberHead>{say('together')}</NumberHead>
            {short ? null : <NumberHead>{say('carbon (kg)')}</NumberHead>}
          </tr>
        </thead>
        <tbody>
          {rows.map((system) => (
            <tr key={system.id} className={system.id === 'heat-pump' ? 'ours' : undefined}>
              <th scope="row">{systemName(system.id, system.kind, source)}</th>
              <td className="number">{short ? exactKWh(system.bought.value) : grouped(system.bought.value)}</td>
              <td className="number">{part(system.split.unitsPence)}</td>
              <td className="number">{part(system.split.standingPence)}</td>
              <td className="number">{part(system.split.servicePence)}</td>
              <td className="number">{exactPounds(system.cost.value)}</td>
              {short ? null : <td className="number">{grouped(system.carbonKg.value)}</td>}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
