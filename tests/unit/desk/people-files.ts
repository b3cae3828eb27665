/**
 * Files of every kind with somebody in them, made by rules of their own from invented people of five countries. Left out is
 * what is known to be missed: a surname that stands alone, a file's name in small letters with no common given name.
 */
import { writePdf } from '../../../sample-bills/write-pdf.ts';
import { type Chance, chanceOf } from '../../prove/chance.ts';
import { type Cell, writeWorkbook } from '../intake/write-workbook.ts';

interface Land {
  readonly given: readonly string[];
  readonly surnames: readonly string[];
  readonly streets: readonly string[];
  readonly place: (digit: () => number) => string;
  readonly isNumberFirst: boolean;
  readonly heads: readonly string[];
  readonly title: string;
  readonly use: string;
  readonly date: string;
}
const five = (digit: () => number) => `${1 + (digit() % 9)}${digit()}${digit()}${digit()}${digit()}`;
const LANDS: readonly Land[] = [
  {
    given: ['Jane', 'Ngozi', 'Aoife', 'Rhys', 'Priya', 'Zoë'],
    surnames: ['Fairweather', 'Okafor', 'Plumtree', 'O’Dowd', 'Llewelyn-Price', 'Kowalczyk', 'McAllister'],
    streets: ['Thornfield Crescent', 'Wexcombe Court', 'Orchard Way', 'Penhallow Lane'],
    place: (digit) => `Thornby ZZ${1 + (digit() % 9)} ${digit()}ZX`,
    isNumberFirst: true,
    heads: ['Customer', 'Name', 'Account holder', 'Tenant', 'Bill payer'],
    title: 'Electricity readings',
    use: 'kWh',
    date: 'Date',
  },
  {
    given: ['Anneliese', 'Jürgen', 'Sabine', 'Uwe'],
    surnames: ['Weißenböck', 'Brandstätter', 'Pflaum', 'Ohlendorf'],
    streets: ['Pflaumenweg', 'Kirchgasse', 'Am Anger', 'Lindenstraße'],
    place: (digit) => `${five(digit)} Musterdorf`,
    isNumberFirst: false,
    heads: ['Kunde', 'Vertragspartner', 'Mieter', 'Kundin'],
    title: 'Lastgang Strom',
    use: 'Verbrauch kWh',
    date: 'Datum',
  },
  {
    given: ['Odile', 'François', 'Chloé'],
    surnames: ['Prunier', 'Lefèvre', 'Dupontel', 'de la Rivière'],
    streets: ['rue des Pruniers', 'chemin du Moulinet', 'allée des Tilleuls'],
    place: (digit) => `${five(digit)} Vernelle`,
    isNumberFirst: true,
    heads: ['Client', 'Nom', 'Titulaire', 'Abonné'],
    title: 'Relevé électricité',
    use: 'Consommation kWh',
    date: 'Date',
  },
  {
    given: ['Marta', 'José', 'Lucía'],
    surnames: ['Ciruelo Gil', 'Montenegro Ruiz', 'Almendro'],
    streets: ['calle Ciruelo', 'avenida del Prado'],
    place: (digit) => `${five(digit)} Villaseca`,
    isNumberFirst: false,
    heads: ['Titular', 'Nombre', 'Cliente'],
    title: 'Lecturas electricidad',
    use: 'Consumo kWh',
    date: 'Fecha',
  },
  {
    given: ['Sjoerd', 'Maarten', 'Willem'],
    surnames: ['van der Pruim', 'Boomgaard', 'de Wilde'],
    streets: ['Pruimenlaan', 'Kerkstraat'],
    place: (digit) => `${1 + (digit() % 9)}${digit()}${digit()}${digit()} ZX Oudwoud`,
    isNumberFirst: false,
    heads: ['Klant', 'Naam', 'Huurder'],
    title: 'Verbruik stroom',
    use: 'Verbruik kWh',
    date: 'Datum',
  },
];

export interface PeopleFile {
  readonly kind: string;
  readonly fileName: string;
  readonly bytes: Uint8Array;
  /** None of which may be met again. */
  readonly secrets: readonly string[];
}

const DAYS = Array.from({ length: 20 }, (_, i) => `2026-01-${String(i + 1).padStart(2, '0')}`);
const useOf = (i: number) => 5.5 + (i % 3);
const SUM = DAYS.reduce((sum, _, i) => sum + useOf(i), 0);
const rows = (write: (day: string, use: string) => string) =>
  DAYS.map((day, i) => write(day, `${useOf(i)}`)).join('\n');

function somebody({ random, pick }: Chance) {
  const digit = () => Math.floor(random() * 10);
  const number = (length: number) => `8${Array.from({ length: length - 1 }, digit).join('')}`;
  const land = pick(LANDS);
  const [given, surname, other] = [pick(land.given), pick(land.surnames), pick(land.given)];
  const name = pick([
    `${given} ${surname}`,
    `${given[0]}. ${surname}`,
    `${given[0]} ${surname}`,
    `${given[0]}. ${surname} & ${other[0]}. ${pick(land.surnames)}`,
    `${surname.toUpperCase()}, ${given}`,
    `${given.toUpperCase()} ${surname.toUpperCase()}`,
    `${given} and ${other} ${surname}`,
  ]);
  const [street, house] = [pick(land.streets), 1 + Math.floor(random() * 140)];
  const line = land.isNumberFirst ? `${house} ${street}` : `${street} ${house}`;
  const [place, account, meter] = [land.place(digit), number(pick([8, 10, 12])), number(13)];
  const words = (name.match(/[\p{L}’-]{3,}/gu) ?? []).filter((word) => !/^(?:and|van|der)$/i.test(word));
  return {
    land,
    pick,
    name,
    given,
    surname,
    line,
    place,
    account,
    meter,
    secrets: [...words, street, place, account, meter],
  };
}
type Somebody = ReturnType<typeof somebody>;

function sheetNamed(name: string): Uint8Array {
  const data = DAYS.map((_, i): Cell[] => [{ serial: 46_000 + i, form: 'date' }, 5 + (i % 3)]);
  return writeWorkbook([{ name, rows: [['Date', 'Electricity kWh'], ...data] }]);
}

/** A bill whose sums come out, with a credit that says whose it is. */
function billOf({ name, line, place, account, meter, surname, pick }: Somebody): Uint8Array {
  const credit = pick([`${name}: goodwill discount`, `Goodwill discount ${surname}`, `Goodwill discount ${account}`]);
  const lines = [
    ...[name, line, place, `Account number ${account}`, `Meter serial ${meter}`].map((text) => [text, ''] as const),
    ['Electricity, 2 November 2026 to 22 November 2026', ''],
    ['416 kWh at 30.40 p', '£126.46'],
    ['Standing charge 21 days at 54.2 p', '£11.38'],
    [credit, '-£5.00'],
    ['VAT at 5 % on £132.84', '£6.64'],
    ['Total', '£139.48'],
  ] as const;
  return writePdf([
    lines.flatMap(([label, amount], i) => [
      { text: label.replaceAll('’', "'"), x: 50, y: 60 + 20 * i, size: 11 },
      ...(amount === '' ? [] : [{ text: amount, x: 480, y: 60 + 20 * i, size: 11 }]),
    ]),
  ]);
}

const plain = ({ land }: Somebody) => `${land.date};${land.use}\n${rows((day, use) => `${day};${use}`)}\n`;
const KINDS: Readonly<Record<string, (of: Somebody) => readonly [fileName: string, content: string | Uint8Array]>> = {
  'lines of an address': (of) => ['u.csv', `${of.name}\n${of.line}\n${of.place}\n\n${plain(of)}`],
  'a title': (of) => [
    'u.csv',
    `${of.pick([`${of.land.title} ${of.name}`, `${of.name} - ${of.land.title}`, `${of.land.title} | ${of.name} | ${of.meter}`])}\n\n${plain(of)}`,
  ],
  'a column': (of) => [
    'u.csv',
    `${of.pick(of.land.heads)};${of.land.date};${of.land.use}\n${rows((day, use) => `${of.name};${day};${use}`)}\n${of.name};;total;12\n${of.name};20`,
  ],
  'a column of places': (of) => [
    'u.csv',
    `${of.land.date};${of.land.use};${of.pick(['Site', 'Address', 'Premises'])}\n${rows((day, use) => `${day};${use};${of.line}`)}\n\nTotal;${SUM};${of.line}\n`,
  ],
  'a heading': (of) => [
    'u.csv',
    `${of.land.date};${of.pick([of.name, of.meter, of.line])} kWh\n${rows((day, use) => `${day};${use}`)}\n`,
  ],
  'a footer': (of) => [
    'u.csv',
    `${plain(of)}${of.pick([of.name, `Account ${of.account}`, `${of.line}, ${of.place}`])}\n`,
  ],
  'the name of the file': (of) => [
    `${of.pick([`Bill_${`${of.given[0]} ${of.surname}`.replaceAll(/\P{L}+/gu, '_')}_Oct`, `${of.name} gas 2025`, `usage_${of.account}`])}.csv`,
    plain(of),
  ],
  JSON: (of) => [
    'u.json',
    JSON.stringify({
      [of.pick(['customer', 'name', 'accountHolder'])]: of.name,
      address: `${of.line}, ${of.place}`,
      account: of.account,
      readings: DAYS.map((date, i) => ({ date, kWh: 5.5 + (i % 3), customer: of.name })),
    }),
  ],
  XML: (of) => [
    'u.xml',
    `<?xml version="1.0"?><export><customer><name>${of.name.replaceAll('&', 'and')}</name><street>${of.line}</street><town>${of.place}</town></customer><meterId>${of.meter}</meterId>${rows((day, use) => `<reading date="${day}" kWh="${use}"/>`)}</export>`,
  ],
  'the name of a sheet': (of) => ['u.xlsx', sheetNamed(of.name.slice(0, 30))],
  'what is refused': (of) => ['u.csv', `${of.land.heads[0]};Place;kWh ${of.name}\n${of.name};${of.line};1,234\n`],
  'a bill on paper': (of) => ['bill.pdf', billOf(of)],
};
export const FILES_KINDS = Object.keys(KINDS);

export function peopleFile(kind: string, seed: number): PeopleFile {
  const of = somebody(chanceOf(seed));
  const [fileName, content] = KINDS[kind]!(of);
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  return { kind, fileName, bytes, secrets: of.secrets };
}
