/** The proofs of `npm run prove` at a small size, with their own allowance for chance. */
import { expect, test } from 'vitest';
import { proveBillGap } from '../../prove/bill-gap-recovery.ts';
import { proveCauses } from '../../prove/causes.ts';
import { DETECTORS, proveFindings } from '../../prove/false-alarms.ts';
import { proveMiddle } from '../../prove/middle.ts';
import { proveOtherHomes } from '../../prove/other-homes.ts';
import { provePlant } from '../../prove/plant.ts';
import { proveSureness } from '../../prove/sureness.ts';

test('30 made bills: every cause is found again within its limit, and the parts sum to the penny', () => {
  const proof = proveBillGap(30);
  expect(proof.worstSum).toBe(0);
  expect(proof.rows.filter((row) => row.at(-1) !== 'yes')).toEqual([]);
  expect(proof.within).toBe(true);
});

test('each detector over at least 20 made homes without its effect, and some with it', () => {
  const proof = proveFindings(20);
  expect(proof.rows.filter((row) => row.at(-1) !== 'yes')).toEqual([]);
  expect(proof.tallies.every((tally) => tally.without >= 20 && tally.with > 0)).toBe(true);
  expect(proof.rows).toHaveLength(DETECTORS.length);
});

test('findings over 40 made homes are true at least as often as they say', () => {
  expect(proveSureness(40).rows.filter((row) => row.at(-1) !== 'yes')).toEqual([]);
});

test('of 600 made homes of each source about half lie above the factor shown, and 7 to 9 in 10 inside its range', () => {
  expect(proveMiddle(600).rows.filter((row) => row.at(-1) !== 'yes')).toEqual([]);
});

test('of 20 made plants of each fault and slip, with their handbook’s signs, few are named wrongly and most are named or asked', () => {
  const { rows } = provePlant(20);
  expect(rows).toHaveLength(21);
  for (const [truth, right, asked, wrong, silent, , , most, least] of rows) {
    expect(Number(right) + Number(asked) + Number(wrong) + Number(silent), String(truth)).toBeCloseTo(100, 0);
    // At this size two plants are left to chance.
    expect(Number(wrong), String(truth)).toBeLessThanOrEqual(Number(most) + 10);
    expect(Number(right) + Number(asked), String(truth)).toBeGreaterThanOrEqual(Number(least) - 10);
  }
  const mean = rows.reduce((sum, row) => sum + Number(row[3]) / rows.length, 0);
  expect(mean).toBeLessThan(2.5);
});

test('two homes of each cause by another physics: next to nothing untrue is named', async () => {
  const wrong = (await proveOtherHomes(2)).rows.reduce((sum, row) => sum + Number(row[7]), 0);
  expect(wrong).toBeLessThanOrEqual(1);
});

test('a home of each cause and pair: hardly a wrong name, no reason that its data contradict, an answer to nearly all', async () => {
  const { wrongShare, contradicted, answeredShare } = await proveCauses(1);
  expect(wrongShare).toBeLessThanOrEqual(0.05);
  expect(contradicted).toBe(0);
  expect(answeredShare).toBeGreaterThanOrEqual(0.7);
});
