/** What is wrong with a tariff, as data: hours without a price or with two, versions out of order, odd prices. */

import { clockTimeOf, minuteOf } from '../calendar/civil.ts';
import type { Tariff, TariffBand, TariffVersion } from '../shapes/tariff.ts';
import { bandNames, DAY_KINDS, dayKindsOf, MINUTES_PER_DAY } from './band-times.ts';
import { type ChargeFault, findChargeFaults } from './charge-faults.ts';
import { findSeriesFaults, type SeriesFault } from './series-faults.ts';
import { inclVat, standingPencePerDayInclVat } from './slot-price.ts';

export type TariffFaultCode =
  | SeriesFault['code']
  | ChargeFault['code']
  | 'versions-order'
  | 'version-twice'
  | 'until-before-version'
  | 'band-gap'
  | 'band-overlap'
  | 'rest-twice'
  | 'rest-empty'
  | 'band-name-twice'
  | 'window-empty'
  | 'window-off-half-hour'
  | 'standing-negative'
  | 'standing-unusual'
  | 'standing-low'
  | 'price-unusual'
  | 'vat-unusual'
  | 'gas-with-times'
  | 'holidays-without-region';

/**
 * Codes and their data:
 * `versions-order` { from, previous }; `version-twice` { from }; `until-before-version` { from, until };
 * `band-gap` { month, day, from, to, count }; `band-overlap` { month, day, from, to, first, second, count };
 * `rest-twice` { first, second }; `rest-empty` { name }; `band-name-twice` { name }; `window-empty` { name, time };
 * `window-off-half-hour` { name, time }; `standing-negative` { pence }; `standing-unusual` { pence, high }; `standing-low` { pence };
 * `price-unusual` { name, pence, low, high }; `vat-unusual` { rate }; `gas-with-times` { name }.
 * `holidays-without-region` { name }; those of a price series in `series-faults.ts` (`series-order`, `series-hole`,
 * `series-day-length`, `series-gap`, `series-part-year`); those of other charges in `charge-faults.ts` (`standing-twice`,
 * `blocks-order`, `blocks-with-series`, `export-unusual`, `two-modules`, `own-meter-unusual`).
 * `month` is 1 to 12, `day` a kind of day such as "mon" or "bank-holiday", `from` and `to` clock times, `count` how many stretches
 * of the twelve typical weeks are so; the first one is named.
 */
export interface TariffFault {
  readonly code: TariffFaultCode;
  readonly weight: 'refusal' | 'question';
  /** Place in `versions`, from 0. */
  readonly version: number;
  readonly data: { readonly [name: string]: string | number };
}

/** Unit prices with VAT that a British household has met [pence/kWh]; common practice, no source. */
const USUAL_PENCE = { electricity: { low: 4, high: 60 }, gas: { low: 2, high: 20 } } as const;
/** Common practice, no source. Below the low one a charge that is not nought was most likely typed in pounds. */
const USUAL_STANDING_PENCE = { low: 5, high: 120 } as const;
/** 5 % domestic fuel and power (VAT Notice 701/19), 20 % standard, 0 relief of the past and prices quoted plain. */
const KNOWN_VAT_RATES: readonly number[] = [0, 0.05, 0.2];

/** Whether a fuel's price with VAT [pence/kWh] lies where households meet it, and between which two. */
export const usualFuelPence = (pencePerKWh: number) => {
  const { low, high } = USUAL_PENCE.gas;
  return { low, high, isUsual: pencePerKWh >= low && pencePerKWh <= high };
};

/** Every fault of a tariff; those of weight `refusal` leave it without a certain price for some hour or day. */
export function findTariffFaults(tariff: Tariff): TariffFault[] {
  return [
    ...versionFaults(tariff),
    ...tariff.versions.flatMap((version, place) => [
      ...restFaults(version, place),
      ...windowFaults(version, place),
      ...hourFaults(version, place),
      ...priceFaults(tariff, version, place),
      ...placed(version.series ? findSeriesFaults(version.series) : [], place),
      ...placed(findChargeFaults(version), place),
    ]),
  ];
}

const placed = (faults: readonly Omit<TariffFault, 'version'>[], version: number): TariffFault[] =>
  faults.map((fault) => ({ ...fault, version }));

function versionFaults({ versions, until }: Tariff): TariffFault[] {
  const faults: TariffFault[] = [];
  versions.forEach(({ from }, version) => {
    const previous = versions[version - 1]?.from;
    if (previous === undefined || from > previous) return;
    if (from === previous) faults.push({ code: 'version-twice', weight: 'refusal', version, data: { from } });
    else faults.push({ code: 'versions-order', weight: 'refusal', version, data: { from, previous } });
  });
  const last = versions.length - 1;
  const { from } = versions[last]!;
  if (until !== undefined && until < from) {
    faults.push({ code: 'until-before-version', weight: 'refusal', version: last, data: { from, until } });
  }
  return faults;
}

function restFaults({ bands }: TariffVersion, version: number): TariffFault[] {
  const faults: TariffFault[] = [];
  const rests = bands.filter((band) => band.times === 'rest');
  if (rests.length > 1) {
    const data = { first: rests[0]!.name, second: rests[1]!.name };
    faults.push({ code: 'rest-twice', weight: 'refusal', version, data });
  }
  bands.forEach(({ name }, place) => {
    if (bands.findIndex((band) => band.name === name) !== place) {
      faults.push({ code: 'band-name-twice', weight: 'refusal', version, data: { name } });
    }
  });
  return faults;
}

function windowFaults({ bands, bankHolidays }: TariffVersion, version: number): TariffFault[] {
  const faults: TariffFault[] = [];
  for (const { name, times } of bands) {
    if (times === 'rest') continue;
    if (!bankHolidays && times.some(({ days }) => days?.includes('bank-holiday'))) {
      faults.push({ code: 'holidays-without-region', weight: 'refusal', version, data: { name } });
    }
    for (const { from, to } of times) {
      if (minuteOf(from) === minuteOf(to) || from === '24:00') {
        faults.push({ code: 'window-empty', weight: 'refusal', version, data: { name, time: from } });
      }
      const time = [from, to].find((end) => minuteOf(end) % 30 !== 0);
      if (time) faults.push({ code: 'window-off-half-hour', weight: 'question', version, data: { name, time } });
    }
  }
  return faults;
}

interface Stretch {
  readonly month: number;
  readonly dayKind: number;
  readonly from: number;
  readonly to: number;
  readonly claims: readonly TariffBand[];
}

/** The twelve typical weeks cut at every time that the version mentions, with the bands that name each piece. */
function stretchesOf(version: TariffVersion): Stretch[] {
  const { bands } = version;
  const kinds = dayKindsOf(version);
  const ends = new Set([0, MINUTES_PER_DAY]);
  for (const { times } of bands) {
    if (times !== 'rest') for (const { from, to } of times) ends.add(minuteOf(from)).add(minuteOf(to));
  }
  const cuts = [...ends].sort((a, b) => a - b);
  const stretches: Stretch[] = [];
  for (let month = 1; month <= 12; month++) {
    for (let dayKind = 0; dayKind < kinds; dayKind++) {
      for (let i = 0; i + 1 < cuts.length; i++) {
        const from = cuts[i]!;
        const claims = bands.filter((band) => bandNames(band, month, dayKind, from));
        stretches.push({ month, dayKind, from, to: cuts[i + 1]!, claims });
      }
    }
  }
  return stretches;
}

function hourFaults(version: TariffVersion, place: number): TariffFault[] {
  const stretches = stretchesOf(version);
  const rest = version.bands.find((band) => band.times === 'rest');
  const unclaimed = stretches.filter(({ claims }) => claims.length === 0);
  const contested = stretches.filter(({ claims }) => claims.length > 1);
  const faults: TariffFault[] = [];
  if (rest && unclaimed.length === 0) {
    faults.push({ code: 'rest-empty', weight: 'refusal', version: place, data: { name: rest.name } });
  }
  if (!rest && unclaimed.length > 0) {
    const data = { ...whenOf(joined(unclaimed)), count: unclaimed.length };
    faults.push({ code: 'band-gap', weight: 'refusal', version: place, data });
  }
  if (contested.length > 0) {
    const [first, second] = contested[0]!.claims;
    const data = { ...whenOf(contested[0]!), first: first!.name, second: second!.name, count: contested.length };
    faults.push({ code: 'band-overlap', weight: 'refusal', version: place, data });
  }
  return faults;
}

/** The first stretch, run on through those of the same day that follow it without a break. */
function joined(stretches: readonly Stretch[]): Stretch {
  const first = stretches[0]!;
  let to = first.to;
  for (const next of stretches.slice(1)) {
    if (next.month !== first.month || next.dayKind !== first.dayKind || next.from !== to) break;
    to = next.to;
  }
  return { ...first, to };
}

function whenOf({ month, dayKind, from, to }: Stretch) {
  return { month, day: DAY_KINDS[dayKind]!, from: clockTimeOf(from), to: clockTimeOf(to) };
}

function priceFaults(tariff: Tariff, version: TariffVersion, place: number): TariffFault[] {
  const faults: TariffFault[] = [];
  const question = (code: TariffFaultCode, data: TariffFault['data']) =>
    faults.push({ code, weight: 'question', version: place, data });
  const { low, high } = USUAL_PENCE[tariff.fuel];
  for (const { name, pencePerKWh } of version.bands) {
    const pence = inclVat(version, pencePerKWh);
    if (pence < low || pence > high) question('price-unusual', { name, pence, low, high });
  }
  const { standingPencePerDay } = version;
  if (standingPencePerDay < 0) {
    faults.push({ code: 'standing-negative', weight: 'refusal', version: place, data: { pence: standingPencePerDay } });
  }
  const standing = standingPencePerDayInclVat(version);
  if (standing > USUAL_STANDING_PENCE.high) {
    question('standing-unusual', { pence: standing, high: USUAL_STANDING_PENCE.high });
  }
  if (standing > 0 && standing < USUAL_STANDING_PENCE.low) question('standing-low', { pence: standing });
  if (!KNOWN_VAT_RATES.includes(version.vat.rate)) question('vat-unusual', { rate: version.vat.rate });
  const timed = version.bands.find((band) => band.times !== 'rest' && version.bands.length > 1);
  if (tariff.fuel === 'gas' && timed) question('gas-with-times', { name: timed.name });
  return faults;
}
