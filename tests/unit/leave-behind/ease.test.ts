/**
 * What the household reads, as it reads it: every page of the walk-through and every section of its papers, of each
 * sample, in both languages. Flesch 70, Amstad 60, no sentence over 22 words. Workings and tables are for looking up.
 */
import { afterAll, describe, expect, test } from 'vitest';
import { reckonHousehold } from '../../../src/host/reckon-household.ts';
import { renderLeaveBehind } from '../../../src/leave-behind/leave-behind.tsx';
import { renderLetter } from '../../../src/leave-behind/letter.tsx';
import { renderQuestions } from '../../../src/leave-behind/questions.tsx';
import { reckonLifetime } from '../../../src/model/lifetime/reckon-lifetime.ts';
import { customerFacts } from '../../../src/reference/customer-facts.ts';
import { referenceOf } from '../../../src/reference/index.ts';
import { walkPages } from '../../../src/screens/walk/pages.ts';
import { answerQuestions } from '../../../src/words/asked.ts';
import { german } from '../../../src/words/german/german.ts';
import { speak } from '../../../src/words/say.ts';
import { germanEase, readingEase, sentencesOf, wordsOf } from '../words/reading-ease.ts';

const TODAY = '2026-11-25';
const SETTINGS = { installerName: 'Hill Heating', installerContact: '01234 567 890', paper: 'A4' as const };
const WINDOW = { ...SETTINGS, theme: 'light', language: 'en-GB', country: 'GB', logo: '' } as const;
const plain = (html: string) =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('&amp;', '&')
    .replaceAll('&quot;', '"')
    .replaceAll('&#x27;', '’')
    .replace(/\s+/g, ' ')
    .replace(/ ([.,])/g, '$1')
    .trim();

/** The running text under each heading of the first two ranks: whole sentences in paragraphs and lists, titles of sources left out. */
function sectionsOf(html: string): [string, string][] {
  const body = html
    .replace(/<style[\s\S]*?<\/style>/g, '')
    .replace(/<(svg|table)\b[\s\S]*?<\/\1>/g, '')
    .replace(/<span lang="en">[\s\S]*?<\/span>/g, '');
  return body.split(/(?=<h[12]\b)/).flatMap((part): [string, string][] => {
    const heading = /<h[12]\b[^>]*>([\s\S]*?)<\/h[12]>/.exec(part);
    const texts = [...part.matchAll(/<(p|li)\b[^>]*>([\s\S]*?)<\/\1>/g)].map(([, , inner]) => plain(inner!));
    const running = texts.filter((text) => /[.?]$/.test(text) && wordsOf(text).length > 3);
    return heading && running.length > 0 ? [[plain(heading[1]!), running.join(' ')]] : [];
  });
}

const task = { withCheck: false, withDocument: true };
const samples = await Promise.all(
  ['larch-rise', 'holm-farm', 'quay-flat', 'beacon-view'].map(async (sample) => {
    const { estimate, series } = await reckonHousehold(`sample-bills/${sample}/household.json`, TODAY, task);
    return { sample, estimate, series };
  }),
);
const complaint = await reckonHousehold('sample-bills/mill-lane/household.json', TODAY, { ...task, withCheck: true });

/** All texts of one language by the page they stand on. */
function textsSaid(): [string, string][] {
  const texts = samples.flatMap(({ sample, estimate, series }): [string, string][] => {
    const { household, appraisal } = estimate;
    const lifetime = reckonLifetime({ household, appraisal, reference: referenceOf(household), draws: 100 });
    const changes = [{ code: 'electricity-up', pence: 20_200 } as const];
    const walk = { household, appraisal, series, estimates: [], settings: WINDOW, today: TODAY, changes, lifetime };
    const asked = {
      name: household.name,
      answers: answerQuestions({ household, appraisal }, customerFacts),
      today: TODAY,
      settings: SETTINGS,
    };
    return [
      ...walkPages({ ...walk, changed: false }).map((page): [string, string] => [
        `walk, ${page.name}`,
        [
          page.sentence,
          page.picture.kind === 'living' ? page.picture.facts.map(({ says }) => says).join(' ') : '',
          page.picture.kind === 'next' ? page.picture.steps.join(' ') : '',
          page.say,
        ].join(' '),
      ]),
      ...sectionsOf(renderLeaveBehind(estimate, SETTINGS)),
      ...sectionsOf(renderQuestions(asked)),
    ].map(([where, text]): [string, string] => [`${sample}: ${where}`, text]);
  });
  const { check, estimate, whole } = complaint;
  const sender = { to: 'Mrs Miller', ringName: 'Anna Hill', ringTelephone: '01632 960 123' };
  const letter = renderLetter({ check: check!, estimate, household: whole.household, settings: SETTINGS }, sender);
  return [...texts, ...sectionsOf(letter).map(([where, text]): [string, string] => [`letter: ${where}`, text])];
}
const inEnglish = textsSaid();
speak({ language: 'de-DE', currency: 'GBP' }, german);
const inGerman = textsSaid();
afterAll(() => speak({ language: 'en-GB', currency: 'GBP' }));

test('every page of the walk-through and every paper of both languages is read', () => {
  expect(inEnglish.length).toBeGreaterThan(samples.length * 10);
  expect(inGerman.length).toBe(inEnglish.length);
});

describe.each([
  ['English', inEnglish, (text: string) => readingEase(text).ease, 70],
  ['German', inGerman, germanEase, 60],
] as const)('in %s', (_language, texts, ease, least) => {
  test.each(texts)('%s', (_where, text) => {
    expect(ease(text), text).toBeGreaterThanOrEqual(least);
    for (const one of sentencesOf(text)) expect(wordsOf(one).length, one).toBeLessThanOrEqual(22);
  });
});
