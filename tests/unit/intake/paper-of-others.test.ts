/** What a bill on paper works out for somebody else, a time to come, another year or at other prices is never this home's. */
import { describe, expect, test } from 'vitest';
import { type PlacedText, writePdf } from '../../../sample-bills/write-pdf.ts';
import { type Line, read, readLines } from './read-bill.ts';
import { codesOf } from './read-text.ts';

const HEAD: Line = ['Electricity bill, 2 July 2026 to 30 September 2026'];
const OWN: readonly Line[] = [
  ['Your charges'],
  ['Electricity 416 kWh at 30.40 p', '£126.46'],
  ['Standing charge 91 days at 54.2 p', '£49.32'],
  ['VAT at 5 % on £175.78', '£8.79'],
  ['Total', '£184.57'],
];
/** The same days, and it proves itself as well. */
const OTHER: readonly Line[] = [
  ['702 kWh at 30.40 p', '£213.41'],
  ['91 days at 54.2 p', '£49.32'],
  ['VAT at 5 % on £262.73', '£13.14'],
  ['Total', '£275.87'],
];
const unitsOf = ({ series }: Awaited<ReturnType<typeof readLines>>) =>
  series.flatMap(({ periods = [] }) => periods.map(({ kWh }) => kWh));

const TITLES = [
  'A neighbour of yours, the same quarter',
  'Typical home, three months at today’s prices',
  'The average customer this quarter',
  'Homes like yours',
  'We think your next bill will look like this',
  'Your year at a glance, looking ahead',
  'Personal projection for the coming 12 months',
  'What a year will cost you',
  'If you had been on Dawn Saver:',
  'Another tariff of ours',
  'So rechnet ein Vergleichshaushalt',
  'Ihr Verbrauch im kommenden Jahr',
  'Ihre voraussichtliche nächste Rechnung',
  'Mit einem anderen Tarif',
  'Un foyer moyen de votre commune',
  'Prévision pour les 12 prochains mois',
  'Avec une autre offre',
  'Een gemiddeld huishouden',
  'Verwachting voor het komende jaar',
  'Un hogar medio',
  'Previsión para el próximo año',
  'Una famiglia tipo',
  'Previsione per i prossimi 12 mesi',
  'En gennemsnitlig husstand',
  'Prognose for det næste år',
];

describe('a block of others', () => {
  test.each(TITLES)('above or below the bill’s own is left out and named: %s', async (title) => {
    for (const lines of [
      [HEAD, [title] as const, ...OTHER, ...OWN],
      [HEAD, ...OWN, [title] as const, ...OTHER],
    ]) {
      const preview = await readLines(lines);
      expect(unitsOf(preview)).toEqual([416]);
      expect(codesOf(preview, 'question')).toEqual([]);
      expect(preview.remarks.find(({ code }) => code === 'paper-others-left-out')?.found).toBe(`${title}: £275.87`);
    }
  });
  test.each(TITLES)('is not taken where it alone proves itself: %s', async (title) => {
    const sums = 'You used 416 kWh. Charges £175.78, VAT £8.79, total £184.57.';
    const preview = await readLines([HEAD, [sums], [title], ...OTHER]);
    expect(codesOf(preview, 'refusal')).toEqual(['paper-others-only']);
    expect(preview.series).toEqual([]);
  });
  test('with nothing else on the paper is asked about by its words', async () => {
    const preview = await readLines([['Electricity, 2 July 2026 to 30 September 2026'], ['A typical home'], ...OTHER]);
    expect(preview.remarks.find(({ code }) => code === 'paper-no-bill-asked')).toMatchObject({
      weight: 'question',
      found: 'A typical home: £275.87',
    });
  });
  test.each([
    'You used 416 kWh. Charges £175.78, VAT £8.79, to pay £184.57.',
    'Before VAT £175.78, VAT £8.79, Total £184.57',
  ])('under a title of which nobody knows whose it is: the other total is asked about, %s', async (sums) => {
    const preview = await readLines([HEAD, [sums], ['Flat B'], ...OTHER]);
    expect(preview.remarks.find(({ code }) => code === 'paper-fuel-left-asked')).toMatchObject({
      weight: 'question',
      found: expect.stringContaining('£184.57'),
    });
  });
  test('ends behind its total', async () => {
    const charges = OWN.slice(1);
    const preview = await readLines([HEAD, ['Next year'], ...OTHER, ...charges, ['To pay', '£184.57']]);
    expect(unitsOf(preview)).toEqual([416]);
  });
});

describe('words about others', () => {
  test.each<readonly Line[]>([
    [['Compared with a typical home of your size'], ['you used 12 % less.']],
    [['Compared with a typical home you used less.']],
    [['A typical home uses 2,700 kWh a year.']],
    [['Average daily use 4.6 kWh']],
    [['Your next bill is due in January 2027.']],
    [['Your neighbours used 702 kWh'], ['Your electricity']],
  ])('above the charges take nothing of them: %j', async (...lines) => {
    const preview = await readLines([HEAD, ...lines, ...OWN.slice(1)]);
    expect(unitsOf(preview)).toEqual([416]);
    expect(codesOf(preview, 'question')).toEqual([]);
    expect(codesOf(preview)).not.toContain('paper-others-left-out');
  });
});

describe('columns beside each other', () => {
  const columns = (heads: readonly [string, string], rows: readonly (readonly string[])[]): PlacedText[] =>
    [['Electricity 2 July 2026 to 30 September 2026'], ['', ...heads], ...rows].flatMap((cells, i) =>
      cells.map((text, at) => ({ text, x: [50, 220, 420][at]!, y: 60 + i * 20, size: 10 })),
    );
  const rows = [
    ['Used', '702 kWh', '416 kWh'],
    ['Unit rate', '30.40 p', '30.40 p'],
    ['Energy', '£213.41', '£126.46'],
    ['Days', '91 days', '91 days'],
    ['Standing charge a day', '54.2 p', '54.2 p'],
    ['Standing charge', '£49.32', '£49.32'],
    ['VAT at 5 %', '£13.14', '£8.79'],
    ['Total', '£275.87', '£184.57'],
  ];
  test.each([
    ['Last year', 'This bill'],
    ['Saver plan (not yours)', 'Your plan'],
    ['2025 (for comparison)', '2026'],
    ['Vorjahr', 'Diese Rechnung'],
    ['Année précédente', 'Cette facture'],
    ['Anno scorso', 'Questa bolletta'],
    ['Sidste år', 'I år'],
  ] as const)('are of others where their head says so: %s', async (other, own) => {
    const swapped = rows.map(([name = '', a = '', b = '']) => [name, b, a]);
    for (const page of [columns([other, own], rows), columns([own, other], swapped)]) {
      const preview = await read(writePdf([page]));
      expect(unitsOf(preview)).toEqual([416]);
      expect(preview.remarks.find(({ code }) => code === 'paper-others-left-out')?.found).toBe(`${other}: £275.87`);
    }
  });
  test('of readings are both the bill’s', async () => {
    const page = columns(
      ['Last bill', 'This bill'],
      [
        ['Reading', '27541', '27957'],
        ['Electricity 416 kWh at 30.40 p', '', '£126.46'],
        ['Standing charge 91 days at 54.2 p', '', '£49.32'],
        ['VAT at 5 % on £175.78', '', '£8.79'],
        ['Total', '', '£184.57'],
      ],
    );
    const preview = await read(writePdf([page]));
    expect(unitsOf(preview)).toEqual([416]);
    expect(codesOf(preview)).not.toContain('paper-others-left-out');
  });
});
