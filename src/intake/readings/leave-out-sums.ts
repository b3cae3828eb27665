/**
 * A record that is the sum of the others of its kind, as a register of all rates beside those of each, is one use again;
 * so is one rate beside the register of all, and one that repeats another day by day, as a counter does that begins elsewhere.
 */
import type { Series } from '../../model/shapes/evidence.ts';
import { isRegisterName, isTotal, registerOfSomeHours } from '../layout/column-words.ts';
import type { IntakeChoices } from '../terms/choices.ts';
import { listNames, type RemarkBook } from '../terms/remark-book.ts';

/** Registers are printed to a tenth or a thousandth each. A judgement. */
const CLOSE = 0.002;

const isClose = (a: number, b: number): boolean => Math.abs(a - b) <= Math.max(0.05, Math.abs(b) * CLOSE);

/** Amounts by day or period, in order. */
const partsOf = ({ days, periods }: Series): readonly (number | null)[] =>
  days ? days.values : (periods ?? []).map(({ kWh }) => kWh);

function isSumOf(whole: Series, others: readonly Series[]): boolean {
  if (
    !isClose(
      others.reduce((sum, one) => sum + one.total, 0),
      whole.total,
    )
  )
    return false;
  const parts = others.map(partsOf);
  return partsOf(whole).every((amount, i) => {
    const sum = parts.reduce((all, one) => all + (one[i] ?? Number.NaN), 0);
    return amount === null || Number.isNaN(sum) || isClose(sum, amount);
  });
}

/** Two meters never come to the same on so many days of different amounts; one of hundredths tells as much as two others. A judgement. */
const TELLING_AMOUNTS = 5;
const tellingOf = (amounts: readonly (number | null)[]): number =>
  [...new Set(amounts)].reduce<number>((sum, kWh) => sum + (kWh ? (isOfTenths(kWh) ? 1 : 2) : 0), 0);
const isOfTenths = (kWh: number): boolean => Math.abs(kWh * 10 - Math.round(kWh * 10)) < 1e-4;
/** What counters rise by is as they are printed. */
const isSame = (a: number, b: number): boolean => Math.abs(a - b) <= Math.max(0.002, Math.abs(b) * 0.0005);

function isRepeatOf(one: Series, other: Series): boolean {
  // Two rates of a meter are two, however alike they are made up.
  if (one.days?.first !== other.days?.first || isRegisterName(one.name)) return false;
  const [mine, theirs] = [partsOf(one), partsOf(other)];
  if (tellingOf(mine) < TELLING_AMOUNTS || mine.length !== theirs.length) return false;
  return mine.every((amount, i) => (amount === null ? theirs[i] === null : isSame(amount, theirs[i] ?? Number.NaN)));
}

/**
 * What a roof makes, before and behind the inverter, differs by its losses, and what was estimated by a little; what is
 * reckoned of another, as gas by its lower heat value, by rounding. Judgements.
 */
const LOSSES = 0.1;
const RECKONED = 0.01;
/** Two meters that each count never go along so closely. A judgement. */
const ROUNDED = 0.002;

const MADE_HERE = new Set<Series['role']>(['generation', 'export']);

const apartOf = (a: readonly (number | null)[], b: readonly (number | null)[], times: number): number =>
  a.reduce<number>((sum, kWh, i) => sum + Math.abs((kWh ?? 0) - times * (b[i] ?? 0)), 0);

/**
 * Two records of one kind that hardly differ, or keep one ratio day by day, may be one, as may two counters that rose by
 * the same; two rates of a meter are two. The others are left out unless each was said to count by itself; what is
 * reckoned of another never does.
 */
function leaveOutTwice(
  kind: readonly Series[],
  { every, columns }: IntakeChoices,
  areColumns: boolean,
  book: RemarkBook,
): readonly Series[] {
  if (columns?.value !== undefined) return [];
  for (const [i, one] of kind.entries()) {
    const mayBeOne = MADE_HERE.has(one.role) || (areColumns && one.role === 'import');
    if (one.total <= 0 || isRegisterName(one.name)) continue;
    const mine = partsOf(one);
    const near = kind.slice(i + 1).filter((other) => {
      if (other.total <= 0 || isRegisterName(other.name)) return false;
      if (one.counter && other.counter && isSame(one.total, other.total)) return !every;
      const theirs = partsOf(other);
      if (!mayBeOne || mine.length < TELLING_AMOUNTS) return false;
      const isNear = apartOf(mine, theirs, 1) <= LOSSES * one.total;
      const apart = apartOf(mine, theirs, one.total / other.total);
      if (every) return apart <= ROUNDED * one.total && areColumns && one.role === 'import' && isVaried(mine);
      return isNear || apart <= RECKONED * one.total;
    });
    if (near.length === 0) continue;
    const found = listNames(near.map(({ name }) => name));
    if (every === undefined) book.add('column-asked', 'question', { column: one.name, found, count: near.length });
    else book.add('columns-left-out', 'note', { found, expected: one.name });
    return isVaried(mine) || every === false ? near : [];
  }
  return [];
}

const VARIED = 1.5;
/** Amounts that are all alike keep one ratio to any others. */
const isVaried = (amounts: readonly (number | null)[]): boolean =>
  Math.max(...amounts.map((kWh) => kWh ?? 0)) >
  VARIED * Math.min(...amounts.map((kWh) => kWh ?? Number.POSITIVE_INFINITY));

const isWholeName = (name: string): boolean => isTotal({ heading: name }) || /\b[12][.:]8[.:]0\b|\bi alt\b/i.test(name);

/** Registers of some hours that are never more than the one record beside them. */
function partsWithin(kind: readonly Series[]): { whole: Series; parts: readonly Series[] } | undefined {
  const wholes = kind.filter(({ name }) => registerOfSomeHours(name) === undefined);
  const [whole] = wholes;
  const parts = kind.filter((one) => one !== whole);
  if (!whole || wholes.length > 1 || parts.length === 0 || whole.total <= 0) return undefined;
  const all = partsOf(whole);
  const own = parts.map(partsOf);
  const isWithin = all.every((amount, i) => {
    const sum = own.reduce((kWh, one) => kWh + (one[i] ?? 0), 0);
    return amount === null || sum <= amount || isClose(sum, amount);
  });
  return isWithin && own.every((one) => one.length === all.length) ? { whole, parts } : undefined;
}

/**
 * The ids of such records, with a remark for each.
 * @param areColumns whether each is a column by itself, rather than rows that bear its name
 */
export function sumsAmong(
  series: readonly Series[],
  choices: IntakeChoices,
  areColumns: boolean,
  book: RemarkBook,
): ReadonlySet<string> {
  const sums = new Set<string>();
  const kinds = Map.groupBy(series, (one) => `${one.carrier} ${one.role} ${one.resolution} ${one.from} ${one.to}`);
  for (const all of kinds.values()) {
    const repeats = all.filter((one, i) => all.slice(0, i).some((first) => isRepeatOf(one, first)));
    for (const one of repeats) {
      sums.add(one.id);
      const first = all.find((other) => isRepeatOf(one, other))!;
      book.add('repeat-left-out', 'note', { column: one.name, found: first.name });
    }
    const kind = all.filter((one) => !repeats.includes(one));
    for (const { id } of leaveOutTwice(kind, choices, areColumns, book)) sums.add(id);
    const whole = kind.find(
      (one) =>
        one.total > 0 &&
        kind.length > 2 &&
        isSumOf(
          one,
          kind.filter((other) => other !== one),
        ),
    );
    if (whole) {
      sums.add(whole.id);
      const others = kind.filter((one) => one !== whole).map(({ name }) => name);
      book.add('sum-left-out', 'note', { column: whole.name, found: listNames(others) });
      continue;
    }
    const within = partsWithin(kind);
    if (!within || choices.every || choices.columns?.value !== undefined || book.has('column-asked')) continue;
    const found = listNames(within.parts.map(({ name }) => name));
    if (isWholeName(within.whole.name)) {
      for (const { id } of within.parts) sums.add(id);
      book.add('part-left-out', 'note', { column: within.whole.name, found, count: within.parts.length });
    } else if (areColumns)
      book.add('column-asked', 'question', { column: within.whole.name, found, count: within.parts.length });
  }
  return sums;
}
