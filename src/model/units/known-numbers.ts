/** The values without those that nobody has given. */
export function knownNumbers<T extends Record<string, number | undefined>>(values: T): { [K in keyof T]?: number } {
  const kept = Object.entries(values).filter((entry): entry is [string, number] => entry[1] !== undefined);
  return Object.fromEntries(kept) as { [K in keyof T]?: number };
}
