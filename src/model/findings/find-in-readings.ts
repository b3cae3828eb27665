/** All detectors over what is known of a household's readings. */
import { toDayNumber } from '../calendar/civil.ts';
import type { EvidencePeriod } from '../shapes/evidence.ts';
import type { Finding } from '../shapes/finding.ts';
import { COLDEST_C, findBackupInCold } from './backup-in-cold.ts';
import { findBaseLoad } from './base-load.ts';
import { findBehaviour } from './behaviour.ts';
import { cutAtGaps } from './cut-at-gaps.ts';
import { findDearHours } from './dear-hours.ts';
import { findEstimateCorrected } from './estimate-corrected.ts';
import { findHeater } from './heater.ts';
import { holidays, type Spell, sharesOfUsual, weeksOfLess } from './holidays.ts';
import { emptySpells, findHomeEmpty, findWeeksOfLess, livedInDays } from './home-empty.ts';
import { findLargeLoad, largeLoads } from './large-load.ts';
import { loadsOf } from './loads-of.ts';
import {
  type MeterDays,
  type MeterReadings,
  meterDays,
  type OutdoorDays,
  onlyDays,
  type Prices,
} from './meter-days.ts';
import { findMeterScale } from './meter-scale.ts';
import { findNightSetback } from './night-setback.ts';
import { darkHours, findOwnGeneration } from './own-generation.ts';
import { findRegistersSwapped } from './registers-swapped.ts';
import type { TwoRegisters } from './two-registers.ts';
import { findWaterOften } from './water-often.ts';
import { withoutLoads, withoutMachine } from './without-loads.ts';

export interface FindingsInput {
  readonly readings: readonly MeterReadings[];
  readonly outdoor?: OutdoorDays;
  readonly prices: Prices;
  /** Bills or meter-reading periods, for estimates. */
  readonly periods?: readonly EvidencePeriod[];
  /** Bills of a two-rate meter. */
  readonly registers?: readonly TwoRegisters[];
}

/**
 * Findings in half-hourly or hourly readings [kWh], the dearest a year first.
 * Where the machine has a meter of its own, the house's meter is looked at less the machine's, so that neither is taken
 * for the other. Each detector's rates of false alarm and of hits are measured in `npm run prove`.
 */
export function findInReadings({ readings, outdoor, prices, periods, registers }: FindingsInput): Finding[] {
  const meters = readings.flatMap((one) => meterDays(one, outdoor) ?? []);
  const machine = meters.find(({ meter }) => meter === 'heat-pump');
  const house = meters.find(({ meter }) => meter === 'whole-house');
  const rest = machine && house ? withoutMachine(house, machine) : house;
  const ofMachine = machine ? findOnMeter(machine, prices, true) : [];
  const ofRest = rest ? findOnMeter(rest, prices, !machine) : [];
  const findings = [
    ...ofMachine.map((one) => besideOther(one, ofRest)),
    ...ofRest.map((one) => besideOther(one, ofMachine)),
    ...(house && registers ? findRegistersSwapped(registers, house, prices) : []),
    ...(periods ? findEstimateCorrected(periods, outdoor, prices) : []),
  ];
  return findings.sort((a, b) => Math.abs(b.penceYear) - Math.abs(a.penceYear));
}

/**
 * What happens on both meters at once: no one meter that counts otherwise does that, and heating turned down spares nothing
 * else in the home. People do both.
 */
function besideOther(finding: Finding, others: readonly Finding[]): Finding {
  const { code, may, from, kWh } = finding;
  const isBoth = others.some(
    (one) =>
      (one.code === code || (code === 'behaviour-changed' && one.code === 'base-load-rose')) &&
      (code === 'home-empty' || Math.sign(one.kWh) === Math.sign(kWh)) &&
      Math.abs(toDayNumber(one.from) - toDayNumber(from)) <= TOGETHER_DAYS,
  );
  if (!isBoth || !may) return finding;
  if (code === 'home-empty') return { ...finding, may: ['home-empty'] };
  if (code !== 'behaviour-changed' || !may.includes('newly-occupied')) return finding;
  const left = may.filter((cause) => cause !== 'newly-occupied' && cause !== 'meter-wrong');
  return {
    ...finding,
    may: ['newly-occupied', ...left],
    ask: finding.ask.filter((ask) => ask !== 'meter-exchanged'),
    check: finding.check.filter((check) => check !== 'meter-test'),
  };
}

/**
 * `heats` where the heating is on this meter: nights, mornings and the weather speak of it only there. What one detector has
 * explained is taken out before the next one looks, so that no unit is told of twice: a meter that counts otherwise, even
 * loads, days without people, hours of sun, what helps on the coldest days, what runs all night.
 */
function findOnMeter(counted: MeterDays, prices: Prices, heats: boolean): Finding[] {
  const generation = findOwnGeneration(counted);
  const sunny = generation.length > 0;
  const asCounted = awayOf(counted, heats, sunny);
  const scale = sunny ? [] : findMeterScale(livedInDays(counted, [...asCounted.even, ...allWeeks(asCounted)]), prices);
  const days = scale[0] ? countedAsBefore(counted, scale[0]) : counted;
  const loads = loadsOf(days);
  const heaters = findHeater(days, loads, prices);
  const large = findLargeLoad(days, loads, prices);
  const found = new Set(heaters.map(({ seen }) => seen.powerKW));
  const without = withoutLoads(days, [
    ...loads.filter(({ powerKW }) => found.has(powerKW)),
    ...largeLoads(days, loads),
  ]);
  const away = without === counted ? asCounted : awayOf(without, heats, sunny);
  const even = away.even.filter(
    ([first, last]) => !away.less.some(({ spell }) => first <= spell[1] && last >= spell[0]),
  );
  const livedIn = livedInDays(without, [...even, ...away.less.map(({ spell }) => spell)]);
  const usual = livedInDays(without, [...even, ...allWeeks(away)]);
  const settled = sunny ? darkHours(usual) : usual;
  // What is left of a day with hours of sun taken out has no clock to price by.
  const meanPrices = sunny ? { pencePerKWh: prices.pencePerKWh } : prices;
  const cold = heats ? findBackupInCold(settled, meanPrices) : [];
  const mild = cold.length > 0 ? onlyDays(settled, (day) => !(settled.outdoorC[day]! < COLDEST_C)) : settled;
  // What rose all night on the heat pump's own meter may as well be heating: the whole change is told, as one question.
  const isOwn = heats && days.meter === 'heat-pump';
  const changed = isOwn ? findBehaviour(mild, meanPrices, heats) : [];
  const baseLoad = changed.length > 0 ? [] : findBaseLoad(mild, meanPrices, heats);
  const told = isOwn && baseLoad.length === 0 ? changed : findBehaviour(lessBase(mild, baseLoad), meanPrices, heats);
  const behaviour = told.map((change) => besideLoads(change, [...heaters, ...large]));
  const doubted = behaviour.find(({ may }) => may?.includes('meter-wrong'));
  const findings = [
    ...scale,
    ...generation,
    ...findWeeksOfLess(without, away.less, prices),
    ...findHomeEmpty(without, even),
    ...[...heaters, ...large].map((load) => (doubted ? atDoubtedPower(load, doubted) : load)),
    ...findWaterOften(without, prices),
    ...cold,
    ...baseLoad,
    ...(sunny ? [] : findDearHours(livedIn, prices)),
    ...(heats ? findNightSetback(livedIn) : []),
    ...behaviour,
  ];
  return findings.flatMap((finding) => cutAtGaps(finding, days));
}

/** Weeks and holidays without people; where the sun gives, its hours come and go by weeks as well. */
function awayOf(days: MeterDays, heats: boolean, sunny: boolean) {
  const share = sharesOfUsual(days);
  return {
    even: emptySpells(days, sunny, share),
    less: sunny ? [] : weeksOfLess(days, heats, share),
    holidays: holidays(days, share),
  };
}

const allWeeks = ({ less, holidays }: Pick<ReturnType<typeof awayOf>, 'less' | 'holidays'>): readonly Spell[] => [
  ...less.map(({ spell }) => spell),
  ...holidays,
];

/** Days within which a load and a change begin together. */
const TOGETHER_DAYS = 21;

/** A change that begins with a load may be what was not caught of it: the load's causes and questions come first. */
function besideLoads(change: Finding, loads: readonly Finding[]): Finding {
  const begun = loads.filter(
    ({ code, from }) =>
      code !== 'weekly-pasteurisation' && Math.abs(toDayNumber(from) - toDayNumber(change.from)) <= TOGETHER_DAYS,
  );
  if (begun.length === 0 || change.kWh <= 0) return change;
  const own = begun.flatMap(loadCauses);
  return {
    ...change,
    may: [...new Set([...own, ...(change.may ?? [])])],
    ask: [...new Set([...begun.flatMap(({ ask }) => ask), ...change.ask])],
  };
}

const loadCauses = ({ may, code }: Finding) =>
  may ?? [code === 'large-load' ? ('large-load' as const) : ('heater' as const)];

/** A load that begins when the meter may have begun to count otherwise may be another load at its true power; once a week is once a week. */
function atDoubtedPower(load: Finding, { from }: Finding): Finding {
  if (toDayNumber(load.to) <= toDayNumber(from) || load.code === 'weekly-pasteurisation') return load;
  return { ...load, may: [...loadCauses(load), 'meter-wrong'] };
}

/** Readings since the meter counts otherwise, at what it counted before. */
function countedAsBefore(days: MeterDays, { from, seen }: Finding): MeterDays {
  const first = toDayNumber(from);
  const share = (day: number) => (days.dayNumber[day]! >= first ? 1 / Number(seen.times) : 1);
  return {
    ...days,
    kWh: days.kWh.map((kWh, i) => kWh * share(Math.floor(i / days.perDay))),
    dayKWh: days.dayKWh.map((kWh, day) => kWh * share(day)),
  };
}

/** The days less what runs all night since a day. */
function lessBase(days: MeterDays, [found]: readonly Finding[]): MeterDays {
  if (!found) return days;
  const first = toDayNumber(found.from);
  const perDay = (Number(found.seen.riseW) / 1000) * days.hours * days.perDay;
  return { ...days, dayKWh: days.dayKWh.map((kWh, day) => kWh - (days.dayNumber[day]! >= first ? perDay : 0)) };
}
