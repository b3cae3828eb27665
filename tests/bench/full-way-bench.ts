/** Speed of the machine's year by the half-hour, alone and inside the whole comparison. */

import { appraise } from '../../src/model/appraise.ts';
import { estimateDemand } from '../../src/model/demand/estimate-demand.ts';
import { runYear } from '../../src/model/heat-pump/full/run-year.ts';
import { settleFull } from '../../src/model/heat-pump/full/settle.ts';
import { findBestHours, type HoursInput } from '../../src/model/hours/best-hours.ts';
import { homeWarmth } from '../../src/model/hours/warmth.ts';
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
  const hours: HoursInput = {
    year: settled,
    pencePerKWh: Float64Array.from(year.slots.minute, (minute) => (minute >= 30 && minute < 450 ? 10 : 30)),
    warmth: homeWarmth({}, demand.heatLossWPerK, undefined),
    roomC: demand.roomC,
    comfort: {},
    cylinderKWh: 8,
    movesWater: true,
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
      what: 'the best hours of a year: rooms and hot water through 17,520 half-hours',
      value: median(() => findBestHours(hours).spaceSaved, 5),
      unit: 'ms',
      peer: {
        what: 'the rooms alone, every level of heat tried at every level held',
        value: median(() => tryAll(hours), 1),
      },
      aim: 150,
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

/** The same search by a plain loop: 61 levels held, 61 levels after, straight back through the year. */
function tryAll({ year, pencePerKWh, warmth }: HoursInput): number {
  const [levels, stepK] = [61, 1.5 / 60];
  const usual = year.spaceKWh / year.slots.count;
  let ahead = new Float64Array(levels);
  for (let slot = year.slots.count - 1; slot >= 0; slot--) {
    const now = new Float64Array(levels).fill(Number.POSITIVE_INFINITY);
    for (let from = 0; from < levels; from++) {
      for (let to = 0; to < levels; to++) {
        const heat = usual + (to - from) * stepK * warmth.kWhPerK;
        const pence = heat * pencePerKWh[slot]! + ahead[to]!;
        if (heat >= 0 && heat <= year.designKW / 2 && pence < now[from]!) now[from] = pence;
      }
    }
    ahead = now;
  }
  return ahead[0]!;
}
