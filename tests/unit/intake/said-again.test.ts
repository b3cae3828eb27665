/** Columns and rows that say an amount once more: a second counter, a day's total so far, a year's, a part of what was paid. */
import { describe, expect, test } from 'vitest';
import { codesOf, previewOf } from './read-text.ts';

const two = (n: number) => String(n).padStart(2, '0');
const range = (n: number) => Array.from({ length: n }, (_, i) => i);
const totalsOf = (preview: ReturnType<typeof previewOf>) =>
  preview.series.map(({ name, total }) => `${name} ${total.toFixed(1)}`);

describe('a counter beside one that began elsewhere', () => {
  const wh = (h: number) => 110 + ((h * 37) % 890);
  const log = (days: number, other: (h: number) => number) => {
    let count = 1_000_000;
    let second = 220;
    return [
      'statistic_id,unit,start,state,sum',
      ...range(days * 24).flatMap((h) => {
        count += wh(h);
        second += other(h);
        const at = `2025-03-${two(3 + Math.floor(h / 24))} ${two(h % 24)}:00:00`;
        return [
          `grid_import_electricity,kWh,${at},${(count / 1000).toFixed(2)},${(second / 1000).toFixed(2)}`,
          `gas,kWh,${at},${(h * 1.5 + 90).toFixed(2)},${(h * 1.5).toFixed(2)}`,
        ];
      }),
    ];
  };
  test('is one use, within a few days too', () => {
    const preview = previewOf(log(4, wh));
    expect(preview.series.filter(({ carrier }) => carrier === 'electricity')).toHaveLength(1);
    expect(codesOf(preview)).toContain('repeat-left-out');
  });
  test('is asked about where one day is all there is', () => {
    expect(codesOf(previewOf(log(1, wh)), 'question')).toContain('column-asked');
  });
  test('is another use where it rises by more', () => {
    const preview = previewOf(log(4, (h) => wh(h + 5) + 40));
    expect(preview.series.filter(({ carrier }) => carrier === 'electricity')).toHaveLength(2);
    expect(codesOf(preview)).not.toContain('repeat-left-out');
  });
});

test('energy of today, which the sun makes for half of it, counts each day anew', () => {
  const sun = (slot: number) => (slot > 96 && slot < 210 ? 8 + (slot % 7) : 0);
  let sum = 0;
  const rows = range(4 * 288).map((i) => {
    const slot = i % 288;
    sum = slot === 0 ? 0 : sum + sun(slot);
    const clock = `${two(Math.floor(slot / 12))}:${two((slot % 12) * 5)}`;
    return `0${5 + Math.floor(i / 288)}/05/2025 ${clock},${(sum / 1000).toFixed(3)}`;
  });
  const preview = previewOf(['Time,PV energy today (kWh)', ...rows]);
  const made = range(288).reduce((all, slot) => all + (slot === 0 ? 0 : sun(slot)), 0) / 1000;
  expect(preview.series[0]).toMatchObject({ role: 'generation', from: '2025-05-05', to: '2025-05-09' });
  expect(preview.series[0]!.total).toBeCloseTo(4 * made, 1);
  // Four days that follow each other, rather than the fifth of four months.
  expect(codesOf(preview, 'question')).not.toContain('date-order-asked');
});

describe('all since the year began', () => {
  const used = (i: number) => 200 + ((i * 37) % 90);
  const list = (headings: string, other: (i: number) => number | string) => [
    headings,
    ...range(18).map((i) => {
      const month = (6 + i) % 12;
      return `${2023 + Math.floor((6 + i) / 12)}-${two(month + 1)},${used(i)},${other(i)}`;
    }),
  ];
  const sinceJanuary = (i: number) =>
    range(i + 1)
      .filter((j) => j > i - (((6 + i) % 12) + 1))
      .reduce((s, j) => s + used(j), 0);
  test('is no question beside the months themselves', () => {
    const preview = previewOf(list('Month,Electricity (kWh),Year to date (kWh)', sinceJanuary));
    expect(totalsOf(preview)).toEqual([
      `Electricity (kWh) ${range(18)
        .reduce((s, i) => s + used(i), 0)
        .toFixed(1)}`,
    ]);
    expect(codesOf(preview, 'question')).toEqual([]);
  });
  test('is one where it went another way', () => {
    const preview = previewOf(list('Month,Electricity import (kWh),Cumulative export (kWh)', (i) => 4000 + i * i));
    expect(codesOf(preview, 'question')).toContain('column-asked');
  });
});

test('a mean of each day beside the amounts is no question', () => {
  const used = (i: number) => 300 + ((i * 5) % 9);
  const rows = range(9).map((i) => `2024-0${i + 1},${used(i)},${(used(i) / 30).toFixed(1)}`);
  expect(codesOf(previewOf(['Month,Electric usage kWh,Avg kWh per day', ...rows]), 'question')).toEqual([]);
});

describe('what a row cost', () => {
  const bills = (heading: string, more = '') => {
    const rows = range(6).map(
      (i) => `01/0${i + 1}/2024,28/0${i + 1}/2024,${400 + i},${20 + i}${more === '' ? '' : `,${150 + i}`}`,
    );
    return previewOf([`From,To,Electricity (kWh),${heading}${more === '' ? '' : `,${more}`}`, ...rows]).series[0]
      ?.periods?.[0]?.costPence;
  };
  test.each(['Demand charge ($)', 'Network charges (£)', 'Netzentgelt €', 'Stromsteuer €', 'GST $', 'Taxes (£)'])(
    'is never a part of it: %s',
    (part) => {
      expect(bills(part)).toBeUndefined();
      expect(bills(part, 'Amount (£)')).toBe(15_000);
    },
  );
  test.each(['Cost (£)', 'Total incl. network charges (£)', 'Cost inc levies (£)', 'Amount incl. tax (£)'])(
    'is all of it: %s',
    (all) => {
      expect(bills(all)).toBe(2000);
    },
  );
});

describe('heat of collectors', () => {
  const list = (heading: string) =>
    previewOf([
      `Month,Gas kWh,${heading}`,
      ...range(9).map((i) => `2025-0${i + 1},${900 - 80 * ((i * 4) % 9)},${20 + 30 * ((i * 5) % 7)}`),
    ]);
  test.each(['Solar thermal yield kWh', 'Solarthermie Ertrag kWh', 'Solaire thermique produit kWh'])(
    'is no electricity made: %s',
    (heading) => {
      expect(list(heading).series.map(({ role }) => role)).toEqual(['import']);
    },
  );
  test('is not what panels make', () => {
    expect(list('Solar generation kWh').series.map(({ role }) => role)).toEqual(['import', 'generation']);
  });
});
