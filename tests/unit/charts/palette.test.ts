/** The palette by measure: contrast by the WCAG 2.2 formula, and colours apart for colour-blind eyes. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

const css = readFileSync(join(import.meta.dirname, '../../../src/charts/look/tokens.css'), 'utf8');
function palette(selector: string): Record<string, string> {
  const from = css.indexOf(`${selector} {`);
  const block = css.slice(from, css.indexOf('}', from));
  return Object.fromEntries([...block.matchAll(/--([a-z-]+): (#[0-9a-f]{6});/g)].map((m) => [m[1]!, m[2]!]));
}
const THEMES: [string, Record<string, string>][] = [
  ['light', palette(':root')],
  ['dark', palette(':root[data-theme="dark"]')],
  ['dark by preference', palette(':root:not([data-theme="light"])')],
];

type Rgb = readonly [number, number, number];
const linear = (hex: string): Rgb => {
  const part = (at: number) => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [part(1), part(3), part(5)];
};
const luminance = ([r, g, b]: Rgb) => 0.2126 * r + 0.7152 * g + 0.0722 * b;
const contrast = (a: string, b: string) => {
  const [high, low] = [luminance(linear(a)), luminance(linear(b))].sort((x, y) => y - x) as [number, number];
  return (high + 0.05) / (low + 0.05);
};

describe.each(THEMES)('%s', (_, colours) => {
  // WCAG 2.2, 1.4.3: text 4.5:1; 1.4.11: marks 3:1.
  test.each(['ink', 'quiet', 'meter', 'ground', 'fuel', 'sky', 'over'])('%s reaches 4.5:1 on paper', (name) => {
    expect(contrast(colours[name]!, colours.paper!)).toBeGreaterThanOrEqual(4.5);
  });
  test.each(['meter', 'ground', 'fuel', 'sky', 'over'])('%s reaches 3:1 on its own tint', (name) => {
    expect(contrast(colours[name]!, colours[`${name}-tint`]!)).toBeGreaterThanOrEqual(3);
  });
  test('figures in ink stand on every tint', () => {
    for (const name of ['meter', 'ground', 'fuel', 'sky', 'over']) {
      expect(contrast(colours.ink!, colours[`${name}-tint`]!)).toBeGreaterThanOrEqual(4.5);
    }
  });
});

test('dark by preference and dark by choice are the same', () => expect(THEMES[1]![1]).toEqual(THEMES[2]![1]));

/** G. Machado and others, IEEE Trans. Vis. Comput. Graph. 15 (2009) 1291, severity 1.0; matrices from memory. */
const SIMULATED: Record<string, readonly Rgb[]> = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};
const seen = (hex: string, matrix: readonly Rgb[]): Rgb => {
  const rgb = linear(hex);
  const row = (weights: Rgb) =>
    Math.min(1, Math.max(0, weights[0] * rgb[0] + weights[1] * rgb[1] + weights[2] * rgb[2]));
  return [row(matrix[0]!), row(matrix[1]!), row(matrix[2]!)];
};
/** CIE 1976 L*a*b*, D65. */
function lab([r, g, b]: Rgb): Rgb {
  const f = (t: number) => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116);
  const x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.95047);
  const y = f(0.2126 * r + 0.7152 * g + 0.0722 * b);
  const z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.08883);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}
const distance = (a: Rgb, b: Rgb) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

describe.each(Object.entries(SIMULATED))('seen with %s', (_, matrix) => {
  // A distance of 10 is told apart at a glance; common practice, no source.
  test.each(['meter/ground', 'ground/fuel', 'meter/fuel', 'fuel/sky', 'ground/over', 'meter-tint/ground-tint'])(
    '%s differ',
    (pair) => {
      const [a, b] = pair.split('/') as [string, string];
      for (const [theme, colours] of THEMES) {
        expect(distance(lab(seen(colours[a]!, matrix)), lab(seen(colours[b]!, matrix))), theme).toBeGreaterThan(10);
      }
    },
  );
});
