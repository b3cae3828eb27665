/** What a written estimate, a bill check and the months since come to, told from what was kept. */

import type { BillCheck, FollowedMonth } from '../../model/shapes/bill-check.ts';
import type { Grade } from '../../model/shapes/working.ts';
import { inWords, type Said, type Shown } from '../say-told.ts';
import type { ShownInput, ShownWorking } from '../working.ts';

/** The cost of a year [p] as it was estimated, with its range. */
export function writtenEstimateWorking(kept: {
  readonly number: number;
  readonly madeOn: string;
  readonly heatPumpPence: number;
  readonly lowPence: number;
  readonly highPence: number;
}): ShownWorking {
  const origin = inWords('saved with estimate no. {number} on {date}', {
    number: String(kept.number),
    date: kept.madeOn.slice(0, 10),
  });
  const line = (name: Said, value: number): ShownInput => ({ name, value, unit: 'p', grade: 'estimated', origin });
  return {
    title: inWords('Estimate no. {number}', { number: String(kept.number) }),
    formula: inWords('the cost of a year as it was on that day; the estimate stores its full sum'),
    inputs: [
      line(inWords('Low, 1 in 10 homes below'), kept.lowPence),
      line(inWords('High, 1 in 10 homes above'), kept.highPence),
    ],
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
): ShownWorking {
  const { actualPence, expected, input } = check;
  const ofBill = inWords('bill of {from} to {to}', { from: input.from, to: input.to });
  const line = (name: Said, value: number, grade: Grade, origin: Shown): ShownInput => ({
    name,
    value,
    unit: 'p',
    grade,
    origin,
  });
  return {
    title: inWords('The bill less the estimate for its days'),
    formula: inWords('what the bill charges for these kWh − what the estimate says for exactly these days'),
    inputs: [
      line(inWords('The bill'), actualPence, input.readings === 'actual' ? 'measured' : 'estimated', ofBill),
      line(
        inWords('The estimate for these days'),
        of.estimatedPence,
        'estimated',
        inWords('months of the estimated year, by their days'),
      ),
      line(
        inWords('An even share of the year'),
        check.estimatedPence,
        'estimated',
        inWords('estimated year × days / 365'),
      ),
      line(
        inWords('At this price and in this weather'),
        expected.value,
        'estimated',
        inWords('the estimate at the bill’s price and weather'),
      ),
      line(inWords('The same, low'), expected.low, 'estimated', inWords('10 % point')),
      line(inWords('The same, high'), expected.high, 'estimated', inWords('90 % point')),
      line(
        inWords('Beyond the range'),
        Math.max(actualPence - expected.high, expected.low - actualPence, 0),
        'estimated',
        inWords('bill − range'),
      ),
      ...check.parts.map((part) => line({ said: of.partName(part) }, part.pence, part.grade, part.working.title)),
      line(
        inWords('Left after price and weather'),
        of.leftPence,
        'estimated',
        inWords('parts that neither of them explains'),
      ),
      ...(check.standing
        ? [line(inWords('Standing charge in it'), check.standing.billedPence, 'measured', ofBill)]
        : []),
    ],
    result: { value: actualPence - of.estimatedPence, unit: 'p' },
    steps: check.parts.map(({ working }) => working),
  };
}

/** Month by month since the estimate [kWh]: estimated, expected in the weather that came, range, meter; and the gap. */
export function followingWorking(months: readonly FollowedMonth[], pencePerKWh: number): ShownWorking {
  const gapKWh = months.at(-1)?.gapSoFarKWh ?? 0;
  const sum = (of: (month: FollowedMonth) => number | null) =>
    months.reduce((total, month) => (month.actualKWh === null ? total : total + (of(month) ?? 0)), 0);
  return {
    title: inWords('kWh since the estimate, beside what the weather called for'),
    formula: inWords('kWh on the meter − kWh expected in the weather that came, month after month'),
    inputs: [
      ...months.flatMap((one): ShownInput[] => {
        const weather = inWords(
          one.weatherKnown ? 'weather of the month' : 'a typical month; its weather is not known',
        );
        const line = (what: Said, value: number, grade: Grade, origin: Said): ShownInput => ({
          name: { said: `${one.month}, ${what.said}` },
          value,
          unit: 'kWh',
          grade,
          origin,
        });
        return [
          line(inWords('estimated'), one.estimatedKWh, 'estimated', inWords('the estimate, by its days')),
          line(inWords('expected'), one.expectedKWh, 'estimated', weather),
          line(inWords('low'), one.lowKWh, 'estimated', inWords('10 % point')),
          line(inWords('high'), one.highKWh, 'estimated', inWords('90 % point')),
          ...(one.actualKWh === null
            ? []
            : [line(inWords('meter'), one.actualKWh, 'measured' as const, inWords('the machine’s own meter'))]),
          line(inWords('gap so far'), one.gapSoFarKWh, 'estimated', inWords('meter − expected since the first month')),
        ];
      }),
      {
        name: inWords('Meter, all these months'),
        value: sum((m) => m.actualKWh),
        unit: 'kWh',
        grade: 'measured',
        origin: inWords('lines above'),
      },
      {
        name: inWords('Expected, all these months'),
        value: sum((m) => m.expectedKWh),
        unit: 'kWh',
        grade: 'estimated',
        origin: inWords('lines above'),
      },
      {
        name: inWords('Price per kWh'),
        value: pencePerKWh,
        unit: 'p/kWh',
        grade: 'estimated',
        origin: inWords('the bill, else the estimate'),
      },
      {
        name: inWords('The gap in money'),
        value: gapKWh * pencePerKWh,
        unit: 'p',
        grade: 'estimated',
        origin: inWords('gap × price'),
      },
    ],
    result: { value: gapKWh, unit: 'kWh' },
  };
}
