/** Records of one kind that tell of the same days: alike they are one, further meters are added, else nobody knows. */
import { compareDates, toCivilDate, toDayNumber } from '../calendar/civil.ts';
import { isTemperature, standsBeside } from '../shapes/carrier.ts';
import { type EvidencePeriod, type Series, withoutHours } from '../shapes/evidence.ts';
import { sumOf } from '../units/sums.ts';
import { cutPeriod } from './cut-periods.ts';
import { areOtherRegisters, seriesByMeter } from './register-hours.ts';
import { splitMeter, sumRegisters } from './sum-registers.ts';

export interface Rivals {
  readonly one: Series;
  readonly other: Series;
  /** Days that both tell of, how much more the first makes of them, and how far they are apart, day by day where both are so [kWh, °C summed over the days]. */
  readonly days: number;
  readonly more: number;
  readonly apart: number;
}

/** Fewer days in common are an overlap at an edge. A judgement. */
export const LEAST_DAYS = 7;
/** How far so few days have to be apart, where both tell them one by one. A judgement. */
const [FEW_DAYS, FEW_APART] = [3, 0.3];
/** Bills and readings of one meter differ by a day at each end, a calorific value, a rounding. A judgement. */
const APART = 0.1;
/** Thermometers of one place stray by about a degree from one another, and a model of the weather by as much [°C]. A judgement. */
const APART_C = 2;
/** Two readings of one meter that are cut alike differ by rounding only. A judgement. */
const SAME = 0.01;

/** Pairs of use, or of the weather, of one carrier and role that tell of the same days and do not come to the same. */
export function findRivals(series: readonly Series[]): Rivals[] {
  const pool = sumRegisters(series.filter((one) => standsBeside(one) && one.beside === undefined));
  return pool.flatMap((one, i) =>
    pool.slice(i + 1).flatMap((other) => {
      if (other.carrier !== one.carrier || other.role !== one.role) return [];
      const [mine, theirs] = [perDay(one), perDay(other)];
      const whole = wholeDays(other, mine);
      const told = [...wholeDays(one, theirs)].filter((day) => whole.has(day));
      const isWeather = isTemperature(one.carrier);
      // Of bills of which only a part is known otherwise, what that leaves has to be likely.
      const isPart = told.length < LEAST_DAYS && !isWeather && (isUnlikely(one, theirs) || isUnlikely(other, mine));
      const shared = isPart ? [...mine.keys()].filter((day) => theirs.has(day)) : told;
      const sum = (byDay: ReadonlyMap<number, number>) => shared.reduce((all, day) => all + byDay.get(day)!, 0);
      const [a, b] = [sum(mine), sum(theirs)];
      // Two meters of much the same use come to the same in a year, but not day by day; one meter read twice does.
      const dayByDay = shared.reduce((all, day) => all + Math.abs(mine.get(day)! - theirs.get(day)!), 0);
      const apart = isWeather || areCutAlike(one, other) ? dayByDay : Math.abs(a - b);
      const most = Math.max(a, b);
      const bound = isWeather ? APART_C * shared.length : APART * most;
      // Where nothing says which is right, only rounding is the same; a meter read at another hour comes to the same in all.
      const isUnsure = !isWeather && Math.abs(a - b) > SAME * most && areEquallySure(one, other);
      // An estimate at the end may be put right; another home's days are all other ones.
      const isOther = shared.length >= FEW_DAYS && one.days && other.days && dayByDay > FEW_APART * most;
      // What the day and what the night took may come to the same in a year, and is never the same.
      const areTwo = one.evidenceId !== other.evidenceId && areOtherRegisters(one.name, other.name);
      const isApart =
        shared.length >= LEAST_DAYS
          ? isPart || apart > bound || isUnsure || (areTwo && !isWeather)
          : isOther && !isWeather;
      const byBill =
        isApart || isWeather || shared.length < LEAST_DAYS ? 0 : apartByBill(one, other) || apartByBill(other, one);
      return isApart || byBill > 0 ? [{ one, other, days: shared.length, more: a - b, apart: byBill || apart }] : [];
    }),
  );
}

/** Whether both are by the day, or by the same periods where they meet. */
function areCutAlike(one: Series, other: Series): boolean {
  if (one.days || other.days) return one.days !== undefined && other.days !== undefined;
  const cuts = ({ periods = [] }: Series, { from, to }: Series) =>
    periods.flatMap((period) => (period.from < to && from < period.to ? [`${period.from} ${period.to}`] : [])).join();
  return cuts(one, other) === cuts(other, one);
}

/** So many bills show whether they are of one meter, where the other tells the same bills and where it tells the days. Judgements. */
const [BILLS_LEAST, BILLS_BY_DAY] = [2, 3];
/** How far another calorific value takes one from the other. A judgement. */
const FACTOR_APART = 0.04;
/** How far a meter read at another hour, or on another day, gets out of step, in days of the most use, and in all for a calorific value that changes. Judgements. */
const [STEP_DAYS, STEP_DAYS_BY_DAY, STEP_SHARE] = [1, 2, 0.01];

/**
 * How far bills are apart from what the other makes of them [kWh], where they are of another meter though both come to
 * much the same in all, else 0. Of one meter most are the very same but for one factor, or what one has more than the
 * other the next has less.
 */
function apartByBill({ periods = [] }: Series, other: Series): number {
  if (periods.length === 0) return 0;
  const known = perDay(other);
  const bills = periods
    .filter(({ quality }) => quality !== 'estimated')
    .flatMap(({ from, to, kWh }) => {
      if (other.days) {
        const days = Array.from({ length: toDayNumber(to) - toDayNumber(from) }, (_, i) =>
          known.get(toDayNumber(from) + i),
        );
        return days.includes(undefined) ? [] : [{ from, to, kWh, theirs: sumOf(days as number[]) }];
      }
      const same = other.periods?.find((one) => one.from === from && one.to === to && one.quality !== 'estimated');
      return same ? [{ from, to, kWh, theirs: same.kWh }] : [];
    })
    .filter(({ theirs }) => theirs > 0)
    .toSorted((a, b) => compareDates(a.from, b.from));
  if (bills.length < (other.days ? BILLS_BY_DAY : BILLS_LEAST)) return 0;
  const factors = bills.map(({ kWh, theirs }) => kWh / theirs).sort((a, b) => a - b);
  const middle = (factors[(factors.length - 1) >> 1]! + factors[factors.length >> 1]!) / 2;
  const factor = Math.abs(middle - 1) <= FACTOR_APART ? middle : 1;
  const apart = bills.map(({ kWh, theirs }) => kWh - factor * theirs);
  const same = bills.filter(({ kWh }, i) => Math.abs(apart[i]!) <= SAME * kWh + 1);
  if (2 * same.length >= bills.length) return 0;
  const perDayMost = Math.max(...bills.map(({ from, to, kWh }) => kWh / (toDayNumber(to) - toDayNumber(from))));
  const step = other.days
    ? STEP_DAYS_BY_DAY * perDayMost + STEP_SHARE * sumOf(bills.map(({ kWh }) => kWh))
    : STEP_DAYS * perDayMost;
  let out = 0;
  const isOutOfStep = apart.some((more) => {
    out += more;
    return Math.abs(out) > step;
  });
  return isOutOfStep ? sumOf(bills.map(({ kWh, theirs }) => Math.abs(kWh - theirs))) : 0;
}

/** Whether nothing says which is right: neither is finer, goes on later or has fewer estimates. */
function areEquallySure(one: Series, other: Series): boolean {
  const goesOn = (a: Series, b: Series) => a.from <= b.from && a.to < b.to;
  const share = ({ estimatedCount, present }: Series) => estimatedCount / Math.max(1, present);
  return (
    one.resolution === other.resolution &&
    one.intervalMinutes === other.intervalMinutes &&
    areCutAlike(one, other) &&
    !goesOn(one, other) &&
    !goesOn(other, one) &&
    share(one) === share(other)
  );
}

/** Of a bill so much has to be known otherwise that its share by days tells. A judgement. */
const KNOWN_SHARE = 0.75;

/** The days of a record by which it can be held against another: a bill of which only a part is known there may be dearer in the rest. */
function wholeDays({ days, periods = [], ...one }: Series, known: ReadonlyMap<number, number>): Set<number> {
  if (days) return new Set(perDay({ ...one, days }).keys());
  return new Set(
    periods.flatMap(({ from, to }) => {
      const first = toDayNumber(from);
      const own = Array.from({ length: toDayNumber(to) - first }, (_, i) => first + i);
      return own.filter((day) => known.has(day)).length >= KNOWN_SHARE * own.length ? own : [];
    }),
  );
}

/** How many times as much a day takes in another season, of electricity and of what is bought for heat. Judgements. */
const [SEASON, HEAT_SEASON] = [5, 12];

/** Whether what the other leaves of bills for their other days is less than nothing, or of no season. */
function isUnlikely({ periods = [], carrier }: Series, known: ReadonlyMap<number, number>): boolean {
  const all = { days: 0, kWh: 0 };
  const told = { days: 0, kWh: 0 };
  for (const { from, to, kWh } of periods) {
    const [first, end] = [toDayNumber(from), toDayNumber(to)];
    const days = Array.from({ length: end - first }, (_, i) => known.get(first + i)).filter((of) => of !== undefined);
    if (days.length === 0) continue;
    all.days += end - first;
    all.kWh += kWh;
    told.days += days.length;
    told.kWh += sumOf(days);
  }
  if (told.days < LEAST_DAYS || told.days === all.days) return false;
  const [own, left] = [told.kWh / told.days, (all.kWh - told.kWh) / (all.days - told.days)];
  const times = carrier === 'electricity' ? SEASON : HEAT_SEASON;
  return left * times < own || left > own * times;
}

/** kWh or °C by day number, bills spread evenly over their days. */
export function perDay({ days, periods, carrier }: Series): Map<number, number> {
  if (days) {
    const first = toDayNumber(days.first);
    return new Map(days.values.flatMap((kWh, i) => (kWh === null ? [] : [[first + i, kWh] as const])));
  }
  const byDay = new Map<number, number>();
  for (const { from, to, kWh } of periods ?? []) {
    const [first, end] = [toDayNumber(from), toDayNumber(to)];
    const share = isTemperature(carrier) ? 1 : end - first;
    for (let day = first; day < end; day++) byDay.set(day, (byDay.get(day) ?? 0) + kWh / share);
  }
  return byDay;
}

/** Leaves out what is kept aside, puts right what is said otherwise, and adds further meters to the first of their kind. */
export function settleBeside(series: readonly Series[]): Series[] {
  const kept = putRight(series.filter(({ beside }) => beside !== 'aside'));
  if (kept.every(({ beside }) => beside !== 'added')) return kept;
  const kinds = Map.groupBy(kept, ({ carrier, role }) => `${carrier}|${role}`);
  return [...kinds.values()].flatMap((ofKind) => {
    const added = ofKind.filter(({ beside }) => beside === 'added');
    const bases = ofKind.filter(({ beside }) => beside !== 'added');
    if (added.length === 0) return bases;
    if (bases.length === 0) return isLone(added) ? [] : [added.reduce(addMeter)];
    // Whichever of them tells of a day, the further meters are in it; of registers that are added, with the first.
    const firsts = seriesByMeter(bases).map((ofMeter) => {
      const { added: registers, kept: others } = splitMeter(ofMeter);
      return registers[0] ?? others[0];
    });
    return bases.map((one) => (firsts.includes(one) ? added.reduce(addMeter, one) : one));
  });
}

/** What is to be added to what another file has is nothing of the home by itself until that file is there. */
export const isLone = (added: readonly Series[]): boolean =>
  new Set(added.map(({ evidenceId }) => evidenceId)).size === 1;

/** What counts instead takes the place of others of its kind on its days. */
function putRight(series: readonly Series[]): Series[] {
  const isRight = ({ beside }: Series) => beside === 'instead';
  return series.filter(isRight).reduce<Series[]>((all, right) => {
    let isWithin = false;
    const others = all.map((one) => {
      if (isRight(one) || one.beside || one.carrier !== right.carrier || one.role !== right.role) return one;
      // It goes into the first that is told in the same way, and is left out of the others.
      const takes = !isWithin && (one.days === undefined) === (right.days === undefined);
      isWithin ||= takes;
      return layOver(one, right, takes);
    });
    return isWithin ? others.filter((one) => one !== right) : others;
  }, series.slice());
}

/** Without the days of the other, with its own in their place where `takes` says so. */
function layOver(one: Series, right: Series, takes: boolean): Series {
  const theirs = perDay(right);
  const inDegrees = isTemperature(one.carrier);
  if (one.days) {
    const mine = new Map([...perDay(one)].filter(([day]) => !theirs.has(day)));
    const byDay = new Map([...mine, ...(takes ? theirs : [])]);
    const days = [...byDay.keys()].sort((a, b) => a - b);
    const [first, last] = [days[0], days.at(-1)];
    if (first === undefined || last === undefined)
      return { ...one, total: 0, present: 0, days: { ...one.days, values: [] } };
    const values = Array.from({ length: last - first + 1 }, (_, i) => byDay.get(first + i) ?? null);
    const sum = sumOf(days.map((day) => byDay.get(day)!));
    const total = inDegrees ? sum / days.length : sum;
    const [from, to] = [toCivilDate(first), toCivilDate(last + 1)];
    return {
      ...one,
      resolution: 'day',
      from,
      to,
      total,
      days: { first: from, values },
      present: days.length,
      expected: values.length,
    };
  }
  // A period to a day, so that gaps between the bills that count instead stay with the others.
  const known =
    right.periods ??
    [...theirs.keys()].map((day) => ({
      from: toCivilDate(day),
      to: toCivilDate(day + 1),
      kWh: 0,
      quality: 'actual' as const,
    }));
  const left = (one.periods ?? []).flatMap((period) => cutPeriod(period, known, { inDegrees, agree: false }));
  const periods = [...left, ...(takes ? known : [])].toSorted((a, b) => compareDates(a.from, b.from));
  const total = sumOf(periods.map(({ kWh }) => kWh));
  return {
    ...one,
    from: periods[0]?.from ?? one.from,
    to: periods.at(-1)?.to ?? one.to,
    total,
    periods,
    present: periods.length,
  };
}

/** The use of two meters [kWh], on the days or in the periods of which both are known. */
function addMeter(base: Series, further: Series): Series {
  const { filled: _, days: __, periods: ___, bills: ____, ...rest } = withoutHours(base);
  const name = `${base.name} + ${further.name}`;
  const frame = base.periods ? base : further.periods ? further : undefined;
  if (frame) {
    const other = perDay(frame === base ? further : base);
    const periods = frame.periods!.flatMap((period) => addToPeriod(period, other));
    const total = sumOf(periods.map(({ kWh }) => kWh));
    const [from, to] = [periods[0]?.from ?? base.from, periods.at(-1)?.to ?? base.to];
    return { ...rest, name, resolution: 'period', from, to, total, periods };
  }
  const [mine, theirs] = [perDay(base), perDay(further)];
  const both = [...mine.keys()].filter((day) => theirs.has(day)).sort((a, b) => a - b);
  const [first, last] = [both[0] ?? toDayNumber(base.from), both.at(-1) ?? toDayNumber(base.from)];
  const values = Array.from({ length: last - first + 1 }, (____, i) => {
    const [a, b] = [mine.get(first + i), theirs.get(first + i)];
    return a === undefined || b === undefined ? null : a + b;
  });
  const total = values.reduce<number>((sum, kWh) => sum + (kWh ?? 0), 0);
  const sumShapes = (one: number[][], other: number[][]) =>
    one.map((halves, m) => halves.map((kWh, h) => kWh + other[m]![h]!));
  return {
    ...rest,
    name,
    resolution: 'day',
    from: toCivilDate(first),
    to: toCivilDate(last + 1),
    total,
    days: { first: toCivilDate(first), values },
    ...(base.dayShape && further.dayShape ? { dayShape: sumShapes(base.dayShape, further.dayShape) } : {}),
    ...(base.weekShape && further.weekShape
      ? { weekShape: base.weekShape.map((shape, part) => sumShapes(shape, further.weekShape![part]!)) }
      : {}),
    present: both.length,
    expected: values.length,
  };
}

function addToPeriod(period: EvidencePeriod, other: ReadonlyMap<number, number>): EvidencePeriod[] {
  const { quantity: _, unit: __, costPence: ___, ...rest } = period;
  let kWh = period.kWh;
  for (let day = toDayNumber(period.from); day < toDayNumber(period.to); day++) kWh += other.get(day) ?? Number.NaN;
  return Number.isNaN(kWh) ? [] : [{ ...rest, kWh }];
}
