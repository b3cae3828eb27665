/** One dialect drawn from a seed: who writes, in which words, units, clocks and layouts, as far as they go together. */
import { seededRandom } from '../../build/damage.ts';
import type { Language } from './words.ts';
import { LANGUAGES } from './words.ts';

export type Of = 'use' | 'feed' | 'generation' | 'gas' | 'heat' | 'water' | 'outdoor';
export type Unit = 'Wh' | 'kWh' | 'MWh' | 'MJ' | 'GJ' | 'BTU' | 'W' | 'kW' | 'm³' | 'hundred ft³' | '°C' | '°F';

export interface Dialect {
  readonly seed: number;
  readonly language: Language;
  readonly zone: string;
  readonly what:
    | 'use'
    | 'feed'
    | 'generation'
    | 'both'
    | 'both in a column'
    | 'rates'
    | 'gas'
    | 'heat'
    | 'heat and water'
    | 'outdoor';
  readonly measure: 'energy' | 'power' | 'counter' | 'degrees';
  readonly unit: Unit;
  readonly unitPlace:
    | 'brackets'
    | 'square brackets'
    | 'after'
    | 'before'
    | 'behind numbers'
    | 'row below'
    | 'column'
    | 'title'
    | 'nowhere';
  /** 1440 a day, 0 a month. */
  readonly minutes: number;
  readonly layout: 'stamp' | 'date and time' | 'start and end' | 'date and hour' | 'across';
  readonly dateForm:
    | 'iso'
    | 'iso T'
    | 'd.m.y'
    | 'd/m/y'
    | 'd-m-y'
    | 'm/d/y'
    | 'y/m/d'
    | 'compact'
    | 'named'
    | 'seconds'
    | 'milliseconds'
    | 'serial';
  readonly hourForm: 'HH:MM' | 'HH:MM:SS' | 'H:MM' | '12 hours' | 'HH.MM' | 'HHhMM';
  readonly hours: 'counted' | 'by the clock' | 'from nought';
  readonly clock: 'local' | 'utc' | 'standard';
  readonly clockSaid: 'nowhere' | 'offset' | 'heading' | 'title';
  readonly side: 'start' | 'end';
  readonly midnight24: boolean;
  readonly separator: string;
  readonly decimal: '.' | ',';
  readonly thousands: boolean;
  readonly titles: number;
  readonly titleCells: boolean;
  readonly quality: boolean;
  readonly encoding: 'utf-8' | 'utf-8 mark' | 'latin-1' | 'utf-16';
  readonly lineEnd: '\n' | '\r\n';
  readonly gaps: 'none' | 'rows left out' | 'empty cells' | 'words';
  readonly newestFirst: boolean;
  readonly extras: readonly ('customer' | 'meter' | 'cost')[];
  readonly totals: boolean;
  readonly quoted: boolean;
  readonly fileName: string;
  /** Whether heading or file name names the energy. */
  readonly carrierSaid: 'heading' | 'file' | 'nowhere';
}

const ZONES: Readonly<Record<Language, readonly string[]>> = {
  en: ['Europe/London', 'Europe/Dublin', 'America/New_York', 'Australia/Sydney', 'Pacific/Auckland'],
  de: ['Europe/Berlin', 'Europe/Vienna', 'Europe/Zurich'],
  fr: ['Europe/Paris', 'Europe/Brussels'],
  es: ['Europe/Madrid', 'Atlantic/Canary', 'America/Mexico_City'],
  it: ['Europe/Rome'],
  nl: ['Europe/Amsterdam', 'Europe/Brussels'],
  da: ['Europe/Copenhagen'],
};

export function drawDialect(seed: number): Dialect {
  const random = seededRandom(seed * 7919 + 17);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
  const often = (share: number) => random() < share;
  const language = pick(LANGUAGES);
  const zone = pick(ZONES[language]);
  const what = pick([
    'use',
    'use',
    'use',
    'feed',
    'feed',
    'generation',
    'both',
    'both',
    'both in a column',
    'rates',
    'gas',
    'gas',
    'heat',
    'heat and water',
    'outdoor',
    'outdoor',
  ] as const);
  const isHeat = what === 'heat' || what === 'heat and water';
  const isElectric = !isHeat && what !== 'gas' && what !== 'outdoor';
  const measure: Dialect['measure'] =
    what === 'outdoor'
      ? 'degrees'
      : what === 'rates'
        ? often(0.7)
          ? 'counter'
          : 'energy'
        : isElectric && what !== 'both in a column' && often(0.35)
          ? 'power'
          : (what === 'use' || what === 'gas' || what === 'heat') && often(0.25)
            ? 'counter'
            : 'energy';
  const minutes =
    measure === 'power'
      ? pick([5, 10, 15, 15, 30, 30, 60])
      : measure === 'counter'
        ? pick([15, 30, 60, 1440, 1440, 1440, 0])
        : measure === 'degrees'
          ? pick([10, 60, 60, 1440])
          : pick([5, 10, 15, 15, 30, 30, 60, 60, 60, 1440, 1440, 0, 0]);
  const isFine = minutes > 0 && minutes < 1440;
  const usZone = zone.startsWith('America/New');
  const unit: Unit =
    measure === 'degrees'
      ? usZone || often(0.1)
        ? '°F'
        : '°C'
      : measure === 'power'
        ? pick(['W', 'kW', 'kW'])
        : what === 'gas'
          ? pick(language === 'en' ? ['m³', 'kWh', 'kWh', 'hundred ft³', 'MJ'] : ['m³', 'm³', 'kWh', 'kWh'])
          : isHeat
            ? pick(minutes === 0 || measure === 'counter' ? ['kWh', 'MWh', 'GJ', 'MJ'] : ['kWh', 'kWh', 'MJ', 'Wh'])
            : minutes === 0
              ? pick(['kWh', 'kWh', 'MWh'])
              : pick(['kWh', 'kWh', 'kWh', 'Wh', 'Wh', 'MWh', 'MJ']);
  const layout: Dialect['layout'] =
    minutes === 0
      ? measure === 'counter'
        ? 'stamp'
        : pick(['stamp', 'stamp', 'start and end'])
      : minutes === 1440
        ? 'stamp'
        : measure === 'counter'
          ? pick(['stamp', 'date and time'])
          : ['use', 'gas', 'feed', 'generation'].includes(what) && [15, 30, 60].includes(minutes) && often(0.12)
            ? 'across'
            : [15, 30, 60].includes(minutes) && often(0.2)
              ? 'date and hour'
              : pick(['stamp', 'stamp', 'stamp', 'date and time', 'start and end']);
  const clockWanted: Dialect['clock'] =
    isFine && (layout === 'stamp' || layout === 'start and end')
      ? pick(['local', 'local', 'local', 'utc', 'standard'])
      : 'local';
  const local = {
    en: usZone ? ['m/d/y', 'm/d/y', 'iso'] : ['d/m/y', 'd/m/y', 'iso', 'd-m-y', 'named'],
    de: ['d.m.y', 'd.m.y', 'iso'],
    fr: ['d/m/y', 'iso'],
    es: ['d/m/y', 'y/m/d', 'iso'],
    it: ['d/m/y', 'iso'],
    nl: ['d-m-y', 'd-m-y', 'iso'],
    da: ['d-m-y', 'iso', 'd.m.y'],
  }[language] as Dialect['dateForm'][];
  const dateForm: Dialect['dateForm'] =
    layout === 'date and time' || layout === 'date and hour' || layout === 'across'
      ? pick([...local, 'compact', 'iso'])
      : !isFine
        ? pick([...local, 'iso', 'iso', 'named', 'compact'])
        : clockWanted === 'utc'
          ? pick(['iso T', 'iso', 'iso T', 'seconds', 'milliseconds', ...local])
          : pick([...local, 'iso', 'iso T', 'iso T', 'compact', 'serial', ...local]);
  const isCount = dateForm === 'seconds' || dateForm === 'milliseconds';
  const takesOffset = dateForm === 'iso' || dateForm === 'iso T';
  const clockSaid: Dialect['clockSaid'] = isCount
    ? 'offset'
    : takesOffset && (isFine || minutes === 0) && layout === 'stamp' && often(clockWanted === 'utc' ? 0.6 : 0.3)
      ? 'offset'
      : isFine && clockWanted === 'utc'
        ? pick(['heading', 'heading', 'title', 'nowhere'])
        : 'nowhere';
  const decimal = language === 'en' || zone.startsWith('America') ? '.' : pick([',', ',', '.'] as const);
  const separator = decimal === ',' ? pick([';', ';', '\t', ',']) : pick([',', ',', ';', '\t', '|']);
  const unitPlace: Dialect['unitPlace'] = pick([
    'brackets',
    'brackets',
    'brackets',
    'square brackets',
    'after',
    'before',
    'row below',
    'column',
    'title',
    'behind numbers',
    'nowhere',
  ]);
  const isAcross = layout === 'across';
  const several = what === 'both' || what === 'rates' || what === 'heat and water';
  return {
    seed,
    language,
    zone,
    what,
    measure,
    unit,
    unitPlace: isAcross
      ? 'title'
      : several && ['column', 'title', 'nowhere'].includes(unitPlace)
        ? 'brackets'
        : unitPlace,
    minutes,
    layout,
    dateForm,
    hourForm: isAcross
      ? 'HH:MM'
      : pick(
          zone.startsWith('America/New') || zone.startsWith('Australia')
            ? ['HH:MM', '12 hours', 'H:MM']
            : language === 'fr'
              ? ['HH:MM', 'HH:MM:SS', 'HHhMM']
              : language === 'da' || language === 'de'
                ? ['HH:MM', 'HH:MM:SS', 'HH.MM']
                : ['HH:MM', 'HH:MM', 'HH:MM:SS', 'H:MM'],
        ),
    hours: pick(['counted', 'by the clock', 'from nought'] as const),
    clock: isCount ? 'utc' : clockWanted,
    clockSaid,
    side:
      isFine && measure !== 'counter' && layout !== 'start and end' && layout !== 'across' && often(0.4)
        ? 'end'
        : 'start',
    midnight24: layout === 'date and time' && often(0.3),
    separator,
    decimal,
    thousands: often(0.1),
    titles: isAcross
      ? 1
      : often(0.4)
        ? 1 + Math.floor(random() * 4)
        : unitPlace === 'title' || clockSaid === 'title'
          ? 1
          : 0,
    titleCells: often(0.5),
    quality: !isAcross && often(0.25),
    encoding: pick(['utf-8', 'utf-8', 'utf-8 mark', 'latin-1', 'utf-16'] as const),
    lineEnd: pick(['\n', '\r\n'] as const),
    gaps:
      isFine && measure !== 'counter'
        ? pick(['none', 'none', 'rows left out', 'empty cells', 'words'] as const)
        : 'none',
    newestFirst: !isAcross && layout !== 'date and hour' && often(0.12),
    extras: isAcross ? [] : (['customer', 'meter', 'cost'] as const).filter(() => often(0.15)),
    totals: !isAcross && measure !== 'counter' && often(0.12),
    quoted: decimal === ',' && separator === ',' ? true : often(0.1),
    fileName: pick([
      'export.csv',
      'data.csv',
      'download.csv',
      '2025.csv',
      'import_20260102.csv',
      'messwerte.csv',
      'datos.csv',
    ]),
    carrierSaid: pick(['heading', 'heading', 'file', 'nowhere'] as const),
  };
}

/** kWh in one unit of gas by volume [MJ per m³: 39.5], which America bills without the correction of Britain. */
export const gasKWh = (zone: string, unit: 'm³' | 'hundred ft³'): number => {
  const m3 = zone.startsWith('America/') ? 39.5 / 3.6 : (1.02264 * 39.5) / 3.6;
  if (unit === 'm³') return m3;
  return m3 * (zone.startsWith('America/') ? 2.831685 : 2.83);
};
