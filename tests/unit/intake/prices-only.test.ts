/** Files of prices among the readings: refused with the way to the tariffs, and never counted as energy. */
import { describe, expect, test } from 'vitest';
import { codesOf, previewOf } from './read-text.ts';

const DAYS = Array.from({ length: 60 }, (_, day) => new Date(Date.UTC(2025, 0, 1 + day)).toISOString().slice(0, 10));
const rows = (cells: (day: number) => string): string => DAYS.map((date, day) => `${date},${cells(day)}`).join('\n');
const price = (day: number): string => (18 + ((day * 7) % 11) / 2).toFixed(2);
const across = (end: string): string =>
  rows((day) => Array.from({ length: 24 }, (_, hour) => `${price(day + hour)}${end}`).join(','));
const HOURS = Array.from({ length: 24 }, (_, hour) => `${String(hour).padStart(2, '0')}:00`).join(',');

describe('files of prices', () => {
  test.each([
    ['one column', `Date,Price (p/kWh)\n${rows(price)}`],
    ['with and without tax', `Date,ex VAT p/kWh,inc VAT p/kWh\n${rows((day) => `${price(day)},${price(day)}`)}`],
    ['money by the megawatt-hour', `Date,Day-ahead [EUR/MWh]\n${rows(price)}`],
    ['bands without dates', 'Band,From,To,p/kWh\nDay,05:30,23:30,28.51\nNight,23:30,05:30,8.50'],
    ['versions', 'valid from,valid to,unit rate,standing charge\n01/01/2025,31/03/2025,24.86,60.97'],
    ['pence behind the numbers', `Date,Value\n${rows((day) => `${price(day)}p`)}`],
    ['a title of prices', `Prices p/kWh\nDate,Value\n${rows(price)}`],
    ['hours across, with the price in the corner', `p/kWh,${HOURS}\n${across('')}`],
    ['hours across, with pence behind the numbers', `Date,${HOURS}\n${across('p')}`],
  ])('%s', (_, text) => expect(codesOf(previewOf(text))).toContain('prices-only'));

  test('the name of a file that holds nothing else to tell by', () => {
    const text = `Time,Value\n${rows(price)}`;
    expect(codesOf(previewOf(text, { fileName: 'half-hourly prices.csv' }))).toContain('prices-only');
    expect(codesOf(previewOf(text, { fileName: 'usage and prices.csv' }))).not.toContain('prices-only');
  });

  test.each([
    ['use beside its price', `Date,Use kWh,Price p/kWh\n${rows((day) => `${price(day)},24.5`)}`],
    ['use beside its cost', `Date,Use kWh,Cost\n${rows((day) => `${price(day)},£4.50`)}`],
    ['a title that gives the price', `Bought at 24.5 p/kWh\nDate,kWh\n${rows(price)}`],
    ['carbon by the kWh', `Date,gCO2/kWh\n${rows(price)}`],
    ['pulses by the kWh', `Date,Pulses (1000 imp/kWh)\n${rows((day) => String(9000 + day * 7))}`],
  ])('not %s', (_, text) => expect(codesOf(previewOf(text))).not.toContain('prices-only'));

  test('a column that was chosen is read', () => {
    const text = `Prices p/kWh\nDate,Value\n${rows(price)}`;
    expect(codesOf(previewOf(text, { choices: { columns: { stamp: 0, value: 1 }, unit: 'kWh' } }))).not.toContain(
      'prices-only',
    );
  });
});
