import { GradeMark } from '../../charts/grade-mark.tsx';
import type { SystemResult } from '../../model/shapes/appraisal.ts';
import { systemRow } from '../../model/shapes/heating.ts';
import { exactPounds, grouped, pence, percent } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { systemName } from '../../words/systems.ts';
import { NumberHead } from '../number-head.tsx';
import type { EstimateParts } from '../parts.ts';

/** A boiler's efficiency is a percentage, a heat pump's is a factor. */
const efficiency = (system: SystemResult, value: number): string =>
  systemRow(system.kind)?.hours === 'heat-pump' ? grouped(value, 2) : percent(value);

const prices = ({ rates }: SystemResult): string => rates.map(({ pencePerKWh }) => pence(pencePerKWh)).join(', ');

/** With what the remaining ways of heating were reckoned. */
export function OtherWays({ parts }: { readonly parts: EstimateParts }) {
  const { appraisal, pump, beside } = parts;
  const others = appraisal.systems.filter((system) => system !== pump && system !== beside);
  if (others.length === 0) return null;
  return (
    <>
      <h3>{say('The other ways of heating')}</h3>
      <div className="wide">
        <table className="others">
          <thead>
            <tr>
              <th scope="col">{say('For the same heat')}</th>
              <NumberHead>{say('efficiency, rooms')}</NumberHead>
              <NumberHead>{say('hot water')}</NumberHead>
              <NumberHead>{say('price per kWh')}</NumberHead>
              <NumberHead>{say('service')}</NumberHead>
            </tr>
          </thead>
          <tbody>
            {others.map((system) => (
              <tr key={system.id}>
                <th scope="row">
                  <GradeMark grade={system.grade} size={13} /> {systemName(system.id, system.kind)}
                </th>
                <td className="number">{efficiency(system, system.spaceEfficiency)}</td>
                <td className="number">{efficiency(system, system.waterEfficiency)}</td>
                <td className="number">{prices(system)}</td>
                <td className="number">{exactPounds(system.split.servicePence)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}
