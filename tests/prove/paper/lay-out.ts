/**
 * Bills set on pages in layouts of our own: wording, order, columns, forms of numbers and dates, panels beside, noise.
 * Nothing here is taken from the reader's words or rules, so that what it reads was not written to be read by it.
 */

import { A4, type PlacedText, widthOf } from '../../../sample-bills/write-pdf.ts';
import { MONTHS } from '../../dialects/words.ts';
import { type Chance, chanceOf } from '../chance.ts';
import { type BillShape, between, type MadeBill, type MadeReading, type MadeSection, makeBill } from './made-bill.ts';

/** What a field says, as the bill prints it, by the name that both sides know it under. */
export interface PrintedField {
  readonly kind: string;
  readonly fuel: string;
  readonly register: string;
  readonly text: string;
}
export interface LaidOutBill {
  readonly layout: string;
  readonly bill: MadeBill;
  readonly pages: readonly (readonly PlacedText[])[];
  readonly fields: readonly PrintedField[];
}

type Words = Readonly<Record<string, string>>;
const ENGLISH: readonly Words[] = [
  {
    electricity: 'Electricity',
    gas: 'Gas',
    period: 'Billing period:',
    to: 'to',
    day: 'Day units',
    night: 'Night units',
    evening: 'Evening and weekend units',
    '': 'Units used',
    standing: 'Standing charge',
    net: 'Subtotal',
    vat: 'VAT',
    total: 'Total charges',
    discount: 'Discount',
    readings: 'Your meter readings',
    earlier: 'Previous',
    later: 'Latest',
    actual: 'actual',
    estimated: 'estimated',
    used: 'Used',
    paid: 'Payments received, thank you',
    due: 'Amount due',
    qty: 'Quantity',
    price: 'Price',
    amount: 'Amount',
    what: 'Description',
    factor: 'Volume correction factor',
    calorific: 'Calorific value',
    volume: 'Gas volume',
    days: 'days',
  },
  {
    electricity: 'Your electricity charges',
    gas: 'Your gas charges',
    period: 'Statement from',
    to: 'until',
    day: 'Day rate energy',
    night: 'Night rate energy',
    evening: 'Weekend energy',
    '': 'Energy',
    standing: 'Daily charge',
    net: 'Total before VAT',
    vat: 'VAT',
    total: 'Total electricity and gas this period',
    discount: 'Loyalty rebate',
    readings: 'Meter readings',
    earlier: 'Start reading',
    later: 'End reading',
    actual: '(A)',
    estimated: '(E)',
    used: 'Difference',
    paid: 'What you have paid',
    due: 'To pay',
    qty: 'kWh / days',
    price: 'Rate',
    amount: 'Cost',
    what: 'Charge',
    factor: 'Conversion factor',
    calorific: 'Calorific value',
    volume: 'Units in cubic metres',
    days: 'days',
  },
  {
    electricity: 'ELECTRICITY',
    gas: 'GAS',
    period: 'This bill covers',
    to: '–',
    day: 'Daytime use',
    night: 'Night use',
    evening: 'Evening use',
    '': 'Consumption',
    standing: 'Fixed charge',
    net: 'Net amount',
    vat: 'Value added tax',
    total: 'Charges for this bill',
    discount: 'Allowance',
    readings: 'How we worked out your use',
    earlier: 'Opening',
    later: 'Closing',
    actual: 'Actual',
    estimated: 'Estimated',
    used: 'Consumption',
    paid: 'Direct debits collected',
    due: 'Balance due',
    qty: 'How much',
    price: 'At',
    amount: 'Comes to',
    what: '',
    factor: 'Correction factor',
    calorific: 'Calorific value',
    volume: 'Volume',
    days: 'days',
  },
];
/** Words that few bills use, so that the reader has to ask what it cannot know. */
const ODD: Words = {
  ...ENGLISH[2]!,
  day: 'Sunlit hours',
  night: 'Quiet hours',
  evening: 'Late hours',
  '': 'Supplied',
  standing: 'Network access',
  net: 'Together',
  total: 'This quarter comes to',
  discount: 'Thank you from us',
  paid: 'From your bank',
  due: 'Left over',
  used: 'Makes',
};
const GERMAN: readonly Words[] = [
  {
    electricity: 'Stromabrechnung',
    gas: 'Erdgasabrechnung',
    period: 'Abrechnungszeitraum',
    to: 'bis',
    day: 'Arbeitspreis HT',
    night: 'Arbeitspreis NT',
    evening: 'Arbeitspreis Wochenende',
    '': 'Arbeitspreis',
    standing: 'Grundpreis',
    net: 'Nettobetrag',
    vat: 'Umsatzsteuer',
    total: 'Bruttobetrag',
    discount: 'Bonus',
    readings: 'Zählerstände',
    earlier: 'Stand alt',
    later: 'Stand neu',
    actual: 'abgelesen',
    estimated: 'geschätzt',
    used: 'Verbrauch',
    paid: 'Geleistete Abschläge',
    due: 'Nachzahlung',
    qty: 'Menge',
    price: 'Preis',
    amount: 'Betrag',
    what: 'Position',
    factor: 'Zustandszahl',
    calorific: 'Brennwert',
    volume: 'Gasmenge',
    days: 'Tage',
  },
  {
    electricity: 'Ihr Strom',
    gas: 'Ihr Gas',
    period: 'Zeitraum vom',
    to: 'bis',
    day: 'Verbrauch Tag',
    night: 'Verbrauch Nacht',
    evening: 'Verbrauch Abend',
    '': 'Ihr Verbrauch',
    standing: 'Grundgebühr',
    net: 'Summe netto',
    vat: 'MwSt.',
    total: 'Rechnungsbetrag',
    discount: 'Rabatt',
    readings: 'Ablesung',
    earlier: 'Anfangsstand',
    later: 'Endstand',
    actual: 'Ablesung durch uns',
    estimated: 'Schätzung, geschätzt',
    used: 'Differenz',
    paid: 'Ihre Zahlungen',
    due: 'Zu zahlen',
    qty: 'Menge',
    price: 'Einzelpreis',
    amount: 'Summe',
    what: '',
    factor: 'Z-Zahl',
    calorific: 'Brennwert',
    volume: 'Volumen',
    days: 'Tage',
  },
];

interface Layout {
  readonly name: string;
  readonly shape: BillShape;
  readonly words: Words;
  readonly lines: 'table' | 'sentence' | 'cards' | 'sum' | 'prose';
  readonly readings: 'table' | 'lines' | 'none';
  readonly dates: number;
  readonly decimal: '.' | ',';
  readonly thousands: string;
  readonly money: 'before' | 'after' | 'none';
  readonly unitInHeading: boolean;
  readonly order: number;
  readonly inMajor: boolean;
  readonly lastDayBelongs: boolean;
  readonly showNet: boolean;
  readonly summary: boolean;
  readonly history: boolean;
  readonly panel: boolean;
  readonly newPage: boolean;
  readonly size: number;
  readonly left: number;
  readonly right: number;
  /** Prices and charges stand without what they are for. */
  readonly apart: boolean;
  /** One VAT and one total over all fuels. */
  readonly together: boolean;
  /** Energy is charged to the hundredth and printed whole. */
  readonly rounded: boolean;
  /** A panel with prices that hold VAT. */
  readonly pricePanel: boolean;
}
export const LAYOUTS = 76;
/** From this one on: numbers apart, VAT over two fuels, energy rounded, odd words. */
const PLAIN_LAYOUTS = 56;

/** The layout of a number: always the same choices. */
function layoutOf(number: number): Layout {
  const chance = chanceOf(9000 + number);
  const language = number % 5 < 3 ? 'en' : 'de';
  const lines = (['table', 'sentence', 'cards', 'sum', 'prose', 'table', 'sentence'] as const)[number % 7]!;
  const hard = number >= PLAIN_LAYOUTS ? (number - PLAIN_LAYOUTS) % 5 : undefined;
  const both = hard === 1 || chance.yes(0.2);
  const fuels = both
    ? (['electricity', 'gas'] as const)
    : chance.yes(0.35)
      ? (['gas'] as const)
      : (['electricity'] as const);
  const decimal = language === 'de' ? ',' : '.';
  return {
    name: `${number} ${language} ${lines}`,
    shape: {
      language,
      fuels,
      registers: chance.pick([1, 1, 2, 2, 3]),
      rounded: hard === 2,
      priceChange: hard !== 0 && lines !== 'cards' && lines !== 'prose' && chance.yes(0.3),
      discount: chance.yes(0.25),
      vatInside: hard !== 1 && lines !== 'prose' && chance.yes(0.2),
      rateDecimals: chance.pick([2, 3]),
    },
    words: hard === 3 && language === 'en' ? ODD : chance.pick(language === 'en' ? ENGLISH : GERMAN),
    lines,
    readings: hard === 0 ? 'table' : chance.pick(['table', 'lines', 'none', 'table']),
    dates: between(chance, 0, 3),
    decimal,
    thousands: language === 'de' ? chance.pick(['.', '', '.']) : chance.pick([',', '', ',']),
    money: language === 'de' ? chance.pick(['after', 'none', 'after']) : chance.pick(['before', 'before', 'none']),
    unitInHeading: chance.yes(0.5),
    order: between(chance, 0, 2),
    inMajor: chance.yes(0.25),
    lastDayBelongs: chance.yes(0.5),
    showNet: chance.yes(0.7),
    summary: chance.yes(0.4),
    history: chance.yes(0.4),
    panel: chance.yes(0.3),
    newPage: chance.yes(0.35),
    size: chance.pick([8, 9, 10, 11]),
    left: between(chance, 35, 80),
    right: between(chance, 380, 540),
    apart: hard === 0,
    together: hard === 1,
    rounded: hard === 2,
    pricePanel: hard === 4,
  };
}

export function layOutBill(number: number, seed: number): LaidOutBill {
  const layout = layoutOf(number % LAYOUTS);
  const chance = chanceOf(seed * 7919 + number);
  const bill = makeBill(layout.shape, chance);
  const page = new Paper(layout);
  const { words } = layout;
  const lastDay = layout.lastDayBelongs ? bill.to - 1 : bill.to;
  letterHead(page, chance, layout);
  page.say(`${words.period} ${dateText(bill.from, layout)} ${words.to} ${dateText(lastDay, layout)}`);
  page.field('period', '', '', `${dateText(bill.from, layout)} – ${dateText(lastDay, layout)}`);
  const sum = bill.sections.reduce((all, one) => all + one.totalPence, 0);
  if (layout.summary) {
    page.gap();
    page.say(layout.shape.language === 'de' ? 'Auf einen Blick' : 'At a glance');
    for (const section of bill.sections) page.pair(words[section.fuel]!, money(section.totalPence, layout));
    page.gap();
  }
  if (layout.pricePanel) pricePanel(page, bill, layout);
  if (layout.panel) sidePanel(page, chance, layout);
  bill.sections.forEach((section, i) => {
    if (i > 0 || layout.newPage) page.turn();
    laySection(page, section, bill, layout, chance);
  });
  page.gap();
  if (layout.together) layTogether(page, bill, layout);
  if (!layout.together && bill.sections.length > 1)
    page.pair(
      layout.shape.language === 'de' ? 'Gesamtbetrag aller Lieferungen' : 'Total of all your charges',
      money(sum, layout),
    );
  for (let i = 0; i < Math.min(bill.payments.count, 1); i++) {
    const paid = bill.payments.count * bill.payments.eachPence;
    page.pair(words.paid!, `${layout.money === 'after' ? `-${money(paid, layout)}` : money(paid, layout)}`);
  }
  page.pair(
    words.due!,
    money(Math.abs(bill.duePence), layout) + (bill.duePence < 0 && layout.shape.language === 'en' ? ' CR' : ''),
  );
  if (layout.history) history(page, chance, layout);
  page.gap();
  page.say(
    layout.shape.language === 'de'
      ? 'Fragen? Rufen Sie uns an: 0800 555 0199. Ihr Service-Team'
      : 'Questions? Call 0800 555 0199 on weekdays from 8:00 to 18:00.',
  );
  return { layout: layout.name, bill, pages: page.pages, fields: page.fields };
}

function laySection(page: Paper, section: MadeSection, bill: MadeBill, layout: Layout, chance: Chance): void {
  const { words } = layout;
  const { fuel } = section;
  page.gap();
  page.say(words[fuel]!, true);
  page.field('fuel', fuel, '', fuel);
  if (layout.readings !== 'none') for (const reading of section.readings) layReading(page, reading, section, layout);
  if (section.gas) {
    const { factor, calorific, volume } = section.gas;
    const [f, c] = [
      plain(factor, layout, 4 + (factor === 1.02264 ? 1 : 0)),
      plain(calorific, layout, layout.shape.language === 'de' ? 3 : 1),
    ];
    page.field('factor', fuel, '', f);
    page.field('calorific', fuel, '', c);
    page.field('volume', fuel, '', whole(volume, layout));
    if (layout.readings === 'none' || layout.order > 0) page.pair(words.volume!, `${whole(volume, layout)} m³`);
    page.pair(words.factor!, f);
    page.pair(words.calorific!, layout.shape.language === 'de' ? `${c} kWh/m³` : `${c} MJ/m³`);
    const kWh = section.charges.reduce((all, one) => all + one.kWh, 0);
    if (section.charges.length > 1 || layout.order === 1)
      page.pair(layout.shape.language === 'de' ? 'Energie' : 'Energy in kWh', `${whole(kWh, layout)} kWh`);
  }
  page.gap();
  const rows: Row[] = [
    ...section.charges.map(
      (one): Row => ({
        kind: 'energy',
        label: words[one.register]!,
        register: one.register,
        count: one.kWh,
        unit: 'kWh',
        milliPence: one.milliPence,
        pence: one.pence,
        from: one.from,
        to: one.to,
      }),
    ),
    ...section.standing.map(
      (one): Row => ({
        kind: 'standing',
        label: words.standing!,
        register: '',
        count: one.days,
        unit: words.days!,
        milliPence: one.milliPence,
        pence: one.pence,
        from: one.from,
        to: one.to,
      }),
    ),
  ];
  if (layout.order === 2) rows.reverse();
  for (const row of rows) {
    const names = row.kind === 'energy' ? ['use', 'price', 'charge'] : ['days', 'standing-price', 'standing-charge'];
    page.field(names[0]!, fuel, row.register, whole(row.count, layout));
    page.field(names[1]!, fuel, row.register, priceText(row.milliPence, layout).number);
    page.field(names[2]!, fuel, row.register, plain(row.pence / 100, layout, 2));
  }
  if (layout.apart) for (const row of rows) layApart(page, row, layout);
  else if (layout.lines === 'table') layTable(page, rows, layout);
  else for (const row of rows) layLine(page, row, layout);
  if (section.discountPence > 0) {
    page.pair(words.discount!, `-${money(section.discountPence, layout)}`);
    page.field('extra', fuel, '', plain(section.discountPence / 100, layout, 2));
  }
  if (layout.together) {
    const of = `${layout.shape.language === 'de' ? 'Summe' : 'Total for'} ${words[fuel]}`;
    page.pair(of, money(section.netPence, layout));
    page.field('net', fuel, '', plain(section.netPence / 100, layout, 2));
  } else layTotals(page, section, bill, layout, chance);
}

interface Row {
  readonly kind: 'energy' | 'standing';
  readonly label: string;
  readonly register: string;
  readonly count: number;
  readonly unit: string;
  readonly milliPence: number;
  readonly pence: number;
  readonly from: number | undefined;
  readonly to: number | undefined;
}

const spanText = ({ from, to }: Row, layout: Layout): string =>
  from === undefined || to === undefined
    ? ''
    : `${dateText(from, layout)} ${layout.words.to} ${dateText(layout.lastDayBelongs ? to - 1 : to, layout)}`;

function layTable(page: Paper, rows: readonly Row[], layout: Layout): void {
  const { words, unitInHeading } = layout;
  const price = priceText(0, layout);
  const heads = {
    label: words.what!,
    count: unitInHeading ? 'kWh' : words.qty!,
    price: unitInHeading ? `${words.price} (${price.unit})` : words.price!,
    amount:
      unitInHeading && layout.money === 'none'
        ? `${words.amount} ${layout.shape.language === 'de' ? 'EUR' : '£'}`
        : words.amount!,
  };
  const order = (['label', 'count', 'price', 'amount'] as const).slice();
  if (layout.order === 1) [order[1], order[2]] = ['price', 'count'];
  const left = layout.left;
  const labels = rows.map((row) => [row.label, spanText(row, layout)].filter(Boolean).join(' '));
  const widest = Math.max(...labels.map((label) => widthOf(label, layout.size)));
  const at1 = left + Math.max(150, widest + 70);
  const stops = { at1, at2: at1 + 85, at3: Math.min(585, at1 + 175) };
  const cells = (of: Readonly<Record<(typeof order)[number], string>>, bold = false) => {
    page.at(of[order[0]!]!, left, bold);
    page.rightAt(of[order[1]!]!, stops.at1, bold);
    page.rightAt(of[order[2]!]!, stops.at2, bold);
    page.rightAt(of[order[3]!]!, stops.at3, bold);
    page.next();
  };
  cells(heads, true);
  for (const [i, row] of rows.entries()) {
    const { number, unit } = priceText(row.milliPence, layout);
    cells({
      label: labels[i]!,
      count:
        unitInHeading && row.kind === 'energy' ? whole(row.count, layout) : `${whole(row.count, layout)} ${row.unit}`,
      price: unitInHeading ? number : `${number} ${unit}`,
      amount: money(row.pence, layout),
    });
  }
}

function layLine(page: Paper, row: Row, layout: Layout): void {
  const { lines, words } = layout;
  const { number, unit } = priceText(row.milliPence, layout);
  const count = `${whole(row.count, layout)} ${row.unit}`;
  const per = row.kind === 'energy' ? 'kWh' : layout.shape.language === 'de' ? 'Tag' : 'day';
  const span = spanText(row, layout);
  if (lines === 'sentence') {
    const at = layout.shape.language === 'de' ? 'zu' : 'at';
    page.pair(`${row.label} ${span ? `${span} ` : ''}${count} ${at} ${number} ${unit}`, money(row.pence, layout));
  } else if (lines === 'sum') {
    page.say(
      `${row.label}${span ? `, ${span}` : ''}: ${count} x ${number} ${unit}/${per} = ${money(row.pence, layout)}`,
    );
  } else if (lines === 'cards') {
    page.say(row.label, true);
    page.pair(layout.shape.language === 'de' ? 'Menge' : 'Quantity', count);
    page.pair(words.price!, `${number} ${unit}/${per}`);
    page.pair(words.amount!, money(row.pence, layout));
    page.gap();
  } else if (layout.shape.language === 'de') {
    page.say(`${row.label}: Für ${count} zum Preis von ${number} ${unit} berechnen wir ${money(row.pence, layout)}.`);
  } else {
    page.say(`${row.label}: for ${count} at ${number}${unit} we charge you ${money(row.pence, layout)}.`);
  }
}

function layApart(page: Paper, row: Row, layout: Layout): void {
  const { number, unit } = priceText(row.milliPence, layout);
  const german = layout.shape.language === 'de';
  const per = row.kind === 'energy' ? 'kWh' : german ? 'Tag' : 'day';
  page.pair(`${row.label}: ${number} ${unit} ${german ? 'je' : 'per'} ${per}`, money(row.pence, layout));
}

function layReading(page: Paper, reading: MadeReading, section: MadeSection, layout: Layout): void {
  const { words } = layout;
  const { fuel } = section;
  const label =
    reading.register === '' ? (layout.shape.language === 'de' ? 'Zähler' : 'Meter') : words[reading.register]!;
  const unit = section.gas ? 'm³' : 'kWh';
  const kind = (one: 'actual' | 'estimated') => words[one]!;
  page.field('opening', fuel, reading.register, whole(reading.opening, layout));
  page.field('closing', fuel, reading.register, whole(reading.closing, layout));
  if (layout.readings === 'table') {
    if (reading === section.readings[0]) {
      page.at(words.readings!, layout.left, true);
      page.rightAt(words.earlier!, layout.left + 260, true);
      page.rightAt(words.later!, layout.left + 370, true);
      page.rightAt(words.used!, layout.left + 450, true);
      page.next();
    }
    page.at(label, layout.left);
    page.rightAt(`${whole(reading.opening, layout)} ${kind(reading.openingKind)}`, layout.left + 260);
    page.rightAt(`${whole(reading.closing, layout)} ${kind(reading.closingKind)}`, layout.left + 370);
    page.rightAt(
      layout.unitInHeading ? whole(reading.used, layout) : `${whole(reading.used, layout)} ${unit}`,
      layout.left + 450,
    );
    page.next();
  } else {
    page.pair(`${label}, ${words.earlier}, ${kind(reading.openingKind)}`, whole(reading.opening, layout));
    page.pair(`${label}, ${words.later}, ${kind(reading.closingKind)}`, whole(reading.closing, layout));
    page.pair(`${label}, ${words.used}`, `${whole(reading.used, layout)} ${unit}`);
  }
}

function layTotals(page: Paper, section: MadeSection, bill: MadeBill, layout: Layout, chance: Chance): void {
  const { words } = layout;
  const { fuel, netPence, vatPence, totalPence } = section;
  const percent = `${layout.order === 1 ? plain(bill.vatPercent, layout, 1) : bill.vatPercent}${chance.yes(0.5) ? ' ' : ''}%`;
  const field = (kind: string, pence: number) => page.field(kind, fuel, '', plain(pence / 100, layout, 2));
  page.field('vat-rate', fuel, '', percent);
  field('vat', vatPence);
  field('total', totalPence);
  if (bill.vatInside) {
    page.pair(words.total!, money(totalPence, layout));
    const inside =
      layout.shape.language === 'de'
        ? `darin enthaltene ${words.vat} ${percent}`
        : `of which ${words.vat} at ${percent}`;
    page.pair(inside, money(vatPence, layout));
    return;
  }
  if (layout.showNet) page.pair(words.net!, money(netPence, layout));
  if (layout.showNet || layout.order === 0) field('net', netPence);
  const on = layout.order === 0 ? ` ${layout.shape.language === 'de' ? 'auf' : 'on'} ${money(netPence, layout)}` : '';
  page.pair(`${words.vat} ${percent}${on}`, money(vatPence, layout));
  page.pair(words.total!, money(totalPence, layout));
}

function layTogether(page: Paper, bill: MadeBill, layout: Layout): void {
  const { words } = layout;
  const net = bill.sections.reduce((all, one) => all + one.netPence, 0);
  const vat = Math.floor((net * bill.vatPercent + 50) / 100);
  page.pair(words.net!, money(net, layout));
  page.pair(`${words.vat} ${bill.vatPercent} %`, money(vat, layout));
  page.pair(words.total!, money(net + vat, layout));
  const field = (kind: string, pence: number) => page.field(kind, '', '', plain(pence / 100, layout, 2));
  field('net', net);
  page.field('vat-rate', '', '', `${bill.vatPercent} %`);
  field('vat', vat);
  field('total', net + vat);
}

function pricePanel(page: Paper, bill: MadeBill, layout: Layout): void {
  const [section] = bill.sections;
  const price = section!.charges[0]!.milliPence * (1 + bill.vatPercent / 100);
  const { number, unit } = priceText(Math.round(price), layout);
  const german = layout.shape.language === 'de';
  page.gap();
  page.say(german ? 'Ihr Tarif auf einen Blick' : 'About your tariff');
  page.pair(german ? 'Preis je kWh mit Steuer' : 'Price per kWh with tax', `${number} ${unit}`);
  page.pair(
    german ? 'Geschätzt im Jahr' : 'Estimate for a year',
    `${whole(Math.round(section!.charges[0]!.kWh * 4.1), layout)} kWh`,
  );
  page.pair(
    german ? 'Geschätzte Kosten im Jahr' : 'Estimated cost for a year',
    money(Math.round(section!.totalPence * 4.1), layout),
  );
}

function letterHead(page: Paper, chance: Chance, layout: Layout): void {
  const german = layout.shape.language === 'de';
  const name = german
    ? chance.pick(['Stadtwerke Tannfurt', 'Energie Moorbach', 'Licht und Wärme Nord'])
    : chance.pick(['Marrow & Tine Energy', 'Hollow Lane Power', 'Fennel Supply']);
  page.say(name, true);
  page.gap();
  page.say(german ? 'Frau Ilse Beispiel' : 'Mrs A. Sample');
  page.say(german ? `Birkenweg ${between(chance, 1, 99)}` : `${between(chance, 1, 99)} Orchard Row`);
  page.say(german ? `${between(chance, 10_000, 99_000)} Musterstadt` : 'Little Wending LW4 7QQ');
  page.say(`${german ? 'Kundennummer' : 'Account number'}: ${between(chance, 10_000_000, 99_999_999)}`);
  page.say(`${german ? 'Rechnungsdatum' : 'Bill date'}: ${dateText(between(chance, 20_310, 20_330), layout)}`);
  page.gap();
}

function history(page: Paper, chance: Chance, layout: Layout): void {
  page.gap();
  page.say(layout.shape.language === 'de' ? 'Ihr Verbrauch im Vergleich' : 'Your use, month by month');
  for (const month of ['Jan', 'Feb', 'Mar', 'Apr']) page.pair(month, `${whole(between(chance, 80, 900), layout)} kWh`);
}

function sidePanel(page: Paper, chance: Chance, layout: Layout): void {
  const german = layout.shape.language === 'de';
  const lines = german
    ? [
        'Gut zu wissen',
        `Vertrag bis ${dateText(20_500, layout)}`,
        `Vorjahr ${whole(between(chance, 1500, 4200), layout)} kWh`,
        'Kündigung: 4 Wochen',
      ]
    : [
        'Good to know',
        `Contract until ${dateText(20_500, layout)}`,
        `Last year ${whole(between(chance, 1500, 4200), layout)} kWh`,
        'No exit fee',
      ];
  page.beside(lines, 430);
}

const whole = (value: number, layout: Layout): string => grouped(String(value), layout);
const grouped = (digits: string, { thousands }: Layout): string =>
  thousands === '' ? digits : digits.replace(/\B(?=(\d{3})+$)/g, thousands);
function plain(value: number, layout: Layout, decimals: number): string {
  const [front = '', back] = value.toFixed(decimals).split('.');
  return back === undefined ? grouped(front, layout) : `${grouped(front, layout)}${layout.decimal}${back}`;
}
function money(pence: number, layout: Layout): string {
  const text = plain(pence / 100, layout, 2);
  const sign = layout.shape.language === 'de' ? '€' : '£';
  return layout.money === 'before' ? `${sign}${text}` : layout.money === 'after' ? `${text} ${sign}` : text;
}
function priceText(milliPence: number, layout: Layout): { readonly number: string; readonly unit: string } {
  const german = layout.shape.language === 'de';
  const { rateDecimals } = layout.shape;
  if (layout.inMajor)
    return { number: plain(milliPence / 100_000, layout, rateDecimals + 2), unit: german ? '€' : '£' };
  return { number: plain(milliPence / 1000, layout, rateDecimals), unit: german ? 'ct' : 'p' };
}

function dateText(day: number, { dates, shape: { language } }: Layout): string {
  const date = new Date(day * 86_400_000);
  const [d, m, y] = [date.getUTCDate(), date.getUTCMonth() + 1, date.getUTCFullYear()];
  const two = (n: number) => String(n).padStart(2, '0');
  const name = MONTHS[language][m - 1]!;
  if (language === 'de')
    return dates === 0
      ? `${d}. ${name} ${y}`
      : dates === 1
        ? `${two(d)}.${two(m)}.${two(y % 100)}`
        : `${two(d)}.${two(m)}.${y}`;
  return dates === 0
    ? `${two(d)}/${two(m)}/${y}`
    : dates === 1
      ? `${d} ${name.slice(0, 3)} ${y}`
      : dates === 2
        ? `${d} ${name} ${y}`
        : `${y}-${two(m)}-${two(d)}`;
}

/** Writes line under line, turns the page when it is full, and notes what the fields say. */
class Paper {
  readonly pages: PlacedText[][] = [[]];
  readonly fields: PrintedField[] = [];
  private y = 50;
  private readonly layout: Layout;
  constructor(layout: Layout) {
    this.layout = layout;
  }
  field(kind: string, fuel: string, register: string, text: string) {
    this.fields.push({ kind, fuel, register, text });
  }
  at(text: string, x: number, bold = false) {
    if (text !== '') this.pages.at(-1)!.push({ text, x, y: this.y, size: this.layout.size, bold });
  }
  rightAt(text: string, right: number, bold = false) {
    this.at(text, right - widthOf(text, this.layout.size), bold);
  }
  next() {
    this.y += this.layout.size * 1.7;
    if (this.y > A4.height - 60) this.turn();
  }
  say(text: string, bold = false) {
    const room = 560 - this.layout.left;
    const words = text.split(' ');
    let line = '';
    for (const word of words) {
      const longer = line === '' ? word : `${line} ${word}`;
      if (widthOf(longer, this.layout.size) > room && line !== '') {
        this.at(line, this.layout.left, bold);
        this.next();
        line = word;
      } else line = longer;
    }
    this.at(line, this.layout.left, bold);
    this.next();
  }
  pair(label: string, value: string) {
    const room = this.layout.left + widthOf(label, this.layout.size) + 20;
    this.at(label, this.layout.left);
    this.rightAt(value, Math.min(570, Math.max(this.layout.right, room + widthOf(value, this.layout.size))));
    this.next();
  }
  gap() {
    this.y += this.layout.size;
  }
  turn() {
    this.pages.push([]);
    this.y = 50;
  }
  beside(lines: readonly string[], x: number) {
    lines.forEach((text, i) => {
      this.pages.at(-1)!.push({ text, x, y: 50 + i * this.layout.size * 1.6, size: this.layout.size - 1 });
    });
  }
}
