/** What drives the running cost, one thing at a time: each sentence from the model's own steps about what is shown. */
import type { Figure } from '../model/shapes/appraisal.ts';
import type { Driver, DriverName, EmitterCase, WhatDrives } from '../model/what-drives/what-drives.ts';
import { degrees, factor, grouped, poundsRange, spokenPounds } from './numbers.ts';
import { say } from './say.ts';

/** Below £5 a year nobody would notice. */
const NOTHING_PENCE = 500;

type Range = Pick<Figure, 'value' | 'low' | 'high'>;
const isNothing = ({ value, low, high }: Range) => [value, low, high].every((pence) => Math.abs(pence) < NOTHING_PENCE);
const isEitherWay = ({ low, high }: Range) => low <= -NOTHING_PENCE && high >= NOTHING_PENCE;

/** The amount of an effect as its sentence has it; the same text opens its working. */
export const effectAmount = (figure: Range): string =>
  spokenPounds(isEitherWay(figure) ? figure.high : Math.abs(figure.value));

/** "saves about £70 a year, £50 to £100 in 8 cases of 10", for pence a year more or less. */
function effect(figure: Range): string {
  const { value, low, high } = figure;
  if (![value, low, high].every(Number.isFinite)) return say('changes the cost by an unknown amount');
  if (isNothing(figure)) return say('changes almost nothing');
  const amount = effectAmount(figure);
  if (isEitherWay(figure)) {
    const gaps = { saved: spokenPounds(-low), more: effectAmount(figure) };
    return say('may save up to {saved} a year or cost up to {more} more, for 8 in 10 homes like yours', gaps);
  }
  const range = poundsRange(Math.max(0, value < 0 ? -high : low), value < 0 ? -low : high);
  return value < 0
    ? say('saves about {amount} a year, {range} for 8 in 10 homes like yours', { amount, range })
    : say('costs about {amount} a year more, {range} for 8 in 10 homes like yours', { amount, range });
}

export function driverSentence({ name, effects }: Pick<Driver, 'name' | 'effects'>): string {
  const [first, second] = effects.map(effect);
  if (first === undefined) return '';
  switch (name) {
    case 'flow':
      return say('Flow temperature: every 5 degrees lower {effect}.', { effect: first });
    case 'room':
      return say('Warmer rooms: every degree more {effect}.', { effect: first });
    case 'water-temperature':
      return say('A hotter cylinder: every 5 degrees more {effect}.', { effect: first });
    case 'water-use':
      return say('Using 50% more hot water {effect}.', { effect: first });
    case 'array': {
      const half = say('Half the usual length of pipe in the ground {effect}.', { effect: first });
      return second === undefined ? half : `${half} ${say('50% more than usual {effect}.', { effect: second })}`;
    }
  }
}

/** What the charts begin from: the household as typed, or the sliders' settings in words. */
export const startsFromSentence = (whatIf: string): string =>
  whatIf === ''
    ? say('Each change by itself, all else as typed. The steps are worked out for this home, not by a rule of thumb.')
    : say('Each change by itself, all else as on the sliders: {whatIf}. The steps are worked out for this home.', {
        whatIf,
      });

/** Why the factor may rise with warmer rooms, which nobody should take for thrift; else nothing. */
export function driverNote({ name, points }: Pick<Driver, 'name' | 'points'>): string {
  const [first = 0, last = 0] = [points[0]?.factor, points.at(-1)?.factor];
  // As it is shown: of a rise that nobody sees nothing is said.
  const rises = name === 'room' && last > first && factor(last) !== factor(first);
  return rises ? say('The factor rises only because hot water, which is harder to heat, becomes a smaller part.') : '';
}

export function driverName(name: DriverName): string {
  switch (name) {
    case 'flow':
      return say('Flow temperature on a very cold day');
    case 'room':
      return say('Rooms');
    case 'water-temperature':
      return say('Hot water in the cylinder');
    case 'water-use':
      return say('Hot water used, compared with today');
    case 'array':
      return say('Pipes in the ground, compared with the usual length');
  }
}

/** The same on an axis, with its unit once. */
export const driverAxisName = (name: DriverName): string =>
  name === 'water-use' || name === 'array' ? driverName(name) : `${driverName(name)}, °C`;

/** A place on the axis, without its unit where the axis has it. */
export const driverTick = (name: DriverName, at: number): string => driverValue(name, at).replace(/ °C$/, '');

/** A place on the axis: "45 °C", "150%", "1.5×". */
export function driverValue(name: DriverName, at: number): string {
  if (name === 'water-use') return say('{count}%', { count: grouped(at * 100) });
  if (name === 'array') return `${grouped(at, 2)}×`;
  return degrees(at);
}

export const shownLabel = (amount: string): string => say('as shown {amount}', { amount });
export const shownRow = (place: string): string => say('{place}, as shown', { place });

export const emitterName = ({ emitters, flowC }: EmitterCase): string =>
  emitters === 'floor'
    ? say('Underfloor, {flow}', { flow: degrees(flowC) })
    : say('Radiators, {flow}', { flow: degrees(flowC) });

/** "A warm floor at 35 °C would cost about £150 a year less than radiators at 50 °C, £110 to £200 in 8 cases of 10." */
export function emitterSentence({ emitters, emittersApart }: Pick<WhatDrives, 'emitters' | 'emittersApart'>): string {
  const shown = emitters.find(({ now }) => now);
  const other = emitters.find(({ now }) => !now);
  const { value, low, high } = emittersApart;
  if (!shown || !other || ![value, low, high].every(Number.isFinite)) {
    return say('We cannot say yet what other emitters would change.');
  }
  const gaps = { other: degrees(other.flowC), shown: degrees(shown.flowC), does: apart(emittersApart) };
  return other.emitters === 'floor'
    ? say('Underfloor heating at {other} would cost {does} radiators at {shown}.', gaps)
    : say('Radiators at {other} would cost {does} underfloor heating at {shown}.', gaps);
}

function apart(figure: Range): string {
  if (isNothing(figure)) return say('about the same as');
  const { value, low, high } = figure;
  if (isEitherWay(figure)) {
    return say('up to {less} a year less or up to {more} more, for 8 in 10 homes like yours, than', {
      less: spokenPounds(-low),
      more: effectAmount(figure),
    });
  }
  const amount = effectAmount(figure);
  const range = poundsRange(Math.max(0, value < 0 ? -high : low), value < 0 ? -low : high);
  return value < 0
    ? say('about {amount} a year less ({range} for 8 in 10 homes like yours) than', { amount, range })
    : say('about {amount} a year more ({range} for 8 in 10 homes like yours) than', { amount, range });
}
