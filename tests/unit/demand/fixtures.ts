/** Households and records for the demand tests, made to measure. */
import { toCivilDate, toDayNumber } from '../../../src/model/calendar/civil.ts';
import { typicalOn } from '../../../src/model/demand/record-weather.ts';
import type { EvidencePeriod, Series } from '../../../src/model/shapes/evidence.ts';
import { emptyHousehold, type Household } from '../../../src/model/shapes/household.ts';
import { type TypicalYear, typicalYear } from '../../../src/model/year/typical-year.ts';
import { reference } from '../../../src/reference/index.ts';

export const year: TypicalYear = typicalYear(reference.regions[0]!, 2025, 'Europe/London');

export const typed = <T>(value: T, grade: 'measured' | 'estimated' | 'assumed' = 'estimated') => ({
  value,
  grade,
  origin: 'typed for a test',
});

/** A household with parts of it replaced. */
export function household(parts: Partial<Household> = {}): Household {
  return { ...emptyHousehold('test', 'Test'), ...parts };
}

const blank = { evidenceId: 'e', present: 0, expected: 0, estimatedCount: 0, total: 0 };

export function daySeries(
  id: string,
  carrier: Series['carrier'],
  role: Series['role'],
  first: string,
  values: (number | null)[],
): Series {
  const to = toCivilDate(toDayNumber(first) + values.length);
  return { ...blank, id, name: id, carrier, role, resolution: 'day', from: first, to, days: { first, values } };
}

export function periodSeries(id: string, carrier: Series['carrier'], periods: EvidencePeriod[]): Series {
  const from = periods[0]!.from;
  const to = periods.at(-1)!.to;
  return { ...blank, id, name: id, carrier, role: 'import', resolution: 'period', from, to, periods };
}

/** Days of a year's weather that is the typical one, plus a wobble, with the use that a known signature gives. */
export function madeRecord(options: {
  readonly first: string;
  readonly days: number;
  readonly base: number;
  readonly slope: number;
  readonly baseC: number;
  readonly noise?: number;
  readonly warmerK?: number;
}): { gas: Series; outdoor: Series; temperatures: number[]; use: number[] } {
  const start = toDayNumber(options.first);
  let state = 7;
  const even = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296 - 0.5;
  };
  const temperatures: number[] = [];
  const use: number[] = [];
  for (let i = 0; i < options.days; i++) {
    const outdoor = typicalOn(year, start + i) + (options.warmerK ?? 0) + 4 * even();
    temperatures.push(outdoor);
    const steady = options.base + options.slope * Math.max(0, options.baseC - outdoor);
    use.push(Math.max(0, steady + (options.noise ?? 0) * 3.46 * even()));
  }
  return {
    gas: daySeries('gas', 'gas', 'import', options.first, use),
    outdoor: daySeries('weather', 'outdoor-temperature', 'weather', options.first, temperatures),
    temperatures,
    use,
  };
}
