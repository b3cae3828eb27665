/** What the record leads one to expect: its meter in a mild, a typical and a cold year, and the home's heat loss. */
import type { Figure, YearAhead } from '../shapes/appraisal.ts';
import { tell } from '../shapes/told.ts';
import type { Grade } from '../shapes/working.ts';
import type { TypicalYear } from '../year/typical-year.ts';
import { TEN_PERCENT } from './demand-assumptions.ts';
import { rangeOf, together } from './figure.ts';
import type { InformedFit } from './informed-fit.ts';
import { type Habits, habitsOfRecord, predictSpan } from './predict-span.ts';
import type { Efficiency } from './present-efficiency.ts';
import type { FittedSignature } from './signature.ts';
import { yearDays } from './year-days.ts';

/** Sun, wind and rooms that follow the weather bend the slope beside the loss it stands for. Common practice, no source. */
const BENT_SHARE = 0.1;

export interface RecordOutlook {
  readonly informed: InformedFit;
  readonly plain: FittedSignature;
  readonly habits: Habits;
  /** Relative standard error of a typical year that stands in for the record's weather; 0 with its own. */
  readonly weatherShare: number;
}

/**
 * Use as metered [kWh] in a year met 1 time in 10 on the mild side, a typical one, and one met 1 time in 10 on the cold
 * side, with the range of a single such year. Degree days × (1 ∓ 1.2816 × spread of winters); the base stays.
 */
export function yearsAhead(outlook: RecordOutlook, year: TypicalYear, winterSpread: number): YearAhead[] {
  const { informed, plain, habits, weatherShare } = outlook;
  const typical = yearDays(year);
  return (['mild', 'typical', 'cold'] as const).map((winter) => {
    const side = winter === 'cold' ? 1 : winter === 'mild' ? -1 : 0;
    const times = Math.max(0, 1 + side * TEN_PERCENT * winterSpread);
    const days = { ...typical, degreeDays: (baseC: number) => times * typical.degreeDays(baseC) };
    const { kWh, errorKWh } = predictSpan(informed, plain, days, habits);
    const error = together(errorKWh, kWh * weatherShare);
    return { winter, degreeDays: days.degreeDays(informed.baseC), kWh, ...rangeOf(kWh, error) };
  });
}

/**
 * Heat loss coefficient that the record shows [W/K] = slope × seasonal efficiency × 1000/24, with its 10 and 90 % points.
 * Valid for a record that heats. It is the home as lived in: rooms left cool make it smaller than a survey's. Source: energy signature, any text.
 */
export function heatLossOfRecord(outlook: RecordOutlook, efficiency: Efficiency, grade: Grade): Figure {
  const { informed, habits, weatherShare } = outlook;
  const slope = informed.lines.reduce((sum, l) => sum + l.weight * l.line[2], 0);
  const square = informed.lines.reduce((sum, l) => sum + l.weight * (l.line[2] ** 2 + l.covariance[2]![2]!), 0);
  const ofFit = Math.sqrt(Math.max(0, square - slope ** 2)) / slope;
  const share = together(ofFit, efficiency.error, habitsOfRecord(habits), weatherShare, BENT_SHARE);
  const value = (slope * efficiency.value * 1000) / 24;
  return {
    value,
    ...rangeOf(value, share * value),
    unit: 'W/K',
    grade,
    working: {
      title: tell('heat-loss-by-record'),
      formula: tell('slope-as-heat-loss'),
      inputs: [
        {
          name: tell('slope'),
          value: slope,
          unit: tell('kwh-a-kelvin-and-day'),
          grade,
          origin: tell('all-bases-weighed'),
        },
        {
          name: tell('room-efficiency'),
          value: efficiency.value,
          unit: tell('kwh-of-heat-a-kwh'),
          grade: efficiency.grade,
          origin: efficiency.origin,
        },
      ],
      result: { value, unit: 'W/K' },
      source: tell('least-squares'),
    },
  };
}
