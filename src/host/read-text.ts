/** What intake understood of one raw file, as text for a terminal. */
import type { IntakePreview } from '../intake/intake.ts';
import { isTemperature, type Series } from '../model/evidence/evidence.ts';
import { exactKWh, grouped, longDate } from '../words/numbers.ts';
import { remarkSentence } from '../words/remarks.ts';
import { inColumns } from './columns.ts';

function seriesLine({
  name,
  carrier,
  role,
  resolution,
  intervalMinutes,
  from,
  to,
  total,
  present,
  expected,
}: Series): string {
  const amount = isTemperature(carrier) ? `mean ${grouped(total, 1)} °C` : exactKWh(total);
  const step = intervalMinutes === undefined ? resolution : `every ${intervalMinutes} minutes`;
  return `${name}: ${carrier}, ${role}, ${step}, ${longDate(from)} to before ${longDate(to)}, ${amount}, ${grouped(present)} of ${grouped(expected)} readings`;
}

/** A wide file has 49 columns; the first and a sign that there are more tell enough. */
const shortened = (cells: readonly string[]): string[] =>
  cells.length <= 10 ? [...cells] : [...cells.slice(0, 9), '…'];

export function readText(preview: IntakePreview): string {
  const { fileName, shape, candidates, choices, columns, dataRows, rows, series, remarks, tariff } = preview;
  const understood = shape === null ? 'no known shape' : shape;
  return [
    `${fileName}: ${understood}, ${grouped(dataRows)} rows`,
    ...candidates.slice(0, 3).map(({ shape: name, fit, reason }) => `  ${name} ${grouped(fit, 2)}: ${reason}`),
    `Columns: ${shortened(columns).join(' | ')}`,
    `Taken as: ${JSON.stringify(choices)}`,
    ...series.map(seriesLine),
    ...(tariff ? [`Tariff: ${tariff.name}, ${tariff.versions.length} version(s)`] : []),
    ...remarks.map((remark) => `${remark.weight}: ${remarkSentence(remark)}`),
    ...inColumns(rows.slice(0, 5).map(({ line, cells }) => [`line ${line}`, ...shortened(cells)])),
    '',
  ].join('\n');
}
