/**
 * Files of one home and meter go on in one another. Where a number, a counter or the amounts say that one may be of
 * another meter or home, that is asked: nothing else would, since they tell of other days.
 */
import { compareDates, toDayNumber } from '../../model/calendar/civil.ts';
import { areOtherRegisters, registerHours } from '../../model/evidence/register-hours.ts';
import { findRivals, LEAST_DAYS, perDay } from '../../model/evidence/rivals.ts';
import type { BillMeter } from '../../model/shapes/bill.ts';
import { type Evidence, isTemperature, type Remark, type Series, standsBeside } from '../../model/shapes/evidence.ts';
import { tell } from '../../model/shapes/told.ts';
import { registerName } from './register-name.ts';

/** What one import says of one kind of energy, or of the weather. */
interface Stretch {
  readonly import: Evidence;
  readonly series: readonly Series[];
  readonly from: string;
  readonly to: string;
}

/** Why two may not be of one meter. */
type Difference = Pick<Remark, 'code' | 'expected' | 'expectedTold'>;
const tellChange = (first: number, next: number) => ({ expectedTold: tell('first-then', { first, next }) });

/**
 * Questions about what does not go on in the others of its kind.
 * @param evidence the imports in force
 * @param coming the one on its way in; without it all are asked about that are not of the meter of the first
 */
export function askOtherMeters(evidence: readonly Evidence[], coming?: Evidence): Remark[] {
  return [...kindsOf(evidence)].flatMap((stretches) => {
    const meters = byMeter(stretches);
    if (meters.length < 2) return [];
    const open = meters.filter((meter) => !meter.some((one) => one.series.some(({ goesOn }) => goesOn)));
    const first = evidence.find((one) => open.some((meter) => holds(meter, one)));
    const asked = open.filter((meter) =>
      coming ? meter.every((one) => one.import === coming) : first && !holds(meter, first),
    );
    return asked.flatMap((meter) =>
      meter.flatMap((own) => {
        const others = stretches.filter((one) => !meter.includes(one));
        const [other, why] = others.flatMap((one) => {
          const why = differenceOf(one, own);
          return why ? [[one, why] as const] : [];
        })[0] ?? [others[0]!, { code: 'records-number-asked' }];
        return [remarkOf(own, other, why)];
      }),
    );
  });
}

function remarkOf({ import: { fileName }, series }: Stretch, other: Stretch, why: Difference): Remark {
  const { carrier } = series[0]!;
  const names = series.map(({ name }) => name).join(' + ');
  // What a bill is about has no name but its kind of energy.
  const named = names === carrier ? { carrier } : { column: names };
  return { ...why, weight: 'question', file: fileName, ...named, found: other.import.fileName };
}

/** What was typed has no meter, and of what stands beside others it was said already. */
function kindsOf(evidence: readonly Evidence[]): Iterable<Stretch[]> {
  const kinds = new Map<string, Stretch[]>();
  for (const one of evidence) {
    if (one.shape === 'typed') continue;
    const own = one.series.filter((series) => standsBeside(series) && series.beside === undefined);
    for (const [kind, series] of Map.groupBy(own, ({ carrier, role }) => `${carrier} ${role}`)) {
      const froms = series.map(({ from }) => from).sort(compareDates);
      const tos = series.map(({ to }) => to).sort(compareDates);
      const stretch = { import: one, series, from: froms[0]!, to: tos.at(-1)! };
      kinds.set(kind, [...(kinds.get(kind) ?? []), stretch]);
    }
  }
  return kinds.values();
}

const holds = (meter: readonly Stretch[], one: Evidence): boolean => meter.some((stretch) => stretch.import === one);

/** In order of time each goes to the meter that it is surely of, else to the latest that nothing speaks against. */
function byMeter(stretches: readonly Stretch[]): Stretch[][] {
  const meters: Stretch[][] = [];
  const inTime = stretches.toSorted(
    (a, b) =>
      compareDates(a.from, b.from) || compareDates(a.to, b.to) || compareDates(a.import.sha256, b.import.sha256),
  );
  for (const one of inTime) {
    const known =
      meters.find((meter) =>
        meter.some((other) => compareNumbers(other, one) === 'same' && !compareRates(other, one)),
      ) ??
      meters.findLast((meter) => meter.some((other) => meet(other, one) && !compareMet(other, one))) ??
      meters.findLast(
        (meter) =>
          !meter.some((other) => compareRates(other, one) ?? compareNumbers(other, one) ?? compareMet(other, one)) &&
          !compareCourse(meter.at(-1)!, one),
      );
    if (known) known.push(one);
    else meters.push([one]);
  }
  return meters;
}

function differenceOf(a: Stretch, b: Stretch): Difference | undefined {
  const [before, after] = a.from <= b.from ? [a, b] : [b, a];
  const byRate = compareRates(before, after);
  if (byRate) return byRate;
  const byNumber = compareNumbers(before, after);
  return byNumber === 'same' ? undefined : (byNumber ?? compareMet(before, after) ?? compareCourse(before, after));
}

/** On days that both tell of they agree, or it is asked what they are beside each other. */
function meet(a: Stretch, b: Stretch): boolean {
  if (a.to <= b.from || b.to <= a.from) return false;
  const days = new Set(a.series.flatMap((one) => [...perDay(one).keys()]));
  return b.series.flatMap((one) => [...perDay(one).keys()]).filter((day) => days.has(day)).length >= LEAST_DAYS;
}

/** Day and night registers of one meter are no years of it, whatever their numbers. */
function compareRates(a: Stretch, b: Stretch): Difference | undefined {
  if (isTemperature(a.series[0]!.carrier)) return undefined;
  const [mine, theirs] = [a, b].map(({ series, import: { fileName } }) =>
    series.map(({ name }) => (registerHours(name) === 'all' ? fileName.replaceAll(/[-_.]/g, ' ') : name)),
  ) as [string[], string[]];
  const areOther = mine.every((one) => theirs.every((other) => areOtherRegisters(one, other)));
  return areOther ? { code: 'records-register-asked', expected: `${mine[0]} → ${theirs[0]}` } : undefined;
}

/**
 * Of two that tell of the same days: alike in what they make of them, they may be of two homes that are alike. Where
 * they are not, it is asked what they are beside each other.
 */
function compareMet(a: Stretch, b: Stretch): Difference | undefined {
  if (!meet(a, b) || isTemperature(a.series[0]!.carrier)) return undefined;
  const byNumber = compareNumbers(a, b);
  if (byNumber === 'same') return undefined;
  const why = byNumber ?? compareReadings(a, b);
  return why && findRivals([...a.series, ...b.series]).length === 0 ? why : undefined;
}

interface ReadingOn {
  readonly key: string;
  readonly on: string;
  readonly reading: number;
}

/** One counter stands at one number on a day: most readings of one have to lie between those of the other. */
function compareReadings(a: Stretch, b: Stretch): Difference | undefined {
  const ours = Map.groupBy(readingsOf(a), ({ key }) => key);
  for (const [key, theirs] of Map.groupBy(readingsOf(b), (one) => one.key)) {
    const own = (ours.get(key) ?? []).toSorted((x, y) => compareDates(x.on, y.on));
    // A meter that was changed on the way tells nothing of another.
    if (own.some(({ reading }, i) => i > 0 && reading < own[i - 1]!.reading)) continue;
    const pairs = theirs.flatMap((one) => {
      const before = own.findLast(({ on }) => on <= one.on);
      const after = own.find(({ on }) => on >= one.on);
      return before && after ? [{ one, before, after }] : [];
    });
    const apart = pairs.filter(({ one: { reading }, before, after }) => {
      const slack = APART * (after.reading - before.reading) + 1;
      return reading < before.reading - slack || reading > after.reading + slack;
    });
    const [first] = apart;
    if (first && pairs.length >= LEAST_READINGS && 2 * apart.length > pairs.length)
      return { code: 'records-counter-asked', ...tellChange(first.before.reading, first.one.reading) };
  }
  return undefined;
}

/** Fewer readings may be slips. A judgement. */
const LEAST_READINGS = 2;

/** What a counter showed on which day, without estimates. */
const readingsOf = ({ series }: Stretch): ReadingOn[] =>
  series.flatMap(({ bills = [] }) =>
    bills.flatMap(({ bill: { fuel, from, to, meterUnit, meters } }) =>
      meters.flatMap(({ name, opening, openingKind, closing, closingKind }) => {
        const key = `${fuel} ${name} ${meterUnit}`;
        return [
          ...(opening === undefined || openingKind === 'estimated' ? [] : [{ key, on: from, reading: opening }]),
          ...(closing === undefined || closingKind === 'estimated' ? [] : [{ key, on: to, reading: closing }]),
        ];
      }),
    ),
  );

/** A supply point outlasts its meters, so its number goes before theirs. */
function compareNumbers(a: Stretch, b: Stretch): 'same' | Difference | undefined {
  const kinds = isTemperature(a.series[0]!.carrier) ? (['station'] as const) : (['point', 'meter'] as const);
  for (const kind of kinds) {
    const [mine, theirs] = [a, b].map(({ series }) =>
      series.flatMap(({ numbers = [] }) => numbers.flatMap(({ of, end }) => (of === kind ? [end] : []))),
    ) as [string[], string[]];
    if (mine.length === 0 || theirs.length === 0) continue;
    if (mine.some((end) => theirs.includes(end))) return 'same';
    const code = kind === 'station' ? 'records-station-asked' : 'records-number-asked';
    return { code, expected: `…${mine.at(-1)} → …${theirs[0]}` };
  }
  return undefined;
}

/** Of two one after the other. */
function compareCourse(before: Stretch, after: Stretch): Difference | undefined {
  if (before.to > after.from) return undefined;
  const ends = endsOf(after);
  for (const one of endsOf(before)) {
    const next = ends.find(({ key }) => key === one.key);
    if (next && !runsOn(one, next)) return { code: 'records-counter-asked', ...tellChange(one.closing, next.opening) };
  }
  return compareLevels(before, after);
}

interface CounterEnds {
  readonly key: string;
  readonly from: string;
  readonly to: string;
  readonly opening: number;
  readonly closing: number;
  readonly openingKind?: BillMeter['openingKind'] | undefined;
  readonly closingKind?: BillMeter['closingKind'] | undefined;
}

/** Readings at the beginning and end of each counter, of bills from the first to the last. */
function endsOf({ series }: Stretch): CounterEnds[] {
  return series.flatMap(({ name, from, to, counter, bills = [] }): CounterEnds[] => {
    if (counter) {
      const { first: opening, last: closing, unit } = counter;
      return [{ key: `${registerName(name)} ${unit}`, from, to, opening, closing }];
    }
    const read = bills
      .toSorted((a, b) => compareDates(a.bill.from, b.bill.from))
      .flatMap(({ bill }) => bill.meters.map((meter) => ({ ...bill, ...meter })));
    return [...Map.groupBy(read, (one) => `${one.fuel} ${one.name} ${one.meterUnit}`)].flatMap(([key, ofMeter]) => {
      const [first, last] = [ofMeter[0]!, ofMeter.at(-1)!];
      if (first.opening === undefined || last.closing === undefined) return [];
      const { opening, openingKind } = first;
      const { closing, closingKind } = last;
      return [{ key, from: first.from, to: last.to, opening, closing, openingKind, closingKind }];
    });
  });
}

/** Rounding, and a day's use between two bills, of what the longer took. A judgement. */
const APART = 0.1;
/** In winter a day takes so many times what it took in summer. A judgement. */
const WINTER = 12;

/** An estimate may be put right downwards, and a counter that is full begins again. */
function runsOn(before: CounterEnds, after: CounterEnds): boolean {
  const [{ closing }, { opening }] = [before, after];
  if (before.closingKind === 'estimated' || after.openingKind === 'estimated') return true;
  const full = 10 ** Math.ceil(Math.log10(Math.max(10, closing)));
  if (opening < closing) return closing > full * 0.9 && opening < full * 0.1;
  const used = [before, after].map((one) => Math.max(0, one.closing - one.opening));
  const perDay = [before, after].map((one, i) => used[i]! / Math.max(1, toDayNumber(one.to) - toDayNumber(one.from)));
  const gap = toDayNumber(after.from) - toDayNumber(before.to);
  return opening - closing <= APART * Math.max(...used) + 1 + WINTER * gap * Math.max(...perDay);
}

/** Days held against each other at the joint, and how many times as much a home hardly takes from one month to the next. Judgements. */
const HELD_DAYS = 28;
const LEAST_HELD = 14;
const TIMES = { electricity: 10, other: 100 };

/** A year of one home and the next differ; ten times as much electricity, or a unit that was read otherwise, is another matter. */
function compareLevels(before: Stretch, after: Stretch): Difference | undefined {
  const { carrier } = before.series[0]!;
  if (isTemperature(carrier)) return undefined;
  const end = toDayNumber(before.to);
  if (toDayNumber(after.from) - end > HELD_DAYS) return undefined;
  const middles = [before, after].map(({ series }, i) => {
    const first = i === 0 ? end - HELD_DAYS : toDayNumber(after.from);
    const byDay = new Map<number, number>();
    for (const one of series) for (const [day, kWh] of perDay(one)) byDay.set(day, (byDay.get(day) ?? 0) + kWh);
    const held = [...byDay].flatMap(([day, kWh]) => (day >= first && day < first + HELD_DAYS ? [kWh] : []));
    return held.length < LEAST_HELD ? 0 : held.sort((a, b) => a - b)[held.length >> 1]!;
  });
  const [low, high] = [Math.min(...middles), Math.max(...middles)];
  const times = carrier === 'electricity' ? TIMES.electricity : TIMES.other;
  if (low <= 0 || high <= low * times) return undefined;
  const [was, is] = middles.map((kWh) => Number(kWh.toPrecision(2)));
  return { code: 'records-level-asked', ...tellChange(was!, is!) };
}
