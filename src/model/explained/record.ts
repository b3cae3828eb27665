/** What a record comes to, read by read: the file, its rows, and the days that are there. */
import { type Evidence, isTemperature, type Remark, type Series } from '../shapes/evidence.ts';
import type { Grade, Working, WorkingInput } from '../shapes/working.ts';

/** Bills and readings of periods that are named one by one; longer records are told in sums. */
const MOST_PERIODS = 60;
const MS_PER_DAY = 86_400_000;

/** The sum of a series [kWh, or mean °C], with its file and rows. */
export function recordWorking(series: Series, evidence: readonly Evidence[]): Working {
  const found = evidence.find(({ id }) => id === series.evidenceId);
  const file = found ? `${found.fileName}, kept ${found.importedOn.slice(0, 10)}` : series.name;
  const inDegrees = isTemperature(series.carrier);
  const unit = inDegrees ? '°C' : 'kWh';
  const rows = found?.remarks ?? [];
  return {
    title: series.name,
    formula: inDegrees ? 'mean of all days that are there' : 'all readings of the record together',
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

function periodLines({ periods }: Series, fileName: string): WorkingInput[] {
  return periods!.flatMap((period): WorkingInput[] => {
    const { from, to, kWh, quality, row } = period;
    const grade = gradeOfQuality(quality);
    const days = daysOf(period);
    const name = `${from} to ${to}, ${days} days`;
    return [
      { name, value: kWh, unit: 'kWh', grade, origin: row === undefined ? fileName : `${fileName}, row ${row}` },
      { name: `${name}, each`, value: kWh / days, unit: 'kWh', grade, origin: 'the line above / its days' },
    ];
  });
}

function dayLines({ days, filled }: Series, origin: string, unit: string): WorkingInput[] {
  const known = days?.values.filter((value) => value !== null) ?? [];
  if (known.length === 0) return [{ name: 'Readings', value: 'no whole day', grade: 'measured', origin }];
  const line = (name: string, value: number, grade: Grade = 'measured') => ({ name, value, unit, grade, origin });
  return [
    line(
      `Lowest of ${known.length} days`,
      known.reduce((a, b) => Math.min(a, b)),
    ),
    line(
      `Highest of ${known.length} days`,
      known.reduce((a, b) => Math.max(a, b)),
    ),
    ...(filled
      ? [
          line(
            'Filled by rule',
            filled.reduce((sum, { kWh }) => sum + kWh, 0),
            'estimated',
          ),
        ]
      : []),
  ];
}

function countLines({ present, expected, estimatedCount, from, to }: Series, origin: string): WorkingInput[] {
  return [
    { name: `Readings there, ${from} to ${to}`, value: `${present} of ${expected}`, grade: 'measured', origin },
    { name: 'Readings marked as estimated', value: estimatedCount, grade: 'measured', origin },
  ];
}

/** What was noted of the file's rows: what it comes to, what was found and what was expected there. */
function remarkLines({ code, file, row, count, effectKWh, found, expected }: Remark, unit: string): WorkingInput[] {
  const origin = row === undefined ? file : `${file}, row ${row}`;
  const what = `${code.replaceAll('-', ' ')}${count === undefined ? '' : `, ${count} rows`}`;
  return [
    ...(effectKWh === undefined ? [] : [{ name: what, value: effectKWh, unit, grade: 'estimated' as const, origin }]),
    ...(found ? [{ name: `${what}, found`, value: found, grade: 'measured' as const, origin }] : []),
    ...(expected ? [{ name: `${what}, expected`, value: expected, grade: 'assumed' as const, origin }] : []),
  ];
}

/** What a record shows for some of its days [kWh], the last one counted in. */
export function daysWorking(
  { name, estimatedCount }: Series,
  days: { from: string; to: string; kWh: number },
): Working {
  const { from, to, kWh } = days;
  return {
    title: name,
    formula: 'the readings of these days together',
    inputs: [
      {
        name: `${from} to ${to}`,
        value: kWh,
        unit: 'kWh',
        grade: estimatedCount > 0 ? 'estimated' : 'measured',
        origin: name,
      },
    ],
    result: { value: kWh, unit: 'kWh' },
  };
}
