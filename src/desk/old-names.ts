/** Household files from when a written estimate was called a promise, in the names of today; no figure changes. */
const TODAY: ReadonlyMap<string, string> = new Map([
  ['promise', 'estimate'],
  ['promises', 'estimates'],
  ['promiseId', 'estimateId'],
  ['promisedPence', 'estimatedPence'],
  ['promisedKWh', 'estimatedKWh'],
  ['promisedStandingPencePerDay', 'estimatedStandingPencePerDay'],
]);

/** Where both names stand beside each other the old one stays, so that the schema refuses it. */
function rename(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(rename);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, inner]) => {
      const today = TODAY.get(name);
      return [today === undefined || today in value ? name : today, rename(inner)];
    }),
  );
}

/** A household file as it was read; an exported one of version 1 comes out as one of version 2. */
export function toNamesOfToday(file: unknown): unknown {
  if (file === null || typeof file !== 'object') return file;
  const { format, version } = file as { readonly format?: unknown; readonly version?: unknown };
  if (format !== 'plainwarmth.household-file') return rename(file);
  return version === 1 ? { ...(rename(file) as object), version: 2 } : file;
}
