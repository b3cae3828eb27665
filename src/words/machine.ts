/** What the machine does with a unit of electricity, and how far that figure can be trusted. */
import type { MachineResult } from '../model/appraisal/appraisal.ts';
import type { Boundary } from '../model/household/household.ts';
import { factor, grouped, spokenKWh, spokenRatio } from './numbers.ts';

const SOURCES = { ground: 'the ground', air: 'the air outside' } as const;

export function sourceName(source: 'ground' | 'air'): string {
  return SOURCES[source];
}

/** "For every unit you buy, the ground adds about two and a half." */
export function addsSentence({ whole, source }: Pick<MachineResult, 'whole' | 'source'>): string {
  if (!Number.isFinite(whole.value)) return 'We do not know yet what the machine makes of a unit.';
  const added = whole.value - 1;
  if (added < 0.25) return `For every unit you buy, ${sourceName(source)} adds almost nothing.`;
  return `For every unit you buy, ${sourceName(source)} adds about ${spokenRatio(added)}.`;
}

const BOUNDARIES: Readonly<Record<Boundary, string>> = {
  H1: 'the machine alone',
  H2: 'the machine and its source pump or fan',
  H3: 'the machine, its source pump or fan and the backup heater',
  H4: 'the machine with all pumps and the backup heater',
};

/** What a factor counts: "the machine with all pumps and the backup heater (H4)". */
export function boundaryName(boundary: Boundary): string {
  return `${BOUNDARIES[boundary]} (${boundary})`;
}

/** The household's own factor, its boundary named. */
export function factorSentence({ whole }: Pick<MachineResult, 'whole'>): string {
  if (!Number.isFinite(whole.value)) return '';
  const range = `${factor(whole.low)} to ${factor(whole.high)}`;
  return `We reckon with a factor of ${factor(whole.value)} for rooms and hot water, all pumps counted (H4). It could be ${range}.`;
}

/** Why the household's factor is below the one for the rooms. */
export function shareSentence(
  machine: Pick<MachineResult, 'space' | 'water' | 'whole' | 'boundary' | 'extraKWh'>,
): string {
  const { space, whole, boundary, extraKWh } = machine;
  const extra = extraKWh >= 1 ? ` Pumps, standby and the like take ${spokenKWh(extraKWh)} a year.` : '';
  if (space.value - whole.value < 0.05) return `Hot water, pumps and standby are counted in.${extra}`;
  return `For the rooms alone it is ${factor(space.value)}, counting ${boundaryName(boundary)}. Hot water, pumps and standby take their share.${extra}`;
}

/** Why the range leans to the dear side; empty where nobody has counted it. */
export function leanSentence({ fieldSpread }: Pick<MachineResult, 'fieldSpread'>): string {
  const share = fieldSpread.reachedDesignShare;
  if (share === undefined || !(share > 0 && share < 0.5)) return '';
  return `About 1 home in ${Math.round(1 / share)} reached the factor it was designed for. So our range leans to the dear side.`;
}

/** The installer's figure inside the spread met in metered homes. */
export function fieldSentence({
  whole,
  source,
  fieldSpread,
}: Pick<MachineResult, 'whole' | 'source' | 'fieldSpread'>): string {
  const { low, middle, high, boundary, count } = fieldSpread;
  const homes = count === undefined ? 'In homes that were metered' : `In ${grouped(count)} homes that were metered`;
  const kind = source === 'ground' ? 'ground' : 'air';
  const spread = `${homes}, most ${kind} machines reached ${factor(low)} to ${factor(high)}, with ${factor(middle)} in the middle (${boundary}).`;
  if (!Number.isFinite(whole.value)) return spread;
  if (whole.value > high) return `${spread} The figure used here is above that, so ask what makes this home better.`;
  if (whole.value < low) return `${spread} The figure used here is below that, so it is careful.`;
  return `${spread} The figure used here lies inside.`;
}
