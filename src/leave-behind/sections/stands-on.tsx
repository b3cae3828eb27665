import { GradeMark } from '../../charts/grade-mark.tsx';
import type { Grade } from '../../model/shapes/working.ts';
import { degrees, factor, pence, spokenCount } from '../../words/numbers.ts';
import { nameOfPrice } from '../../words/prices.ts';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import type { EstimateParts } from '../parts.ts';

interface Ground {
  readonly grade: Grade;
  readonly what: string;
  readonly value: string;
}

function listGrounds({ appraisal, estimate, hasRecord }: EstimateParts): Ground[] {
  const { demand, machine, prices } = appraisal;
  const { household } = estimate;
  const flow = household.machine.flowC;
  const people = household.home.people?.value;
  const emitters = household.machine.emitters === 'floor' ? 'floor' : 'radiators';
  return [
    {
      grade: demand.total.grade,
      what: hasRecord
        ? say('heat: your own record, adjusted to a typical winter')
        : say('heat: worked out without bills'),
      value: say('{count} kWh a year, {low} to {high}', {
        count: spokenCount(demand.total.value),
        low: spokenCount(demand.total.low),
        high: spokenCount(demand.total.high),
      }),
    },
    {
      grade: demand.water.grade,
      what: people
        ? say('hot water for {people, plural, one {# person} other {# people}}', { people })
        : say('hot water, people not counted'),
      value: say('{count} kWh of that heat', { count: spokenCount(demand.water.value) }),
    },
    {
      grade: machine.whole.grade,
      what: flow
        ? say(
            'heat from the {source, select, air {air} other {ground}}, water to the {emitters, select, floor {floor} other {radiators}} at {flow}',
            { source: machine.source, emitters, flow: degrees(flow.value) },
          )
        : say('heat from the {source, select, air {air} other {ground}}', { source: machine.source }),
      value: say('seasonal factor {factor}, all pumps counted', { factor: factor(machine.whole.value) }),
    },
    {
      grade: prices.electricity.grade,
      what: sayTold(nameOfPrice(prices.electricity)),
      value: say('{price} per kWh of electricity', { price: pence(prices.electricityPencePerKWh) }),
    },
  ];
}

export function StandsOn({ parts }: { readonly parts: EstimateParts }) {
  return (
    <>
      <h3>{say('What the figures are')}</h3>
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
