import type { Household } from '../../model/household/household.ts';
import { counted, grouped } from '../../words/numbers.ts';

const KINDS: { readonly [kind in NonNullable<Household['home']['kind']>]: string } = {
  detached: 'Detached',
  semi: 'Semi',
  terrace: 'Terrace',
  bungalow: 'Bungalow',
  flat: 'Flat',
  other: 'Home',
};

/** "Semi, 96 m², 3 people · Midlands"; what is not known is left out. */
export function placeLine(household: Pick<Household, 'home'>, regionName: string): string {
  const { kind, floorAreaM2, people } = household.home;
  const home = [
    ...(kind ? [KINDS[kind]] : []),
    ...(floorAreaM2 ? [`${grouped(floorAreaM2.value)} m²`] : []),
    ...(people ? [counted(people.value, 'person', 'people')] : []),
  ].join(', ');
  return home === '' ? regionName : `${home} · ${regionName}`;
}
