import type { Household } from '../../model/shapes/household.ts';
import { counted, grouped } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';

const KINDS: { readonly [kind in NonNullable<Household['home']['kind']>]: string } = {
  detached: phrase('Detached'),
  semi: phrase('Semi'),
  terrace: phrase('Terrace'),
  bungalow: phrase('Bungalow'),
  flat: phrase('Flat'),
  other: phrase('Home'),
};

/** "Semi, 96 m², 3 people · Midlands"; what is not known is left out. */
export function placeLine(household: Pick<Household, 'home'>, regionName: string): string {
  const { kind, floorAreaM2, people } = household.home;
  const home = [
    ...(kind ? [say(KINDS[kind])] : []),
    ...(floorAreaM2 ? [`${grouped(floorAreaM2.value)} m²`] : []),
    ...(people ? [counted(people.value, 'person', 'people')] : []),
  ].join(', ');
  return home === '' ? regionName : `${home} · ${regionName}`;
}
