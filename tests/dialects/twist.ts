/**
 * What people and programs do to a table beside writing it: remarks, sums, other columns, other words for a day. Each twist
 * changes a written sheet and leaves its truth as it is; where it leaves something open, it says so.
 */
import { seededRandom } from '../../build/damage.ts';
import { type Dialect, gasKWh } from './draw.ts';
import { type Language, WORDS } from './words.ts';

export const TWISTS = [
  'remarks',
  'trailing cells',
  'sums of days',
  'sums under a date',
  'sum on top',
  'headings again',
  'empty lines',
  'weekday before',
  'weekday beside',
  'short years',
  'named months',
  'price beside',
  'room beside',
  'counter beside',
  'reactive beside',
  'peak beside',
  'own use beside',
  'sum of rates',
  'energy beside volume',
  'the same twice',
  'other titles',
  'headings in two rows',
  'headings over two lines',
  'merged headings',
  'year, month, day',
  'days across',
  'fixed width',
  'apostrophes',
  'named zones',
  'a.m. and p.m.',
  'feet',
  'rows twice',
  'net',
  'sent out below nought',
] as const;
export type Twist = (typeof TWISTS)[number];

type Fits = (d: Dialect) => boolean;
const isFine: Fits = ({ minutes }) => minutes > 0 && minutes < 1440;
const isAcross: Fits = ({ layout }) => layout === 'across';
const isWritten: Fits = ({ dateForm }) => ['d.m.y', 'd/m/y', 'd-m-y', 'm/d/y'].includes(dateForm);
const isElectric: Fits = ({ what }) => ['use', 'feed', 'generation', 'both', 'rates'].includes(what);
const isAmount: Fits = (d) => !isAcross(d) && d.what !== 'both in a column' && d.measure === 'energy';
const isOne: Fits = ({ what }) => ['use', 'feed', 'generation', 'gas', 'heat'].includes(what);

const FITS: Readonly<Record<Twist, Fits>> = {
  remarks: () => true,
  'trailing cells': (d) => !isAcross(d),
  'sums of days': (d) => isAmount(d) && isFine(d) && isOne(d) && ['stamp', 'date and time'].includes(d.layout),
  'sums under a date': (d) => isAmount(d) && isFine(d) && isOne(d) && d.layout === 'stamp' && !isCounted(d),
  'sum on top': (d) => isAmount(d) && isOne(d),
  'headings again': (d) => !isAcross(d),
  'empty lines': () => true,
  'weekday before': (d) => isWritten(d) && d.minutes !== 0,
  'weekday beside': (d) => !isAcross(d) && d.minutes !== 0,
  'short years': isWritten,
  'named months': (d) => isWritten(d) && d.clockSaid !== 'offset',
  'price beside': isAmount,
  'room beside': (d) => isFine(d) && d.layout !== 'across' && d.what !== 'both in a column',
  'counter beside': (d) => isAmount(d) && isOne(d) && d.unitPlace !== 'nowhere',
  'reactive beside': (d) => isAmount(d) && isElectric(d),
  'peak beside': (d) => isAmount(d) && isElectric(d) && isFine(d),
  'own use beside': (d) => isAmount(d) && ['feed', 'generation', 'both'].includes(d.what),
  'sum of rates': (d) => isAmount(d) && d.what === 'rates',
  'energy beside volume': (d) => isAmount(d) && d.unit === 'm³' && d.what === 'gas',
  'the same twice': (d) => isAmount(d) && isOne(d),
  'other titles': () => true,
  'headings in two rows': (d) => isAmount(d),
  'headings over two lines': (d) => !isAcross(d) && ['brackets', 'square brackets'].includes(d.unitPlace),
  'merged headings': (d) => d.what === 'both' && isAmount(d) && d.unitPlace === 'brackets',
  'year, month, day': (d) =>
    ['date and time', 'date and hour'].includes(d.layout) || (d.minutes === 1440 && d.layout === 'stamp'),
  'days across': (d) => isAcross(d) && d.seed % 2 === 0,
  'fixed width': (d) =>
    d.gaps !== 'empty cells' && !isAcross(d) && d.unitPlace !== 'row below' && d.extras.length === 0,
  apostrophes: (d) => d.zone === 'Europe/Zurich' && d.measure !== 'degrees',
  'named zones': (d) => d.clockSaid === 'offset' && d.clock === 'local' && isFine(d) && d.zone in ZONE_NAMES,
  'a.m. and p.m.': (d) => d.hourForm === '12 hours',
  feet: () => true,
  'rows twice': (d) => isFine(d) && !isAcross(d) && d.measure !== 'counter' && d.what !== 'both in a column',
  net: (d) => d.what === 'both' && d.measure === 'energy' && isFine(d),
  'sent out below nought': (d) => d.what === 'feed' && d.measure === 'energy',
};
const isCounted: Fits = ({ dateForm }) => ['seconds', 'milliseconds', 'serial', 'compact'].includes(dateForm);

/** Winter and summer. */
export const ZONE_NAMES: Readonly<Record<string, readonly [string, string]>> = {
  'Europe/London': ['GMT', 'BST'],
  'Europe/Berlin': ['CET', 'CEST'],
  'Europe/Vienna': ['MEZ', 'MESZ'],
  'Europe/Paris': ['CET', 'CEST'],
  'Europe/Rome': ['CET', 'CEST'],
  'America/New_York': ['EST', 'EDT'],
  'Australia/Sydney': ['AEST', 'AEDT'],
  'Pacific/Auckland': ['NZST', 'NZDT'],
};

export function drawTwists(d: Dialect): ReadonlySet<Twist> {
  const random = seededRandom(d.seed * 15_485_863 + 11);
  const fitting = TWISTS.filter((twist) => FITS[twist](d));
  const count = [0, 0, 1, 1, 1, 2, 2, 3][Math.floor(random() * 8)]!;
  const drawn = new Set<Twist>();
  for (let i = 0; i < count; i++) drawn.add(fitting[Math.floor(random() * fitting.length)]!);
  if (drawn.has('fixed width')) return new Set(['fixed width']);
  if (drawn.has('the same twice') || drawn.has('net')) for (const one of BESIDE) drawn.delete(one);
  if (drawn.has('merged headings')) for (const one of TWISTS) if (one !== 'merged headings') drawn.delete(one);
  if (drawn.has('named months')) drawn.delete('short years');
  if (drawn.has('weekday before')) drawn.delete('weekday beside');
  return drawn;
}
const BESIDE: readonly Twist[] = [
  'counter beside',
  'own use beside',
  'energy beside volume',
  'sum of rates',
  'sums of days',
];

export interface WrittenSheet {
  readonly titles: string[][];
  readonly heads: string[][];
  readonly rows: string[][];
  /** Local day of each row, where rows are readings. */
  readonly dayOf: readonly string[];
  /** Columns of stamps, then of values. */
  readonly stamps: number;
  readonly values: number;
  /** Numbers of the first value column as shown, by row, and of all of them together. */
  readonly shown: readonly number[];
  readonly together: readonly number[];
}

/** Days with an hour twice: there nothing tells a row written twice from two readings. */
const DOUBLED = new Set(['2025-10-26', '2025-11-02', '2025-04-06']);

interface OfLanguage {
  readonly weekdays: readonly string[];
  readonly price: string;
  readonly room: string;
  readonly reactive: string;
  readonly peak: string;
  readonly own: string;
  readonly ymd: readonly [string, string, string];
  readonly weekday: string;
  readonly remark: string;
  readonly foot: string;
  readonly titles: readonly string[];
}

/** Monday first. Invented names. */
export const OTHER: Readonly<Record<Language, OfLanguage>> = {
  en: {
    weekdays: ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'],
    price: 'Price (p/kWh)',
    room: 'Room temperature (°C)',
    reactive: 'Reactive energy (kvarh)',
    peak: 'Peak demand (kW)',
    own: 'Self-consumption',
    ymd: ['Year', 'Month', 'Day'],
    weekday: 'Weekday',
    remark: 'Please keep this file for 6 years',
    foot: 'End of report, 1 page',
    titles: [
      'W Smith, 12 Water Lane',
      'Contracted power: 4.6 kW',
      'Created: 2026-01-02 08:15 UTC',
      'Supplier: Gas & Light Electricity Ltd',
      'Address: Wood Street 4, E1 2WH',
      'Plan: Day saver 24.5 p/kWh',
      'Account no. 4412 7001',
    ],
  },
  de: {
    weekdays: ['Mo', 'Di', 'Mi', 'Do', 'Fr', 'Sa', 'So'],
    price: 'Preis (ct/kWh)',
    room: 'Raumtemperatur (°C)',
    reactive: 'Blindarbeit (kvarh)',
    peak: 'Spitzenleistung (kW)',
    own: 'Eigenverbrauch',
    ymd: ['Jahr', 'Monat', 'Tag'],
    weekday: 'Wochentag',
    remark: 'Bitte 6 Jahre aufbewahren',
    foot: 'Ende des Berichts, 1 Seite',
    titles: [
      'Wasserweg 12, 20095 Hamburg',
      'Vertragsleistung: 14 kW',
      'Erzeugt am 02.01.2026 08:15 UTC',
      'Stadtwerke Musterstadt Strom und Gas GmbH',
      'Kunde: W. Holz, Gasstraße 3',
      'Tarif: Tag und Nacht 31,2 ct/kWh',
    ],
  },
  fr: {
    weekdays: ['lundi', 'mardi', 'mercredi', 'jeudi', 'vendredi', 'samedi', 'dimanche'],
    price: 'Prix (€/kWh)',
    room: 'Température intérieure (°C)',
    reactive: 'Énergie réactive (kvarh)',
    peak: 'Puissance maximale (kW)',
    own: 'Autoconsommation',
    ymd: ['Année', 'Mois', 'Jour'],
    weekday: 'Jour de la semaine',
    remark: 'À conserver 6 ans',
    foot: 'Fin du relevé',
    titles: [
      'Puissance souscrite : 9 kW',
      '4 rue du Gaz, 75001 Paris',
      'Offre : heures creuses 0,21 €/kWh',
      'Édité le 02/01/2026 à 08:15 UTC',
    ],
  },
  es: {
    weekdays: ['lunes', 'martes', 'miércoles', 'jueves', 'viernes', 'sábado', 'domingo'],
    price: 'Precio (€/kWh)',
    room: 'Temperatura interior (°C)',
    reactive: 'Energía reactiva (kvarh)',
    peak: 'Potencia máxima (kW)',
    own: 'Autoconsumo',
    ymd: ['Año', 'Mes', 'Día'],
    weekday: 'Día de la semana',
    remark: 'Guárdese 6 años',
    foot: 'Fin del informe',
    titles: [
      'Potencia contratada: 4,6 kW',
      'Calle del Agua 12, Madrid',
      'Tarifa: valle 0,12 €/kWh',
      'Generado el 02/01/2026 08:15 UTC',
    ],
  },
  it: {
    weekdays: ['lunedì', 'martedì', 'mercoledì', 'giovedì', 'venerdì', 'sabato', 'domenica'],
    price: 'Prezzo (€/kWh)',
    room: 'Temperatura interna (°C)',
    reactive: 'Energia reattiva (kvarh)',
    peak: 'Potenza massima (kW)',
    own: 'Autoconsumo',
    ymd: ['Anno', 'Mese', 'Giorno'],
    weekday: 'Giorno della settimana',
    remark: 'Da conservare per 6 anni',
    foot: 'Fine del documento',
    titles: [
      'Potenza impegnata: 3 kW',
      'Via del Gas 12, Roma',
      'Offerta: luce e gas insieme',
      'Stampato il 02/01/2026 08:15 UTC',
    ],
  },
  nl: {
    weekdays: ['maandag', 'dinsdag', 'woensdag', 'donderdag', 'vrijdag', 'zaterdag', 'zondag'],
    price: 'Prijs (€/kWh)',
    room: 'Binnentemperatuur (°C)',
    reactive: 'Blindenergie (kvarh)',
    peak: 'Piekvermogen (kW)',
    own: 'Eigen verbruik',
    ymd: ['Jaar', 'Maand', 'Dag'],
    weekday: 'Weekdag',
    remark: 'Bewaar dit bestand 6 jaar',
    foot: 'Einde van het overzicht',
    titles: [
      'Waterstraat 12, Utrecht',
      'Contract: gas en stroom 0,31 €/kWh',
      'Leverancier: Zon en Wind B.V.',
      'Gemaakt op 02-01-2026 08:15 UTC',
    ],
  },
  da: {
    weekdays: ['mandag', 'tirsdag', 'onsdag', 'torsdag', 'fredag', 'lørdag', 'søndag'],
    price: 'Pris (kr/kWh)',
    room: 'Rumtemperatur (°C)',
    reactive: 'Reaktiv energi (kvarh)',
    peak: 'Spidsbelastning (kW)',
    own: 'Egetforbrug',
    ymd: ['År', 'Måned', 'Dag'],
    weekday: 'Ugedag',
    remark: 'Gemmes i 6 år',
    foot: 'Slut på rapporten',
    titles: [
      'Vandvej 12, Aarhus',
      'Aftale: dag og nat 2,10 kr/kWh',
      'Leverandør: Sol og Vind ApS',
      'Dannet 02-01-2026 08:15 UTC',
    ],
  },
};

/** A date in words of another kind; `civil` in milliseconds. */
export function twistDate(d: Dialect, text: string, civil: number, twists: ReadonlySet<Twist>): string {
  const short = twists.has('short years') ? text.replace(/\b20(\d\d)$/, '$1') : text;
  return twists.has('weekday before') ? `${weekdayOf(d, civil)} ${short}` : short;
}

export function weekdayOf({ language, seed }: Dialect, civil: number): string {
  const word = OTHER[language].weekdays[(new Date(civil).getUTCDay() + 6) % 7]!;
  return seed % 3 === 0 ? `${word.slice(0, 2)}.` : seed % 3 === 1 ? `${word.slice(0, 3)}` : word;
}

export function twistSheet(
  d: Dialect,
  given: WrittenSheet,
  twists: ReadonlySet<Twist>,
  say: (value: number) => string,
): { readonly titles: string[][]; readonly heads: string[][]; readonly rows: string[][] } {
  const random = seededRandom(d.seed * 32_452_843 + 3);
  const words = OTHER[d.language];
  const { titles, stamps, values, dayOf, shown, together } = given;
  let [heads, rows] = [given.heads, given.rows];
  const number = (value: number, digits: number) =>
    Number.isNaN(value) ? '' : value.toFixed(digits).replace('.', d.decimal);
  const insert = (at: number, head: string, cell: (row: string[], i: number) => string) => {
    heads = heads.map((cells, n) => cells.toSpliced(at, 0, n === 0 ? head : ''));
    rows = rows.map((cells, i) => cells.toSpliced(at, 0, i < given.rows.length ? cell(cells, i) : ''));
  };
  const end = stamps + values;
  const place = () => (random() < 0.5 ? stamps : end);
  const unit = (word: string) => `${word} (${d.unit === 'hundred ft³' ? 'ccf' : d.unit})`;
  if (twists.has('price beside')) insert(place(), words.price, (_, i) => number(20 + (i % 9), 2));
  if (twists.has('room beside')) insert(place(), words.room, (_, i) => number(19 + ((i * 7) % 30) / 10, 1));
  if (twists.has('reactive beside')) insert(place(), words.reactive, (_, i) => number(((i * 5) % 11) / 10, 3));
  if (twists.has('peak beside')) insert(place(), words.peak, (_, i) => number(1 + ((i * 3) % 40) / 10, 2));
  if (twists.has('own use beside')) insert(place(), unit(words.own), (_, i) => say(((i * 3) % 17) / 10));
  if (twists.has('counter beside')) {
    let at = 4000;
    insert(place(), unit(WORDS[d.language].counter[0]!), (_, i) => {
      at += shown[i] || 0;
      return say(at);
    });
  }
  if (twists.has('energy beside volume'))
    insert(end, `${WORDS[d.language].gas[0]!} (kWh)`, (_, i) => number((shown[i] ?? 0) * gasKWh(d.zone, 'm³'), 6));
  if (twists.has('sum of rates'))
    insert(end, unit(WORDS[d.language].total), (_, i) => (Number.isNaN(together[i] ?? 0) ? '' : say(together[i] ?? 0)));
  if (twists.has('the same twice')) insert(end, heads[0]![stamps]!, (cells) => cells[stamps]!);
  if (twists.has('weekday beside'))
    insert(0, words.weekday, (_, i) => weekdayOf(d, Date.parse(dayOf[i] ?? '2025-01-01')));
  if (twists.has('trailing cells'))
    rows = rows.map((cells) => [...cells, ...(d.seed % 2 === 0 ? ['', ''] : [['OK', ''][d.seed % 4 === 1 ? 0 : 1]!])]);
  if (twists.has('sums of days') || twists.has('sums under a date')) rows = withSums();
  if (twists.has('sum on top'))
    rows = [
      sumRow(
        WORDS[d.language].total,
        shown.reduce((a, b) => a + (b || 0), 0),
      ),
      ...rows,
    ];
  if (twists.has('rows twice'))
    rows = rows.flatMap((cells, i) => (i % 50 === 7 && !DOUBLED.has(dayOf[i] ?? '') ? [cells, cells] : [cells]));
  if (twists.has('headings again')) rows = rows.flatMap((cells, i) => (i % 400 === 300 ? [heads[0]!, cells] : [cells]));
  if (twists.has('empty lines')) rows = rows.flatMap((cells, i) => (i % 60 === 31 ? [[''], cells] : [cells]));
  if (twists.has('remarks')) rows = rows.flatMap((cells, i) => (i === 40 ? [[`# ${words.remark}`], cells] : [cells]));
  if (twists.has('feet')) rows = [...rows, [''], [words.foot]];
  if (twists.has('headings over two lines'))
    heads = heads.map((cells) => cells.map((cell) => cell.replace(/ ([[(])/, '\n$1')));
  if (twists.has('headings in two rows')) {
    const over = { gas: WORDS[d.language].gas[0]!, heat: WORDS[d.language].heat[0]! }[d.what as 'gas' | 'heat'];
    heads = [
      heads[0]!.map((_, i) => (i >= stamps && i < end && !over ? WORDS[d.language].electricity[0]! : (over ?? ''))),
      ...heads,
    ];
    heads[0] = heads[0]!.map((cell, i) => (i < stamps ? '' : cell));
  }
  if (twists.has('merged headings')) {
    const [over, under] = [[...heads[0]!], [...heads[0]!]];
    for (let i = 0; i < over.length; i++) {
      const named = /^(.*) (\([^)]*\))$/.exec(over[i]!);
      const isValue = i >= stamps && i < end && named !== null;
      over[i] = isValue ? named[1]! : '';
      if (isValue) under[i] = named[2]!.slice(1, -1);
    }
    heads = [over, under, ...heads.slice(1)];
  }
  const others = twists.has('other titles')
    ? [0, 1, 2].map(() => [words.titles[Math.floor(random() * words.titles.length)]!])
    : [];
  const remarks = twists.has('remarks') ? [[`# ${words.remark}`], ['#']] : [];
  return { titles: [...remarks, ...titles, ...others], heads, rows };

  function sumRow(word: string, sum: number): string[] {
    return heads[0]!.map((_, i) =>
      i === 0 ? word : i === heads[0]!.indexOf(given.heads[0]![stamps]!) ? say(sum) : '',
    );
  }

  function withSums(): string[][] {
    let sum = 0;
    return rows.flatMap((cells, i) => {
      sum += shown[i] || 0;
      const day = dayOf[i];
      if (day === undefined || day === dayOf[i + 1]) return [cells];
      const total = sum;
      sum = 0;
      const under = cells[0]!.split(/[ T]/)[0]!;
      return [cells, sumRow(twists.has('sums under a date') ? under : `${WORDS[d.language].total} ${under}`, total)];
    });
  }
}
