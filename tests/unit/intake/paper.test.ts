import { deflateSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { type PlacedText, widthOf, writePdf } from '../../../sample-bills/write-pdf.ts';
import { intakeContext } from '../../../src/desk/take-in.ts';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import type { Figure } from '../../../src/intake/paper/figures.ts';
import { printedAs } from '../../../src/intake/paper/relations.ts';
import { readPages, readPaper } from '../../../src/intake/read-paper.ts';
import { remarkSentence } from '../../../src/words/remarks.ts';
import { LAYOUTS, layOutBill } from '../../prove/paper/lay-out.ts';
import { PLAIN_BILLS } from '../../prove/paper/plain-bills.ts';
import { SET_BILLS } from '../../prove/paper/set-bills.ts';
import { isOn } from '../../prove/paper/set-page.ts';
import { provePaper, proveScrambled } from '../../prove/paper.ts';
import { provePaperBent } from '../../prove/paper-bent.ts';
import { proveLosses } from '../../prove/paper-losses.ts';
import { context, type Line, read, readLines, setLines } from './read-bill.ts';

test.each([
  [151901, '221,01 €', '1.519,01 €'],
  [-151901, '-1.298,00 €', '−1.519,01 €'],
  [21408, '£67.00', '£214.08'],
  [123456, '£1,067.00', '£1,234.56'],
  [123456, '1067.00', '1234.56'],
])('a reckoned sum of %i is written as the printed %s is', (pence, text, written) => {
  expect(printedAs(pence, { text } as Figure)).toBe(written);
});

const codesOf = ({ remarks }: Awaited<ReturnType<typeof read>>, ...weights: string[]) =>
  remarks.filter(({ weight }) => weights.includes(weight)).map(({ code }) => code);

const HEAD: readonly Line[] = [
  ['Marrow & Tine Energy'],
  ['Mrs A. Sample, 12 Orchard Row, account 88123456'],
  ['Statement 2 July to 1 October 2026'],
  ['Electricity, two rates'],
  ['Day, earlier reading, actual', '41,902'],
  ['Day, later reading, estimated', '42,318'],
];
const CHARGES: readonly Line[] = [
  ['Day units 416 kWh at 30.40 p', '£126.46'],
  ['Night units 275 kWh at 14.10 p', '£38.78'],
  ['Standing charge 91 days at 54.2 p', '£49.32'],
];
const TOTALS: readonly Line[] = [
  ['VAT at 5 % on £214.56', '£10.73'],
  ['Charges of this statement', '£225.29'],
  ['Your monthly payments', '-£240.00'],
];
const BILL = [...HEAD, ...CHARGES, ...TOTALS];

describe('a bill in two rates', () => {
  test('every value is proved, and the bill is the one that typing would make', async () => {
    const { paper, series, remarks } = await readLines(BILL);
    expect(remarks.filter(({ weight }) => weight !== 'note')).toEqual([]);
    expect(paper!.isWhole).toBe(true);
    const { bill } = series[0]!.bills![0]!;
    expect(bill).toMatchObject({
      fuel: 'electricity',
      from: '2026-07-02',
      to: '2026-10-01',
      meters: [
        { name: 'day', opening: 41_902, openingKind: 'actual', closing: 42_318, closingKind: 'estimated', kWh: 416 },
        { name: 'night', kWh: 275 },
      ],
      charges: [
        { meter: 'day', kWh: 416, pencePerKWh: 30.4, pence: 12_646 },
        { meter: 'night', kWh: 275, pencePerKWh: 14.1, pence: 3878 },
      ],
      standing: [{ days: 91, pencePerDay: 54.2, pence: 4932 }],
      vat: { included: false, rate: 0.05, pence: 1073 },
      totalPence: 22_529,
    });
    expect(series[0]!.periods).toEqual([
      { from: '2026-07-02', to: '2026-10-01', kWh: 691, costPence: 22_529, quality: 'estimated', row: 1 },
    ]);
    const use = paper!.values.find(({ kind, name }) => kind === 'use' && name === 'day')!;
    expect(use.sums).toEqual(['416 kWh × 30.40 p = £126.46', '42,318 − 41,902 = 416 kWh']);
  });
  test('nothing that is kept names the person, the address or the account', async () => {
    const { series } = await readLines(BILL);
    expect(JSON.stringify(series)).not.toMatch(/Sample|Orchard|88123456/);
  });
  test('payments stand apart from what the energy cost', async () => {
    const { paper } = await readLines(BILL);
    expect(paper!.values.find(({ kind }) => kind === 'payment')).toMatchObject({ text: '-£240.00', state: 'read' });
  });
  test('upside down it is the same bill', async () => {
    const upright = await readLines(BILL);
    const turned = await read(writePdf([setLines(BILL)], 180));
    expect(turned.series).toEqual(upright.series);
    expect(turned.paper!.isWhole).toBe(true);
  });
  test.each([
    ['askew on a scanner', writePdf([setLines(BILL)], 1.4)],
    ['printed twice to be bold', writePdf([setLines(BILL).flatMap((one) => [one, { ...one, x: one.x + 0.4 }])])],
  ])('%s it is the same bill', async (_name, bytes) => {
    const { series, paper } = await read(bytes);
    expect(series).toEqual((await readLines(BILL)).series);
    expect(paper!.isWhole).toBe(true);
  });
  test('a wrong sum is shown with both sides, and asked', async () => {
    const lines = BILL.map((line): Line => (line[1] === '£126.46' ? [line[0], '£136.46'] : line));
    const preview = await readLines(lines);
    expect(codesOf(preview, 'question')).toContain('paper-contradicted-asked');
    expect(preview.paper!.values.find(({ text }) => text === '£136.46')).toMatchObject({
      state: 'contradicted',
      sums: ['416 kWh × 30.40 p (£126.46) ≠ £136.46'],
    });
    expect(preview.paper!.isWhole).toBe(false);
  });
  test('a word put right by the person proves the sum, and is marked as typed', async () => {
    const lines = BILL.map((line): Line => (line[1] === '£126.46' ? [line[0], '£136.46'] : line));
    const first = await readLines(lines);
    const at = first.paper!.pages[0]!.words.findIndex(({ text }) => text === '£136.46');
    const again = await readLines(lines, { paper: { words: [{ page: 0, at, text: '£126.46' }] } });
    expect(codesOf(again, 'question', 'refusal')).toEqual([]);
    expect(again.paper!.values.find(({ text }) => text === '£126.46')!.state).toBe('typed');
    expect(again.paper!.isWhole).toBe(false);
  });
  test.each([
    ['a charge', '£126.46', '£136.46', '416 kWh × 30.40 p (£126.46) ≠ £136.46'],
    ['a total', '£225.29', '£235.29', '£214.56 + £10.73 (£225.29) ≠ £235.29'],
    ['a total below the charges', '£225.29', '£125.29', '£214.56 + £10.73 (£225.29) ≠ £125.29'],
  ])('%s that the person typed wrong is contradicted, marked as typed, and asked', async (_what, right, wrong, sum) => {
    const at = (await readLines(BILL)).paper!.pages[0]!.words.findIndex(({ text }) => text === right);
    const preview = await readLines(BILL, { paper: { words: [{ page: 0, at, text: wrong }] } });
    expect(preview.paper!.values.find(({ text }) => text === wrong)).toMatchObject({
      state: 'contradicted',
      isTyped: true,
      sums: [sum],
    });
    expect(codesOf(preview, 'question')).not.toEqual([]);
  });
  test('half of it asks for the rest', async () => {
    const half = await readLines([...HEAD, ...CHARGES]);
    expect(codesOf(half, 'question')).toContain('paper-vat-asked');
    expect(half.paper!.isWhole).toBe(false);
    expect(codesOf(await readLines(HEAD), 'refusal')).toEqual(['paper-no-bill']);
  });
  test('its prices are a tariff', async () => {
    const { paper } = await readLines(BILL);
    expect(paper!.tariffs).toMatchObject([
      {
        fuel: 'electricity',
        grade: 'assumed',
        versions: [{ from: '2026-07-02', standingPencePerDay: 54.2, vat: { rate: 0.05, included: false } }],
      },
    ]);
  });
});

describe('a digit that was misread in a picture', () => {
  const misread = BILL.map((line): Line => (line[1] === '£126.46' ? [line[0], '£136.46'] : line));
  const see = async (picture: string | undefined) => {
    const { paper } = await readLines(misread);
    const seen = paper!.pages.map((page) => ({ ...page, ...(picture ? { picture } : {}) }));
    return (await readPaper('bill.jpg', new Uint8Array(), {}, { ...context, seen })).preview;
  };
  test('is offered beside its place, and not taken', async () => {
    const { paper, remarks } = await see('data:image/png;base64,');
    expect(paper!.repairs).toMatchObject([
      { page: 0, read: '£136.46', text: '£126.46', sum: '416 kWh × 30.40 p = £126.46' },
    ]);
    expect(paper!.values.find(({ text }) => text === '£136.46')!.state).toBe('contradicted');
    expect(remarks.some(({ code }) => code === 'paper-contradicted-asked')).toBe(true);
  });
  test('is not offered where the paper itself says so', async () => {
    expect((await see(undefined)).paper!.repairs).toBeUndefined();
  });
});

describe('other ways to set the same', () => {
  const readPlaced = (texts: readonly (readonly [number, number, string])[]) =>
    read(writePdf([texts.map(([x, y, text]) => ({ x, y, text, size: 10 }))]));
  test('units under their numbers and dates under each other, in narrow columns', async () => {
    const { paper, series } = await readPlaced([
      [40, 60, 'Stromrechnung, Abrechnungszeitraum 01.01.2025 – 31.12.2025 (365 Tage)'],
      [40, 104, 'Arbeitspreis'],
      [140, 98, '01.01.2025 –'],
      [140, 110, '30.06.2025'],
      [260, 98, '1.602'],
      [260, 110, 'kWh'],
      [340, 98, '27,31'],
      [340, 110, 'ct/kWh'],
      [450, 104, '437,51'],
      [40, 134, 'Arbeitspreis'],
      [140, 128, '01.07.2025 –'],
      [140, 140, '31.12.2025'],
      [260, 128, '1.510'],
      [260, 140, 'kWh'],
      [340, 128, '25,90'],
      [340, 140, 'ct/kWh'],
      [450, 134, '391,09'],
      [40, 164, 'Summe netto'],
      [450, 164, '828,60'],
      [40, 184, 'Umsatzsteuer 19 %'],
      [450, 184, '157,43'],
      [40, 204, 'Rechnungsbetrag'],
      [450, 204, '986,03'],
    ]);
    expect(paper!.isWhole).toBe(true);
    expect(series[0]!.bills![0]!.bill.charges).toEqual([
      { meter: 'all hours', from: '2025-01-01', to: '2025-07-01', kWh: 1602, pencePerKWh: 27.31, pence: 43_751 },
      { meter: 'all hours', from: '2025-07-01', to: '2026-01-01', kWh: 1510, pencePerKWh: 25.9, pence: 39_109 },
    ]);
  });
  test('two fuels beside each other', async () => {
    const { series } = await readPlaced([
      [40, 60, 'Your bill for 1 March 2026 to 31 May 2026'],
      [40, 90, 'Electricity'],
      [320, 90, 'Gas'],
      [40, 110, '456 kWh × 27.31p'],
      [220, 110, '£124.53'],
      [320, 110, '1,246 kWh × 5.93p'],
      [500, 110, '£73.89'],
      [40, 130, 'Standing charge 92 days × 51.20p'],
      [220, 130, '£47.10'],
      [320, 130, 'Standing charge 92 days × 29.60p'],
      [500, 130, '£27.23'],
      [40, 150, 'VAT at 5%'],
      [220, 150, '£8.58'],
      [320, 150, 'VAT at 5%'],
      [500, 150, '£5.06'],
      [40, 170, 'Total'],
      [220, 170, '£180.21'],
      [320, 170, 'Total'],
      [500, 170, '£106.18'],
    ]);
    expect(series.map(({ carrier, total, periods }) => [carrier, total, periods![0]!.costPence])).toEqual([
      ['electricity', 456, 18_021],
      ['gas', 1246, 10_618],
    ]);
  });
  test('therms and months first, where the home writes so', async () => {
    const lines: readonly Line[] = [
      ['Gas service 03/02/2026 to 04/01/2026, 30 days'],
      ['Gas supply 57.0 therms @ $1.1520 per therm', '$65.66'],
      ['Customer charge 30 days @ $0.40', '$12.00'],
      ['Total gas', '$77.66'],
    ];
    const zone = { ...context, zone: 'America/Los_Angeles' };
    const { preview } = await readPaper('bill.pdf', writePdf([setLines(lines)]), {}, zone);
    // 57 therms of 29.3071 kWh.
    expect(preview.series[0]!.periods).toMatchObject([
      { from: '2026-03-02', to: '2026-04-01', kWh: 1670.5047, costPence: 7766 },
    ]);
  });
});

describe('a count of days behind the last of them is no year', () => {
  const bill = (period: string, count: number, title = 'Your electricity bill') =>
    readLines([
      [title],
      [period],
      ['Electricity 190 kWh × 24.90p', '£47.31'],
      [`Standing charge ${count} days × 51.00p`, `£${(count * 0.51).toFixed(2)}`],
      ['Total', `£${(47.31 + count * 0.51).toFixed(2)}`],
    ]);
  test.each(['1 May – 25 May, 25 days', '1 May – 25 May 25 days', '1 May – 25 May 25', '1 May to 26 May 25 Tage'])(
    '%s',
    async (period) => {
      const preview = await bill(period, 25);
      expect(preview.series.map(({ from }) => from)).toEqual([]);
      expect(codesOf(preview, 'question')).toContain('paper-period-asked');
      const named = await bill(period, 25, 'Your electricity for May 2026');
      expect(named.series[0]).toMatchObject({ from: '2026-05-01', to: '2026-05-26' });
    },
  );
  test('a year of two digits stays one', async () => {
    expect((await bill('1 May 26 – 25 May 26', 25)).series[0]).toMatchObject({ from: '2026-05-01', to: '2026-05-26' });
  });
  test('a month of another year that is compared with says nothing', async () => {
    const preview = await bill('1 May – 25 May, 25 days', 25, 'Bill of 2 June 2026, in May 2025 you used 200 kWh');
    expect(codesOf(preview, 'question')).toContain('paper-period-asked');
  });
});

describe('several bills in one paper', () => {
  const quarter = (
    days: string,
    kWh: number,
    use: string,
    net: string,
    vat: string,
    total: string,
  ): readonly Line[] => [
    ['Marrow & Tine Energy'],
    [`Statement ${days}`],
    ['Electricity'],
    [`Units ${kWh} kWh at 30.00 p`, use],
    ['Standing charge 92 days at 50.00 p', '£46.00'],
    ['Total before VAT', net],
    ['VAT at 5 %', vat],
    ['Charges of this statement', total],
  ];
  const summer = quarter('1 July 2025 to 30 September 2025', 400, '£120.00', '£166.00', '£8.30', '£174.30');
  const autumn = quarter('1 October 2025 to 31 December 2025', 700, '£210.00', '£256.00', '£12.80', '£268.80');
  const periodsOf = ({ series }: Awaited<ReturnType<typeof read>>) =>
    series.flatMap(({ periods }) => periods!.map(({ from, to, kWh, costPence }) => [from, to, kWh, costPence]));
  test('each is kept with its own days', async () => {
    const preview = await read(writePdf([setLines(summer), setLines(autumn)]));
    expect(periodsOf(preview)).toEqual([
      ['2025-07-01', '2025-10-01', 400, 17_430],
      ['2025-10-01', '2026-01-01', 700, 26_880],
    ]);
    expect(preview.paper!.isWhole).toBe(true);
    expect(codesOf(preview, 'note')).toContain('paper-several');
  });
  test('where one has no total of its own, it is asked whether they are one bill', async () => {
    const pages = writePdf([setLines(summer.slice(0, 5)), setLines(autumn)]);
    expect(codesOf(await read(pages), 'question')).toContain('paper-several-asked');
    const said = await read(pages, { paper: { bills: 'several' } });
    expect(codesOf(said, 'question')).not.toContain('paper-several-asked');
    expect(codesOf(said, 'question')).toContain('paper-total-asked');
    expect(periodsOf(said).map(([, , kWh]) => kWh)).toEqual([400, 700]);
  });
});

describe('paper that is no bill, or none that can be read', () => {
  const latin = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
  const plain = () => new TextDecoder('latin1').decode(writePdf([setLines(BILL)]));
  const withStream = (packed: Uint8Array) => {
    const letters = Array.from(packed, (b) => String.fromCharCode(b)).join('');
    return latin(
      `${plain()}\n99 0 obj\n<< /Length ${packed.length} /Filter /FlateDecode >>\nstream\n${letters}\nendstream\nendobj\n`,
    );
  };
  const locked = () =>
    plain().replace(
      'trailer\n<<',
      `trailer\n<< /ID [<00><00>] /Encrypt << /Filter /Standard /V 1 /R 2 /P -44 /O <${'11'.repeat(32)}> /U <${'22'.repeat(32)}> >>`,
    );
  const cases: readonly (readonly [string, () => Uint8Array, string])[] = [
    ['locked', () => latin(locked()), 'paper-locked'],
    ['damaged', () => latin('%PDF-1.4\nnothing of a PDF'), 'paper-broken'],
    [
      'a scan packed as faxes are',
      () => {
        const page = '<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595 842] /Contents 4 0 R';
        const fax = '/Subtype /Image /Width 1654 /Height 2339 /BitsPerComponent 1 /ColorSpace /DeviceGray';
        const parts = [
          '<< /Type /Catalog /Pages 2 0 R >>',
          '<< /Type /Pages /Kids [3 0 R] /Count 1 >>',
          `${page} /Resources << /XObject << /I 5 0 R >> >> >>`,
          '<< /Length 30 >>\nstream\nq 595 0 0 842 0 0 cm /I Do Q  \nendstream',
          `<< /Type /XObject ${fax} /Filter /CCITTFaxDecode /Length 4 >>\nstream\nfax!\nendstream`,
        ].map((part, i) => `${i + 1} 0 obj\n${part}\nendobj\n`);
        return latin(`%PDF-1.4\n${parts.join('')}trailer\n<< /Root 1 0 R /Size 6 >>\n%%EOF`);
      },
      'picture-kind',
    ],
    [
      'with letters larger than any number',
      () => latin(plain().replaceAll(/ [\d.]+ Tf/g, ` 1${'0'.repeat(400)} Tf`)),
      'paper-broken',
    ],
    ['without any words', () => writePdf([[]]), 'paper-no-text'],
    ['of 400 pages', () => writePdf(Array.from({ length: 400 }, () => setLines(BILL))), 'paper-many-pages'],
    [
      'that unpacks without end',
      () => withStream(deflateSync(new Uint8Array(40 * 1024 * 1024), { level: 9 })),
      'paper-bomb',
    ],
    [
      'about a cat',
      () => writePdf([setLines([['Our cat Minka, 4 years, 3.9 kg'], ['Lost on 3 May 2026']])]),
      'paper-no-bill',
    ],
    [
      'for water',
      () =>
        writePdf([
          setLines([
            ['Your water bill 1 May 2026 to 1 August 2026'],
            ['Water 24 m³ at 210.5 p', '£50.52'],
            ['Sewage 22 m³ at 180.0 p', '£39.60'],
            ['Total', '£90.12'],
          ]),
        ]),
      'paper-water-only',
    ],
  ];
  test.each(cases)('%s', async (_name, make, code) => {
    const preview = await read(make());
    expect(codesOf(preview, 'refusal')).toEqual([code]);
    expect(preview.series).toEqual([]);
  });
  test('scripts in it are not run, and the bill is read', async () => {
    const scripted = plain().replace(
      '/Type /Catalog',
      '/Type /Catalog /OpenAction << /S /JavaScript /JS (globalThis.ran = true) >>',
    );
    const preview = await read(latin(scripted));
    expect(preview.paper!.isWhole).toBe(true);
    expect('ran' in globalThis).toBe(false);
  });
  test('heat from a network is no use of the fuel above it', async () => {
    const preview = await readLines([...BILL, ['District heating'], ['Heat 2,140 kWh at 9.80 p', '£209.72']]);
    expect(codesOf(preview, 'note')).toContain('paper-heat-left-out');
    expect(preview.series.map(({ carrier, periods }) => [carrier, periods![0]!.kWh])).toEqual([['electricity', 691]]);
  });
  test('heat alone is refused, or asked about where the paper names its fuel', async () => {
    const heat = (last: string) =>
      readLines([
        ['Heat charges, 1 January 2026 to 31 March 2026'],
        ['Heat used 2,140 kWh at 9.80 p', '£209.72'],
        ['Standing charge 90 days at 41.0 p', '£36.90'],
        ['VAT at 5 % on £246.62', '£12.33'],
        ['Total', '£258.95'],
        [last],
      ]);
    expect(codesOf(await heat(''), 'refusal')).toEqual(['paper-heat-only']);
    expect(codesOf(await heat('The heat network burns natural gas.'), 'refusal')).toEqual(['paper-heat-only']);
  });
  const inMoney = (write: (amount: string) => string) =>
    BILL.map(
      (cells) => cells.map((cell) => cell?.replaceAll(/£([\d.]+)/g, (_, amount) => write(amount))) as unknown as Line,
    );
  test.each([
    ['kr.', (amount: string) => `kr. ${amount}`],
    ['CHF', (amount: string) => `CHF ${amount}`],
    ['Fr.', (amount: string) => `Fr. ${amount}`],
    ['PLN', (amount: string) => `${amount} PLN`],
    ['zl', (amount: string) => `${amount}zl`],
    ['SEK', (amount: string) => `SEK${amount}`],
    ['kroner', (amount: string) => `${amount} kroner`],
    ['Ft', (amount: string) => `${amount} Ft`],
    ['A$', (amount: string) => `A$${amount}`],
    ['CAD', (amount: string) => `CAD ${amount}`],
    ['¥', (amount: string) => `¥${amount}`],
  ])('amounts in another currency are refused by its name: %s', async (money, write) => {
    const preview = await readLines(inMoney(write));
    expect(codesOf(preview, 'refusal')).toEqual(['paper-other-money']);
    expect(preview.remarks.find(({ weight }) => weight === 'refusal')!.found).toBe(money);
  });
  test.each([
    ['Agua 10 sarbey LES', 'paper-water-only', 'picture-no-bill'],
    ['Water 24 m3 50.52 Sewage 22 m3 39.60', 'paper-water-only', 'paper-water-only'],
    ['Insurance 12 Xrn', 'paper-other-bill', 'picture-no-bill'],
  ])('a word that stands once in a picture may be misread: %s', (text, printed, seen) => {
    const words = text.split(' ').map((word, i) => ({ text: word, x: 20 + 60 * i, y: 20, width: 50, height: 10 }));
    const codeOf = (picture: object) => {
      const { preview } = readPages('bill', [{ width: 600, height: 800, words, ...picture }], {}, context);
      return preview.remarks.map(({ code }) => code);
    };
    expect([codeOf({}), codeOf({ picture: 'data:,' })]).toEqual([[printed], [seen]]);
  });
  test('days that were typed the wrong way round are asked for again, and those that do not fit name the line', async () => {
    const lines = BILL.map(
      (cells) =>
        cells.map((cell) =>
          cell?.replaceAll(/\d{1,2} (?:June|July|August|September|October) 2026/g, '-'),
        ) as unknown as Line,
    );
    const said = async (from: string, to: string) => {
      const { remarks } = await readLines(lines, { paper: { from, to } });
      return remarks.filter(({ weight }) => weight !== 'note').map(({ code, found }) => [code, found]);
    };
    expect(await said('2026-08-01', '2026-07-01')).toEqual([['paper-period-asked', '2026-07-01']]);
    const [[code, found]] = (await said('2026-08-01', '2026-08-02')) as [[string, string]];
    expect(code).toBe('paper-contradicted-asked');
    expect(found).toMatch(/^1 days × .* ≠ £/);
  });
  test.each([
    ['£', '£', []],
    ['£', '€', ['paper-money-asked']],
    ['€', '€', []],
    ['€', '£', ['paper-money-asked']],
    ['€', 'CHF ', []],
    ['£', '$', ['paper-money-asked']],
  ] as const)('a household that pays in %s is asked about a bill in %s', async (own, money, asked) => {
    const read = async (choices: IntakeChoices) => {
      const bytes = writePdf([setLines(inMoney((amount) => money + amount))]);
      const { preview } = await readPaper('bill.pdf', bytes, choices, { ...context, money: own });
      return preview.remarks.filter(({ code, weight }) => weight === 'question' && code.startsWith('paper-money'));
    };
    expect((await read({})).map(({ code }) => code)).toEqual(asked);
    expect(await read({ paper: { money: true } })).toEqual([]);
  });
  test.each(['$', 'US$', 'USD '])('dollars are asked about where nobody pays in them: %s', async (money) => {
    const lines = inMoney((amount) => money + amount);
    const preview = await readLines(lines);
    expect(codesOf(preview, 'question')).toEqual(['paper-money-asked']);
    expect(preview.paper!.isWhole).toBe(false);
    expect(codesOf(await readLines(lines, { paper: { money: true } }), 'question')).toEqual([]);
    const there = await readPaper(
      'bill.pdf',
      writePdf([setLines(lines)]),
      {},
      { ...context, zone: 'America/New_York' },
    );
    expect(codesOf(there.preview, 'question')).toEqual([]);
  });
  test('a word of another money, or a Friday, is none', async () => {
    const lines: Line[] = [
      ...BILL,
      ['Fr. 2.10.2026: our office is closed. Interest in Swiss francs is no part of this.'],
    ];
    expect(codesOf(await readLines(lines), 'refusal', 'question')).toEqual([]);
    const bare = inMoney((amount) => amount).map(([label, amount = '']): Line => [label, amount]);
    const preview = await readLines([...bare, ['Fr. 12.06. closed. STD 51.30']]);
    expect(codesOf(preview, 'refusal')).toEqual([]);
  });
  test.each([
    'Heating oil (kerosene), 900 litres at 68.40 pence per litre',
    'Fibre broadband and line rental, 1 month',
    'Wood pellets, blown, 2 tonnes at £307.80',
  ])('a bill for something else is refused by what it says: %s', async (line) => {
    const preview = await readLines([
      ['Invoice, 3 March 2026'],
      [line, '£615.60'],
      ['VAT 5%', '£30.78'],
      ['Total', '£646.38'],
    ]);
    expect(codesOf(preview, 'refusal')).toEqual(['paper-other-bill']);
  });
  test('pay for electricity that was sent out is no use', async () => {
    const preview = await readLines([
      ['Your export payment'],
      ['Electricity, 1 April 2026 to 30 June 2026'],
      ['1,222 kWh at 15.00 p', '£183.30'],
    ]);
    expect(codesOf(preview, 'question')).toContain('paper-no-bill-asked');
  });
  test('water beside electricity is left out, and said', async () => {
    const lines = [...BILL, ['Water'], ['Water 24 m³ at 210.5 p', '£50.52']] as const;
    const preview = await readLines(lines);
    expect(codesOf(preview, 'note')).toContain('paper-water-left-out');
    expect(preview.series.map(({ carrier }) => carrier)).toEqual(['electricity']);
    expect(preview.series[0]!.periods![0]!.costPence).toBe(22_529);
  });
});

describe('charges for what is no energy', () => {
  const money = (pence: number) => `£${(pence / 100).toFixed(2)}`;
  const [energy, standing] = [12_646, 4932];
  const bill = (name: string, pence: number, isTaxed: boolean): Line[] => {
    const net = energy + standing + (isTaxed ? pence : 0);
    const vat = Math.round(net / 20);
    const own: Line = [name, money(pence)];
    return [
      ['Electricity, 2 July to 1 October 2026'],
      ['Units 416 kWh at 30.40 p', money(energy)],
      ['Standing charge 91 days at 54.2 p', money(standing)],
      ...(isTaxed ? [own] : []),
      ['Total before VAT', money(net)],
      ['VAT at 5 %', money(vat)],
      ['Electricity with VAT', money(net + vat)],
      ...(isTaxed ? [] : [own, ['Total of this bill', money(net + vat + pence)] as Line]),
    ];
  };
  const names = ['Home cover', 'Boiler insurance', 'Smart meter rental', 'Late payment fee', 'Missed payment charge'];
  test.each(names.flatMap((name) => [true, false].map((isTaxed) => [name, isTaxed] as const)))(
    '%s is named and is no part of the cost, with tax on it (%s) or without',
    async (name, isTaxed) => {
      const preview = await readLines(bill(name, 1480, isTaxed));
      expect(preview.paper!.isWhole).toBe(true);
      // 175.78 and 5 % on it; tax on a sum and on its parts may be a penny apart.
      expect(Math.abs(preview.series[0]!.periods![0]!.costPence! - 18_457)).toBeLessThanOrEqual(1);
      const note = preview.remarks.find(({ code }) => code === 'paper-services-left-out');
      expect(remarkSentence(note!)).toContain(`: ${name} £14.80.`);
    },
  );
  test.each([
    ['Home cover 3 months at £4.20 a month', 1260],
    ['Boiler insurance 91 days at 13.7 p', 1247],
    ['Heating care plan 3 × £5.00', 1500],
  ])('nor is it a standing charge where it has a price: %s', async (line, pence) => {
    const preview = await readLines(bill(line, pence, true));
    expect(preview.series[0]!.bills![0]!.bill.standing).toHaveLength(1);
    expect(Math.abs(preview.series[0]!.periods![0]!.costPence! - 18_457)).toBeLessThanOrEqual(1);
  });
  test('what no word names is asked about, as before', async () => {
    expect(codesOf(await readLines(bill('Bundle', 1480, true)), 'question')).toEqual(['paper-meaning-asked']);
  });
});

describe('bills in many layouts', () => {
  test('what is called proved is right', () => {
    expect(provePaper(2 * LAYOUTS)).toMatchObject({ within: true });
  });
  test('on bent paper too, and where it lies flat no row is doubted', () => {
    const { within, rows } = provePaperBent(LAYOUTS / 8);
    expect(within).toBe(true);
    expect(rows[0]!.at(-2)).toBeGreaterThanOrEqual(8);
  });
  test('scrambled digits prove nothing', () => {
    expect(proveScrambled(LAYOUTS)).toMatchObject({ within: true });
  });
  test.each([0, 9, 24])('layout %i as a PDF is read as from its words', async (number) => {
    const made = layOutBill(number, 5);
    const { paper, series } = await read(writePdf(made.pages));
    expect(paper!.isWhole).toBe(true);
    expect(series.map(({ total }) => total)).toEqual(
      made.bill.sections.map(({ charges }) => charges.reduce((sum, { kWh }) => sum + kWh, 0)),
    );
  });
});

test('water is named where it is charged, not where electricity is made of it', async () => {
  const mix: readonly Line[] = [
    ['What our electricity is made of', '100 %'],
    ['Water', '18 %'],
  ];
  expect(codesOf(await readLines([...BILL, ...mix]), 'note')).not.toContain('paper-water-left-out');
  const water = await readLines([...BILL, ['Water, 34 m³ at £2.10', '£71.40']]);
  expect(codesOf(water, 'note')).toContain('paper-water-left-out');
  expect(codesOf(await readLines(mix), 'refusal')).toEqual(['paper-no-bill']);
});

test.each([
  ['Final reading 42,318 (you read it), last reading 41,902 (we read it)', 'actual', 'customer'],
  ['Later reading 42318E, earlier reading 41902', 'unknown', 'estimated'],
  ['Earlier reading 41902 E, later reading 42318', 'estimated', 'unknown'],
])('who read a meter is said right behind: %s', async (words, opening, closing) => {
  const { paper } = await readLines([...HEAD.slice(0, 4), [words, '416 kWh'], ...CHARGES, ...TOTALS]);
  const of = (kind: string) => paper!.values.find((value) => value.kind === kind)?.reading;
  expect([of('opening'), of('closing')]).toEqual([opening, closing]);
});

test('of two registers that used as much each has its own readings', async () => {
  const charges = { Day: ['30.40 p', '£126.46'], Night: ['14.10 p', '£58.66'] };
  const registers = Object.entries(charges).flatMap(([name, [price, amount]], i): Line[] => [
    [`${name}, earlier reading ${i + 1}1,000 later reading ${i + 1}1,416`, '416 kWh'],
    [`${name} units 416 kWh at ${price}`, amount],
  ]);
  const { series } = await readLines([...HEAD.slice(0, 4), ...registers.toReversed()]);
  const meters = series[0]!.bills![0]!.bill.meters.map(({ name, opening }) => [name, opening]);
  expect(Object.fromEntries(meters)).toEqual({ day: 11_000, night: 21_000 });
  const lost = registers.filter(([label]) => !label.startsWith('Night, earlier'));
  const rest = (await readLines([...HEAD.slice(0, 4), ...lost])).series[0]!.bills![0]!.bill.meters;
  expect(rest.find(({ name }) => name === 'night')).not.toHaveProperty('opening');
});

test('each question about a bill has its own answer', async () => {
  const lines: readonly Line[] = [
    ...HEAD,
    ['Sunlit hours 412 kWh at 30.20 p', '£124.42'],
    ['Quiet hours 233 kWh at 14.10 p', '£32.85'],
  ];
  const left = async (paper: IntakeChoices['paper']) => codesOf(await readLines(lines, { paper }), 'question');
  const asked = await left({ vat: 'included', leftOver: true });
  const answers = { 'paper-total-asked': 'complete', 'paper-unproved-asked': 'looked', 'paper-meaning-asked': 'meant' };
  expect(asked).toEqual(expect.arrayContaining(Object.keys(answers)));
  for (const [code, answer] of Object.entries(answers))
    expect(await left({ vat: 'included', leftOver: true, [answer]: true })).toEqual(
      asked.filter((one) => one !== code),
    );
});

describe('letters set by themselves', () => {
  const spaced = (text: string, x: number, y: number, step: number) =>
    Array.from(text, (letter, i) => ({ text: letter, x: x + i * step, y, size: 10 }));
  test('letters at even steps are words, and a small raised figure belongs to its unit', async () => {
    const volume = [
      { text: '312 m', x: 50, y: 100, size: 10 },
      { text: '3', x: 50 + widthOf('312 m', 10), y: 96, size: 6 },
      { text: 'x 1.02264 x 39.3 MJ per m³ / 3.6 = 3,483 kWh', x: 90, y: 100, size: 10 },
    ];
    const page = [
      ...spaced('GAS', 50, 40, 11),
      { text: '1 January 2026 to 2 April 2026', x: 50, y: 60, size: 10 },
      ...volume,
      ...spaced('3,483', 300, 130, 8),
      { text: 'kWh at 6.81p', x: 345, y: 130, size: 10 },
      { text: '£237.19', x: 450, y: 130, size: 10 },
      ...setLines([['92 days at 31.40p', '£28.89']]).map((one) => ({ ...one, y: 150 })),
      ...setLines([['VAT at 5 % on £266.08', '£13.30']]).map((one) => ({ ...one, y: 170 })),
      ...setLines([['Total', '£279.38']]).map((one) => ({ ...one, y: 190 })),
    ];
    const { paper, series } = await read(writePdf([page]));
    expect(paper!.isWhole).toBe(true);
    expect(series[0]!.bills![0]!.bill).toMatchObject({ fuel: 'gas', meterUnit: 'm³', correction: 1.02264 });
  });
  test.each([
    ['£225.', '29'],
    ['£225', '.29'],
  ])('pence set small and raised behind a large sum are a part of it: %s %s', async (front, back) => {
    const total = [
      { text: front, x: 50, y: 300, size: 30 },
      { text: back, x: 50 + widthOf(front, 30), y: 288, size: 13 },
      { text: 'Total of this bill', x: 50, y: 330, size: 11 },
    ];
    const lines = setLines([['Electricity 2 July to 1 October 2026'], ...CHARGES, ['VAT at 5 % on £214.56', '£10.73']]);
    const { paper, series } = await read(writePdf([[...lines, ...total]]));
    expect(paper!.isWhole).toBe(true);
    expect(series[0]!.bills![0]!.bill.totalPence).toBe(22529);
  });
  test('a large capital before small ones is a part of its word', async () => {
    let end = 44;
    const head = 'ELECTRICITY, 2 JULY 2026 TO 1 OCTOBER 2026'.split(' ').flatMap((word): PlacedText[] => {
      const [front, back] = /\d/.test(word) ? [word, ''] : [word[0]!, word.slice(1)];
      const x = end + 6;
      end = x + widthOf(front, 12) + widthOf(back, 9);
      return [
        { text: front, x, y: 40, size: 12 },
        { text: back, x: x + widthOf(front, 12), y: 40, size: 9 },
      ];
    });
    const lines = setLines([...CHARGES, ['VAT at 5 % on £214.56', '£10.73'], ['Total', '£225.29']]);
    const { paper, series } = await read(writePdf([[...head, ...lines]]));
    expect(paper!.isWhole).toBe(true);
    expect(series[0]!.periods![0]).toMatchObject({ from: '2026-07-02', to: '2026-10-01', kWh: 691 });
  });
  test('of a cell of two lines both belong to the row that stands between them', async () => {
    const [use, standing] = CHARGES.slice(0, 2).map(([label]) => label.split(' at ') as [string, string]);
    const halves = [use!, standing!].flatMap(([upper, lower], i) => [
      { text: upper, x: 50, y: 100 + i * 40, size: 10 },
      { text: CHARGES[i]![1]!, x: 300, y: 106 + i * 40, size: 10 },
      { text: `at ${lower}`, x: 50, y: 112 + i * 40, size: 10 },
    ]);
    const head = setLines([['Electricity 2 July to 1 October 2026']]);
    const rest = setLines([CHARGES[2]!, ...TOTALS.slice(0, 2)]).map((one) => ({ ...one, y: one.y + 130 }));
    const { paper, series } = await read(writePdf([[...head, ...halves, ...rest]]));
    expect(paper!.isWhole).toBe(true);
    expect(series[0]!.total).toBe(691);
  });
});

describe('bills as suppliers set them, each with what must not be taken', () => {
  const periodsOf = ({ series }: Awaited<ReturnType<typeof read>>) =>
    series.flatMap(({ carrier, periods }) =>
      periods!.map(({ from, to, kWh, costPence }) => [carrier, from, to, kWh, costPence]),
    );
  test.each(SET_BILLS.map((one) => [one.name, one] as const))('%s', async (_name, { pages, zone, truth, foreign }) => {
    const preview = (await readPaper('bill.pdf', writePdf(pages), {}, intakeContext(zone, '2026-11-25'))).preview;
    const isAsked = codesOf(preview, 'question', 'refusal').length > 0;
    // Right, or asked.
    if (!isAsked) expect(periodsOf(preview)).toEqual(truth);
    const values = preview.paper?.values ?? [];
    expect(values.filter(({ boxes }) => boxes.some((box) => isOn(box, foreign)))).toEqual([]);
  });
  test.each(PLAIN_BILLS.map((one) => [one.name, one] as const))('nothing is asked: %s', async (_name, one) => {
    const { preview } = await readPaper('bill.pdf', writePdf(one.pages), {}, intakeContext(one.zone, '2026-11-25'));
    expect(codesOf(preview, 'question', 'refusal')).toEqual([]);
  });
  test('what a bill cost is what it prints, where the price is an average', async () => {
    const { series, remarks } = await readLines([
      ['Electricity 1 February 2026 – 28 February 2026'],
      ['Energy by half-hours, 402.17 kWh, average 17.77p', '£71.46'],
      ['Standing charge 28 days 47.85p', '£13.40'],
      ['Subtotal', '£84.86'],
      ['VAT 5%', '£4.24'],
      ['Charges this month', '£89.10'],
    ]);
    expect(remarks.filter(({ weight }) => weight !== 'note')).toEqual([]);
    expect(series[0]!.periods![0]!.costPence).toBe(8910);
  });
  test('with a line, a cell or a digit lost they are right or asked', async () => {
    expect(await proveLosses(160)).toMatchObject({ within: true });
  });
  test('a charge in the total that no word or unit names is asked about, never left out', async () => {
    const totals: Line[] = [
      ['Sum', '£209.94'],
      ['VAT 5 %', '£10.50'],
      ['Charges', '£220.44'],
    ];
    const days = 'Electricity 11 August 2025 to 23 November 2025';
    const lines = (unit: string): Line[] => [
      [days],
      [`Summer rate 326 ${unit} 23.80p`, '£77.59'],
      ['Winter rate 229 kWh 32.71p', '£74.91'],
      ['Standing charge 105 days 54.70p', '£57.44'],
      ...totals,
    ];
    expect(codesOf(await readLines(lines('')), 'question')).toContain('paper-left-out-asked');
    expect(codesOf(await readLines(lines('kWh')), 'question')).not.toContain('paper-left-out-asked');
  });
  test('what is carried for all registers is one more price for their units, and reactive energy is none', async () => {
    const { paper, series } = await readLines([
      ['Electricity 12 March 2025 to 8 April 2025'],
      ['Energy band 1, 132 kWh 18.955p', '£25.02'],
      ['Energy band 2, 134 kWh 18.658p', '£25.00'],
      ['Carried 266 kWh 3.122p', '£8.30'],
      ['Reactive energy 785 kVArh 0.226p', '£1.77'],
      ['Standing charge 28 days 50.86p', '£14.24'],
      ['Net', '£74.33'],
      ['VAT 5 %', '£3.72'],
      ['Total', '£78.05'],
    ]);
    expect(paper!.isWhole).toBe(false);
    expect(series[0]!.total).toBe(266);
  });
  test('a digit lost of a price contradicts its charge also where one tax is on two fuels', async () => {
    const lines = (price: string): Line[] => [
      ['12 March 2025 to 8 April 2025'],
      ['Electricity 280 kWh 28.37p', '£79.44'],
      ['Electricity standing charge 28 days 50.86p', '£14.24'],
      [`Gas 719 kWh ${price}`, '£37.75'],
      ['Gas standing charge 28 days 30.00p', '£8.40'],
      ['VAT 5 %', '£6.99'],
      ['Total', '£146.82'],
    ];
    expect(codesOf(await readLines(lines('5.25p')), 'question', 'refusal')).toEqual([]);
    expect(codesOf(await readLines(lines('5.2p')), 'question')).toContain('paper-contradicted-asked');
  });
  test('of a fuel that only a name can tell day and night make a question', async () => {
    const named = await readLines([
      ['Merlewick Gas, 12 March 2025 to 8 April 2025'],
      ['Day units 280 kWh 28.37p', '£79.44'],
      ['Night units 100 kWh 12.00p', '£12.00'],
      ['Standing charge 28 days 50.86p', '£14.24'],
      ['VAT 5 %', '£5.28'],
      ['Total', '£110.96'],
    ]);
    expect(codesOf(named, 'question')).toContain('paper-fuel-asked');
  });
  const OF_NAME: readonly Line[] = [
    ['12 March 2025 to 8 April 2025'],
    ['Energy used 280 kWh 8.37p', '£23.44'],
    ['Standing charge 28 days 30.86p', '£8.64'],
    ['VAT 5 %', '£1.60'],
    ['Total', '£33.68'],
  ];
  test.each([
    ['Gorsebank Electric', true],
    ['Gorsebank Electric Supply Ltd', true],
    ['Merlewick Gas and Power plc', true],
    ['Gorsebank Electric Ltd, www.gorsebank-electric.example', true],
    ['Your electricity bill', false],
    ['Electricity supply', false],
    ['Merlewick Gas bill', false],
  ])('"%s" as the only word of a fuel: asked %s', async (title, isAsked) => {
    const codes = codesOf(await readLines([[title], ...OF_NAME]), 'question');
    expect(codes.includes('paper-fuel-asked')).toBe(isAsked);
  });
  test('where a name says one fuel and the charges the other, the charges count', async () => {
    const preview = await readLines([['Gorsebank Electric Ltd'], ['Your gas'], ...OF_NAME]);
    expect(preview.series.map(({ carrier }) => carrier)).toEqual(['gas']);
    expect(codesOf(preview, 'question')).toEqual([]);
  });
  test('gas by the gigajoule is read in kWh', async () => {
    const gas = await readLines([
      ['Natural gas bill, 12 March 2025 to 8 April 2025'],
      ['Commodity charge 9.6 GJ £12.50 per GJ', '£120.00'],
      ['Basic charge 28 days 30.86p', '£8.64'],
      ['GST 5 %', '£6.43'],
      ['Total', '£135.07'],
    ]);
    expect(codesOf(gas, 'question', 'refusal')).toEqual([]);
    // 1 kWh is 3.6 MJ by definition of the SI.
    expect(gas.series[0]!.total).toBeCloseTo(9600 / 3.6, 6);
  });
  test('a chart below what electricity is made of is of no other fuel', async () => {
    const months = [386, 458, 264].map((kWh, i) => ({ text: String(kWh), x: 50 + 40 * i, y: 360, size: 11 }));
    const bill = await read(
      writePdf([
        [
          ...setLines([
            ['Electricity bill, 12 June 2024 to 11 July 2024'],
            ['Electricity 215 kWh at 27.07p', '£58.20'],
            ['Standing charge 30 days at 56.90p', '£17.07'],
            ['VAT at 5 %', '£3.76'],
            ['Total', '£79.03'],
            ['Our fuel mix'],
            ['Coal 2.1%', '3.9%'],
            ['Natural gas 31.4%', '38.5%'],
            ['Other 1.7%', '2.8%'],
          ]),
          { text: 'Your electricity by month (kWh)', x: 50, y: 330, size: 11 },
          ...months,
        ],
      ]),
    );
    expect(codesOf(bill, 'question', 'refusal')).toEqual([]);
  });
  test('the printed sum of uses with decimals is no other use', async () => {
    // 105.1 + 117.1 + 105.1 is not 327.3 in binary fractions.
    const bill = await readLines([
      ['Electricity bill, 1 May 2026 to 31 May 2026'],
      ['Peak 105.10 kWh at 40.00p', '£42.04'],
      ['Day 117.10 kWh at 20.00p', '£23.42'],
      ['Off-peak 105.10 kWh at 10.00p', '£10.51'],
      ['Total use 327.30 kWh', '£75.97'],
      ['Standing charge 31 days at 50.00p', '£15.50'],
      ['VAT at 5 %', '£4.57'],
      ['Total', '£96.04'],
    ]);
    expect(105.1 + 117.1 + 105.1).not.toBe(327.3);
    expect(codesOf(bill, 'question', 'refusal')).toEqual([]);
  });
  test('a charge without a price above the first of two steps is in their sum', async () => {
    const bill = await readLines([
      ['Electricity, 5 March 2025 to 4 April 2025, 31 days'],
      ['Standing charge', '£14.11'],
      ['First 500 kWh at 11.08p', '£55.40'],
      ['Next 387 kWh at 17.286p', '£66.90'],
      ['Subtotal', '£136.41'],
      ['VAT at 5 %', '£6.82'],
      ['Total', '£143.23'],
    ]);
    expect(codesOf(bill, 'question', 'refusal')).toEqual([]);
    expect(bill.series[0]!.periods![0]).toMatchObject({ kWh: 887, costPence: 14323 });
  });
  test('charges, readings and prices on pages of their own are one bill', async () => {
    const pages: readonly (readonly Line[])[] = [
      [
        ['Your bill for 3 May 2025 to 2 August 2025'],
        ['Electricity', '£278.18'],
        ['Standing charge', '£47.76'],
        ['VAT at 5%', '£16.30'],
        ['Total', '£342.24'],
      ],
      [
        ['Reading on 3 May 2025', '72254'],
        ['Reading on 2 August 2025', '73415'],
        ['Electricity used', '1161 kWh'],
      ],
      [
        ['Unit rate', '23.96p per kWh'],
        ['Standing charge', '51.91p per day'],
        ['Days in this bill', '92 days'],
      ],
    ];
    const bill = await read(writePdf(pages.map(setLines)));
    expect(codesOf(bill, 'question', 'refusal')).toEqual([]);
    expect(bill.series[0]!.periods![0]).toMatchObject({ kWh: 1161, costPence: 34224 });
  });
  test('of dollars nobody is asked for a VAT, and the therms said to be used are those of two prices', async () => {
    const bill = await read(
      writePdf([
        setLines([
          ['Gas service from 03/20/2025 to 04/20/2025 (31 days)'],
          ['Therms used', '149'],
          ['Customer charge', '$14.33'],
          ['Distribution charge 149 therms @ $0.3936', '$58.65'],
          ['Gas supply charge 149 therms @ $0.6717', '$100.08'],
          ['Total current charges', '$173.06'],
        ]),
      ]),
      { dayFirst: false, paper: { money: true } },
    );
    expect(codesOf(bill, 'question', 'refusal')).toEqual([]);
    // A therm is 29.3071 kWh.
    expect(bill.series[0]!.total).toBeCloseTo(149 * 29.3071, 0);
  });
  test('counts beside dates are readings where their difference was used', async () => {
    const bill = await readLines([
      ['Your electricity, 5 March 2025 to 4 June 2025'],
      ['Last time (5 March 2025) 68853 we estimated'],
      ['This time (4 June 2025) 69685 we read'],
      ['Electricity 832 kWh at 25.00p', '£208.00'],
      ['Standing charge 92 days at 50.00p', '£46.00'],
      ['VAT at 5 %', '£12.70'],
      ['Total', '£266.70'],
    ]);
    expect(codesOf(bill, 'question', 'refusal')).toEqual([]);
    expect(bill.series[0]!.bills![0]!.bill.meters[0]).toMatchObject({
      opening: 68853,
      openingKind: 'estimated',
      closing: 69685,
      closingKind: 'actual',
    });
  });
  test.each(['120 m³ £0.9150', '120 Smc £0.9150'])('gas charged for by %s alone is refused as such', async (count) => {
    const gas = await readLines([
      ['Gas bill, 12 March 2025 to 8 April 2025'],
      [`Gas ${count}`, '£109.80'],
      ['VAT 5 %', '£5.49'],
      ['Total', '£115.29'],
    ]);
    expect(codesOf(gas, 'refusal')).toEqual(['paper-by-volume']);
  });
  test('a bare count of gas may be of anything, and is asked about', async () => {
    const lines: readonly Line[] = [
      ['Your gas, 12 March 2025 to 8 April 2025'],
      ['Amount supplied, at unit price: 1200 0.0915', '£109.80'],
      ['Standing charge 28 days 30.86p', '£8.64'],
      ['VAT 5 %', '£5.92'],
      ['Total', '£124.36'],
    ];
    expect(codesOf(await readLines(lines), 'question')).toEqual(['paper-meaning-asked']);
  });
  const ASKED = SET_BILLS.filter(({ truth }) => truth.length === 0).map(({ name }) => name);
  test('most need no question', async () => {
    const asked = await Promise.all(
      SET_BILLS.map(async ({ name, pages, zone }) => {
        const { preview } = await readPaper('bill.pdf', writePdf(pages), {}, intakeContext(zone, '2026-11-25'));
        return codesOf(preview, 'question', 'refusal').length > 0 ? [name] : [];
      }),
    );
    expect(asked.flat()).toEqual(expect.arrayContaining(ASKED));
    expect(asked.flat().length).toBeLessThan(SET_BILLS.length * 0.35);
  });
});

test('a page whose heading was not read is of the fuel that its sums name, not of the last line before it', async () => {
  const glance: Line[] = [
    ['Your bill for 5 July 2024 to 4 August 2024'],
    ['Electricity (page 2)', '£155.79'],
    ['Gas (page 3)', '£75.37'],
    ['New charges', '£231.16'],
  ];
  const page = (fuel: string, lines: readonly Line[], net: string, vat: string, total: string): Line[] => [
    ...lines,
    [`${fuel} before VAT`, net],
    ['VAT at 5%', vat],
    [`${fuel} charges`, total],
  ];
  const power: Line[] = [
    ['540 kWh at 24.99p', '£134.95'],
    ['31 days at 43.28p standing charge', '£13.42'],
  ];
  const gas: Line[] = [
    ['891 kWh at 7.11p', '£63.35'],
    ['31 days at 27.18p standing charge', '£8.43'],
  ];
  const { series } = await read(
    writePdf([
      setLines(glance),
      setLines(page('Electricity', power, '£148.37', '£7.42', '£155.79')),
      setLines(page('Gas', gas, '£71.78', '£3.59', '£75.37')),
    ]),
  );
  expect(series.map(({ carrier, periods }) => [carrier, periods![0]!.kWh, periods![0]!.costPence])).toEqual([
    ['electricity', 540, 15_579],
    ['gas', 891, 7537],
  ]);
});
