/** What a record comes to, read by read: the file, its rows, and the days that are there. */
import { type Evidence, isTemperature, type Remark, type Series } from '../../model/shapes/evidence.ts';
import type { Grade } from '../../model/shapes/working.ts';
import { remarkSentence } from '../remarks.ts';
import { inWords, type Said, type Shown, sayTold } from '../say-told.ts';
import type { ShownInput, ShownWorking } from '../working.ts';

/** Bills and readings of periods that are named one by one; longer records are told in sums. */
const MOST_PERIODS = 60;
const MS_PER_DAY = 86_400_000;

/** The sum of a series [kWh, or mean °C], with its file and rows. */
export function recordWorking(series: Series, evidence: readonly Evidence[]): ShownWorking {
  const found = evidence.find(({ id }) => id === series.evidenceId);
  const file = found
    ? inWords('{file}, saved {date}', { file: sayTold(found.fileName), date: found.importedOn.slice(0, 10) })
    : series.name;
  const inDegrees = isTemperature(series.carrier);
  const unit = inDegrees ? '°C' : 'kWh';
  const rows = found?.remarks ?? [];
  return {
    title: series.name,
    formula: inWords(inDegrees ? 'mean of all days that are there' : 'all readings of the record together'),
    inputs: [
      ...(series.periods && series.periods.length <= MOST_PERIODS
        ? periodLines(series, found?.fileName ?? series.name)
        : dayLines(series, file, unit)),
      ...countLines(series, file),
      ...rows.flatMap((remark) => remarkLines(remark, unit)),
    ],
    result: { value: series.total, unit },
  };
}

const gradeOfQuality = (quality: string): Grade => (quality === 'estimated' ? 'estimated' : 'measured');
const daysOf = (period: { from: string; to: string }) =>
  Math.max(1, Math.round((Date.parse(period.to) - Date.parse(period.from)) / MS_PER_DAY));

function periodLines({ periods }: Series, fileName: string): ShownInput[] {
  return periods!.flatMap((period): ShownInput[] => {
    const { from, to, kWh, quality, row } = period;
    const grade = gradeOfQuality(quality);
    const days = daysOf(period);
    const span = { from, to, days };
    return [
      {
        name: inWords('{from} to {to}, {days, number} days', span),
        value: kWh,
        unit: 'kWh',
        grade,
        origin: placeOf(fileName, row),
      },
      {
        name: inWords('{from} to {to}, {days, number} days, each', span),
        value: kWh / days,
        unit: 'kWh',
        grade,
        origin: inWords('the line above / its days'),
      },
    ];
  });
}

function dayLines({ days, filled }: Series, origin: Shown, unit: string): ShownInput[] {
  const known = days?.values.filter((value) => value !== null) ?? [];
  if (known.length === 0)
    return [{ name: inWords('Readings'), value: inWords('no whole day'), grade: 'measured', origin }];
  const line = (name: Said, value: number, grade: Grade = 'measured') => ({ name, value, unit, grade, origin });
  return [
    line(
      inWords('Lowest of {days, number} days', { days: known.length }),
      known.reduce((a, b) => Math.min(a, b)),
    ),
    line(
      inWords('Highest of {days, number} days', { days: known.length }),
      known.reduce((a, b) => Math.max(a, b)),
    ),
    ...(filled
      ? [
          line(
            inWords('Filled by rule'),
            filled.reduce((sum, { kWh }) => sum + kWh, 0),
            'estimated',
          ),
        ]
      : []),
  ];
}

function countLines({ present, expected, estimatedCount, from, to }: Series, origin: Shown): ShownInput[] {
  return [
    {
      name: inWords('Readings there, {from} to {to}', { from, to }),
      value: inWords('{present, number} of {expected, number}', { present, expected }),
      grade: 'measured',
      origin,
    },
    { name: inWords('Readings marked as estimated'), value: estimatedCount, grade: 'measured', origin },
  ];
}

/** What was noted of the file's rows, with what it comes to or what was found there. */
function remarkLines(remark: Remark, unit: string): ShownInput[] {
  const { file, row, effectKWh, found } = remark;
  const line = { name: { said: remarkSentence(remark) }, origin: placeOf(file, row) };
  if (effectKWh !== undefined) return [{ ...line, value: effectKWh, unit, grade: 'estimated' }];
  return found ? [{ ...line, value: found, grade: 'measured' }] : [];
}

const placeOf = (file: string, row: number | undefined): Shown =>
  row === undefined ? file : inWords('{file}, row {row}', { file: sayTold(file), row: String(row) });

/** What a record shows for some of its days [kWh], the last one counted in. */
export function daysWorking(
  { name, estimatedCount }: Series,
  days: { from: string; to: string; kWh: number },
): ShownWorking {
  const { from, to, kWh } = days;
  return {
    title: name,
    formula: inWords('the readings of these days together'),
    inputs: [
      {
        name: inWords('{from} to {to}', { from, to }),
        value: kWh,
        unit: 'kWh',
        grade: estimatedCount > 0 ? 'estimated' : 'measured',
        origin: name,
      },
    ],
    result: { value: kWh, unit: 'kWh' },
  };
}
