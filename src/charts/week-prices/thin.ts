/** Thins the half-hours of a week to the pixels they are drawn on. */
import { thinReadings } from '../../model/thin/thin-readings.ts';
import type { WeekPrices } from './series.ts';

type Steps = WeekPrices['steps'];

/**
 * A step holds until the next, so that one with the price before it draws nothing and goes first; of what is left,
 * cheapest and dearest of each slice stay. The first and the last stay always: they bound the week.
 */
export function thinSteps(steps: Steps, most: number): Steps {
  const turns = steps.filter(
    (step, at) =>
      at === 0 ||
      at === steps.length - 1 ||
      step.pence !== steps[at - 1]!.pence ||
      // The painter ends a line at its last step before a gap.
      (step.pence !== null && steps[at + 1]!.pence === null),
  );
  if (turns.length <= most) return turns;
  const byHalf = new Map(turns.map((step) => [step.half, step]));
  return thinReadings(
    turns.map(({ half, pence }) => ({ minute: half, value: pence })),
    most,
  ).map(({ minute }) => byHalf.get(minute)!);
}
