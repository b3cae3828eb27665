/** From estimated to paid: each step starts where the last one ended. */

import type { BillCheck } from '../../model/shapes/bill-check.ts';
import type { Grade } from '../../model/shapes/working.ts';
import { estimatedForDaysPence, partName, partsForDays } from '../../words/check.ts';
import { say } from '../../words/say.ts';

export type BridgeColour = 'ground' | 'sky' | 'meter' | 'over' | 'fuel';
export interface BridgeStep {
  readonly name: string;
  readonly kind: 'estimated' | 'part' | 'paid';
  readonly colour: BridgeColour;
  /** Null for the two ends, whose grade the reader knows: a written estimate and a bill. */
  readonly grade: Grade | null;
  /** Pence: a part's own amount, or the height of an end. */
  readonly amount: number;
  readonly from: number;
  readonly to: number;
}
export interface BridgeSeries {
  readonly steps: readonly BridgeStep[];
  /** What the written estimate comes to for these days, weather and price. */
  readonly expected: { readonly low: number; readonly high: number } | null;
}

const CAUSE_COLOURS: Readonly<Record<string, BridgeColour>> = {
  weather: 'sky',
  price: 'meter',
  tariff: 'meter',
  when: 'meter',
  days: 'fuel',
  'standing-charge': 'meter',
};
const colourOf = (cause: string, amount: number): BridgeColour =>
  CAUSE_COLOURS[cause] ?? (amount < 0 ? 'ground' : 'over');

export function bridgeSeries(
  check: Pick<BillCheck, 'estimatedPence' | 'seasonPence' | 'actualPence' | 'parts' | 'expected'>,
): BridgeSeries {
  // The bridge starts at the estimate for these very days, so the step from an even slice of the year is behind it.
  const start = estimatedForDaysPence(check);
  let at = start;
  const parts = partsForDays(check).map((part): BridgeStep => {
    const from = at;
    at += part.pence;
    return {
      name: partName(part),
      kind: 'part',
      colour: colourOf(part.cause, part.pence),
      grade: part.grade,
      amount: part.pence,
      from,
      to: at,
    };
  });
  const end = (name: string, kind: 'estimated' | 'paid', amount: number): BridgeStep => ({
    name,
    kind,
    colour: 'ground',
    grade: null,
    amount,
    from: 0,
    to: amount,
  });
  const { low, high } = check.expected;
  return {
    steps: [end(say('Estimated'), 'estimated', start), ...parts, end(say('Paid'), 'paid', check.actualPence)],
    expected:
      Number.isFinite(low) && Number.isFinite(high) ? { low: Math.min(low, high), high: Math.max(low, high) } : null,
  };
}
