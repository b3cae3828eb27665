/** What a written estimate, a bill check and the months since come to, told from what was kept. */

import type { BillCheck, FollowedMonth } from '../shapes/bill-check.ts';
import type { Working, WorkingInput } from '../shapes/working.ts';

/** The cost of a year [p] as it was estimated, with its range. */
export function writtenEstimateWorking(kept: {
  readonly number: number;
  readonly madeOn: string;
  readonly heatPumpPence: number;
  readonly lowPence: number;
  readonly highPence: number;
}): Working {
  const origin = `kept with promise ${kept.number} on ${kept.madeOn.slice(0, 10)}`;
  const line = (name: string, value: number): WorkingInput => ({ name, value, unit: 'p', grade: 'estimated', origin });
  return {
    title: `Promise ${kept.number}`,
    formula: 'the cost of a year as it stood on that day; the promise keeps its whole sum',
    inputs: [line('Low, 1 case in 10 below', kept.lowPence), line('High, 1 case in 10 above', kept.highPence)],
    result: { value: kept.heatPumpPence, unit: 'p' },
  };
}

/** A bill against its estimate [p]; `estimatedPence` is that of exactly these days, `leftPence` what stays put right. */
export function billWorking(
  check: Pick<BillCheck, 'actualPence' | 'expected' | 'estimatedPence' | 'parts' | 'input' | 'standing'>,
  of: {
    readonly estimatedPence: number;
    readonly leftPence: number;
    readonly partName: (part: BillCheck['parts'][number]) => string;
  },
): Working {
  const { actualPence, expected, input } = check;
  const days = `${input.from} to ${input.to}`;
  const line = (name: string, value: number, grade: WorkingInput['grade'], origin: string): WorkingInput => ({
    name,
    value,
    unit: 'p',
    grade,
    origin,
  });
  return {
    title: 'The bill less the promise for its days',
    formula: 'what the bill charges for these units − what the promise says for exactly these days',
    inputs: [
      line('The bill', actualPence, input.readings === 'actual' ? 'measured' : 'estimated', `bill of ${days}`),
      line('The promise for these days', of.estimatedPence, 'estimated', 'months of the promised year, by their days'),
      line('An even slice of the year', check.estimatedPence, 'estimated', 'promised year × days / 365'),
      line(
        'Put right for price and weather',
        expected.value,
        'estimated',
        'the promise at the bill’s price and weather',
      ),
      line('The same, low', expected.low, 'estimated', '10 % point'),
      line('The same, high', expected.high, 'estimated', '90 % point'),
      line(
        'Beyond the range',
        Math.max(actualPence - expected.high, expected.low - actualPence, 0),
        'estimated',
        'bill − range',
      ),
      ...check.parts.map((part) => line(of.partName(part), part.pence, part.grade, part.working.title)),
      line(
        'Left once price and weather are put right',
        of.leftPence,
        'estimated',
        'parts that neither of them explains',
      ),
      ...(check.standing
        ? [line('Standing charge in it', check.standing.billedPence, 'measured', `bill of ${days}`)]
        : []),
    ],
    result: { value: actualPence - of.estimatedPence, unit: 'p' },
    steps: check.parts.map(({ working }) => working),
  };
}

/** Month by month since the estimate [kWh]: estimated, expected in the weather that came, range, meter; and the gap. */
export function followingWorking(months: readonly FollowedMonth[], pencePerKWh: number): Working {
  const gapKWh = months.at(-1)?.gapSoFarKWh ?? 0;
  const sum = (of: (month: FollowedMonth) => number | null) =>
    months.reduce((total, month) => (month.actualKWh === null ? total : total + (of(month) ?? 0)), 0);
  return {
    title: 'Units since the promise, against what the weather asked for',
    formula: 'units of the meter − units expected in the weather that came, month after month',
    inputs: [
      ...months.flatMap((one): WorkingInput[] => {
        const weather = one.weatherKnown ? 'weather of the month' : 'a typical month; its weather is not known';
        const line = (what: string, value: number, grade: WorkingInput['grade'], origin: string): WorkingInput => ({
          name: `${one.month}, ${what}`,
          value,
          unit: 'kWh',
          grade,
          origin,
        });
        return [
          line('promised', one.estimatedKWh, 'estimated', 'the promise, by its days'),
          line('expected', one.expectedKWh, 'estimated', weather),
          line('low', one.lowKWh, 'estimated', '10 % point'),
          line('high', one.highKWh, 'estimated', '90 % point'),
          ...(one.actualKWh === null
            ? []
            : [line('meter', one.actualKWh, 'measured' as const, 'the machine’s own meter')]),
          line('gap so far', one.gapSoFarKWh, 'estimated', 'meter − expected since the first month'),
        ];
      }),
      {
        name: 'Meter, all these months',
        value: sum((m) => m.actualKWh),
        unit: 'kWh',
        grade: 'measured',
        origin: 'lines above',
      },
      {
        name: 'Expected, all these months',
        value: sum((m) => m.expectedKWh),
        unit: 'kWh',
        grade: 'estimated',
        origin: 'lines above',
      },
      {
        name: 'Price of a unit',
        value: pencePerKWh,
        unit: 'p/kWh',
        grade: 'estimated',
        origin: 'the bill, else the promise',
      },
      { name: 'The gap in money', value: gapKWh * pencePerKWh, unit: 'p', grade: 'estimated', origin: 'gap × price' },
    ],
    result: { value: gapKWh, unit: 'kWh' },
  };
}
