/** The machine's year day by day: what is asked of it, at which source, and what it falls short of. */

import { readFlow } from './heating-curve.ts';
import { brineByDay } from './source.ts';
import { readSurface } from './surface.ts';
import type { YearInput } from './year.ts';

export interface Days {
  readonly outdoorC: Float64Array;
  readonly sourceC: Float64Array;
  readonly spaceKWh: Float64Array;
  /** Share of the day's heat that resistance gives. */
  readonly backupShare: Float64Array;
}

/**
 * Heat [kWh], source [°C] and backup share [1] of each day. A house holds its warmth for hours, so output falls short
 * only where a whole day's heat is more than a whole day's running gives.
 */
export function runDays(input: YearInput, flow: Float64Array): Days {
  const { slots, perHeat, source } = input;
  const days = slots.dayStart.length - 1;
  const outdoorC = new Float64Array(days);
  const spaceKWh = new Float64Array(days);
  const spaceFlowC = new Float64Array(days);
  for (let day = 0; day < days; day++) {
    let sum = 0;
    for (let slot = slots.dayStart[day]!; slot < slots.dayStart[day + 1]!; slot++) sum += input.outdoorC[slot]!;
    outdoorC[day] = sum / (slots.dayStart[day + 1]! - slots.dayStart[day]!);
    spaceKWh[day] = input.spaceKWh * input.spaceShare[day]!;
    spaceFlowC[day] = readFlow(flow, outdoorC[day]!);
  }
  const designPerHeat = readSurface(perHeat, 0, readFlow(flow, input.curve.designOutdoorC));
  const need = {
    spaceKWh,
    waterKWh: input.waterByDayKWh,
    spaceFlowC,
    waterFlowC: input.waterFlowC,
    designDrawKWh: input.designKW * 24 * (1 - designPerHeat),
  };
  const sourceC =
    source.kind === 'air' ? outdoorC : source.kind === 'typed' ? source.byDayC : brineByDay(source, need, perHeat);
  const backupShare = spaceKWh.map((space, day) => {
    const asked = space + input.waterByDayKWh[day]!;
    const hours = (slots.dayStart[day + 1]! - slots.dayStart[day]!) / 2;
    const most = readSurface(input.outputKW, sourceC[day]!, spaceFlowC[day]!) * hours;
    return Math.min(1, Math.max(input.backupShare, asked > most ? 1 - most / asked : 0));
  });
  return { outdoorC, sourceC, spaceKWh, backupShare };
}
