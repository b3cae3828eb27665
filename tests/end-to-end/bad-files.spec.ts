import { chooseFile, expect, openStage, test, writeFile } from './host.ts';

const stamps = (rows: number) =>
  Array.from(
    { length: rows },
    (_, i) =>
      `2025-01-${String(1 + Math.floor(i / 48)).padStart(2, '0')}T${String(Math.floor((i % 48) / 2)).padStart(2, '0')}:${i % 2 ? '30' : '00'}`,
  );

type Case = [name: string, content: string | Uint8Array, says: RegExp, canBeKept?: 'without the row'];
const CASES: Case[] = [
  ['empty.csv', '', /empty/i],
  [
    'picture.csv',
    Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13]),
    /picture|image|not text/i,
  ],
  ['letter.txt', 'Dear customer,\nyour bill is ready.\nYours\n', /letter\.txt/i],
  [
    'dates.csv',
    `time,kWh\n${stamps(96)
      .map((stamp, i) => `${i === 50 ? '2025-02-30T00:00' : stamp},0.2`)
      .join('\n')}\n`,
    /line 52/i,
    'without the row',
  ],
  [
    'units.csv',
    `time,amount\n${stamps(96)
      .map((stamp, i) => `${stamp},${i < 48 ? `0.${(i % 7) + 1} kWh` : '200 Wh'}`)
      .join('\n')}\n`,
    /reads 200 Wh, where the column is in kWh/,
    'without the row',
  ],
  [
    'cut.csv',
    `time,kWh\n${stamps(96)
      .map((stamp) => `${stamp},0.2`)
      .join('\n')}\n2025-01-03T0`,
    /line 98/i,
    'without the row',
  ],
];

test('a bad file gets a sentence that names it, and nothing stored changes', async ({ desk }) => {
  await desk.getByRole('link', { name: 'Larch Rise' }).click();
  await openStage(desk, 'Bills and readings');
  const keptBefore = await desk.getByRole('button', { name: /^Remove/ }).count();
  for (const [name, content, says, canBeKept] of CASES) {
    await test.step(name, async () => {
      await chooseFile(desk, desk.getByRole('button', { name: 'Choose a file' }), writeFile(name, content));
      // Either it is not taken at all, or it is looked at and cannot be kept.
      const leave = desk.getByRole('button', { name: 'Cancel' });
      await expect(leave.or(desk.getByRole('alert')).first()).toBeVisible();
      await expect(desk.getByRole('main').getByText(says).first()).toBeVisible();
      if (await leave.isVisible()) {
        const keep = desk.getByRole('button', { name: 'Save' });
        if (!canBeKept) await expect(keep).toBeDisabled();
        await leave.click();
      }
    });
  }
  await desk.reload();
  await expect(desk.getByRole('button', { name: /^Remove/ })).toHaveCount(keptBefore);
});
