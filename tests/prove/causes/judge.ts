/** Which causes a finding names, and whether they are true of a made home. */
import type { Finding, FindingCode, LikelyCause, OpenCause } from '../../../src/model/shapes/finding.ts';
import type { CauseCase, Truth } from './case.ts';

type Cause = FindingCode | LikelyCause;
/** What is true of a made home. */
export type Judged = Pick<CauseCase, 'effects' | 'truths' | 'crossing' | 'nobody' | 'dayOf'>;

/** What a finding names: one thing, or several as one question. */
export const causesOf = ({ code, may }: Finding): readonly Cause[] => may ?? [code];

/** Of the days that a finding calls empty, so many must have had nobody at home. */
const NOBODY_SHARE = 0.7;

/** Whether a finding names a cause of the home; `beside`: the crossing's own doing and holidays count as true too. */
export function isTrue(finding: Finding, made: Judged, beside: boolean): boolean {
  if (beside && finding.code === 'home-empty') {
    const days = made.nobody.subarray(made.dayOf(finding.from), made.dayOf(finding.to));
    if (days.reduce((sum, one) => sum + one, 0) >= NOBODY_SHARE * days.length) return true;
  }
  return causesOf(finding).some((cause) => isTrueOf(cause, made, beside));
}

function isTrueOf(cause: Cause, made: Judged, beside: boolean): boolean {
  const { effects, truths, crossing } = made;
  const { heater, coldHeater, pasteurise, vehicle, baseLoad, warmer, moreHeat, moreWater, otherUse, empty } = effects;
  const isCrossing = (of: CauseCase['crossing'], truth: Truth) => !beside && crossing === of && !truths.includes(truth);
  const isDaily = pasteurise?.everyDays === 1;
  const isEmpty = empty !== undefined && !isCrossing('empty', 'newly occupied');
  const isOccupied = isEmpty && (beside || truths.includes('newly occupied'));
  switch (cause) {
    case 'heater':
    case 'heater-running':
      return heater !== undefined || coldHeater !== undefined || isDaily;
    case 'weekly-pasteurisation':
      return pasteurise?.everyDays === 7;
    case 'backup-heater':
    case 'backup-in-cold':
      return coldHeater !== undefined;
    case 'water-often':
      return effects.waterOften ?? false;
    case 'summer-heating':
      return effects.summerHeat !== undefined;
    case 'night-setback':
      return effects.setback ?? false;
    case 'base-load':
    case 'base-load-rose':
      return baseLoad !== undefined || isOccupied;
    case 'large-load':
      return vehicle !== undefined && !isCrossing('car', 'vehicle');
    case 'dear-hours':
      return effects.dearHours !== undefined;
    case 'machine-works-less':
      return effects.worse !== undefined;
    case 'more-heat':
      return moreHeat !== undefined || isOccupied;
    case 'rooms-warmer':
      return warmer !== undefined || isOccupied;
    case 'more-water':
      return moreWater !== undefined || isOccupied;
    case 'other-use':
      return otherUse !== undefined || isOccupied;
    case 'meter-scale':
    case 'meter-wrong':
      return effects.meter !== undefined;
    case 'own-generation':
      return effects.solar !== undefined && !isCrossing('solar', 'own generation');
    case 'home-empty':
      return isEmpty;
    case 'newly-occupied':
      return isOccupied;
    // What begins and ends within the record, or lowers use, was less on one side of a day.
    case 'heater-off':
      return heater !== undefined;
    case 'less-heat':
    case 'less-water':
    case 'less-other-use':
      return (
        isEmpty ||
        (cause === 'less-heat' && (effects.setback === true || baseLoad !== undefined || otherUse !== undefined))
      );
    case 'behaviour-changed':
    case 'plug-in-heaters':
    case 'machine-works-better':
    case 'registers-swapped':
    case 'estimate-corrected':
      return false;
  }
}

/** Whether a cause that nothing has named is said to be one that the readings cannot rule out; what heats once a week is a heater. */
export const isLeftOpen = (open: readonly OpenCause[], made: Judged): boolean =>
  open.some((cause) => isTrueOf(cause, made, false) || (cause === 'heater' && made.effects.pasteurise !== undefined));

/** Upper end of the one-sided 95 % interval of a share seen `times` of `n` (Clopper and Pearson, by halving). */
export function upperShare(times: number, n: number): number {
  if (times >= n) return 1;
  let [low, high] = [times / n, 1];
  for (let i = 0; i < 50; i++) {
    const share = (low + high) / 2;
    if (chanceOfAtMost(times, n, share) > 0.05) low = share;
    else high = share;
  }
  return high;
}

function chanceOfAtMost(times: number, n: number, share: number): number {
  let term = (1 - share) ** n;
  let sum = term;
  for (let k = 1; k <= times; k++) {
    term *= ((n - k + 1) / k) * (share / (1 - share));
    sum += term;
  }
  return sum;
}
