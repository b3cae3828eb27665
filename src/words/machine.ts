/** What the machine does with a unit of electricity, and how far that figure can be trusted. */
import type { MachineResult } from '../model/shapes/appraisal.ts';
import type { Boundary } from '../model/shapes/household.ts';
import { factor, grouped, spokenKWh, spokenRatio } from './numbers.ts';
import { phrase, say } from './say.ts';
import { homesOfHundred } from './sure.ts';

/** "For every kWh you buy, the ground adds about two and a half kWh": what is said is never more than what is added. */
export function addsSentence({ whole, source }: Pick<MachineResult, 'whole' | 'source'>): string {
  if (!Number.isFinite(whole.value)) return say('We do not know yet how much heat the heat pump makes from a kWh.');
  const added = whole.value - 1;
  if (added < 0.25)
    return say(
      'For every kWh of electricity you buy, {source, select, ground {the ground} other {the air outside}} adds almost no heat.',
      { source },
    );
  return say(
    'For every kWh of electricity you buy, {source, select, ground {the ground} other {the air outside}} adds about {ratio} kWh of heat.',
    {
      source,
      ratio: spokenRatio(added),
    },
  );
}

const BOUNDARIES: Readonly<Record<Boundary, string>> = {
  H1: phrase('the heat pump alone'),
  H2: phrase('the heat pump with its brine pump or fan'),
  H3: phrase('the heat pump with its brine pump or fan and the backup heater'),
  H4: phrase('the heat pump with all pumps and the backup heater'),
};

/** What a factor counts: "the machine with all pumps and the backup heater (H4)". */
export function boundaryName(boundary: Boundary): string {
  return `${say(BOUNDARIES[boundary])} (${boundary})`;
}

/** The household's own factor, its boundary named. */
export function factorSentence({ whole }: Pick<MachineResult, 'whole'>): string {
  if (!Number.isFinite(whole.value)) return '';
  return say(
    'We expect a seasonal factor of {factor} for rooms and hot water, with all pumps (H4). 8 in 10 homes like yours reach {low} to {high}.',
    { factor: factor(whole.value), low: factor(whole.low), high: factor(whole.high) },
  );
}

/** Why the household's factor is below the one for the rooms. */
export function shareSentence(
  machine: Pick<MachineResult, 'space' | 'water' | 'whole' | 'boundary' | 'extraKWh'>,
): string {
  const { space, whole, boundary, extraKWh } = machine;
  const first =
    space.value - whole.value < 0.05
      ? say('Hot water, pumps and standby are included.')
      : say('For the rooms alone it is {factor}, counting {boundary}. Hot water, pumps and standby take their share.', {
          factor: factor(space.value),
          boundary: boundaryName(boundary),
        });
  if (!(extraKWh >= 1)) return first;
  return `${first} ${say('Pumps, standby and the like take {units} a year.', { units: spokenKWh(extraKWh) })}`;
}

/** Why less is reckoned with than was designed for; empty where no design stands behind the figure. */
export function designedSentence({ whole, asDesigned }: Pick<MachineResult, 'whole' | 'asDesigned'>): string {
  if (!asDesigned || factor(asDesigned.whole) === factor(whole.value)) return '';
  return say(
    'By design it would be {design}. In practice {homes} get there. So we use {factor}, the middle of what homes get.',
    {
      design: factor(asDesigned.whole),
      homes: homesOfHundred(asDesigned.reachedShare),
      factor: factor(whole.value),
    },
  );
}

/** The installer's figure inside the spread met in metered homes. */
export function fieldSentence({
  whole,
  source,
  fieldSpread,
}: Pick<MachineResult, 'whole' | 'source' | 'fieldSpread'>): string {
  const { low, middle, high, boundary, count } = fieldSpread;
  const values = { source, low: factor(low), high: factor(high), middle: factor(middle), boundary };
  const spread =
    count === undefined
      ? say(
          'In homes that were metered, 8 in 10 {source, select, ground {ground-source} other {air-source}} heat pumps reached {low} to {high}, with {middle} in the middle ({boundary}).',
          values,
        )
      : say(
          'In {homes} homes that were metered, 8 in 10 {source, select, ground {ground-source} other {air-source}} heat pumps reached {low} to {high}, with {middle} in the middle ({boundary}).',
          { ...values, homes: grouped(count) },
        );
  if (!Number.isFinite(whole.value)) return spread;
  if (whole.value > high)
    return `${spread} ${say('The figure used here is above that, so ask what makes this home better.')}`;
  if (whole.value < low) return `${spread} ${say('The figure used here is below that, so it is cautious.')}`;
  return `${spread} ${say('The figure used here is within that.')}`;
}
