/** Findings of made homes in words: every code has a sentence, and every figure that a sentence speaks of is there. */
import { describe, expect, test } from 'vitest';
import { findInReadings } from '../../../src/model/findings/find-in-readings.ts';
import {
  AskCode,
  CautionCode,
  type Finding,
  FindingCheckCode,
  FindingCode,
} from '../../../src/model/findings/finding.ts';
import {
  askSentence,
  costOfFinding,
  findingCaution,
  findingCheckSentence,
  findingName,
  homeSentence,
  seenSentence,
  sureShort,
  whenSentence,
} from '../../../src/words/findings.ts';
import { drawCase } from '../../prove/finding-case.ts';
import { sentencesOf, wordsOf } from './reading-ease.ts';

const byCode = new Map<string, Finding>();
for (let seed = 100_000; seed < 100_150 && byCode.size < FindingCode.options.length; seed++) {
  for (const finding of findInReadings(drawCase(seed).input)) byCode.set(finding.code, finding);
}
const findings = [...byCode.values()];
const saidOf = (finding: Finding) => [
  seenSentence(finding),
  homeSentence(finding),
  whenSentence(finding),
  sureShort(finding),
  costOfFinding(finding),
  findingName(finding),
];

describe('words of findings', () => {
  test('made homes show every finding there is', () => {
    expect([...byCode.keys()].sort()).toEqual(FindingCode.options.toSorted());
  });
  test.each(findings.map((finding) => [finding.code, finding] as const))('%s', (_, finding) => {
    const said = saidOf(finding);
    expect(said.filter((text) => /NaN|undefined|not known|Infinity/.test(text) || text.length === 0)).toEqual([]);
    const long = said.flatMap(sentencesOf).filter((sentence) => wordsOf(sentence).length > 25);
    expect(long).toEqual([]);
    expect(finding.ask.length).toBeGreaterThan(0);
    expect(finding.check.length).toBeGreaterThan(0);
    expect(finding.sure).toBeLessThan(1);
  });
  test('every question, check and caution has its sentence', () => {
    const all = [
      ...AskCode.options.map(askSentence),
      ...FindingCheckCode.options.map(findingCheckSentence),
      ...CautionCode.options.map(findingCaution),
    ];
    expect(all.every((text) => /^[A-Z].*[.?]$/.test(text))).toBe(true);
    expect(new Set(all).size).toBe(all.length);
  });
  test('electric heaters and hot tanks bring their cautions', () => {
    expect(byCode.get('heater-running')!.cautions).toEqual(['electrical', 'scalding', 'legionella']);
    expect(byCode.get('water-often')!.cautions).toEqual(['scalding', 'legionella']);
  });
});
