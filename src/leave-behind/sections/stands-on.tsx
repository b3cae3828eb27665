import { GradeMark } from '../../charts/grade-mark.tsx';
import type { Grade } from '../../model/working.ts';
import { counted, degrees, factor, pence, spokenCount } from '../../words/numbers.ts';
import type { PromiseParts } from '../parts.ts';

interface Ground {
  readonly grade: Grade;
  readonly what: string;
  readonly value: string;
}

function listGrounds({ appraisal, promise, hasRecord }: PromiseParts): Ground[] {
  const { demand, machine, prices } = appraisal;
  const { household } = promise;
  const flow = household.machine.flowC;
  const people = household.home.people?.value;
  const emitters = household.machine.emitters === 'floor' ? 'floor' : 'radiators';
  return [
    {
      grade: demand.total.grade,
      what: hasRecord ? 'heat: your record, put right for weather' : 'heat: worked out without bills',
      value: `${spokenCount(demand.total.value)} kWh a year, ${spokenCount(demand.total.low)} to ${spokenCount(demand.total.high)}`,
    },
    {
      grade: demand.water.grade,
      what: people ? `hot water for ${counted(people, 'person', 'people')}` : 'hot water, people not counted',
      value: `${spokenCount(demand.water.value)} kWh of that heat`,
    },
    {
      grade: machine.whole.grade,
      what: `heat from the ${machine.source}${flow ? `, water to the ${emitters} at ${degrees(flow.value)}` : ''}`,
      value: `factor ${factor(machine.whole.value)}, pumps included (H4)`,
    },
    {
      grade: prices.electricity.grade,
      what: prices.electricity.name,
      value: `${pence(prices.electricityPencePerKWh)} a unit of electricity`,
    },
  ];
}

export function StandsOn({ parts }: { readonly parts: PromiseParts }) {
  return (
    <>
      <h3>What this stands on</h3>
      <table className="grounds">
        <tbody>
          {listGrounds(parts).map(({ grade, what, value }) => (
            <tr key={what}>
              <td>
                <GradeMark grade={grade} size={13} /> {what}
              </td>
              <td className="number">{value}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
