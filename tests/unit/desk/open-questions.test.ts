/** What is asked about a file has to be answered before the desk keeps it, whoever asks. */
import { expect, test } from 'vitest';
import type { IntakeChoices, IntakePreview } from '../../../src/intake/intake.ts';
import type { Evidence } from '../../../src/model/shapes/evidence.ts';
import { answersTo } from '../../../src/words/remark-answers.ts';
import { openHome } from './open-home.ts';

const hours = (heading: string, kWh = 1) =>
  [
    `Start,${heading}`,
    ...Array.from(
      { length: 24 * 10 },
      (_, i) => `${new Date(Date.UTC(2026, 0, 1) + i * 3_600_000).toISOString()},${kWh}`,
    ),
  ].join('\n');

test('an open question refuses with its code and the key that answers it, and nothing is kept', async () => {
  const home = openHome();
  await home.create();
  await expect(home.bring('used.csv', hours('Used (kWh)'))).rejects.toMatchObject({
    code: 'carrier-guessed',
    where: 'used.csv, column Used (kWh)',
    remedy: expect.stringContaining('“choices”: { "carrier": "electricity" }'),
  });
  expect((await home.open()).evidence).toEqual([]);
  const kept = await home.bring('used.csv', hours('Used (kWh)'), { carrier: 'electricity' });
  expect(kept.series[0]!.total).toBeCloseTo(240, 9);
});

test('two meters on the same days are asked about by the desk too', async () => {
  const home = openHome();
  await home.create();
  await home.bring('one.csv', hours('Electricity used (kWh)'));
  const other = hours('Night electricity of the building (kWh)', 3).replaceAll('Night ', '');
  await expect(home.bring('two.csv', other)).rejects.toMatchObject({
    code: 'records-asked',
    remedy:
      'Answer with “choices”: { "beside": "added" } at this file in the household file (possible: added, aside, instead). If it has several records: "besideOf": {"electricity of the building (kWh)":"added"}.',
  });
  expect((await home.open()).evidence).toHaveLength(1);
  const { beside } = (await home.bring('two.csv', other, { beside: 'aside' })).series[0]!;
  expect(beside).toBe('aside');
});

test('of a file with two kinds of energy the answer about one leaves the other as it is', async () => {
  const home = openHome();
  const householdId = await home.create();
  await home.bring('one.csv', hours('Electricity used (kWh)'));
  const both = hours('Electricity used (kWh)', 3)
    .split('\n')
    .map((line, i) => (i === 0 ? `${line},Gas used (kWh)` : `${line},2`))
    .join('\n');
  const bytes = new TextEncoder().encode(both);
  const { fileId } = await home.call<{ fileId: string }>('file.offer', { fileName: 'both.csv', bytes });
  const look = (choices: IntakeChoices) =>
    home.call<IntakePreview>('evidence.preview', { fileId, householdId, choices });
  const asked = await look({});
  const [question] = asked.remarks.filter(({ weight }) => weight === 'question');
  const [, aside] = answersTo(question!, asked);
  expect(aside!.choice).toEqual({ besideOf: { 'Electricity used (kWh)': 'aside' } });
  const answered = await look(aside!.choice);
  expect(answered.remarks.filter(({ weight }) => weight === 'question')).toEqual([]);
  const { evidence } = await home.call<{ evidence: Evidence }>('evidence.accept', {
    fileId,
    householdId,
    choices: aside!.choice,
  });
  expect(evidence.series.map(({ carrier, beside }) => [carrier, beside])).toEqual([
    ['electricity', 'aside'],
    ['gas', undefined],
  ]);
});

test('what is said of one home does not hold for the next file with the same headings', async () => {
  const home = openHome();
  const householdId = await home.create();
  await home.bring('one.csv', hours('Electricity used (kWh)'), { beside: 'aside', stamp: 'start' });
  const bytes = new TextEncoder().encode(hours('Electricity used (kWh)', 2));
  const { fileId } = await home.call<{ fileId: string }>('file.offer', { fileName: 'next.csv', bytes });
  const { choices, records } = await home.call<IntakePreview>('evidence.preview', { fileId, householdId, choices: {} });
  expect([choices.stamp, choices.beside]).toEqual(['start', undefined]);
  expect(records).toEqual([{ name: 'Electricity used (kWh)', use: 'rest-of-home' }]);
});

test('a later file of a meter that is kept aside stays aside with it', async () => {
  const home = openHome();
  await home.create();
  await home.bring('one.csv', hours('Electricity used (kWh)'));
  const annexe = (first: number) =>
    hours('Electricity of the building (kWh)', 3).replaceAll('2026-01-', first === 1 ? '2026-01-' : '2026-02-');
  await home.bring('january.csv', annexe(1), { beside: 'aside' });
  await home.bring('february.csv', annexe(2), { beside: 'aside' });
  expect((await home.open()).series.map(({ total }) => Math.round(total))).toEqual([240]);
});
