/** Speed of the machine's year by the half-hour, alone and inside the whole comparison. */
import { appraise } from '../../src/model/appraise.ts';
import { estimateDemand } from '../../src/model/demand/estimate-demand.ts';
import { runYear } from '../../src/model/heat-pump/full/run-year.ts';
import { settleFull } from '../../src/model/heat-pump/full/settle.ts';
import type { Household } from '../../src/model/shapes/household.ts';
import { typicalYear } from '../../src/model/year/typical-year.ts';
import { reference } from '../../src/reference/index.ts';
import type { BenchRow } from './bench-row.ts';

/** The rows of the full way, for an invented household with a tariff of many bands. `median` times a call in ms. */
export function fullWayBench(
  quick: () => Household,
  median: (run: () => number, repeats?: number) => number,
): BenchRow[] {
  const full = (): Household => {
    const household = quick();
    return { ...household, machine: { ...household.machine, way: 'full' } };
  };
  const household = full();
  const year = typicalYear(reference.regions[6]!, 2026, household.zone);
  const { demand, heatBySlot } = estimateDemand({ household, series: [], reference, year });
  const input = { household, demand, reference, year, spaceShare: heatBySlot.spaceShare };
  const settled = settleFull(input).input;
  const whole = (draws: number, flowC?: number) => {
    const whatIf = flowC === undefined ? {} : { whatIf: { flowC } };
    const answer = appraise({ household: full(), series: [], reference, asOf: '2026-11-25', draws, ...whatIf });
    return answer.systems.reduce((sum, { cost }) => sum + cost.value, 0);
  };
  let flowC = 35;
  return [
    {
      what: 'one machine through 17,520 half-hours, every use a line of its own',
      value: median(() => runYear(settled).electricityKWh, 5),
      unit: 'ms',
      aim: 3,
    },
    {
      what: 'whole comparison the full way on a five-band tariff, no draws',
      value: median(() => whole(0), 5),
      unit: 'ms',
      aim: 10,
    },
    {
      what: 'a what-if slider the full way, 10,000 draws',
      value: median(() => whole(10_000, 35 + (flowC++ % 20))),
      unit: 'ms',
      aim: 16,
    },
  ];
}
