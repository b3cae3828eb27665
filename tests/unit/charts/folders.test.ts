/** A chart is never alone: every chart folder has a picture, a name, a sentence and a table. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

const charts = join(import.meta.dirname, '../../../src/charts');
const NOT_CHARTS = ['look', 'frame'];
const folders = readdirSync(charts).filter(
  (name) =>
    statSync(join(charts, name)).isDirectory() &&
    !NOT_CHARTS.includes(name) &&
    // An empty folder is none: version control does not know it.
    readdirSync(join(charts, name)).length > 0,
);
const read = (folder: string, file: string) => readFileSync(join(charts, folder, file), 'utf8');

test('the charts there are', () => {
  expect(folders).toEqual(
    expect.arrayContaining(['bridge', 'monthly', 'readings', 'signature', 'spread', 'twenty', 'units', 'week-prices']),
  );
});

describe.each(folders)('%s', (folder) => {
  test.each(['picture.tsx', 'sentence.ts', 'table.ts'])('has %s', (file) => {
    expect(existsSync(join(charts, folder, file))).toBe(true);
  });
  test('lays out without a screen', () => {
    expect(['series.ts', 'layout.ts'].some((file) => existsSync(join(charts, folder, file)))).toBe(true);
  });
  test('has a name of at most ten words, a sentence and a table', () => {
    // The readings are named by the record they belong to.
    const named = /export const (?:\w+Name|DRIVER_NAMES) = ([^;]+);/;
    const declared = folder === 'readings' ? "'readings'" : (read(folder, 'sentence.ts').match(named)?.[1] ?? '');
    const names = [...declared.matchAll(/'([^']+)'/g)].map((m) => m[1]!);
    expect(names.length).toBeGreaterThan(0);
    for (const name of names) expect(name.split(' ').length, name).toBeLessThanOrEqual(10);
    expect(read(folder, 'sentence.ts')).toMatch(/export function \w+Sentence\(/);
    expect(read(folder, 'table.ts')).toMatch(/export function \w+Table\([\s\S]*?\): ChartTable/);
  });
  test('takes its colours from the palette only, and keeps its text horizontal', () => {
    const picture = read(folder, 'picture.tsx');
    expect(picture).not.toMatch(/#[0-9a-fA-F]{3,8}\b|rgb\(|hsl\(/);
    expect(picture).not.toMatch(/rotate|angle=|writingMode/);
    if (picture.includes("from 'recharts'")) {
      const series = picture.match(/<(Bar|Line|Area|Scatter)\n?\s/g) ?? [];
      expect(picture.match(/isAnimationActive=\{false\}/g)?.length).toBe(series.length);
    }
  });
});
