/** Bills that leave something open beside such as are plain: units nobody knows, units billed before, rounded prices. */
import { describe, expect, test } from 'vitest';
import { type Line, readLines } from './read-bill.ts';
import { codesOf } from './read-text.ts';

const billOf = (fuel: string, ...charges: readonly Line[]): readonly Line[] => [
  ['Statement 2 July to 1 October 2026'],
  [fuel],
  ...charges,
];
const TOTALS: readonly Line[] = [
  ['Standing charge 91 days at 54.2 p', '£49.32'],
  ['VAT at 5 % on £175.78', '£8.79'],
  ['Total', '£184.57'],
];

describe('what is counted', () => {
  test.each([
    'Usage 416 xyz at 30.40 p',
    'Usage 416 u at 30.40 p',
    'Usage 416 kwk at 30.40 p',
    'Usage 416 at 30.40 p/xyz',
    'Usage 416 at 30.40 p per xyz',
  ])('in a unit that nobody knows is asked about: %s', async (line) => {
    expect(codesOf(await readLines(billOf('Electricity', [line, '£126.46'], ...TOTALS)), 'question')).toEqual([
      'paper-meaning-asked',
    ]);
  });
  test.each([
    'Usage 416 kWh at 30.40 p',
    'Usage 416 kWhs at 30.40 p',
    'Usage 416 kilowatt hours at 30.40 p',
    'Usage 416 at 30.40 p',
    'Usage 416 units at 30.40 p per unit',
    'Usage 416 used at 30.40 p',
  ])('in a unit that is known, or in none, is not: %s', async (line) => {
    const preview = await readLines(billOf('Electricity', [line, '£126.46'], ...TOTALS));
    expect(codesOf(preview, 'question')).toEqual([]);
    expect(preview.series[0]!.periods![0]!.kWh).toBe(416);
  });
});

describe('units that another bill was for', () => {
  const charged: readonly Line[] = [['Units charged 416 kWh at 30.40 p', '£126.46'], ...TOTALS];
  test.each([
    'Less units already billed 400 kWh',
    'Less estimated units previously billed 400',
    'abzüglich bereits abgerechnet 400 kWh',
  ])('are asked about with what is kept: %s', async (line) => {
    const lines = billOf('Electricity', ['Electricity used 816 kWh'], [line], ...charged);
    const preview = await readLines(lines);
    expect(codesOf(preview, 'question')).toEqual(['paper-billed-before-asked']);
    expect(preview.remarks.find(({ weight }) => weight === 'question')).toMatchObject({
      found: line,
      expected: '416 kWh',
    });
    expect(codesOf(await readLines(lines, { paper: { billedBefore: true } }), 'question')).toEqual([]);
  });
  test('are no payments made before', async () => {
    const lines = billOf('Electricity', ...charged, ['Payments already billed', '-£100.00']);
    expect(codesOf(await readLines(lines), 'question')).toEqual([]);
  });
});

describe('a price that is printed rounded', () => {
  // 916 kWh × 24.48 p, printed with one place.
  const rounded = (amount: string, net: string, vat: string, total: string, price = '24.5 p') =>
    readLines(
      billOf(
        'Electricity',
        [`Electricity 916 kWh at ${price}`, amount],
        ['Standing charge 91 days at 54.2 p', '£49.32'],
        [`VAT at 5 % on ${net}`, vat],
        ['Total', total],
      ),
    );
  test('agrees with its charge, which tells it better', async () => {
    for (const price of ['24.5 p', '£0.245']) {
      const preview = await rounded('£224.24', '£273.56', '£13.68', '£287.24', price);
      expect(codesOf(preview, 'question')).toEqual([]);
      const { bill } = preview.series[0]!.bills![0]!;
      expect(bill.charges[0]!.pencePerKWh).toBeCloseTo(24.4803, 4);
      expect(preview.series[0]!.periods![0]!.costPence).toBe(28_724);
    }
  });
  test('and does not where its places explain less than it is out', async () => {
    const preview = await rounded('£223.50', '£272.82', '£13.64', '£286.46');
    expect(codesOf(preview, 'question')).toContain('paper-contradicted-asked');
  });
  test('nor where they could explain any number, as whole pence do', async () => {
    const preview = await rounded('£224.24', '£273.56', '£13.68', '£287.24', '24 p');
    expect(codesOf(preview, 'question')).toContain('paper-contradicted-asked');
  });
});
