/** Prices as bills print them: with their hours, below nought, beside each other in columns, under two taxes, of two fuels. */
import { expect, test } from 'vitest';
import { writePdf } from '../../../sample-bills/write-pdf.ts';
import { intakeContext } from '../../../src/desk/take-in.ts';
import { readPaper } from '../../../src/intake/read-paper.ts';

const COLUMNS = [50, 230, 330, 450];
/** Cells of a row with tabs between them. */
async function read(lines: readonly string[], zone = 'Europe/London') {
  const page = lines.flatMap((line, i) =>
    line.split('\t').flatMap((text, at) => (text === '' ? [] : [{ text, x: COLUMNS[at]!, y: 60 + i * 20, size: 10 }])),
  );
  const { preview } = await readPaper('bill.pdf', writePdf([page]), {}, intakeContext(zone, '2026-11-25'));
  const open = preview.remarks.filter(({ weight }) => weight !== 'note').map(({ code }) => code);
  return { open, paper: preview.paper, periods: preview.series[0]?.periods, bill: preview.series[0]?.bills?.[0]?.bill };
}

const twoRates = (night: string) => [
  'Electricity from 2 July 2026 to 31 July 2026',
  `Night rate${night}\t200 kWh\t9.50p/kWh\t£19.00`,
  'Day rate\t300 kWh\t28.00p/kWh\t£84.00',
  'Standing charge\t30 days\t50.00p/day\t£15.00',
  'Sub-total\t\t\t£118.00',
  'VAT at 5%\t\t\t£5.90',
  'Total\t\t\t£123.90',
];
test.each([
  [' (00:30 - 07:30)', 'measured', '00:30', '07:30'],
  [' (23.30-05.30)', 'measured', '23:30', '05:30'],
  [' (12:30 am to 5:30 am)', 'measured', '00:30', '05:30'],
  ['', 'assumed', '00:00', '07:00'],
  [' (00:30-07:30 GMT)', 'assumed', '00:00', '07:00'],
  [' (00:30-07:30, Mon to Fri)', 'assumed', '00:00', '07:00'],
])('a night rate%s is %s to apply from %s to %s', async (said, grade, from, to) => {
  const { open, paper } = await read(twoRates(said));
  expect(open).toEqual([]);
  expect(paper!.tariffs).toMatchObject([
    {
      grade,
      versions: [
        {
          bands: [
            { name: 'night', times: [{ from, to }] },
            { name: 'day', times: 'rest' },
          ],
        },
      ],
    },
  ]);
});

const FLEXIBLE = [
  'Flexible electricity, 2 July 2026 to 31 July 2026',
  'Half-hours above zero\t400 kWh\t20.00p average\t£80.00',
];
const FLEXIBLE_TOTALS = ['VAT at 5%\t\t\t£4.60', 'Total\t\t\t£96.60'];
test('units at a price below nought were used, and money off the same units is no use', async () => {
  const own = await read([
    ...FLEXIBLE,
    'Half-hours below zero\t75 kWh\t-4.00p average\t-£3.00',
    'Standing charge\t30 days\t50.00p\t£15.00',
    'Total before VAT\t\t\t£92.00',
    ...FLEXIBLE_TOTALS,
  ]);
  expect(own.open).toEqual(['paper-meaning-asked']);
  expect(own.periods).toMatchObject([{ kWh: 475, costPence: 9660 }]);
  expect(own.bill!.charges[1]).toMatchObject({ kWh: 75, pencePerKWh: -4, pence: -300 });
  const off = await read([
    ...FLEXIBLE,
    'Loyalty reward\t400 kWh\t-0.75p\t-£3.00',
    'Standing charge\t30 days\t50.00p\t£15.00',
    'Total before VAT\t\t\t£92.00',
    ...FLEXIBLE_TOTALS,
  ]);
  expect(off.periods).toMatchObject([{ kWh: 400, costPence: 9660 }]);
});

test('prices before and after a change stand in columns with their words beside them', async () => {
  const { periods, bill } = await read([
    'Electricity bill 2 July 2026 to 31 August 2026',
    '\tuntil 31 July\tfrom 1 August 2026',
    'Days\t30\t31',
    'Units (kWh)\t240\t310',
    'Unit price (p)\t25.00\t27.50',
    'Energy\t£60.00\t£85.25',
    'Standing charge per day (p)\t50.00\t52.00',
    'Standing charge\t£15.00\t£16.12',
    'Total before VAT\t£176.37',
    'VAT at 5%\t£8.82',
    'Total\t£185.19',
  ]);
  expect(periods).toMatchObject([{ from: '2026-07-02', kWh: 550, costPence: 18_519 }]);
  expect(bill!.standing.map(({ pencePerDay }) => pencePerDay)).toEqual([50, 52]);
});

test('of two taxes the lower one is on what stands above the units and has no price', async () => {
  const { periods, paper } = await read(
    [
      'Électricité, consommation du 13/01/2026 au 12/03/2026',
      'Abonnement (2 mois)\t\t\t30,00 €',
      'Consommation\t600 kWh\t0,1700 €/kWh\t102,00 €',
      'Contribution tarifaire\t\t\t4,00 €',
      'Total HT\t\t\t136,00 €',
      'TVA à 5,5 % sur 34,00 €\t\t\t1,87 €',
      'TVA à 20 % sur 102,00 €\t\t\t20,40 €',
      'Total TTC\t\t\t158,27 €',
    ],
    'Europe/Paris',
  );
  expect(paper!.values.filter(({ kind }) => ['net', 'vat', 'total'].includes(kind))).toMatchObject([
    { text: '136,00 €', state: 'proved' },
    { text: '1,87 €', state: 'proved' },
    { text: '20,40 €', state: 'proved' },
    { text: '158,27 €', state: 'proved' },
  ]);
  expect(periods ?? []).not.toMatchObject([{ costPence: 12_240 }]);
});

test('“Ihren Stromverbrauch” is no name of a supplier', async () => {
  const { open, paper } = await read(
    [
      'Rechnung über Ihren Stromverbrauch, 01.01.2026 - 31.01.2026',
      'Arbeitspreis\t100 kWh\t30,00 Cent/kWh\t30,00',
      'Summe netto\t\tEUR\t30,00',
      '20 % USt\t\tEUR\t6,00',
      'Rechnungsbetrag brutto\t\tEUR\t36,00',
    ],
    'Europe/Vienna',
  );
  expect(open).not.toContain('paper-fuel-asked');
  expect(paper!.values[0]).toMatchObject({ kind: 'fuel', text: 'electricity' });
});

test('two fuels without their headings are never taken for one', async () => {
  const charges = [
    'Units used\t300 kWh\t25.00p\t£75.00',
    'Standing charge\t30 days\t50.00p\t£15.00',
    'Units used\t900 kWh\t6.00p\t£54.00',
    'Standing charge\t30 days\t30.00p\t£9.00',
    'Total before VAT\t\t\t£153.00',
    'VAT at 5%\t\t\t£7.65',
    'Total\t\t\t£160.65',
  ];
  expect((await read(['Your bill 2 July 2026 to 31 July 2026', ...charges])).open).toEqual(['paper-two-fuels']);
  const named = await read(['Your electricity bill 2 July 2026 to 31 July 2026', ...charges]);
  expect(named.open).not.toContain('paper-two-fuels');
});

test('a standing charge that only counts its days is one, by its own name', async () => {
  const { open, paper } = await read(
    [
      'Stromrechnung, Abrechnungszeitraum 01.01.2026 - 31.01.2026 (31 Tage)',
      'Arbeitspreis\t100 kWh\t30,00 ct/kWh\t30,00 €',
      'Grundpreis\t31 Tage\t\t12,40 €',
      'Nettobetrag\t\t\t42,40 €',
      '19 % USt\t\t\t8,06 €',
      'Bruttobetrag\t\t\t50,46 €',
    ],
    'Europe/Berlin',
  );
  expect(open).toEqual([]);
  expect(paper!.values.find(({ kind }) => kind === 'extra')).toMatchObject({ name: 'Grundpreis', meaning: 'said' });
});
