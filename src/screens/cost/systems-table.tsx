import { GradeMark } from '../../charts/grade-mark.tsx';
import { type CostPart, partWorking } from '../../model/comparison/part-working.ts';
import type { Appraisal, Figure, SystemResult } from '../../model/shapes/appraisal.ts';
import { exactPounds, grouped } from '../../words/numbers.ts';
import { yearAtPrices } from '../../words/prices.ts';
import { phrase, say } from '../../words/say.ts';
import { systemName } from '../../words/systems.ts';
import { useHousehold } from '../household-context.tsx';
import { FigureButton } from '../shared/spoken.tsx';

const HEADS = [
  phrase('Energy bought, kWh'),
  phrase('Energy'),
  phrase('Standing'),
  phrase('Service'),
  phrase('Together'),
  phrase('Carbon, kg'),
];

/** Every way of heating with what its year is made of. */
export function SystemsTable({ appraisal }: { readonly appraisal: Appraisal }) {
  const { openWorking } = useHousehold();
  const open = (figure: Figure, text: string) => (
    <FigureButton text={text} working={figure.working} onOpen={openWorking} />
  );
  /** A part that costs nothing is a dash, as on a bill. */
  const openPart = ({ cost }: SystemResult, part: CostPart, pence: number) =>
    pence === 0 ? (
      '–'
    ) : (
      <FigureButton text={exactPounds(pence)} working={partWorking(cost.working, part, pence)} onOpen={openWorking} />
    );
  return (
    <div className="scroll-x">
      <table className="systems">
        <caption>{yearAtPrices(appraisal)}</caption>
        <thead>
          <tr>
            <th scope="col">{say('Way of heating')}</th>
            {HEADS.map((head) => (
              <th key={head} scope="col" className="number">
                {say(head)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {appraisal.systems.map((system) => (
            <tr key={system.id} className={system.id === 'heat-pump' ? 'ours' : undefined}>
              <th scope="row">
                <GradeMark grade={system.grade} /> {systemName(system.id, system.kind, appraisal.machine.source)}
              </th>
              <td className="number">{open(system.bought, grouped(system.bought.value))}</td>
              <td className="number">{openPart(system, 'units', system.split.unitsPence)}</td>
              <td className="number">{openPart(system, 'standing', system.split.standingPence)}</td>
              <td className="number">{openPart(system, 'service', system.split.servicePence)}</td>
              <td className="number">{open(system.cost, exactPounds(system.cost.value))}</td>
              <td className="number">{open(system.carbonKg, grouped(system.carbonKg.value))}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
