/** What the words of a bill make of numbers that add up either way: kinds of reading, money off on a condition, what is due. */
import { expect, test } from 'vitest';
import { writePdf } from '../../../sample-bills/write-pdf.ts';
import { intakeContext } from '../../../src/desk/take-in.ts';
import { readPaper } from '../../../src/intake/read-paper.ts';

const COLUMNS = [50, 190, 270, 350, 430, 500];
/** Cells of a row with tabs between them. */
async function read(lines: readonly string[], zone = 'Europe/London') {
  const page = lines.flatMap((line, i) =>
    line.split('\t').flatMap((text, at) => (text === '' ? [] : [{ text, x: COLUMNS[at]!, y: 60 + i * 20, size: 10 }])),
  );
  const { preview } = await readPaper('bill.pdf', writePdf([page]), {}, intakeContext(zone, '2026-11-25'));
  const open = preview.remarks.filter(({ weight }) => weight !== 'note').map(({ code }) => code);
  const values = (preview.paper?.values ?? []).map(({ kind, text, reading }) => ({ kind, text, reading }));
  const textsOf = (wanted: string) => values.filter(({ kind }) => kind === wanted).map(({ text }) => text);
  const periods = preview.series[0]?.periods;
  return { open, values, textsOf, remarks: preview.remarks, periods, series: preview.series };
}

const CHARGES = [
  'Electricity from 2 July 2026 to 31 July 2026',
  'Energy\t300 kWh\t28.00p/kWh\t£84.00',
  'Standing charge\t30 days\t50.00p/day\t£15.00',
  'Sub-total\t\t\t£99.00',
  'VAT at 5%\t\t\t£4.95',
  'Total\t\t\t£103.95',
];

test.each([
  ['a column of kinds before each', 'Readings\tEstimated\t4210\tSmart\t4510\t300', 'estimated', 'actual'],
  ['of a German bill', 'Zähler\tgeschätzt\t4210\tabgelesen\t4510\t300', 'estimated', 'actual'],
  ['a column of kinds behind each', 'Readings\t4210\tEstimated\t4510\tSmart\t300', 'estimated', 'actual'],
  ['words behind each in a line', 'Smart meter, readings 4210 estimated, 4510 actual\t\t\t300', 'estimated', 'actual'],
  ['words before each in a line', 'Readings: estimated 4210 and smart 4510\t\t\t300', 'estimated', 'actual'],
])('the kinds of two readings: %s', async (_, line, opening, closing) => {
  const { values } = await read([...CHARGES, line]);
  expect(values.filter(({ reading }) => reading).map(({ kind, reading }) => [kind, reading])).toEqual([
    ['opening', opening],
    ['closing', closing],
  ]);
});

const BEFORE_DATE = [
  ['Prompt payment discount 5%\t\t\t-£6.00', 'Pay this if before 20 August 2026\t\t\t£97.95'],
  ['Skonto 5 %\t\t\t-£6.00', 'Bei Zahlung bis 20. August 2026\t\t\t£97.95'],
  ['Escompte 5 %\t\t\t-£6.00', 'Total si vous payez avant le 20 août 2026\t\t\t£97.95'],
  ['Betalingskorting 5%\t\t\t-£6.00', 'Bij betaling voor 20 augustus 2026\t\t\t£97.95'],
];
test.each(BEFORE_DATE)('money off for paying early is not in the total: %s', async (...lines) => {
  const { textsOf, periods } = await read([...CHARGES, ...lines]);
  expect(textsOf('total')).toEqual(['£103.95']);
  expect(textsOf('extra')).toEqual([]);
  expect(periods).toMatchObject([{ costPence: 10395 }]);
});
test('money off for having paid early counts where VAT is laid on what is left', async () => {
  const { open, periods } = await read([
    ...CHARGES.slice(0, 3),
    'Discount for paying early last time\t\t\t-£5.00',
    'Sub-total\t\t\t£94.00',
    'VAT at 5%\t\t\t£4.70',
    'Total\t\t\t£98.70',
  ]);
  expect(open).toEqual([]);
  expect(periods).toMatchObject([{ costPence: 9870 }]);
});

const TOTALS = ['Sub-total\t\t\t£123.00', 'VAT at 5%\t\t\t£6.15', 'Total\t\t\t£129.15'];
test.each([
  ['2 visits at £12.00', 'Engineering\t2 visits\t£12.00\t£24.00', ['paper-meaning-asked']],
  ['once, said twice', 'Network fee\t1 year\t£24.00\t£24.00', []],
  ['as many as the days', 'For being there\t30\t80.00p\t£24.00', ['paper-meaning-asked']],
  ['a bare count', 'Extra\t12\t£2.00\t£24.00', ['paper-meaning-asked']],
])('a charge that the total holds is saved with the others: %s', async (_, line, asked) => {
  const { open, periods, remarks } = await read([...CHARGES.slice(0, 3), line, ...TOTALS]);
  expect(open).toEqual(asked);
  expect(periods).toMatchObject([{ kWh: 300, costPence: 12915 }]);
  expect(remarks.map(({ code }) => code)).not.toContain('paper-shared');
});
test('what may be energy whose unit was lost is left out and both sums are shown', async () => {
  const { open } = await read([...CHARGES.slice(0, 3), 'Summer\t120\t20.00p\t£24.00', ...TOTALS]);
  expect(open).toEqual(['paper-contradicted-asked', 'paper-left-out-asked']);
});
test('a charge for gas by volume in the total of a bill for electricity is no charge for electricity', async () => {
  const { open } = await read([...CHARGES.slice(0, 3), 'Gas\t12 m³\t£2.00\t£24.00', ...TOTALS]);
  expect(open).toContain('paper-contradicted-asked');
});

test.each(['Solar credit', 'PV-Gutschrift', 'Crédit solaire', 'Zonnestroom terug'])(
  'units that the roof gave away take nothing off the use: %s',
  async (words) => {
    const { open, periods } = await read([
      'Electricity from 2 July 2026 to 31 July 2026',
      'Energy\t300 kWh\t28.00p/kWh\t£84.00',
      `${words}\t110 kWh\t10.00p\t-£11.00`,
      'Standing charge\t30 days\t50.00p/day\t£15.00',
      'Sub-total\t\t\t£88.00',
      'VAT at 5%\t\t\t£4.40',
      'Total\t\t\t£92.40',
    ]);
    expect(open).toEqual([]);
    expect(periods).toMatchObject([{ kWh: 300 }]);
  },
);

test.each(['12 mnd', '12 mnd.', '12 mths', '12 mo.'])('%s of a standing charge are months', async (count) => {
  const { open, textsOf, periods } = await read([
    'Electricity from 1 May 2025 to 30 April 2026',
    'Energy\t2,000 kWh\t28.00p/kWh\t£560.00',
    `Standing charge\t${count}\t£6.99\t£83.88`,
    'Sub-total\t\t\t£643.88',
    'VAT at 5%\t\t\t£32.19',
    'Total\t\t\t£676.07',
  ]);
  expect(open).toEqual([]);
  expect(textsOf('days')).toEqual([count]);
  expect(periods).toMatchObject([{ kWh: 2000, costPence: 67607 }]);
});

test.each([
  ['a balance before it', 'Debit brought forward £17.05. Please pay £121.00.', ['£121.00']],
  ['what the bill fell by', 'Your bill fell by £31.74. Please pay £103.95.', ['£103.95']],
  ['a fee of another sentence', 'Please pay on time. By cheque it costs £2.50 more.', []],
  ['a payment before it', 'After your payments of £30.00 you have £73.95 to pay.', ['£73.95']],
  ['in German', 'Ihre Zahlungen 30,00 wurden verrechnet. Zu zahlen: £73.95.', ['£73.95']],
  ['of two', 'Amount due last time £80.00, amount due now £183.95', []],
  ['alone', 'To pay\t\t\t£103.95', ['£103.95']],
])('the amount due is what its own sentence says: %s', async (_, line, due) => {
  const { textsOf } = await read([...CHARGES, line]);
  expect(textsOf('due')).toEqual(due);
});

test('a deduction for paying early is no payment, nor is the sum of payments one more', async () => {
  const early = await read([...CHARGES, 'Prompt payment: deduct £3.12 if paid by 20 August 2026']);
  expect(early.textsOf('payment')).toEqual([]);
  const three = ['4 May', '4 June', '4 July'].map((day) => `Payment received ${day} 2026\t\t\t£92.00`);
  const { textsOf } = await read([...CHARGES, ...three, 'Payments together\t\t\t£276.00']);
  expect(textsOf('payment')).toEqual(['£92.00', '£92.00', '£92.00']);
});

test('a sum that holds VAT is not called before VAT', async () => {
  const { textsOf } = await read([...CHARGES.slice(0, 3), 'All charges including VAT\t\t\t£99.00']);
  expect(textsOf('net')).toEqual([]);
  expect(textsOf('total')).toEqual(['£99.00']);
});

test.each([
  ['Heizkostenabrechnung 2025', 'Betriebsstrom\t\t\t402,15', '70 % Verbrauchskosten\t1.846 Einh.\t0,344550\t636,04'],
  [
    'Your share of the heating 2025',
    'Electricity for pumps\t\t\t£402.15',
    'Heat allocator units\t1,846\t34.455p\t£636.04',
  ],
])('heat that allocators share out is no electricity: %s', async (...lines) => {
  const { open, series } = await read([...lines, '1 January 2025 to 31 December 2025'], 'Europe/Berlin');
  expect(open.length).toBeGreaterThan(0);
  expect(series.filter(({ carrier }) => carrier === 'electricity')).toEqual([]);
});
