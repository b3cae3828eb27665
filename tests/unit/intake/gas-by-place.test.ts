/** Gas by volume holds as much as bills of the place say: outside Britain no correction is the same for every home. */
import { describe, expect, test } from 'vitest';
import { codesOf, previewOf } from './read-text.ts';

const years = (headings: string, ...rows: readonly string[]) => [`Von;Bis;${headings}`, ...rows].join('\n');
const first = '01.01.2024;31.12.2024';
const second = '01.01.2025;31.12.2025';

describe('gas in m³', () => {
  // 2,000 m³; asked for, since nothing on the file says it.
  test.each([
    ['Europe/Berlin', 21_400, 'kWh'],
    ['Europe/Amsterdam', 19_540, 'kWh'],
    // × 1.02264 × 39.5 ÷ 3.6
    ['Europe/London', 22_441.267, undefined],
  ])('of a home in %s', (zone, kWh, unit) => {
    const text = years('Gas (m³)', `${first};1000`, `${second};1000`);
    const preview = previewOf(text, { zone });
    expect(codesOf(preview, 'question')).toEqual(['calorific-assumed']);
    expect(preview.remarks.find(({ code }) => code === 'calorific-assumed')?.found).toBe(unit);
    expect(preview.series[0]!.total).toBeCloseTo(kWh, 2);
  });
  test('with Brennwert and Zustandszahl is told whole', () => {
    const text = years(
      'Gas m³;Brennwert kWh/m³;Zustandszahl',
      `${first};1000;11,312;0,8912`,
      `${second};900;11,298;0,8912`,
    );
    const preview = previewOf(text, { zone: 'Europe/Berlin' });
    expect(codesOf(preview, 'question')).toEqual([]);
    // 1000 × 11.312 × 0.8912 + 900 × 11.298 × 0.8912
    expect(preview.series[0]!.total).toBeCloseTo(10_081.2544 + 9_061.89984, 3);
  });
  test('with a Brennwert alone lacks the Zustandszahl of the home, unlike in Britain', () => {
    const text = years('Gas m³;Brennwert kWh/m³', `${first};1000;11,31`, `${second};900;11,31`);
    expect(codesOf(previewOf(text, { zone: 'Europe/Berlin' }), 'question')).toEqual(['calorific-assumed']);
    expect(codesOf(previewOf(text), 'question')).toEqual([]);
    const answered = previewOf(text, { zone: 'Europe/Berlin', choices: { calorificMJPerM3: 10.8 * 3.6 } });
    expect(codesOf(answered, 'question')).toEqual([]);
    expect(answered.series[0]!.total).toBeCloseTo(1900 * 10.8, 3);
  });
  test('with one factor needs no more', () => {
    const text = years('Gas m³;Coefficient de conversion', `${first};1000;11,31`, `${second};900;11,29`);
    const preview = previewOf(text, { zone: 'Europe/Paris' });
    expect(codesOf(preview, 'question')).toEqual([]);
    expect(preview.series[0]!.total).toBeCloseTo(11_310 + 10_161, 3);
  });
});
