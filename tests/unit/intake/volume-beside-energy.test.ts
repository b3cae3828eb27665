/** A volume beside energy: the same gas again, or the water that carried heat; neither is asked about. */
import { describe, expect, test } from 'vitest';
import { codesOf, previewOf } from './read-text.ts';

const read = (text: string, zone: string) => {
  const preview = previewOf(text, { zone });
  return {
    series: preview.series.map((s) => `${s.carrier} ${s.role} ${s.total.toFixed(0)}`),
    asked: codesOf(preview, 'question'),
  };
};
const MONTHS = Array.from({ length: 12 }, (_, i) => i);
const date = (i: number) => `01.${String(i + 1).padStart(2, '0')}.2025`;
/** From 39 to 259 m³ in the course of a year. */
const volume = (i: number) => 149 + Math.round(110 * Math.cos((2 * Math.PI * i) / 12));
/** Written as where a comma stands before decimals. */
const grouped = (n: number) => String(n).replace(/(\d)(\d{3})$/, '$1.$2');
const SUM = MONTHS.reduce((sum, i) => sum + Math.round(volume(i) * 10.8), 0);

describe('gas in m³ and kWh side by side', () => {
  const rows = (factor: number) =>
    MONTHS.map((i) => `${date(i)};${volume(i)},5;${grouped(Math.round(volume(i) * factor))}`);
  test('is one gas where thousands are grouped with points', () => {
    const { series, asked } = read(
      ['Gas;;', 'Monat ab;Verbrauch (m³);Energie (kWh)', ...rows(10.8)].join('\n'),
      'Europe/Berlin',
    );
    expect(series).toEqual([`gas import ${SUM}`]);
    expect(asked).not.toContain('column-asked');
  });
  test('that do not go together are asked', () => {
    const apart = MONTHS.map((i) => `${date(i)};${volume(i)},5;${grouped(900 + 97 * ((i * 5) % 12))}`);
    const { asked } = read(['Monat ab;Verbrauch (m³);Energie (kWh)', ...apart].join('\n'), 'Europe/Berlin');
    expect(asked.length).toBeGreaterThan(0);
  });
});

test.each([
  ['Fernwärme Einfamilienhaus', 'Monat ab;Verbrauch MWh;Volumen m3'],
  ['District heating', 'Month;Used MWh;Volume m3'],
  ['Chauffage urbain', 'Mois;Consommation MWh;Volume m3'],
])('a volume beside heat is of its water: %s', (title, headings) => {
  const rows = MONTHS.map(
    (i) =>
      `${date(i)};${(volume(i) / 100).toFixed(2)};${(40 + 38 * (volume(i) / 100) * (i % 2 ? 1.3 : 0.8)).toFixed(1)}`,
  );
  const { series, asked } = read([`${title};;`, headings, ...rows].join('\n'), 'Europe/Zurich');
  expect(series.filter((s) => !s.startsWith('water'))).toEqual([
    `heat heat-output ${MONTHS.reduce((sum, i) => sum + volume(i) * 10, 0)}`,
  ]);
  expect(asked).not.toContain('column-asked');
});
