/** Costs in another money than the home's are left out and named; two columns alike are no question. */
import { expect, test } from 'vitest';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';

const gasVolume = { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 };

function read(lines: readonly string[], money?: '£' | '€') {
  const context = { zone: 'Europe/London', today: '2026-11-25', kWhPerUnit, gasVolume, ...(money ? { money } : {}) };
  const bytes = new TextEncoder().encode(lines.join('\n'));
  const { preview } = readFile('electricity.csv', bytes, { carrier: 'electricity' }, context);
  const [series] = preview.series;
  return {
    asked: preview.remarks.filter(({ weight }) => weight !== 'note').map(({ code }) => code),
    noted: preview.remarks.filter(({ weight }) => weight === 'note').map(({ code }) => code),
    kWh: series?.total.toFixed(1),
    paid: series?.periods?.reduce((sum, { costPence = 0 }) => sum + costPence, 0),
  };
}

const MONTHS = Array.from({ length: 8 }, (_, m) => ({
  days: `2025-0${m + 1}-01,2025-0${m + 2}-01`,
  kWh: 310 + ((m * 53) % 70),
  paid: 80 + ((m * 17) % 31),
}));
const KWH = MONTHS.reduce((sum, { kWh }) => sum + kWh, 0).toFixed(1);
const PENCE = MONTHS.reduce((sum, { paid }) => sum + paid * 100, 0);
const bills = (head: string, sign = '') => [
  'From,To,Electricity (kWh),'.concat(head),
  ...MONTHS.map(({ days, kWh, paid }) => `${days},${kWh},${sign}${paid}.00`),
];

test.each<[string, string, '£' | '€']>([
  ['Cost (CHF)', '', '£'],
  ['Cost (CHF)', '', '€'],
  ['Betrag Fr.', '', '€'],
  ['Cost (kr)', '', '£'],
  ['Cost (EUR)', '', '£'],
  ['Cost (£)', '', '€'],
  ['Cost', '€', '£'],
  ['Cost', '$', '£'],
])('%s with "%s" is no cost of a home that pays in %s', (head, sign, money) => {
  const found = read(bills(head, sign), money);
  expect(found).toMatchObject({ asked: [], kWh: KWH, paid: 0 });
  expect(found.noted).toEqual(['cost-other-money']);
});

test.each<[string, string, '£' | '€' | undefined]>([
  ['Cost (£)', '', '£'],
  ['Cost', '£', '£'],
  ['Cost', '', '£'],
  ['Cost (EUR)', '', '€'],
  ['Cost (CHF)', '', undefined],
])('%s with "%s" is what a home paid in %s', (head, sign, money) => {
  const found = read(bills(head, sign), money);
  expect(found).toMatchObject({ asked: [], kWh: KWH, paid: PENCE });
  expect(found.noted).not.toContain('cost-other-money');
});

test('where two columns are alike it is no matter which is read, and where not it is asked', () => {
  const [one, other] = ['Import (kWh)', 'Grid use (kWh)'];
  const days = Array.from({ length: 50 }, (_, i) => new Date(Date.UTC(2025, 5, 1 + i)).toISOString().slice(0, 10));
  const use = (i: number) => 7 + ((i * 19) % 29) / 4;
  const alike = days.map((day, i) => `${day},${use(i)},${use(i).toFixed(3)}`);
  expect(read([`Date,${one},${other}`, ...alike]).asked).toEqual([]);
  const apart = days.map((day, i) => `${day},${use(i)},${use(i) + (i === 30 ? 1 : 0)}`);
  expect(read([`Date,${one},${other}`, ...apart]).asked).toEqual(['column-asked']);
});
