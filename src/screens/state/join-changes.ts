/** Changes of one household that were made in two windows, joined where they touch different things. */
import type { Household } from '../../model/shapes/household.ts';

/** Fields of these stand for themselves; of all else the whole is one thing. */
const BY_FIELD = ['home', 'present', 'heat', 'hotWater'] as const satisfies readonly (keyof Household)[];
/** What is chosen together is one thing: an offer with its machine and what it costs, a tariff with what is paid by it. */
const TOGETHER: readonly (readonly (keyof Household)[])[] = [
  ['machine', 'purchase', 'offer', 'otherOffers'],
  ['tariffs', 'prices', 'country'],
];

type Things = ReadonlyMap<string, unknown>;

/** The household in its things, by a name that puts it together again: "notes", "home people". */
function thingsOf(household: Household): Things {
  return new Map(
    Object.entries(household).flatMap(([key, value]): [string, unknown][] =>
      BY_FIELD.some((one) => one === key)
        ? Object.entries(value as object).map(([field, own]) => [`${key} ${field}`, own])
        : [[key, value]],
    ),
  );
}

const isSame = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);

function changedIn(before: Things, after: Things): Set<string> {
  return new Set([...before.keys(), ...after.keys()].filter((name) => !isSame(before.get(name), after.get(name))));
}

const groupOf = (name: string): string =>
  TOGETHER.find((names) => names.some((one) => one === name))?.join(' and ') ?? name;

/** Both changes since `before`; null where both touch one thing, and not alike. */
export function joinChanges(before: Household, mine: Household, theirs: Household): Household | null {
  const [was, own, other] = [before, mine, theirs].map(thingsOf) as [Things, Things, Things];
  const [byMe, byThem] = [changedIn(was, own), changedIn(was, other)];
  const touched = new Set([...byThem].map(groupOf));
  const isApart = [...byMe].every((name) => !touched.has(groupOf(name)) || isSame(own.get(name), other.get(name)));
  if (!isApart) return null;
  const joined: Record<string, unknown> = { ...theirs };
  for (const name of byMe) {
    const [key, field] = name.split(' ') as [string, string | undefined];
    const value = own.get(name);
    joined[key] = field === undefined ? value : without({ ...(joined[key] as object), [field]: value });
  }
  return without(joined) as Household;
}

/** What was taken away is not there, rather than there and nothing. */
const without = (fields: object): object =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
