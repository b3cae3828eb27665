/** The line through a record, and what the meter should show by it. */
import type { Demand, Signature } from '../../model/shapes/appraisal.ts';
import { phrase } from '../say.ts';
import { inWords, type Said } from '../say-told.ts';
import type { ShownInput, ShownWorking } from '../working.ts';

const SPANS: Readonly<Record<Signature['period'], string>> = {
  day: phrase('{count, number} days from {from} to {to}'),
  month: phrase('{count, number} months from {from} to {to}'),
  period: phrase('{count, number} bills from {from} to {to}'),
};
const WINTERS = { mild: phrase('mild year'), typical: phrase('typical year'), cold: phrase('cold year') };
const WINTERS_LOW = {
  mild: phrase('mild year, low'),
  typical: phrase('typical year, low'),
  cold: phrase('cold year, low'),
};
const WINTERS_HIGH = {
  mild: phrase('mild year, high'),
  typical: phrase('typical year, high'),
  cold: phrase('cold year, high'),
};

/** Slope [kWh a day for each degree], base and fit of the line. */
export function signatureWorking(signature: Signature, change: Demand['change']): ShownWorking {
  const { slopeKWhPerKDay, slopeStandardError, basePerDayKWh, baseC, count, r2, cvRmse, from, to } = signature;
  const origin = inWords(SPANS[signature.period], { count, from, to });
  const line = (name: Said, value: number, unit?: string): ShownInput => ({
    name,
    value,
    ...(unit === undefined ? {} : { unit }),
    grade: 'measured',
    origin,
  });
  return {
    title: inWords('Each degree colder'),
    formula: inWords('use a day = base + slope × (base temperature − outdoor temperature), the line of least squares'),
    inputs: [
      line(inWords('Base temperature: no heating above it'), baseC, '°C'),
      line(inWords('Base, used in any weather'), basePerDayKWh, 'kWh'),
      line(inWords('Slope, one standard error'), slopeStandardError, 'kWh'),
      line(inWords('Ups and downs that the line explains'), r2, 'share'),
      line(inWords('A single day or bill is missed by'), cvRmse, 'share'),
      ...(change
        ? [
            line(inWords('Slope before {date}', { date: change.on }), change.before.slopeKWhPerKDay, 'kWh'),
            line(inWords('Slope after {date}', { date: change.on }), change.after.slopeKWhPerKDay, 'kWh'),
          ]
        : []),
    ],
    result: { value: slopeKWhPerKDay, unit: 'kWh' },
    source: inWords('three-parameter energy signature by ordinary least squares'),
  };
}

/** What the meter should show [kWh] in a mild, a typical and a cold year. */
export function yearsAheadWorking({ yearsAhead }: Pick<Demand, 'yearsAhead'>): ShownWorking[] {
  const typical = yearsAhead?.find(({ winter }) => winter === 'typical');
  if (!yearsAhead || !typical) return [];
  return [
    {
      title: inWords('What the meter should show in a typical year'),
      formula: inWords('base × days + slope × degree days of the year; the range is that of a single year'),
      inputs: yearsAhead.flatMap(({ winter, kWh, low, high, degreeDays }): ShownInput[] =>
        (
          [
            [WINTERS[winter], kWh],
            [WINTERS_LOW[winter], low],
            [WINTERS_HIGH[winter], high],
          ] as const
        ).map(([name, value]) => ({
          name: inWords(name),
          value,
          unit: 'kWh',
          grade: 'estimated',
          origin: inWords('line of the record, {degreeDays, number, integer} degree days', { degreeDays }),
        })),
      ),
      result: { value: typical.kWh, unit: 'kWh' },
    },
  ];
}

/** The typed heat loss as a coefficient beside the record's [W/K]. */
export function heatLossWorkings({ recordHeatLoss, typedHeatLossWPerK }: Demand): ShownWorking[] {
  if (!recordHeatLoss) return [];
  const { low, high, value, grade, working } = recordHeatLoss;
  const line = (name: Said, of: number, origin: Said): ShownInput => ({
    name,
    value: of,
    unit: 'W/K',
    grade,
    origin,
  });
  return [
    {
      title: inWords('Heat loss for each degree colder'),
      formula: inWords(
        'heat loss of the record beside the typed heat loss / the difference in temperature it was given for',
      ),
      inputs: [
        line(inWords('By the record, low'), low, inWords('10 % point')),
        line(inWords('By the record, high'), high, inWords('90 % point')),
        ...(typedHeatLossWPerK === undefined
          ? []
          : [line(inWords('Typed'), typedHeatLossWPerK, inWords('heat loss as typed'))]),
      ],
      result: { value, unit: 'W/K' },
      steps: [working],
    },
  ];
}
