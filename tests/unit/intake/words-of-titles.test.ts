/** Titles that make other than the home's own amounts of the numbers under them. */
import { describe, expect, test } from 'vitest';
import { codesOf, previewOf } from './read-text.ts';

const MONTHS = Array.from({ length: 12 }, (_, at) => `2023-${String(at + 1).padStart(2, '0')}`);
const under = (title: string, heading: string, amount = 10) =>
  previewOf([title, `Month;${heading}`, ...MONTHS.map((month) => `${month};${amount}`)], { zone: 'Europe/Berlin' });

describe('a title', () => {
  test.each([
    'Average daily use of electricity by month',
    'Durchschnittlicher Tagesverbrauch Strom (kWh)',
    'Strom: mittlerer täglicher Verbrauch (kWh)',
    'Électricité: consommation quotidienne moyenne',
    'Consumo medio giornaliero di energia elettrica',
    'Gemiddeld dagverbruik elektriciteit',
    'Electricity used, kWh per day',
  ])('“%s” is carried out', (title) => {
    const preview = under(title, 'kWh');
    expect(codesOf(preview)).toEqual(expect.arrayContaining(['per-day-multiplied']));
    expect(codesOf(preview, 'question')).toEqual([]);
    expect(preview.series.map(({ total }) => total)).toEqual([3650]);
  });
  test.each<[string, string, string]>([
    ['Electricity for all 4 flats together', 'Electricity kWh', 'title-word-asked'],
    ['Strom für alle 4 Wohnungen', 'Strom kWh', 'title-word-asked'],
    ['Gas: kWh per m2 floor area', 'Gas kWh', 'title-word-asked'],
    ['Strom kWh pro Kopf', 'Strom kWh', 'title-word-asked'],
    ['Electricity: forecast for next year', 'Electricity kWh', 'title-word-asked'],
    ['Prognose Stromverbrauch 2023', 'Strom kWh', 'title-word-asked'],
    ['Neighbourhood average, electricity use', 'Electricity kWh', 'title-word-asked'],
    ['Consommation des voisins, électricité', 'Électricité kWh', 'title-word-asked'],
    ['Electricity, multiply by 10 (CT)', 'Electricity kWh', 'title-word-asked'],
    ['Electricity: mean and total of each day', 'Electricity kWh', 'title-word-asked'],
    ['EV charger electricity', 'kWh used', 'part-asked'],
  ])('“%s” is asked about', (title, heading, code) => {
    const preview = under(title, heading, 300);
    expect(codesOf(preview, 'question')).toContain(code);
    expect(preview.series.map(({ total }) => total)).toEqual([3600]);
  });
  test('that is asked about stays so when its fuel is answered, and not when it is said whose use it is', () => {
    const rows = ['Electricity forecast', 'Month,kWh', ...MONTHS.map((month) => `${month},300`)];
    expect(codesOf(previewOf(rows, { choices: { carrier: 'electricity' } }), 'question')).toEqual(['title-word-asked']);
    expect(codesOf(previewOf(rows, { choices: { role: 'import' } }), 'question')).not.toContain('title-word-asked');
  });
  test.each([
    'Electricity use last year',
    'Electricity of Flat 4, 12 Average Street',
    'Electricity used in a house with EV and solar panels',
    'Electricity, average price 24 p/kWh',
    'Electricity (EV tariff)',
    'Multiplier: 1',
  ])('“%s” says nothing of the kind', (title) => {
    const preview = under(title, 'Electricity kWh', 300);
    expect(codesOf(preview, 'question')).toEqual([]);
    expect(preview.series.map(({ total }) => total)).toEqual([3600]);
  });
  test('of a mean day above rows of days or beside a column of such means changes nothing', () => {
    const days = Array.from({ length: 28 }, (_, at) => `2023-02-${String(at + 1).padStart(2, '0')},9`);
    const daily = previewOf(['Electricity use in kWh per day', 'Date,kWh', ...days]);
    expect([codesOf(daily, 'question'), daily.series[0]?.total]).toEqual([[], 252]);
    const rows = MONTHS.map((month) => `${month},300,10`);
    const both = previewOf(['Average daily electricity', 'Month,Electricity kWh,Electricity kWh/day', ...rows]);
    expect(both.series[0]?.total).toBe(3600);
  });
});
