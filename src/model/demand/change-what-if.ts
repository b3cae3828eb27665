/** What a slider does to the heat demand: a warmer room, more hot water, a mild or a cold winter. */
import type { WhatIf } from '../shapes/appraisal.ts';
import type { Reference } from '../shapes/reference.ts';
import { type Told, tell, type Wording } from '../shapes/told.ts';
import type { WorkingInput } from '../shapes/working.ts';
import { degreeDaysFromMeans } from '../weather/degree-days.ts';
import type { TypicalYear } from '../year/typical-year.ts';
import type { Reckoned } from './choose.ts';
import { TEN_PERCENT } from './demand-assumptions.ts';

export interface Changed {
  readonly space: Reckoned;
  readonly water: Reckoned;
  readonly baseC: number;
  readonly roomC: number;
  readonly waterShare: number;
}

/**
 * Demand with the change asked for. A room warmer by 1 K raises the base temperature by 1 K, and space heat goes by the
 * degree days; a mild or cold winter is the one met 1 year in 10 on that side.
 */
export function changeDemand(
  before: { readonly space: Reckoned; readonly water: Reckoned; readonly baseC: number; readonly roomC: number },
  whatIf: WhatIf | undefined,
  year: TypicalYear,
  reference: Reference,
): Changed {
  const roomC = whatIf?.roomC ?? before.roomC;
  const baseC = before.baseC + (roomC - before.roomC);
  const waterShare = whatIf?.waterShare ?? 1;
  const byRoom = roomC === before.roomC ? 1 : ofRoom(year, before.baseC, baseC);
  const winter = whatIf?.winter ?? 'typical';
  const side = winter === 'cold' ? 1 : winter === 'mild' ? -1 : 0;
  const byWinter = Math.max(0, 1 + side * TEN_PERCENT * reference.spread.winter.value);
  const inputs = [
    ...(byRoom === 1 ? [] : [changeInput(tell('room-at', { roomC }), byRoom, tell('degree-days-to-base', { baseC }))]),
    ...(byWinter === 1
      ? []
      : [changeInput(tell(side > 0 ? 'cold-winter' : 'mild-winter'), byWinter, reference.spread.winter.source)]),
  ];
  return {
    space: scale(before.space, byRoom * byWinter, inputs),
    water: scale(before.water, waterShare, [changeInput(tell('water-against-today'), waterShare, tell('what-if'))]),
    baseC,
    roomC,
    waterShare,
  };
}

function ofRoom(year: TypicalYear, fromC: number, toC: number): number {
  const before = degreeDaysFromMeans(year.dailyMeanC, fromC);
  return before > 0 ? degreeDaysFromMeans(year.dailyMeanC, toC) / before : 1;
}

const changeInput = (name: Told, value: number, origin: Wording): WorkingInput => ({
  name,
  value,
  unit: tell('times'),
  grade: 'assumed',
  origin,
});

function scale(reckoned: Reckoned, share: number, inputs: readonly WorkingInput[]): Reckoned {
  if (share === 1) return reckoned;
  const value = reckoned.value * share;
  const today: WorkingInput = {
    name: tell('as-it-is'),
    value: reckoned.value,
    unit: tell('kwh-a-year'),
    grade: reckoned.grade,
    origin: tell('sum-below'),
  };
  return {
    ...reckoned,
    value,
    error: reckoned.error * share,
    working: {
      title: tell('what-if-of', { title: reckoned.working.title }),
      formula: tell('as-it-is-by-change'),
      inputs: [today, ...inputs],
      result: { value, unit: tell('kwh-a-year') },
      steps: [reckoned.working],
    },
  };
}
