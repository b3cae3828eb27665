/** Which causes a finding names, and whether they are true of a made home. */
import type { Finding } from '../../../src/model/shapes/finding.ts';
import type { CauseCase } from './case.ts';

type Cause =
  | 'heater'
  | 'weekly hot tank'
  | 'water often'
  | 'setback'
  | 'base load'
  | 'large load'
  | 'dear hours'
  | 'rooms'
  | 'other than the cold'
  | 'bill reading'
  | 'registers';

export function causesOf({ code, seen }: Finding): readonly Cause[] {
  if (code === 'behaviour-changed') return [seen.kind === 'with-the-cold' ? 'rooms' : 'other than the cold'];
  return [
    (
      {
        'heater-running': 'heater',
        'weekly-pasteurisation': 'weekly hot tank',
        'water-often': 'water often',
        'night-setback': 'setback',
        'base-load-rose': 'base load',
        'large-load': 'large load',
        'dear-hours': 'dear hours',
        'estimate-corrected': 'bill reading',
        'registers-swapped': 'registers',
      } as const
    )[code],
  ];
}

/** `beside`: the crossing's own doing counts as true too. */
export function isTrueOf(cause: Cause, { effects, truths, crossing }: CauseCase, beside: boolean): boolean {
  const { heater, coldHeater, pasteurise, vehicle, baseLoad, warmer, moreHeat, moreWater, otherUse, empty } = effects;
  const isCrossed = (of: CauseCase['crossing']) => !beside && crossing === of;
  switch (cause) {
    case 'heater':
      return heater !== undefined || coldHeater !== undefined || pasteurise?.everyDays === 1;
    case 'weekly hot tank':
      return pasteurise?.everyDays === 7;
    case 'water often':
      return effects.waterOften ?? false;
    case 'setback':
      return effects.setback ?? false;
    case 'base load':
      return baseLoad !== undefined || (empty !== undefined && !isCrossed('empty'));
    case 'large load':
      return vehicle !== undefined && !(isCrossed('car') && !truths.includes('vehicle'));
    case 'dear hours':
      return effects.dearHours !== undefined;
    case 'rooms':
      return warmer !== undefined || moreHeat !== undefined;
    case 'other than the cold':
      return moreWater !== undefined || otherUse !== undefined || (empty !== undefined && !isCrossed('empty'));
    case 'bill reading':
      return truths.includes('reading carried over');
    case 'registers':
      return false;
  }
}

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
