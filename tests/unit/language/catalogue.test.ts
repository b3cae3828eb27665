import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, test } from 'vitest';
import { FORMS } from '../../../src/intake/forms/index.ts';
import { SHAPES } from '../../../src/intake/shapes/index.ts';
import { PAPER_SHAPE } from '../../../src/intake/terms/paper-reading.ts';
import { customerFacts } from '../../../src/reference/customer-facts.ts';
import { EARLIER } from '../../../src/words/german/earlier.ts';
import { german } from '../../../src/words/german/german.ts';
import type { Catalogue } from '../../../src/words/say.ts';
import { quotedIn, readSource, type SourceText, sourceFiles } from './source-texts.ts';

/** What is checked; for a moment only the paths in TEXTS, parted by commas. */
const PATHS = process.env.TEXTS?.split(',') ?? [
  'src/words',
  'src/charts',
  'src/screens',
  'src/leave-behind',
  'src/desk',
  // The rest of the command line is English.
  'src/host/reckon-text.ts',
  'src/host/read-text.ts',
  'src/host/opening-notice.ts',
];
const texts = ['src/words', 'src/charts', 'src/screens', 'src/leave-behind', 'src/desk', 'src/host']
  .flatMap(sourceFiles)
  .filter((file) => PATHS.some((path) => file.startsWith(path)))
  // Words looked for in the headings of files.
  .filter((file) => !file.endsWith('/register-name.ts'))
  .map(readSource);
const said = texts.flatMap((one) => one.said);
const place = ({ file, line, text }: SourceText) => `${file}:${line} ${text}`;

/** Everything in `src/reference` that says where a value comes from. */
function sourcesIn(value: unknown, seen = new Set<unknown>()): string[] {
  if (typeof value !== 'object' || value === null || seen.has(value)) return [];
  seen.add(value);
  return Object.entries(value).flatMap(([name, part]) =>
    name === 'source' && typeof part === 'string' ? [part] : sourcesIn(part, seen),
  );
}
/** Words of a remark, which titles do without. */
const REMARK =
  /\b(that|with|are|less|about|low|by hand|hidden|copied|judgement|left out|second hand|transcriptions?)\b/;

/** The names of a message's gaps, those inside plurals too. */
function gapsOf(message: string): string[] {
  const names = new Set<string>();
  const visit = (parts: ReturnType<IntlMessageFormat['getAst']>): void => {
    for (const part of parts) {
      if ('options' in part) for (const option of Object.values(part.options)) visit(option.value);
      if ('children' in part) visit(part.children);
      if (part.type !== 0 && part.type !== 7) names.add((part as { value: string }).value);
    }
  };
  visit(new IntlMessageFormat(message, 'en-GB').getAst());
  return [...names].toSorted();
}

/** English in the sources that nobody is shown, or that is the same in every language. */
const NO_TEXT = new Set([
  'Plainwarmth',
  'English',
  'Deutsch',
  // Values of a shape, not their names.
  'as the system',
  'no day',
  'plainwarmth token',
  'plainwarmth.{}, version {}',
  // A date to be parsed.
  '{} {} {} UTC',
  'heat',
  'cost',
  // Fonts, and faults that turn into another sentence.
  'Source Sans 3 Variable',
  "'Source Sans 3 Variable', 'Source Sans 3', 'Segoe UI', sans-serif",
  'The face cannot be read.',
  'The picture came out empty.',
  // The shell and the style of a document.
  '<!doctype html>{}',
  'width=device-width, initial-scale=1',
  'Source Serif 4 Variable',
  'font: 14px "Source Sans 3 Variable", sans-serif; color: #55605f; vertical-align: top; padding-top: 8px; border-top: 1.5px solid #1d2528;',
  // Kept with a household and reworded where it is shown.
  'typed by the installer, {}',
  '{} bill, {} to {}',
  'all hours',
  '100 ft³',
  'hundred ft³',
]);

describe('every text has its German', () => {
  test('no English is written past it', () => {
    expect(texts.flatMap(({ unsaid }) => unsaid.filter(({ text }) => !NO_TEXT.has(text))).map(place)).toEqual([]);
  });
  test('none is missing', () => {
    expect(said.filter(({ text }) => german[text] === undefined).map(place)).toEqual([]);
  });
  test('what a source says beside its title has its German', async () => {
    const tables = import.meta.glob('../../../src/reference/*.ts', { eager: true });
    const remarks = sourcesIn(tables).filter((source) => REMARK.test(source));
    expect(remarks.length).toBeGreaterThan(30);
    expect([...new Set(remarks)].filter((source) => german[source] === undefined)).toEqual([]);
  });
  test('what an answer to a customer rests on has its German, but for titles', () => {
    const facts = Object.values(customerFacts).flatMap((ofCountry) => Object.values(ofCountry));
    const shown = facts.filter(({ provenance }) => provenance !== 'memory').map(({ source }) => source);
    expect(new Set(shown.filter((source) => german[source] === undefined))).toEqual(
      new Set([
        'Health and Safety Executive, hot and cold water systems (hse.gov.uk/legionnaires)',
        'Department of Energy and Climate Change, energy labels and house prices, July 2013',
        'Energy Saving Trust, Green Heat Toolkit, protecting consumers, 2025',
        'Consumer Contracts Regulations 2013 (uksi/2013/3134)',
        'BGB §§ 312b, 312g, 355',
      ]),
    );
  });
  test('what a file can be taken for has its German', () => {
    const names = [...SHAPES.map(({ name }) => name), ...FORMS.map(({ name }) => name), PAPER_SHAPE];
    expect(names.filter((name) => german[name] === undefined)).toEqual([]);
  });
  test('why a file is taken for what it is has its German', () => {
    const sources = import.meta.glob<string>('../../../src/intake/**/*.ts', {
      eager: true,
      query: '?raw',
      import: 'default',
    });
    const STEP = /\$\{step\.kind\}/;
    const reasons = Object.values(sources)
      .flatMap((source) => [...source.matchAll(/\breason: ['`]([^'`]+)['`]/g)].map(([, reason]) => reason!))
      .flatMap((reason) =>
        STEP.test(reason) ? ['week', 'month', 'quarter'].map((kind) => reason.replace(STEP, kind)) : [reason],
      );
    expect(reasons.length).toBeGreaterThan(30);
    expect(reasons.filter((reason) => german[reason] === undefined)).toEqual([]);
  });
  test('and none is left of what nothing says any more, but for what was kept before', () => {
    const tables = import.meta.glob('../../../src/reference/*.ts', { eager: true });
    const sources = ['src', 'electron'].flatMap(sourceFiles).filter((file) => !file.includes('/german/'));
    const written = new Set([...said.map(({ text }) => text), ...sources.flatMap(quotedIn), ...sourcesIn(tables)]);
    const OF_STEP = /^a (week|month|quarter) and an amount in each row$/;
    const left = Object.keys(german).filter((text) => !written.has(text) && !OF_STEP.test(text));
    expect(left.filter((text) => EARLIER[text] === undefined)).toEqual([]);
  });
  test('each is said after the language is known', () => {
    expect(said.filter(({ tooEarly }) => tooEarly).map(place)).toEqual([]);
  });
  test('each call fills the gaps of its text, and no other', () => {
    const wrong = said.filter(({ text, gaps }) => gaps !== null && gaps.toSorted().join() !== gapsOf(text).join());
    expect(wrong.map(place)).toEqual([]);
  });
  test('English and German have the same gaps', () => {
    const messages = Object.entries(german).filter(([english]) => !/\{\d+\}/.test(english));
    const wrong = messages.filter(([english, other]) => gapsOf(english).join() !== gapsOf(other).join());
    expect(wrong).toEqual([]);
  });
  test('each English text has one German only', async () => {
    const files = import.meta.glob<Record<string, Catalogue>>('../../../src/words/german/*.ts', { eager: true });
    const all = Object.values(files)
      .flatMap((file) => Object.values(file))
      .filter((one) => one !== german);
    const parted = all.flatMap((one) => Object.entries(one).filter(([english, said]) => german[english] !== said));
    expect(parted).toEqual([]);
  });
});
