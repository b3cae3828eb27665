/** What was corrected of one file holds for the next with the same headings, and is said. */
import { expect, test } from 'vitest';
import type { IntakeChoices, IntakePreview } from '../../../src/intake/intake.ts';
import { remarkSentence } from '../../../src/words/remarks.ts';
import { openHome } from './open-home.ts';

/** Days that stay below the 13th leave day and month open; the amount tells the files apart. */
const fileOf = (amount: number, headings = 'When,Used', days = 12) =>
  [headings, ...Array.from({ length: days }, (_, i) => `03/${String(i + 1).padStart(2, '0')}/2025,${amount}`)].join(
    '\n',
  );

async function openLook() {
  const home = openHome();
  const householdId = await home.create();
  const look = async (text: string, choices: IntakeChoices = {}) => {
    const bytes = new TextEncoder().encode(text);
    const { fileId } = await home.call<{ fileId: string }>('file.offer', { fileName: 'next.csv', bytes });
    return home.call<IntakePreview>('evidence.preview', { fileId, householdId, choices });
  };
  return { home, look };
}
const remembered = ({ remarks }: IntakePreview) => remarks.filter(({ code }) => code === 'layout-remembered');

test('corrections are taken for the next file of that shape, with a remark, and kept with it', async () => {
  const { home, look } = await openLook();
  expect(remembered(await look(fileOf(4)))).toEqual([]);
  await home.bring('first.csv', fileOf(5), { carrier: 'gas', unit: 'm³', dayFirst: false, calorificMJPerM3: 39 });

  const next = await look(fileOf(6));
  expect(next.choices).toMatchObject({ carrier: 'gas', unit: 'm³', dayFirst: false });
  expect(next.series[0]).toMatchObject({ carrier: 'gas', from: '2025-03-01', to: '2025-03-13' });
  expect(next.choices.calorificMJPerM3).not.toBe(39);
  expect(remembered(next).map(remarkSentence)).toEqual([
    'next.csv has the headings of an earlier file, so what you chose for that was taken here too: gas, in m³, month first. Look whether it holds for this file.',
  ]);
  const kept = await home.bring('second.csv', fileOf(6), { calorificMJPerM3: 39.5, beside: 'added' });
  expect(kept.series[0]!.total).toBeCloseTo(next.series[0]!.total, 9);
  expect(kept.remarks.some(({ code }) => code === 'layout-remembered')).toBe(true);
});

test.each<[string, string, IntakeChoices]>([
  ['other headings', fileOf(6, 'When,Taken'), {}],
  ['a wish to decide anew', fileOf(6), { anew: true }],
])('%s: nothing is taken over', async (_, text, choices) => {
  const { home, look } = await openLook();
  await home.bring('first.csv', fileOf(5), { carrier: 'gas', unit: 'm³', dayFirst: false, calorificMJPerM3: 39 });
  const next = await look(text, choices);
  expect(remembered(next)).toEqual([]);
  expect(next.choices.carrier).not.toBe('gas');
});

test('a new choice goes before the remembered one, and a file kept anew without choices forgets it', async () => {
  const { home, look } = await openLook();
  const headings = 'When,Electricity (kWh)';
  await home.bring('first.csv', fileOf(5, headings), { carrier: 'gas', unit: 'kWh', dayFirst: false });
  expect((await look(fileOf(6, headings), { carrier: 'electricity' })).choices).toMatchObject({
    carrier: 'electricity',
    unit: 'kWh',
  });
  // Thirty days leave nothing to ask.
  await home.bring('second.csv', fileOf(7, headings, 30), { anew: true });
  expect(remembered(await look(fileOf(8, headings)))).toEqual([]);
});

test('a file that is refused leaves the memory as it was', async () => {
  const { home, look } = await openLook();
  await expect(home.bring('bad.csv', 'When,Used\nno,table\n', { carrier: 'gas' })).rejects.toThrow();
  expect(remembered(await look(fileOf(6)))).toEqual([]);
});

const bare = (rows: string) => fileOf(0, '').trim().replaceAll(/,0$/gm, rows);

test.each<[string, string, boolean]>([
  ['as many columns, written alike', bare(',6.5'), true],
  ['one column more', bare(',6.5,1'), false],
  ['dates written another way', bare(',6.5').replaceAll('/', '-'), false],
  ['headings', fileOf(6), false],
])('without headings, then %s: taken over %s', async (_, text, taken) => {
  const { home, look } = await openLook();
  await home.bring('first.csv', bare(',5'), { carrier: 'gas', unit: 'm³', dayFirst: false, calorificMJPerM3: 39 });
  const next = await look(text);
  expect(next.choices.carrier === 'gas').toBe(taken);
  expect(next.remarks.filter(({ code }) => code === 'layout-remembered-bare').map(remarkSentence)).toEqual(
    taken
      ? [
          'next.csv has no headings, but its columns are written as in an earlier file, so what you chose for that was taken here too: gas, in m³, month first. Look whether it holds for this file.',
        ]
      : [],
  );
});
