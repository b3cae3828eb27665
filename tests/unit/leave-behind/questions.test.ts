import { expect, test } from 'vitest';
import { renderQuestions } from '../../../src/leave-behind/questions.tsx';
import { customerFacts } from '../../../src/reference/customer-facts.ts';
import { answerQuestions } from '../../../src/words/asked.ts';
import { german } from '../../../src/words/german/german.ts';
import { speak } from '../../../src/words/say.ts';
import { larchRise, larchRiseHousehold } from './larch-rise.ts';

test('a sheet of answers in German names in German what they rest on', () => {
  speak({ language: 'de-DE', currency: 'GBP' }, german);
  const html = renderQuestions({
    name: 'Larch Rise',
    answers: answerQuestions({ household: larchRiseHousehold(), appraisal: larchRise() }, customerFacts),
    today: '2026-11-30',
    settings: { installerName: '', installerContact: '', paper: 'A4' },
  });
  expect(html).toContain('ohne Verluste; gemischt mit Leitungswasser');
  expect(html).not.toContain('no losses');
  // A title stays as it is, and is marked for whoever has it read aloud.
  expect(html).toContain('<span lang="en">Consumer Contracts Regulations 2013 (uksi/2013/3134)</span>');
});
