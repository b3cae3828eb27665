/** What the household reads in its paper reads easily, section by section. Workings, sources and tables are for whoever looks things up. */
import { describe, expect, test } from 'vitest';
import { reckonHousehold } from '../../../src/host/reckon-household.ts';
import { renderLeaveBehind } from '../../../src/leave-behind/leave-behind.tsx';
import { renderLetter } from '../../../src/leave-behind/letter.tsx';
import { readingEase, sentencesOf, wordsOf } from '../words/reading-ease.ts';

const SETTINGS = { installerName: 'Hill Heating', installerContact: '01234 567 890', paper: 'A4' as const };
const plain = (html: string) =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('&amp;', '&')
    .replaceAll('&quot;', '"')
    .replaceAll('&#x27;', '’')
    .replace(/\s+/g, ' ')
    .replace(/ ([.,])/g, '$1')
    .trim();

/** The running text under each heading of the first two ranks: whole sentences in paragraphs and lists. */
function sectionsOf(html: string): [string, string][] {
  const body = html.replace(/<style[\s\S]*?<\/style>/g, '').replace(/<(svg|table)\b[\s\S]*?<\/\1>/g, '');
  return body.split(/(?=<h[12]\b)/).flatMap((part): [string, string][] => {
    const heading = /<h[12]\b[^>]*>([\s\S]*?)<\/h[12]>/.exec(part);
    const texts = [...part.matchAll(/<(p|li)\b[^>]*>([\s\S]*?)<\/\1>/g)].map(([, , inner]) => plain(inner!));
    const running = texts.filter((text) => /[.?]$/.test(text) && wordsOf(text).length > 3);
    return heading && running.length > 0 ? [[plain(heading[1]!), running.join(' ')]] : [];
  });
}

/** For the installer. */
const NOT_FOR_READING = /working/i;

const task = { withCheck: false, withDocument: true };
const papers = await Promise.all(
  ['larch-rise', 'holm-farm', 'quay-flat'].map(async (sample) => {
    const { estimate } = await reckonHousehold(`sample-bills/${sample}/household.json`, '2026-11-25', task);
    return [sample, renderLeaveBehind(estimate, SETTINGS)] as const;
  }),
);
const complaint = await reckonHousehold('sample-bills/mill-lane/household.json', '2026-11-25', {
  ...task,
  withCheck: true,
});
const letter = renderLetter(
  { check: complaint.check!, estimate: complaint.estimate, household: complaint.whole.household, settings: SETTINGS },
  { to: 'Mrs Miller', ringName: 'Anna Hill', ringTelephone: '01632 960 123' },
);

describe.each([...papers, ['the letter', letter] as const])('%s', (_name, html) => {
  const sections = sectionsOf(html).filter(([heading]) => !NOT_FOR_READING.test(heading));
  test('has sections to read', () => expect(sections.length).toBeGreaterThanOrEqual(1));
  test.each(sections)('%s', (_heading, text) => {
    const { ease, grade } = readingEase(text);
    expect(ease >= 70 || grade <= 6, `ease ${ease.toFixed(0)}, grade ${grade.toFixed(1)}: ${text}`).toBe(true);
    for (const one of sentencesOf(text)) expect(wordsOf(one).length, one).toBeLessThanOrEqual(25);
  });
});
