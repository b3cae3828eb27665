/** What a bill costs, as a function of everything that can differ from the written estimate. */
import type { BillCause } from '../shapes/bill-check.ts';
import type { Told, Wording } from '../shapes/told.ts';
import type { Grade, WorkingInput } from '../shapes/working.ts';
import type { EstimateForDays } from './estimate-for-days.ts';

/** All that the cost hangs on. As estimated it stands in `estimatedState`; a lever changes some of it. */
export interface CostState {
  /** Degree days beyond those of the typical year, K·day. */
  readonly moreDegreeDays: number;
  /** Heat for the rooms by degree day against the written estimate, 1 = the same. */
  readonly heatShare: number;
  /** Units for the rooms at the estimated factor that no degree day explains, kWh. */
  readonly spaceMoreKWh: number;
  /** Units for hot water at the estimated factor beyond the written estimate, kWh. */
  readonly waterMoreKWh: number;
  /** Factor against the written estimate, 1 = the same. */
  readonly efficiencyShare: number;
  readonly backupKWh: number;
  readonly otherKWh: number;
  /** Used from panels at home, and not bought. */
  readonly ownUseKWh: number;
  readonly meteringKWh: number;
  readonly restKWh: number;
  /** Prices, and the share of the units bought at each. */
  readonly pencePerKWh: readonly number[];
  readonly rateShares: readonly number[];
  /** Level of those prices, 1 = as they stand. */
  readonly priceShare: number;
  readonly standingPence: number;
}

/** One cause, or several joined: what it changes of the state, and what is known about it. */
export interface Lever {
  readonly cause: BillCause;
  readonly joined?: readonly BillCause[];
  readonly to: Partial<CostState>;
  readonly grade: Grade;
  readonly title: Told;
  readonly inputs: readonly WorkingInput[];
}

export function estimatedState(
  prices: Pick<CostState, 'pencePerKWh' | 'rateShares'> & Partial<Pick<CostState, 'priceShare'>>,
  standingPence: number,
): CostState {
  return {
    priceShare: 1,
    moreDegreeDays: 0,
    heatShare: 1,
    spaceMoreKWh: 0,
    waterMoreKWh: 0,
    efficiencyShare: 1,
    backupKWh: 0,
    otherKWh: 0,
    ownUseKWh: 0,
    meteringKWh: 0,
    restKWh: 0,
    ...prices,
    standingPence,
  };
}

/** Units for the rooms [kWh] in weather with so many more degree days, all else as estimated; never below zero. */
export function spaceInWeather(estimated: EstimateForDays, moreDegreeDays: number): number {
  return Math.max(0, estimated.spaceKWh + estimated.kWhPerDegreeDay * moreDegreeDays);
}

/**
 * Cost [pence] = (((rooms in this weather × heat share + more rooms) + (water + more water)) / efficiency share
 * + pumps and standby + backup + other − made at home + metering + rest) × mean price × level of prices + standing charge.
 */
export function costOf(estimated: EstimateForDays, state: CostState): number {
  const space = spaceInWeather(estimated, state.moreDegreeDays) * state.heatShare + state.spaceMoreKWh;
  const water = estimated.waterKWh + state.waterMoreKWh;
  const extras = estimated.otherKWh - estimated.waterKWh;
  const units =
    (space + water) / state.efficiencyShare +
    extras +
    state.backupKWh +
    state.otherKWh -
    state.ownUseKWh +
    state.meteringKWh +
    state.restKWh;
  let price = 0;
  for (let i = 0; i < state.pencePerKWh.length; i++) price += state.pencePerKWh[i]! * state.rateShares[i]!;
  return units * price * state.priceShare + state.standingPence;
}

/** One line of a working. */
export const workingLine = (
  name: Told,
  value: number | string,
  unit: Wording,
  grade: Grade,
  origin: Wording,
): WorkingInput => ({ name, value, unit, grade, origin });
