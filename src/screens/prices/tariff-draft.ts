/** A tariff while it is being typed: some figures may still be missing. */

import type { FileOut } from '../../desk/contract.ts';
import type { CivilDate } from '../../model/shapes/dates.ts';
import type {
  DayKind,
  DemandCharge,
  PriceSeries,
  Tariff,
  TariffBand,
  TariffVersion,
  TariffWindow,
} from '../../model/shapes/tariff.ts';
import type { Wording } from '../../model/shapes/told.ts';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { readDate } from '../shared/date-text.ts';

export interface WindowDraft {
  readonly from: string;
  readonly to: string;
  /** Empty means every day. */
  readonly days: readonly DayKind[];
  /** Empty means every month. */
  readonly months: readonly number[];
}
/** Steps from the first unit of each day or month on. */
export interface BlocksDraft {
  readonly per: 'day' | 'month';
  readonly steps: readonly { readonly upToKWh: number | undefined; readonly pencePerKWh: number | undefined }[];
}
export interface BandDraft {
  readonly name: string;
  readonly pencePerKWh: number | undefined;
  /** Null is every time that no other band claims. */
  readonly windows: readonly WindowDraft[] | null;
  readonly blocks?: BlocksDraft | undefined;
}
/** Months of the spans that a standing charge may be stated for beside the day. */
export const STANDING_MONTHS = { month: 1, quarter: 3, year: 12 } as const;
export type StandingSpan = keyof typeof STANDING_MONTHS;

export interface VersionDraft {
  readonly from: string;
  readonly standingPencePerDay: number | undefined;
  /** Where it is charged by longer than a day; `standingPencePerDay` is then not asked for. */
  readonly standingBy?: StandingSpan | undefined;
  readonly standingPounds?: number | undefined;
  readonly bankHolidays?: TariffVersion['bankHolidays'];
  readonly staysOnWinterTime?: TariffVersion['staysOnWinterTime'];
  readonly exportPencePerKWh?: number | undefined;
  readonly reducedPoundsPerYear?: number | undefined;
  readonly ownMeterLessPence?: number | undefined;
  readonly ownMeterPoundsPerYear?: number | undefined;
  readonly demandPencePerKW?: number | undefined;
  readonly agreedKW?: number | undefined;
  readonly series?: PriceSeries | undefined;
  /** The structure that was picked, where its times are still to be typed; else it is known by its bands. */
  readonly pattern?: TariffPattern | undefined;
  readonly vatRate: number;
  readonly vatIncluded: boolean;
  readonly bands: readonly BandDraft[];
}
export interface TariffDraft {
  /** Empty for a tariff that the household does not have yet. */
  readonly id: string;
  readonly name: string;
  readonly fuel: Tariff['fuel'];
  readonly origin: Wording;
  readonly grade: Tariff['grade'];
  readonly until: string;
  readonly versions: readonly VersionDraft[];
}

export type TariffPattern =
  | 'flat'
  | 'two-rate'
  | 'car'
  | 'ten-hours'
  | 'peak'
  | 'months'
  | 'network'
  | 'own-meter'
  | 'series'
  | 'bands';

export const NIGHT: WindowDraft = { from: '00:30', to: '07:30', days: [], months: [] };

/** Times that differ from place to place, and so are asked. */
const ASKED: WindowDraft = { from: '', to: '', days: [], months: [] };

const ALL_DAY: WindowDraft = { from: '00:00', to: '00:00', days: [], months: [] };
/** First and last quarter: § 14a EnWG module 3 asks for two quarters at least, and a price sheet of 2025 had these. */
const WINTER_HALF = [1, 2, 3, 10, 11, 12];

/** The bands that a pattern begins with, keeping the prices already typed. */
export function bandsOf(pattern: TariffPattern, before: readonly BandDraft[] = []): readonly BandDraft[] {
  const price = (index: number) => before[index]?.pencePerKWh;
  if (pattern === 'flat' || pattern === 'series' || pattern === 'own-meter') {
    const rest = before.find((band) => band.windows === null);
    return [{ name: 'all hours', pencePerKWh: rest?.pencePerKWh ?? price(0), windows: null }];
  }
  if (pattern === 'two-rate') {
    return [
      { name: say('day'), pencePerKWh: price(0), windows: null },
      { name: say('night'), pencePerKWh: price(1), windows: [NIGHT] },
    ];
  }
  if (pattern === 'car') {
    return [
      { name: say('day'), pencePerKWh: price(0), windows: null },
      { name: say('charging hours'), pencePerKWh: price(1), windows: [ASKED] },
    ];
  }
  if (pattern === 'peak') {
    return [
      { name: say('other hours'), pencePerKWh: price(0), windows: null },
      { name: say('cheap hours'), pencePerKWh: price(1), windows: [ASKED, ASKED] },
      { name: say('peak'), pencePerKWh: price(2), windows: [ASKED] },
    ];
  }
  if (pattern === 'months') {
    return [
      { name: say('summer'), pencePerKWh: price(0), windows: null },
      { name: say('winter'), pencePerKWh: price(1), windows: [{ ...ALL_DAY, months: WINTER_HALF }] },
    ];
  }
  if (pattern === 'network') {
    const asked = { ...ASKED, months: WINTER_HALF };
    return [
      { name: say('usual hours'), pencePerKWh: price(0), windows: null },
      { name: say('low network hours'), pencePerKWh: price(1), windows: [asked] },
      { name: say('high network hours'), pencePerKWh: price(2), windows: [asked] },
    ];
  }
  if (pattern === 'ten-hours') {
    return [
      { name: say('other hours'), pencePerKWh: price(0), windows: null },
      { name: say('heating hours'), pencePerKWh: price(1), windows: [ASKED, ASKED, ASKED] },
    ];
  }
  return [
    { name: say('day'), pencePerKWh: price(0), windows: null },
    { name: say('night'), pencePerKWh: price(1), windows: [NIGHT] },
    { name: say('evening'), pencePerKWh: price(2), windows: [{ from: '16:00', to: '19:00', days: [], months: [] }] },
  ];
}

export function patternOf(version: VersionDraft): TariffPattern {
  if (version.pattern) return version.pattern;
  if (version.series) return 'series';
  if (version.bands.length === 1) return version.ownMeterLessPence === undefined ? 'flat' : 'own-meter';
  const timed = version.bands.filter((band) => band.windows !== null);
  if (version.bands.length !== 2 || timed.length !== 1) return 'bands';
  const windows = timed[0]!.windows!;
  if (windows.every(({ from, to, months }) => months.length > 0 && from === '00:00' && ['00:00', '24:00'].includes(to)))
    return 'months';
  const times = windows.length;
  return times === 1 ? 'two-rate' : times === 3 ? 'ten-hours' : 'bands';
}

export function newDraft(fuel: Tariff['fuel'], today: CivilDate, vatRate: number): TariffDraft {
  return {
    id: '',
    name: '',
    fuel,
    origin: '',
    grade: 'measured',
    until: '',
    versions: [{ from: today, standingPencePerDay: undefined, vatRate, vatIncluded: true, bands: bandsOf('flat') }],
  };
}

export function draftOf(tariff: Tariff): TariffDraft {
  return {
    ...tariff,
    until: tariff.until ?? '',
    versions: tariff.versions.map((version) => ({
      from: version.from,
      standingPencePerDay: version.standingPencePerMonth ? undefined : version.standingPencePerDay,
      standingBy: version.standingPencePerMonth ? 'month' : undefined,
      standingPounds: version.standingPencePerMonth ? version.standingPencePerMonth / 100 : undefined,
      bankHolidays: version.bankHolidays,
      staysOnWinterTime: version.staysOnWinterTime,
      exportPencePerKWh: version.exportPencePerKWh,
      reducedPoundsPerYear: version.reducedPencePerYear === undefined ? undefined : version.reducedPencePerYear / 100,
      ownMeterLessPence: version.ownMeter?.lessPencePerKWh,
      ownMeterPoundsPerYear:
        version.ownMeter?.pencePerYear === undefined ? undefined : version.ownMeter.pencePerYear / 100,
      demandPencePerKW: version.demand?.pencePerKWPerMonth,
      agreedKW: version.demand?.agreedKW,
      series: version.series,
      vatRate: version.vat.rate,
      vatIncluded: version.vat.included,
      bands: version.bands.map((band) => ({
        name: band.name,
        pencePerKWh: band.pencePerKWh,
        blocks: band.blocks,
        windows:
          band.times === 'rest'
            ? null
            : band.times.map(({ from, to, days, months }) => ({ from, to, days: days ?? [], months: months ?? [] })),
      })),
    })),
  };
}

const isBlank = (origin: Wording): boolean => typeof origin === 'string' && origin.trim() === '';

/** The finished tariff, or what is still missing, as sentences. */
export function finishDraft(draft: TariffDraft): { readonly tariff: Tariff } | { readonly missing: readonly string[] } {
  const missing: string[] = [];
  if (draft.name.trim() === '') missing.push(say('Give the tariff a name, as it stands on the bill.'));
  if (isBlank(draft.origin)) missing.push(say('Say where the prices come from, such as the bill of March.'));
  const versions = draft.versions.map((version) => finishVersion(version, missing));
  if (missing.length > 0) return { missing };
  const { id, fuel, grade } = draft;
  const origin = typeof draft.origin === 'string' ? draft.origin.trim() : draft.origin;
  const until = draft.until === '' ? {} : { until: draft.until };
  return { tariff: { id, name: draft.name.trim(), fuel, origin, grade, versions, ...until } };
}

function finishVersion(version: VersionDraft, missing: string[]): TariffVersion {
  if (readDate(version.from).kind !== 'day')
    missing.push(say('Say from which day these prices are valid, as in 31/12/2025.'));
  const { standingBy, standingPounds = 0 } = version;
  if ((standingBy ? version.standingPounds : version.standingPencePerDay) === undefined) {
    missing.push(say('The standing charge is missing.'));
  }
  const bands = version.bands.map((band): TariffBand => {
    if (band.name.trim() === '') missing.push(say('Each price needs a name, such as day or night.'));
    if (band.pencePerKWh === undefined)
      missing.push(say('The price for {name} is missing.', { name: sayTold(band.name) || say('one of the times') }));
    if (band.windows?.some((window) => window.from === '' || window.to === '')) {
      missing.push(say('The times of {name} are not complete.', { name: band.name || say('one of the prices') }));
    }
    return {
      name: band.name.trim(),
      pencePerKWh: band.pencePerKWh ?? 0,
      times: band.windows === null ? 'rest' : band.windows.map(finishWindow),
      ...finishBlocks(band, missing),
    };
  });
  return {
    from: version.from,
    standingPencePerDay: standingBy ? 0 : (version.standingPencePerDay ?? 0),
    ...(standingBy
      ? { standingPencePerMonth: Math.round((standingPounds * 1_000_000) / STANDING_MONTHS[standingBy]) / 10_000 }
      : {}),
    vat: { rate: version.vatRate, included: version.vatIncluded },
    bands,
    ...finishExtras(version, missing),
  };
}

function finishBlocks({ name, blocks }: BandDraft, missing: string[]): Pick<TariffBand, 'blocks'> {
  if (!blocks || blocks.steps.length === 0) return {};
  const whole = blocks.steps.every(({ upToKWh, pencePerKWh }) => upToKWh !== undefined && pencePerKWh !== undefined);
  if (!whole)
    missing.push(say('The steps of {name} are not complete.', { name: sayTold(name) || say('one of the prices') }));
  const steps = blocks.steps.map((step) => ({ upToKWh: step.upToKWh ?? 1, pencePerKWh: step.pencePerKWh ?? 0 }));
  return { blocks: { per: blocks.per, steps } };
}

function finishExtras(version: VersionDraft, missing: string[]) {
  const { bankHolidays, staysOnWinterTime, exportPencePerKWh, demandPencePerKW, agreedKW, series } = version;
  const { reducedPoundsPerYear, ownMeterLessPence, ownMeterPoundsPerYear } = version;
  if (ownMeterLessPence === undefined && (ownMeterPoundsPerYear !== undefined || version.pattern === 'own-meter'))
    missing.push(say('What is taken off each kWh of the heat pump is missing.'));
  if (agreedKW !== undefined && demandPencePerKW === undefined) missing.push(say('The price of a kW is missing.'));
  const demand: DemandCharge | undefined =
    demandPencePerKW === undefined
      ? undefined
      : { pencePerKWPerMonth: demandPencePerKW, ...(agreedKW === undefined ? {} : { agreedKW }) };
  return {
    ...(series ? { series } : {}),
    ...(bankHolidays ? { bankHolidays } : {}),
    ...(staysOnWinterTime ? { staysOnWinterTime } : {}),
    ...(demand ? { demand } : {}),
    ...(exportPencePerKWh === undefined ? {} : { exportPencePerKWh }),
    ...(reducedPoundsPerYear === undefined
      ? {}
      : { reducedPencePerYear: Math.round(reducedPoundsPerYear * 10_000) / 100 }),
    ...(ownMeterLessPence === undefined
      ? {}
      : {
          ownMeter: {
            lessPencePerKWh: ownMeterLessPence,
            ...(ownMeterPoundsPerYear === undefined
              ? {}
              : { pencePerYear: Math.round(ownMeterPoundsPerYear * 10_000) / 100 }),
          },
        }),
  };
}

function finishWindow({ from, to, days, months }: WindowDraft): TariffWindow {
  return {
    from,
    // A window that ends at midnight ends the day; "00:00" would be its beginning.
    to: to === '00:00' ? '24:00' : to,
    ...(days.length === 0 || days.length === 7 ? {} : { days: [...days] }),
    ...(months.length === 0 || months.length === 12 ? {} : { months: [...months] }),
  };
}

/** A tariff as a JSON file that fits the published schema and comes in again as it went out. */
export function tariffFile(tariff: Tariff): FileOut {
  const bytes = new TextEncoder().encode(`${JSON.stringify(tariff, null, 2)}\n`);
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  const plain = tariff.name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-+|-+$/g, '');
  return { fileName: `tariff-${plain || tariff.id}.json`, mediaType: 'application/json', base64: btoa(binary) };
}
