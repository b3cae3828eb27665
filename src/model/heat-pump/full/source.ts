/** Temperature at which heat enters the machine, day by day: the ground less what is drawn from it, or as typed. */
import { readSurface, type Surface } from './surface.ts';

/** Where the heat comes from. */
export type Source =
  | { readonly kind: 'air' }
  /** Brine temperatures somebody typed or measured, one a day, °C. */
  | { readonly kind: 'typed'; readonly byDayC: Float64Array }
  | {
      readonly kind: 'ground';
      /** Ground that nothing is drawn from, one a day, °C. */
      readonly undisturbedC: Float64Array;
      /** Entering brine below that after a long time at the design heat, K. */
      readonly dropK: number;
    };

/** Share of the drop that follows the day's load (pipe, grout, brine); the rest is the ground about it. A judgement. */
const PROMPT_SHARE = 0.4;
/** Days over which the ground about the pipes follows the load. A judgement. */
const GROUND_DAYS = 30;
/** Days before New Year that the reckoning starts with, so that January finds a ground already used. */
const LEAD_DAYS = 90;

export interface DayNeed {
  /** Heat asked of the machine, one a day, kWh. */
  readonly spaceKWh: Float64Array;
  readonly waterKWh: Float64Array;
  readonly spaceFlowC: Float64Array;
  readonly waterFlowC: number;
  /** Heat drawn from the ground in a day at the design heat, kWh. */
  readonly designDrawKWh: number;
}

/**
 * Temperature of the brine entering the machine [°C], one a day.
 * T = undisturbed − D (0.4 x + 0.6 s), x the day's draw over that of a day at the design heat, s its mean over about
 * thirty days with older days counting less (ds = (x − s)/30 a day); the draw is heat × (1 − 1/COP).
 * Valid for arrays that recover over a year. Method: a lumped array with two time scales; shares and days are judgements.
 */
export function brineByDay(source: Extract<Source, { kind: 'ground' }>, need: DayNeed, perHeat: Surface): Float64Array {
  const { undisturbedC, dropK } = source;
  const days = undisturbedC.length;
  const brineC = new Float64Array(days);
  let drawnShare = 0;
  let enteringC = undisturbedC[0]!;
  for (let step = -Math.min(LEAD_DAYS, days); step < days; step++) {
    const day = step < 0 ? step + days : step;
    const drawn =
      need.spaceKWh[day]! * (1 - readSurface(perHeat, enteringC, need.spaceFlowC[day]!)) +
      need.waterKWh[day]! * (1 - readSurface(perHeat, enteringC, need.waterFlowC));
    const share = need.designDrawKWh > 0 ? drawn / need.designDrawKWh : 0;
    drawnShare += (share - drawnShare) / GROUND_DAYS;
    enteringC = undisturbedC[day]! - dropK * (PROMPT_SHARE * share + (1 - PROMPT_SHARE) * drawnShare);
    brineC[day] = enteringC;
  }
  return brineC;
}
