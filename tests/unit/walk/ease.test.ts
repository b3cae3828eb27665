/** Every page of the walk-through reads easily, for every invented household. */
import { describe, expect, test } from 'vitest';
import { reckonHousehold } from '../../../src/host/reckon-household.ts';
import { reckonLifetime } from '../../../src/model/lifetime/reckon-lifetime.ts';
import { reference } from '../../../src/reference/index.ts';
import { shownPages, walkPages } from '../../../src/screens/walk/pages.ts';
import { readingEase, sentencesOf, wordsOf } from '../words/reading-ease.ts';

const SETTINGS = {
  installerName: 'Hill Heating',
  installerContact: '',
  theme: 'light',
  paper: 'A4',
  logo: '',
} as const;

async function pagesOf(sample: string) {
  const path = `sample-bills/${sample}/household.json`;
  const { estimate, series } = await reckonHousehold(path, '2026-11-25', { withCheck: false, withDocument: false });
  const { household, appraisal } = estimate;
  const kept = {
    number: 3,
    madeOn: estimate.madeOn,
    id: 'p',
    note: '',
    heatPumpPence: 1,
    lowPence: 1,
    highPence: 2,
    grade: 'estimated' as const,
  };
  return [[], [kept]].flatMap((estimates) =>
    shownPages(
      walkPages({
        household,
        appraisal,
        series,
        estimates,
        settings: { ...SETTINGS, language: 'en-GB', country: 'GB' },
        today: '2026-11-25',
        changed: false,
        changes: [{ code: 'winter-cold', pence: 8500 }],
        lifetime: reckonLifetime({ household, appraisal, reference, draws: 100 }),
      }),
      { leaveOut: [] },
    ),
  );
}

const pages = await Promise.all(
  ['larch-rise', 'holm-farm', 'mill-lane', 'quay-flat', 'beacon-view'].map(
    async (sample) => [sample, await pagesOf(sample)] as const,
  ),
);
describe.each(pages)('%s', (_sample, ofSample) => {
  test.each(ofSample.map((page) => [page.name, page] as const))('%s', (_name, { sentence, say, picture }) => {
    const steps =
      picture.kind === 'next' ? picture.steps : picture.kind === 'living' ? picture.facts.map(({ says }) => says) : [];
    const text = [sentence, say, ...steps].filter(Boolean).join(' ');
    const { ease, grade } = readingEase(text);
    expect(ease >= 70 || grade <= 6, `ease ${ease.toFixed(0)}, grade ${grade.toFixed(1)}: ${text}`).toBe(true);
    for (const one of sentencesOf(text)) expect(wordsOf(one).length, one).toBeLessThanOrEqual(22);
    expect(text).not.toMatch(/will save|!/);
  });
});
