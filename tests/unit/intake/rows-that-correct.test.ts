/** Rows of a list that take back what others gave: below nought, or with their money below nought. */
import { describe, expect, test } from 'vitest';
import { codesOf, previewOf } from './read-text.ts';

const MONTHS = Array.from({ length: 12 }, (_, at) => `${String(at + 1).padStart(2, '0')}/2023;300`);
const under = (heading: string, ...rows: readonly string[]) =>
  previewOf([heading, ...MONTHS, ...rows], { zone: 'Europe/Berlin' });
const totals = ({ series }: ReturnType<typeof previewOf>) => series.map(({ total }) => total);

describe('a correction', () => {
  test.each([
    ['Month;Electricity kWh', '03/2023 correction;-40'],
    ['Month;Electricity kWh', 'Mar 2023 (credit note);(40)'],
    ['Monat;Strom kWh', 'Gutschrift 03/2023;-40'],
    ['Monat;Strom kWh', 'Korrektur: 03/2023;-40'],
    ['Mois;Électricité kWh', 'Régularisation 03/2023;-40'],
    ['Mese;Energia elettrica kWh', 'conguaglio 03/2023;-40'],
    ['Maand;Stroom kWh', 'correctie 03/2023;-40'],
  ])('under “%s”, “%s” is taken off its month', (heading, row) => {
    const preview = under(heading, row);
    expect([totals(preview), codesOf(preview)]).toEqual([[3560], ['taken-back']]);
  });
  test.each(['Adjustment;-40', 'Korrektur;-40', '11/2023 rebill;300', 'Gutschrift 2023 für Sie;-40'])(
    '“%s” of no plain month is asked about',
    (row) => {
      const preview = under('Month;Electricity kWh', row);
      expect([totals(preview), codesOf(preview, 'question')]).toEqual([[3600], ['unread-asked']]);
    },
  );
  test('of a long list is asked about, though it is one row of many', () => {
    const days = Array.from({ length: 90 }, (_, at) => {
      const day = new Date(Date.UTC(2023, 0, 1 + at)).toISOString().slice(0, 10);
      return `${day},9`;
    });
    const preview = previewOf(['Date,Electricity kWh', ...days, 'Adjustment,-40']);
    expect([totals(preview), codesOf(preview, 'question')]).toEqual([[810], ['unread-asked']]);
  });
  test('in a column of its own beside the use is asked about', () => {
    const rows = MONTHS.map((row, at) => `${row};${at === 2 ? -40 : 0}`);
    const preview = previewOf(['Month;Electricity kWh;Adjustment kWh', ...rows]);
    expect([totals(preview), codesOf(preview, 'question')]).toEqual([[3600], ['column-asked']]);
  });
});

describe('a bill', () => {
  const bills = [
    'G-101,01/01/2023,31/03/2023,5120,307.20',
    'G-102,01/04/2023,30/06/2023,2210,132.60',
    'G-103,01/07/2023,30/09/2023,610,36.60',
  ];
  test.each([
    ['Invoice', 'G-102 credit'],
    ['Rechnung', 'Storno G-102'],
    ['N° facture', 'G-104'],
    ['Document no', 'CREDIT G-102'],
  ])(
    'numbered under “%s” goes with “%s”, whose money is below nought, and the one in its place stands',
    (heading, name) => {
      const credit = `${name},01/04/2023,30/06/2023,2210,-132.60`;
      const again = 'G-105,01/04/2023,30/06/2023,1730,103.80';
      for (const money of ['£', 'Net £']) {
        const preview = previewOf([
          `${heading},From,To,Gas kWh,${money}`,
          ...bills.slice(0, 2),
          credit,
          again,
          bills[2]!,
        ]);
        expect([totals(preview), codesOf(preview)]).toEqual([[7460], ['taken-back', 'columns-not-understood']]);
      }
    },
  );
  test('of which nothing is taken back stands beside another of the same days', () => {
    const rows = ['E-1,01/04/2023,30/06/2023,2210,132.60', 'E-2,01/04/2023,30/06/2023,2210,132.60'];
    expect(codesOf(previewOf(['Invoice,From,To,Gas kWh,£', ...bills, ...rows]))).not.toContain('taken-back');
  });
});
