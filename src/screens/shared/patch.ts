import type { Household } from '../../model/shapes/household.ts';

type Section = 'home' | 'present' | 'heat' | 'hotWater' | 'machine' | 'prices' | 'purchase' | 'comfort';

/** A change to one section of the household; a field set to undefined is taken out, since absent is not zero. */
export function patchSection<S extends Section>(
  section: S,
  part: { readonly [key in keyof NonNullable<Household[S]>]?: NonNullable<Household[S]>[key] | undefined },
): (household: Household) => Household {
  return (household) => {
    const merged: Record<string, unknown> = { ...household[section], ...part };
    const kept = Object.fromEntries(Object.entries(merged).filter(([, value]) => value !== undefined));
    return { ...household, [section]: kept as Household[S] };
  };
}
