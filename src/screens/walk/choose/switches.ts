/** What is switched on and off at the table; each is the household with one thing otherwise. */
import type { Household } from '../../../model/shapes/household.ts';
import { phrase } from '../../../words/say.ts';

interface Switch {
  readonly label: string;
  /** Only what the household has, or could do without buying anything, stands on the table. */
  readonly isThere: (household: Household) => boolean;
  readonly isOn: (household: Household) => boolean;
  readonly turn: (household: Household) => Household;
}

const without = (key: 'roof' | 'battery' | 'car', label: string): Switch => ({
  label,
  isThere: (household) => household[key] !== undefined,
  isOn: (household) => household[key] !== undefined,
  turn: ({ [key]: _, ...household }) => household,
});

/** On the published average every hour costs the same. */
const hasTariff = ({ tariffs }: Household) => tariffs.some(({ fuel }) => fuel === 'electricity');

const SWITCHES = {
  'night-water': {
    label: phrase('hot water at night'),
    isThere: hasTariff,
    isOn: ({ hotWater }) => hotWater.hours === 'night',
    turn: (household) => {
      const { hours, ...hotWater } = household.hotWater;
      return { ...household, hotWater: hours === 'night' ? hotWater : { ...hotWater, hours: 'night' } };
    },
  },
  'best-hours': {
    label: phrase('the best hours'),
    // On one price all day the sun alone makes hours that are better than others.
    isThere: (household) => hasTariff(household) || household.roof !== undefined,
    isOn: ({ comfort }) => comfort?.hours === 'best',
    turn: (household) => {
      const { hours, ...comfort } = household.comfort ?? {};
      return { ...household, comfort: hours === 'best' ? comfort : { ...comfort, hours: 'best' } };
    },
  },
  roof: without('roof', phrase('solar panels')),
  battery: without('battery', phrase('battery')),
  car: without('car', phrase('electric car')),
} as const satisfies { readonly [name: string]: Switch };
export type SwitchName = keyof typeof SWITCHES;

/** Those that stand otherwise than the household has them. */
export type Turned = readonly SwitchName[];

export interface ShownSwitch {
  readonly name: SwitchName;
  readonly label: string;
  readonly isOn: boolean;
}

export const switchesOf = (household: Household, turned: Turned): ShownSwitch[] =>
  (Object.keys(SWITCHES) as SwitchName[])
    .filter((name) => SWITCHES[name].isThere(household))
    .map((name) => ({
      name,
      label: SWITCHES[name].label,
      isOn: SWITCHES[name].isOn(household) !== turned.includes(name),
    }));

/** The household as the switches have it. */
export const householdWith = (household: Household, turned: Turned): Household =>
  turned.reduce((so, name) => SWITCHES[name].turn(so), household);
