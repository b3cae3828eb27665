/** Reads a dialect back and says how it went: right, right after the very question that was open, refused, or wrong. */
import type { IntakeChoices, IntakeContext, IntakePreview } from '../../src/intake/intake.ts';
import { readFile } from '../../src/intake/read-file.ts';
import { toCivilDate, toDayNumber } from '../../src/model/calendar/civil.ts';
import type { Series } from '../../src/model/shapes/evidence.ts';
import { kWhPerUnit } from '../../src/reference/fuels.ts';
import { isOfOneColumn } from '../../src/words/remark-answers.ts';
import { type Dialect, drawDialect, type Of } from './draw.ts';
import type { Twist } from './twist.ts';
import { type Truth, type Written, writeDialect } from './write.ts';

export type Outcome = 'right' | 'asked' | 'asked needlessly' | 'refused' | 'wrong';
export interface Verdict {
  readonly dialect: Dialect;
  readonly twists: readonly Twist[];
  readonly outcome: Outcome;
  readonly why: string;
}

const contextOf = (zone: string): IntakeContext => ({
  zone,
  today: '2026-11-25',
  kWhPerUnit,
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
});

const WHAT: Readonly<Record<Of, readonly [carrier: string, role: string]>> = {
  use: ['electricity', 'import'],
  feed: ['electricity', 'export'],
  generation: ['electricity', 'generation'],
  gas: ['gas', 'import'],
  heat: ['heat', 'heat-output'],
  water: ['water', 'import'],
  outdoor: ['outdoor-temperature', 'weather'],
};

/** What each question is about, in the words of `Written.ambiguous`. */
const ABOUT: Readonly<Record<string, string>> = {
  'unit-guessed': 'unit',
  'carrier-guessed': 'carrier',
  'calorific-assumed': 'calorific',
  'decimal-asked': 'decimal',
  'date-order-asked': 'date order',
  'clock-asked': 'clock',
  'clock-assumed': 'clock',
  'clock-autumn-asked': 'clock',
  'register-rising-asked': 'counter',
  'period-side-asked': 'period side',
  'stamp-side-asked': 'side',
  'net-asked': 'net',
  'own-use-asked': 'own use',
  'column-asked': 'column',
};

function answerTo(code: string, d: Dialect, { valueColumn }: Written): IntakeChoices | undefined {
  switch (ABOUT[code] ?? code) {
    case 'unit':
      return { unit: d.unit as never };
    case 'carrier':
      return {
        carrier: WHAT[d.what === 'gas' || d.what === 'heat' || d.what === 'outdoor' ? d.what : 'use'][0] as never,
      };
    case 'calorific':
      return { calorificMJPerM3: 39.5 };
    case 'decimal':
      return { decimal: d.decimal };
    case 'date order':
      return { dayFirst: d.dateForm !== 'm/d/y' };
    case 'clock':
      return { clock: d.clock };
    case 'period side':
      return { stamp: 'start' };
    case 'counter':
      return { shape: d.measure === 'counter' ? 'counter' : 'bills' };
    case 'direction-asked':
    case 'made-asked':
      return { role: WHAT[d.what === 'feed' || d.what === 'generation' ? d.what : 'use'][1] as never };
    case 'own use':
      return { ownUse: 'apart' };
    case 'net':
      return { net: true };
    case 'column':
      return { columns: { value: valueColumn } };
    case 'side':
      return { stamp: d.side };
    default:
      return undefined;
  }
}

export function judgeDialect(seed: number): Verdict {
  const dialect = drawDialect(seed);
  const written = writeDialect(dialect);
  return { dialect, twists: [...written.twists], ...judge(dialect, written) };
}

export function judge(d: Dialect, written: Written): { outcome: Outcome; why: string } {
  let choices: IntakeChoices = {};
  const asked: string[] = [];
  for (let round = 0; round < 4; round++) {
    const { preview } = readFile(written.fileName, written.bytes, choices, contextOf(d.zone));
    const refusal = preview.remarks.find(({ weight }) => weight === 'refusal');
    if (refusal) return { outcome: 'refused', why: refusal.code };
    const questions = new Map(
      preview.remarks.flatMap((one) => (one.weight === 'question' ? [[one.code, one] as const] : [])),
    );
    if (questions.size === 0) {
      const fault =
        written.orElse && differenceOf(preview, written.orElse) === undefined
          ? undefined
          : differenceOf(preview, written.truths);
      if (fault !== undefined)
        return { outcome: 'wrong', why: `${fault}${asked.length > 0 ? ` (after ${asked.join(', ')})` : ''}` };
      if (asked.length === 0) return { outcome: 'right', why: '' };
      const needless = asked.filter((code) => !written.ambiguous.has(ABOUT[code] ?? code));
      return needless.length > 0
        ? { outcome: 'asked needlessly', why: needless.join(', ') }
        : { outcome: 'asked', why: asked.join(', ') };
    }
    for (const [code, remark] of questions) {
      const answer = answerTo(code, d, written);
      if (answer === undefined || asked.includes(code))
        return { outcome: 'asked needlessly', why: `${code}, with no answer` };
      asked.push(code);
      // Which way one record went says nothing of another.
      const isOfOne = answer.role !== undefined && isOfOneColumn(remark, preview);
      choices = { ...choices, ...(isOfOne ? { ofColumns: { [remark.column!]: answer as never } } : answer) };
    }
  }
  return { outcome: 'asked needlessly', why: `${asked.join(', ')}, without end` };
}

/** Every record of the truth is there, nothing else is, and each day or month comes to what was written. */
function differenceOf(preview: IntakePreview, truths: readonly Truth[]): string | undefined {
  const left = [...preview.series];
  for (const truth of truths) {
    const [carrier, role] = WHAT[truth.of];
    const fits = left.filter((s) => s.carrier === carrier && s.role === role);
    const faults = fits.map((s) => daysDiffer(s, truth));
    const at = faults.indexOf(undefined);
    if (at < 0) {
      const got = preview.series.map((s) => `${s.carrier} ${s.role} ${s.total.toFixed(1)}`).join('; ');
      // Water beside heat may be left out: it is priced by nobody.
      if (truth.of === 'water' && fits.length === 0) continue;
      return `${truth.of} ${truth.register}: ${faults[0] ?? 'not there'}, got ${got}`;
    }
    left.splice(left.indexOf(fits[at]!), 1);
  }
  return left.length > 0
    ? `beside the truth: ${left.map((s) => `${s.carrier} ${s.role} "${s.name}"`).join('; ')}`
    : undefined;
}

function daysDiffer(series: Series, { byDay, byMonth }: Truth): string | undefined {
  // Whether a temperature stands an hour earlier or later is not asked about: a day's mean hardly moves by it.
  const some = series.carrier === 'outdoor-temperature' ? 0.3 : 0.02;
  const close = (a: number, b: number) => Math.abs(a - b) <= some + Math.abs(b) * 0.002;
  if (byMonth) {
    const got = new Map<string, number>();
    for (const { from, to, kWh } of series.periods ?? []) {
      const days = toDayNumber(to) - toDayNumber(from);
      for (let day = toDayNumber(from); day < toDayNumber(to); day++) {
        const month = toCivilDate(day).slice(0, 7);
        got.set(month, (got.get(month) ?? 0) + kWh / days);
      }
    }
    for (const [month, kWh] of byDay)
      if (!close(got.get(month) ?? Number.NaN, kWh))
        return `${month} is ${got.get(month)?.toFixed(2)}, not ${kWh.toFixed(2)}`;
    return got.size > byDay.size ? 'more months than there are' : undefined;
  }
  if (!series.days) return 'not by the day';
  const first = toDayNumber(series.days.first);
  let whole = 0;
  let missing = 0;
  for (const [date, kWh] of byDay) {
    const got = series.days.values[toDayNumber(date) - first];
    if (got === null || got === undefined) {
      missing++;
      continue;
    }
    whole++;
    if (!close(got, kWh)) return `${date} is ${got.toFixed(2)}, not ${kWh.toFixed(2)}`;
  }
  const edge = series.carrier === 'outdoor-temperature' ? 1 : 0;
  if (series.days.values.length > byDay.size + edge) return 'more days than there are';
  return missing > 6 ? `${missing} days are not there, of ${whole + missing}` : undefined;
}
