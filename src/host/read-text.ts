/** What intake understood of one raw file, as text for a terminal. */
import type { IntakePreview, PaperReading, PaperValue } from '../intake/intake.ts';
import { isTemperature, type Remark, type Series } from '../model/shapes/evidence.ts';
import { answerSentence } from '../words/answers.ts';
import { roleName } from '../words/choices.ts';
import { columnUse } from '../words/column-uses.ts';
import { exactKWh, grouped, longDate } from '../words/numbers.ts';
import { paperStateWords, paperValueName, paperValueText } from '../words/paper.ts';
import { columnNames, remarkSentence } from '../words/remarks.ts';
import { phrase, say } from '../words/say.ts';
import { sayTold } from '../words/say-told.ts';
import { carrierName } from '../words/systems.ts';
import { inColumns } from './columns.ts';

const STEPS: Readonly<Record<Series['resolution'], string>> = {
  interval: phrase('reading by reading'),
  day: phrase('by the day'),
  period: phrase('bill by bill'),
};
const WEIGHTS: Readonly<Record<Remark['weight'], string>> = {
  refusal: phrase('refusal'),
  question: phrase('question'),
  note: phrase('note'),
};

/** Each thing remarked, a question with what answers it. */
const remarkLines = (preview: IntakePreview): string[] =>
  preview.remarks.flatMap((remark) => [
    `${say(WEIGHTS[remark.weight])}: ${remarkSentence(remark)}`,
    ...(remark.weight === 'question' ? [`  ${answerSentence(remark, preview)}`] : []),
  ]);

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
  const amount = isTemperature(carrier)
    ? say('mean {mean} °C', { mean: grouped(total, 1) })
    : carrier === 'water'
      ? `${grouped(total, 1)} m³`
      : exactKWh(total);
  const step =
    intervalMinutes === undefined
      ? say(STEPS[resolution])
      : say('every {minutes} minutes', { minutes: intervalMinutes });
  return say('{name}: {carrier}, {role}, {step}, {from} to before {to}, {amount}, {present} of {expected} readings', {
    name: sayTold(name),
    carrier: carrierName(carrier),
    role: roleName(role),
    step,
    from: longDate(from),
    to: longDate(to),
    amount,
    present: grouped(present),
    expected: grouped(expected),
  });
}

/** Of a day across each column is one reading, which needs no line of its own. */
const MOST_COLUMNS = 24;

/** A wide file has 49 columns; the first and a sign that there are more tell enough. */
const shortened = (cells: readonly string[]): string[] =>
  cells.length <= 10 ? [...cells] : [...cells.slice(0, 9), '…'];

/** Clock that a home has where nobody names another. */
export const USUAL_ZONE = 'Europe/London';

/** @param zone as it was named; null where the usual one was taken */
export function readText(preview: IntakePreview, zone: string | null): string {
  const { fileName, shape, candidates, choices, columns, uses = [], dataRows, rows, series, tariff, paper } = preview;
  if (paper) return paperText(preview, paper);
  const understood = shape === null ? say('no known type') : sayTold(shape);
  return [
    say('{fileName}: {understood}, {rows} rows', { fileName, understood, rows: grouped(dataRows) }),
    ...candidates
      .slice(0, 3)
      .map(({ shape: name, fit, reason }) => `  ${sayTold(name)} ${grouped(fit, 2)}: ${sayTold(reason)}`),
    // A paper that was refused has none.
    ...(columns.length === 0
      ? []
      : [say('Columns: {names}', { names: shortened(columns).map(columnNames).join(' | ') })]),
    ...(columns.length > MOST_COLUMNS
      ? []
      : inColumns(uses.map(({ column, use }) => [`  ${columnNames(columns[column])}`, columnUse(use)]))),
    ...(columns.length === 0 ? [] : [say('Taken as: {choices}', { choices: JSON.stringify(choices) })]),
    ...series.map(seriesLine),
    ...(tariff
      ? [say('Tariff: {name}, {count} version(s)', { name: tariff.name, count: tariff.versions.length })]
      : []),
    zone === null
      ? say('Clock of the home: {zone}, since none was named; name another with --zone.', { zone: USUAL_ZONE })
      : say('Clock of the home: {zone}.', { zone }),
    ...remarkLines(preview),
    ...inColumns(
      rows.slice(0, 5).map(({ line, cells }) => [say('line {row}', { row: String(line) }), ...shortened(cells)]),
    ),
    '',
  ].join('\n');
}

/** A paper as a list of what was read of it, each value with what proves it. */
function paperText(preview: IntakePreview, { values, tariffs }: PaperReading): string {
  const { fileName, series } = preview;
  const counts = (state: PaperValue['state']) => values.filter((one) => one.state === state).length;
  return [
    say('{fileName}: a bill on paper, {proved} values proved, {read} read, {against} contradicted', {
      fileName,
      proved: counts('proved'),
      read: counts('read'),
      against: counts('contradicted'),
    }),
    ...values.map((value) => `  ${paperValueName(value)}: ${paperValueText(value)}  ${paperStateWords(value)}`),
    ...series.map(seriesLine),
    ...tariffs.map(({ name, versions }) => say('Tariff: {name}, {count} version(s)', { name, count: versions.length })),
    ...remarkLines(preview),
    '',
  ].join('\n');
}
