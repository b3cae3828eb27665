/** What drives the running cost, one thing at a time: each sentence from the model's own steps about today. */
import type { Driver, DriverName, EmitterCase } from '../model/what-drives/what-drives.ts';
import { degrees, grouped, spokenPounds } from './numbers.ts';

/** Below £5 a year nobody would notice. */
const NOTHING_PENCE = 500;

/** Pence a year for one unit of the driver more, from the steps on both sides of today. */
export function slopeAtToday({ points, today }: Driver): number {
  const index = points.findIndex(({ at }) => at === today);
  const before = points[Math.max(0, index - 1)];
  const after = points[Math.min(points.length - 1, index + 1)];
  if (!before || !after || after.at === before.at) return 0;
  return (after.costPence - before.costPence) / (after.at - before.at);
}

const costAt = ({ points }: Driver, at: number) => points.find((point) => point.at === at)?.costPence;

/** "saves about £70 a year" or its contrary, for a change in pence. */
function effect(pence: number): string {
  if (!Number.isFinite(pence)) return 'changes the cost by an unknown amount';
  if (Math.abs(pence) < NOTHING_PENCE) return 'changes almost nothing';
  return pence < 0 ? `saves about ${spokenPounds(-pence)} a year` : `costs about ${spokenPounds(pence)} a year more`;
}

export function driverSentence(driver: Driver): string {
  const slope = slopeAtToday(driver);
  switch (driver.name) {
    case 'flow':
      return `Cooler heating water: every 5 degrees lower ${effect(-5 * slope)}.`;
    case 'room':
      return `Warmer rooms: every degree more ${effect(slope)}.`;
    case 'water-temperature':
      return `A hotter cylinder: every 5 degrees more ${effect(5 * slope)}.`;
    case 'water-use':
      return `Half as much hot water again ${effect(0.5 * slope)}.`;
    case 'array': {
      const [now, half, more] = [driver.today, 0.5, 1.5].map((size) => costAt(driver, size));
      if (now === undefined || half === undefined || more === undefined)
        return 'The pipes in the ground count as well.';
      return `Half the usual length of pipe in the ground ${effect(half - now)}. Half as much again ${effect(more - now)}.`;
    }
  }
}

const NAMES: Readonly<Record<DriverName, string>> = {
  flow: 'Heating water on a very cold day',
  room: 'Rooms',
  'water-temperature': 'Hot water in the cylinder',
  'water-use': 'Hot water used, against today',
  array: 'Pipes in the ground, against the usual',
};
export const driverName = (name: DriverName): string => NAMES[name];

/** The same on an axis, with its unit once. */
export const driverAxisName = (name: DriverName): string =>
  name === 'water-use' || name === 'array' ? NAMES[name] : `${NAMES[name]}, °C`;

/** A place on the axis, without its unit where the axis has it. */
export const driverTick = (name: DriverName, at: number): string => driverValue(name, at).replace(/ °C$/, '');

/** A place on the axis: "45 °C", "150%", "1.5 times". */
export function driverValue(name: DriverName, at: number): string {
  if (name === 'water-use') return `${grouped(at * 100)}%`;
  if (name === 'array') return `${Number(at.toFixed(2))}×`;
  return degrees(at);
}

export const emitterName = ({ emitters, flowC }: EmitterCase): string =>
  `${emitters === 'floor' ? 'Floor' : 'Radiators'}, ${degrees(flowC)}`;

/** "A warm floor at 35 °C would cost about £150 a year less than radiators at 50 °C." */
export function emitterSentence(cases: readonly EmitterCase[]): string {
  const today = cases.find((one) => one.today);
  const other = cases.find((one) => !one.today);
  if (!today || !other) return 'We cannot say yet what other emitters would change.';
  const name = (one: EmitterCase) =>
    `${one.emitters === 'floor' ? 'a warm floor' : 'radiators'} at ${degrees(one.flowC)}`;
  const said = name(other);
  const apart = other.cost.value - today.cost.value;
  const start = `${said.charAt(0).toUpperCase()}${said.slice(1)} would cost`;
  if (!Number.isFinite(apart)) return 'We cannot say yet what other emitters would change.';
  if (Math.abs(apart) < NOTHING_PENCE) return `${start} about the same as ${name(today)}.`;
  return `${start} about ${spokenPounds(Math.abs(apart))} a year ${apart < 0 ? 'less' : 'more'} than ${name(today)}.`;
}
