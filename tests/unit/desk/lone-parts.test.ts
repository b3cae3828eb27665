/** What another file has the rest of is no home: it counts nowhere until that file is here. */
import { expect, test } from 'vitest';
import type { IntakePreview } from '../../../src/intake/intake.ts';
import type { Remark } from '../../../src/model/shapes/evidence.ts';
import { openHome } from './open-home.ts';

const days = (register: string, kWh: number, first = 0, count = 120) =>
  [
    `Date,${register} electricity (kWh)`,
    ...Array.from({ length: count }, (_, i) => {
      const day = new Date(Date.UTC(2025, 0, 1) + (first + i) * 86_400_000).toISOString().slice(0, 10);
      return `${day},${kWh + (i % 3)}`;
    }),
  ].join('\n');
const asked = (remarks: readonly Remark[]) => remarks.filter(({ code }) => code === 'records-part-asked').length;
const REST = { carrier: 'electricity', beside: 'added' } as const;

async function homeOf(...files: (readonly [string, string])[]) {
  const home = openHome();
  const householdId = await home.create();
  for (const [name, text] of files) await home.bring(name, text, REST);
  const { evidence, series } = await home.open();
  return { ...home, householdId, evidence, totals: series.map(({ total }) => Math.round(total)) };
}

test('a register whose rest is in another file counts nowhere without that file, and says so', async () => {
  const { evidence, totals, call, householdId } = await homeOf(['night.csv', days('Night', 4)]);
  expect(totals).toEqual([]);
  expect(evidence.map(({ remarks }) => asked(remarks))).toEqual([1]);
  const bytes = new TextEncoder().encode(days('Evening', 5));
  const { fileId } = await call<{ fileId: string }>('file.offer', { fileName: 'evening.csv', bytes });
  const look = async (choices: object) =>
    call<IntakePreview>('evidence.preview', { fileId, householdId, choices: { carrier: 'electricity', ...choices } });
  // With another part it is no longer alone.
  expect(asked((await look({ beside: 'added' })).remarks)).toBe(0);
});

test('a part can be kept first, and is named as not used', async () => {
  const { call, householdId } = await homeOf();
  const bytes = new TextEncoder().encode(days('Night', 4));
  const { fileId } = await call<{ fileId: string }>('file.offer', { fileName: 'night.csv', bytes });
  const { remarks, records } = await call<IntakePreview>('evidence.preview', { fileId, householdId, choices: REST });
  expect(remarks.filter(({ code }) => code === 'records-part-asked').map(({ weight }) => weight)).toEqual(['note']);
  expect(records?.map(({ use }) => use)).toEqual(['added-alone']);
});

test('with the rest they are one use, and nothing is asked any more', async () => {
  const { evidence, totals } = await homeOf(['night.csv', days('Night', 4)], ['day.csv', days('Day', 9)]);
  expect(totals).toEqual([120 * (4 + 9 + 2)]);
  expect(evidence.flatMap(({ remarks }) => remarks).filter(({ weight }) => weight === 'question')).toEqual([]);
});

test('a rest of other days is none', async () => {
  const { evidence } = await homeOf(['night.csv', days('Night', 4)], ['day.csv', days('Day', 9, 120)]);
  expect(evidence.map(({ remarks }) => asked(remarks))).toEqual([1, 1]);
});

test('one register in two files is still alone', async () => {
  const { totals } = await homeOf(['spring.csv', days('Night', 4)], ['summer.csv', days('Night', 4, 120)]);
  expect(totals).toEqual([]);
});
