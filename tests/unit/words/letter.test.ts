/** What the letter says of a bill of the whole home whose heat pump has a meter of its own. */
import { expect, test } from 'vitest';
import type { BillCheck } from '../../../src/model/shapes/bill-check.ts';
import { knownSentences } from '../../../src/words/letter.ts';
import { made } from './made-findings.ts';

const ROOM = { parts: 3, findings: 3, steps: 2, asks: 3 };
const known = (input: object, meter: string) =>
  knownSentences(
    {
      input: { meter: 'whole-house', boughtKWh: 1200, otherKWh: 800, ...input },
      parts: [],
      estimatedPence: 30_000,
      seasonPence: 30_000,
      findings: [{ ...made('behaviour-changed'), meter }],
    } as unknown as BillCheck,
    ROOM,
  ).join(' ');

test('which part of the bill is compared, and which of the meters a sentence is about', () => {
  const apart = known({ heatPumpKWh: 1200 }, 'whole-house');
  expect(apart).toContain('Only the heat pump’s part of your bill is compared: 1,200 kWh of 2,000 kWh.');
  expect(apart).toContain('This is the rest of the home, without the heat pump.');
  expect(known({ heatPumpKWh: 1200 }, 'heat-pump')).not.toContain('the rest of the home');
  const told = known({}, 'whole-house');
  expect(told).not.toContain('Only the heat pump’s part');
  expect(told).not.toContain('the rest of the home');
});
