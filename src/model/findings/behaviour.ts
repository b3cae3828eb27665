/** A day from which more or less is counted in the same weather, and what that day can be told to have begun. */

import { toCivilDate, toDayNumber } from '../calendar/civil.ts';
import { type Finding, type LikelyCause, sureOf, yearOfDays } from '../shapes/finding.ts';
import { meanOf } from '../units/sums.ts';
import { dearnessOf } from './clock-prices.ts';
import { coldLine } from './cold-line.ts';
import {
  correlationOf,
  heatingDegrees,
  knownWeather,
  type MeterDays,
  median,
  type Prices,
  unitsAndCost,
} from './meter-days.ts';
import { cameAtOnce, changeKind, findLineChange, findStepChange, type LineChange } from './two-lines.ts';

const LEAST_DAYS = 28;
/**
 * Less than this share of the use is the ordinary unsteadiness of a household, and of its lights on the house's meter: those
 * come and go little by little, so that a clear step within days may be smaller there too.
 */
const LEAST_SHARE = { 'heat-pump': 0.1, 'whole-house': 0.18 } as const;
/** A whole year of days shows every season, so that a difference can be said for the year. */
export const NEARLY_A_YEAR_DAYS = 330;
/** Days without heating that must be there before and since, to say whether the difference is there on them too. */
const LEAST_WARM = 8;
/** On days warmer than this nothing is heated, °C. */
const WARM_C = 16.5;
/** On warm days at most this share of the cold days' difference, where it comes with heating; at least that one, where it is there all year. */
const HEATING_SHARE = 0.4;
const STEADY_SHARE = 0.6;
const LEAST_T = 3;
/** Outdoor temperature and difference that hang together by this much are not said to have nothing to do with each other. */
const LEAST_CORRELATION = 0.45;

/** Less of a meter without heating is what homes without a change differ by from month to month. */
const LEAST_SHARE_OF_REST = 0.3;
/** From so many times on nobody may have lived there before: heating that was turned down, and little else. */
const OCCUPIED_FROM = 0.5;

/** From this much up or down (natural logarithm) a meter that counts otherwise must be thought of. */
const METER_FROM = 0.25;
const METER_FIRST_FROM = 0.5;
/** Days that are mostly warmer than this are a summer, in which heating may be left on, °C. */
export const SUMMER_C = 12;
/** So cold a home is heated; a change of which fewer days were than this share is one of a summer. A judgement. */
const HEATED_C = 10;
const LEAST_HEATED_SHARE = 0.1;

/** With the cold; only while the home is heated; on warm days as well; or the days cannot tell. */
export type ChangeKind = 'with-the-cold' | 'while-heated' | 'steady' | 'unclear';

/**
 * Change point of the energy signature: units [kWh] used since, less those that the line of the days before gives in
 * the same weather. `seen.kind` says whether the difference follows the cold, as far as these days can tell, and
 * `seen.coldCorrelation` how it hangs together with the outdoor temperature. `may` are causes that look alike on this meter;
 * where it `heats` not, what the machine takes is on a meter of its own.
 */
export function findBehaviour(days: MeterDays, prices: Prices, heats = true): Finding[] {
  const { known, below } = heatedInSeason(days);
  const use = known.map((day) => days.dayKWh[day]!);
  const outdoor = known.map((day) => days.outdoorC[day]!);
  const compared = findLineChange(below, use, LEAST_DAYS);
  const split = compared ?? findStepChange(below, use, LEAST_DAYS);
  const came = split && cameAtOnce(split, below, use);
  if (!split || !came?.isAtOnce) return [];
  const { at, before, after } = split;
  const share = split.change / split.was;
  const leastShare = heats ? LEAST_SHARE[came.isClear ? 'heat-pump' : days.meter] : LEAST_SHARE_OF_REST;
  if (!(split.was > 0) || Math.abs(share) < leastShare) return [];
  let kWh = 0;
  let year = 0;
  for (let i = 0; i < use.length; i++) {
    // A line drawn on to days much colder than its own would invent a difference.
    const was = compared ? before.intercept + before.slope * below[i]! : use[i]! - split.change;
    const difference = after.intercept - before.intercept + (after.slope - before.slope) * below[i]!;
    year += difference;
    if (i < at) continue;
    kWh += use[i]! - was;
  }
  // More on the days that are alike and less on all the others is no change that can be told.
  if (Math.sign(kWh) !== Math.sign(split.change)) return [];
  if (!holdsInLikeLight(split, below, use, (i) => days.dayNumber[known[i]!]!)) return [];
  const since = outdoor.slice(at);
  const told = kindOf(split, below, use, outdoor);
  // Of a summer alone the line of the colder days says too little for what follows the cold.
  const knowsCold = since.filter((celsius) => celsius <= HEATED_C).length >= LEAST_HEATED_SHARE * since.length;
  const kind = !compared || (told.kind === 'with-the-cold' && !knowsCold) ? 'unclear' : told.kind;
  const { coldCorrelation } = told;
  const span = compared !== null && use.length >= NEARLY_A_YEAR_DAYS;
  // A part of a year speaks for its own season; what is there on warm days and cold ones alike is there all year.
  const kWhYear = span ? yearOfDays(year, use.length) : kind === 'steady' ? yearOfDays(kWh, use.length - at) : kWh;
  const dearness = dearnessOf(days, prices, (place, day) => (day >= known[at]! ? days.kWh[place]! : 0));
  const more = kWh > 0;
  const mayBeMeter = Math.abs(Math.log(1 + share)) >= METER_FROM;
  const isMeter = Math.abs(Math.log(1 + share)) >= METER_FIRST_FROM;
  const isWarm = median(since) > SUMMER_C;
  // Warm walls and a high sun spare some in a summer that has no summer before it; they do not halve what is used.
  if (!more && isWarm && !isMeter) return [];
  const isSummer = heats && more && kind !== 'with-the-cold' && isWarm;
  const isOccupied = share >= OCCUPIED_FROM;
  return [
    {
      code: 'behaviour-changed',
      meter: days.meter,
      from: toCivilDate(days.dayNumber[known[at]!]!),
      to: toCivilDate(days.dayNumber[known.at(-1)!]! + 1),
      sure: sureOf(0.6 + Math.min(0.2, split.f / 200) + Math.min(0.15, Math.abs(share) / 2)),
      grade: span ? 'estimated' : 'assumed',
      seen: { share, kind, coldCorrelation, kWhPerDay: kWh / (use.length - at) },
      ...unitsAndCost(kWh, kWhYear, prices, dearness),
      may: [
        ...(isMeter ? (['meter-wrong'] as const) : []),
        ...(isOccupied ? (['newly-occupied'] as const) : []),
        ...(!heats ? (more ? OF_THE_REST : LESS_OF_THE_REST) : (more ? mayBeMore : mayBeLess)(kind, days.meter)),
        ...(isSummer ? (['summer-heating'] as const) : []),
        ...(mayBeMeter && !isMeter ? (['meter-wrong'] as const) : []),
      ],
      ask: [
        ...(mayBeMeter ? (['meter-exchanged'] as const) : []),
        ...(isSummer ? (['heating-in-summer'] as const) : []),
        ...(isOccupied ? (['away'] as const) : []),
        ...(!heats && more
          ? ASK_REST
          : more
            ? ASK_MORE[knowsCold ? kind : 'steady']
            : (['away', 'settings-changed'] as const)),
      ],
      check: [
        ...(isMeter ? (['meter-test'] as const) : []),
        ...(!heats
          ? (['sub-meter'] as const)
          : more
            ? [...(isSummer ? (['pipes-warm'] as const) : []), ...CHECK_MORE[knowsCold ? kind : 'steady']]
            : (['heat-made', 'heating-curve'] as const)),
        ...(mayBeMeter && !isMeter ? (['meter-test'] as const) : []),
      ],
      cautions: [],
    },
  ];
}

/**
 * A mild day [°C] that lies so far below the base [K] is not heated where it takes hardly more than the warm days about it [days]:
 * by less than this share of what the line gives it. Judgements.
 */
const UNHEATED = { fromC: 8, leastK: 2, share: 0.3, aboutDays: 45, leastWarm: 4 } as const;

/**
 * The days whose weather is known, with the degrees by which each lies below the temperature from which this home is heated. Mild
 * days on which nobody has switched the heating on yet are left out: that they end is no change in the home.
 */
function heatedInSeason(days: MeterDays): { known: number[]; below: number[] } {
  const all = knownWeather(days);
  const use = all.map((day) => days.dayKWh[day]!);
  const outdoor = all.map((day) => days.outdoorC[day]!);
  const { slope, below } = coldLine(use, outdoor);
  const warm = Array.from(all.keys()).filter((i) => below[i] === 0);
  const isHeated = (i: number) => {
    if (outdoor[i]! < UNHEATED.fromC || below[i]! < UNHEATED.leastK) return true;
    const isNear = (one: number) =>
      Math.abs(days.dayNumber[all[one]!]! - days.dayNumber[all[i]!]!) <= UNHEATED.aboutDays;
    const about = warm.filter(isNear).map((one) => use[one]!);
    return about.length < UNHEATED.leastWarm || use[i]! >= median(about) + UNHEATED.share * slope * below[i]!;
  };
  const kept = Array.from(all.keys()).filter(isHeated);
  return { known: kept.map((i) => all[i]!), below: kept.map((i) => below[i]!) };
}

/** Day number of a winter solstice, days in a year, and days by which the sun may differ. */
const SOLSTICE = toDayNumber('2020-12-21');
const YEAR_DAYS = 365.25;
const LIKE_LIGHT_DAYS = 7;
/** So many days with the sun as high as before can speak; on them so much of the difference must be seen. */
const LEAST_LIKE = 10;
const LIKE_SHARE = 0.5;
/** So many days before with the sun as high say what it did to them. */
const LEAST_BESIDE = 3;

/**
 * Whether the difference is there on days with as much sun as days before: the sun on windows and walls spares heat on days as
 * cold, and ground is warm in autumn, so that less in spring than in autumn, and more in the dark months, is the season's doing until
 * the sun is alike. Where days before had the sun as high, what they differ by from the line of all is the season's too.
 */
function holdsInLikeLight(
  { at, before, change, common }: LineChange,
  below: ArrayLike<number>,
  use: readonly number[],
  dayNumber: (place: number) => number,
): boolean {
  const fromSolstice = (i: number) => {
    const since = (((dayNumber(i) - SOLSTICE) % YEAR_DAYS) + YEAR_DAYS) % YEAR_DAYS;
    return Math.min(since, YEAR_DAYS - since);
  };
  const more = (i: number) => use[i]! - before.intercept - before.slope * below[i]!;
  const earlier = Array.from({ length: at }, (_, i) => ({
    light: fromSolstice(i),
    heated: below[i]! > 0,
    more: more(i),
  }));
  const beside = common.flatMap((i) => {
    const light = fromSolstice(i);
    const like = earlier.filter(
      (one) => Math.abs(one.light - light) <= LIKE_LIGHT_DAYS && one.heated === below[i]! > 0,
    );
    return like.length >= LEAST_BESIDE ? [more(i) - meanOf(like.map((one) => one.more))] : [];
  });
  if (beside.length >= LEAST_LIKE && meanOf(beside) / change < LIKE_SHARE) return false;
  const lights = earlier.map(({ light }) => light);
  const [least, most] = [Math.min(...lights) - LIKE_LIGHT_DAYS, Math.max(...lights) + LIKE_LIGHT_DAYS];
  const like = common.filter((i) => (change < 0 ? fromSolstice(i) <= most : fromSolstice(i) >= least));
  // Too few of them say nothing; that it came on a day speaks for it then.
  return like.length < LEAST_LIKE || meanOf(like.map(more)) / change >= LIKE_SHARE;
}

/** What the days since show of the difference: only what they do show is said. */
function kindOf(
  split: LineChange,
  below: ArrayLike<number>,
  use: readonly number[],
  outdoor: readonly number[],
): { kind: ChangeKind; coldCorrelation: number } {
  const { at, before: line, common } = split;
  const more = (i: number) => use[i]! - line.intercept - line.slope * below[i]!;
  const coldCorrelation = correlationOf(
    common.map(more),
    common.map((i) => outdoor[i]!),
  );
  const isWarm = (i: number) => outdoor[i]! >= WARM_C;
  const warm = common.filter(isWarm).map(more);
  const cold = common.filter((i) => below[i]! > 0).map(more);
  const warmBefore = Array.from({ length: at }, (_, i) => i)
    .filter(isWarm)
    .map(more);
  const way = Math.sign(split.change);
  const follows = way * coldCorrelation <= -LEAST_CORRELATION;
  const kind = changeKind(split, below, use, outdoor.map(heatingDegrees));
  const knowsWarm = Math.min(warm.length, warmBefore.length, cold.length) >= LEAST_WARM;
  const [onWarm, onCold] = [meanOf(warm), meanOf(cold)];
  // What is there on warm days too does not come with the cold alone, whatever the colder days say.
  const spares = !knowsWarm || onWarm / onCold <= HEATING_SHARE;
  if (follows && kind === 'with-the-cold' && spares) return { kind, coldCorrelation };
  if (!knowsWarm) return { kind: 'unclear', coldCorrelation };
  const error = Math.hypot(errorOf(warm), errorOf(cold));
  const warmError = Math.hypot(errorOf(warm), errorOf(warmBefore));
  const isSteady = way * onWarm >= LEAST_T * warmError && onWarm / onCold >= STEADY_SHARE;
  const isHeating = way * (onCold - onWarm) >= LEAST_T * error && onWarm / onCold <= HEATING_SHARE;
  if (isSteady && Math.abs(coldCorrelation) < LEAST_CORRELATION) return { kind: 'steady', coldCorrelation };
  return { kind: isHeating && way * coldCorrelation < 0 ? 'while-heated' : 'unclear', coldCorrelation };
}

/** Standard error of a mean, days twice as alike as chance would have them. */
function errorOf(values: readonly number[]): number {
  const mean = meanOf(values);
  return Math.sqrt(
    (2 * values.reduce((sum, value) => sum + (value - mean) ** 2, 0)) / (values.length - 1) / values.length,
  );
}

/** A heater that ran for a part of the winter follows the cold as well. */
const HEATING = ['machine-works-less', 'more-heat', 'rooms-warmer', 'heater'] as const;
const ALL_YEAR = ['more-water', 'heater'] as const;
const OF_THE_HOUSE = ['other-use', 'base-load', 'large-load'] as const;
/** Where the machine has a meter of its own: an immersion heater may hang on the house's. */
const OF_THE_REST = [...OF_THE_HOUSE, 'plug-in-heaters', 'heater'] as const;
const LESS_OF_THE_REST = ['less-other-use', 'home-empty', 'own-generation', 'heater-off'] as const;
const ASK_REST = ['new-appliance', 'tub-or-pool', 'more-people', 'plug-in-heaters'] as const;

function mayBeMore(kind: ChangeKind, meter: MeterDays['meter']): LikelyCause[] {
  const all = meter === 'whole-house' ? OF_THE_HOUSE : (['base-load'] as const);
  if (kind === 'steady') return [...ALL_YEAR, ...all];
  if (kind === 'unclear') return [...HEATING, 'more-water', ...all];
  return [...HEATING, ...(meter === 'whole-house' ? (['plug-in-heaters'] as const) : [])];
}

function mayBeLess(kind: ChangeKind, meter: MeterDays['meter']): LikelyCause[] {
  const house: LikelyCause[] = meter === 'whole-house' ? ['less-other-use', 'own-generation'] : [];
  // What else warms the rooms, day and night, spares the heating on every heated day alike.
  const heating: LikelyCause[] = kind === 'steady' ? ['less-heat'] : ['less-heat', 'machine-works-better'];
  const water: LikelyCause[] = kind === 'steady' || kind === 'unclear' ? ['less-water', 'heater-off'] : [];
  return [...heating, 'home-empty', ...water, ...house];
}

const ASK_MORE = {
  'with-the-cold': ['rooms-warmer', 'rooms-added', 'settings-changed'],
  'while-heated': ['rooms-warmer', 'rooms-added', 'settings-changed'],
  steady: ['more-people', 'baths', 'new-appliance'],
  unclear: ['more-people', 'rooms-warmer', 'rooms-added', 'settings-changed'],
} as const satisfies Record<ChangeKind, Finding['ask']>;
/** First the reading that tells the causes apart. */
const CHECK_MORE = {
  'with-the-cold': ['heat-made', 'heating-curve'],
  'while-heated': ['heat-made', 'heating-curve'],
  steady: ['heater-hours', 'water-setpoint'],
  unclear: ['heat-made', 'heater-hours', 'heating-curve', 'water-setpoint'],
} as const satisfies Record<ChangeKind, Finding['check']>;
