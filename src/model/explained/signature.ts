/** The line through a record, and what the meter should show by it. */
import type { Demand, Signature } from '../shapes/appraisal.ts';
import type { Working, WorkingInput } from '../shapes/working.ts';

/** Slope [kWh a day for each degree], base and fit of the line. */
export function signatureWorking(signature: Signature, change: Demand['change']): Working {
  const { slopeKWhPerKDay, slopeStandardError, basePerDayKWh, baseC, count, r2, cvRmse, from, to } = signature;
  const origin = `${count} ${signature.period === 'period' ? 'bills' : `${signature.period}s`} from ${from} to ${to}`;
  const line = (name: string, value: number, unit?: string): WorkingInput => ({
    name,
    value,
    ...(unit === undefined ? {} : { unit }),
    grade: 'measured',
    origin,
  });
  return {
    title: 'Each degree colder',
    formula: 'use a day = base + slope × (base temperature − outdoor temperature), the line of least squares',
    inputs: [
      line('Base temperature: no heating above it', baseC, '°C'),
      line('Base, used in any weather', basePerDayKWh, 'kWh'),
      line('Slope, one standard error', slopeStandardError, 'kWh'),
      line('Ups and downs that the line explains', r2, 'share'),
      line('A single day or bill is missed by', cvRmse, 'share'),
      ...(change
        ? [
            line(`Slope before ${change.on}`, change.before.slopeKWhPerKDay, 'kWh'),
            line(`Slope after ${change.on}`, change.after.slopeKWhPerKDay, 'kWh'),
          ]
        : []),
    ],
    result: { value: slopeKWhPerKDay, unit: 'kWh' },
    source: 'three-parameter energy signature by ordinary least squares',
  };
}

/** What the meter should show [kWh] in a mild, a typical and a cold year. */
export function yearsAheadWorking({ yearsAhead }: Pick<Demand, 'yearsAhead'>): Working[] {
  const typical = yearsAhead?.find(({ winter }) => winter === 'typical');
  if (!yearsAhead || !typical) return [];
  return [
    {
      title: 'What the meter should show in a typical year',
      formula: 'base × days + slope × degree days of the year; the range is that of a single year',
      inputs: yearsAhead.flatMap(({ winter, kWh, low, high, degreeDays }): WorkingInput[] =>
        (
          [
            [`${winter} year`, kWh],
            [`${winter} year, low`, low],
            [`${winter} year, high`, high],
          ] as const
        ).map(([name, value]) => ({
          name,
          value,
          unit: 'kWh',
          grade: 'estimated',
          origin: `line of the record, ${Math.round(degreeDays)} degree days`,
        })),
      ),
      result: { value: typical.kWh, unit: 'kWh' },
    },
  ];
}

/** The typed heat loss as a coefficient beside the record's [W/K]. */
export function heatLossWorkings({ recordHeatLoss, typedHeatLossWPerK }: Demand): Working[] {
  if (!recordHeatLoss) return [];
  const { low, high, value, grade, working } = recordHeatLoss;
  const line = (name: string, of: number, origin: string): WorkingInput => ({
    name,
    value: of,
    unit: 'W/K',
    grade,
    origin,
  });
  return [
    {
      title: 'Heat loss for each degree colder',
      formula: 'heat loss of the record beside the typed heat loss / the difference in temperature it was given for',
      inputs: [
        line('By the record, low', low, '10 % point'),
        line('By the record, high', high, '90 % point'),
        ...(typedHeatLossWPerK === undefined ? [] : [line('Typed', typedHeatLossWPerK, 'heat loss as typed')]),
      ],
      result: { value, unit: 'W/K' },
      steps: [working],
    },
  ];
}
