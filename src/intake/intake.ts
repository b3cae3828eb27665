/**
 * The door through which files come in: text or bytes in, typed evidence and remarks out. Pure: no clock, no disk, no database.
 * A new shape is one new file in `shapes/` that exports an `IntakeShape`, added to the list in `shapes/index.ts`.
 */
export {
  type BesideChoice,
  type ChoicesOfColumn,
  ENERGY_UNITS,
  EnergyUnit,
  IntakeChoices,
  type IntakeContext,
} from './terms/choices.ts';
export {
  PAPER_SHAPE,
  type PageMode,
  type PaperChoices,
  type PaperReading,
  type PaperRepair,
  type PaperValue,
  type Recognise,
  type SeenWord,
  type UnpackHeic,
} from './terms/paper-reading.ts';
export { IntakePreview, type IntakeResult, type IntervalDays } from './terms/preview.ts';
export { isUnitOf } from './terms/units.ts';

/**
 * Ten years of half-hours are 5 to 14 MB. A file is held as bytes, as text and as the places of its cells, and some
 * layouts as rows besides. Measured in the built host above idle, a file of 16 MB offered, previewed and kept takes
 * 130 MB of memory with its readings in two columns, 170 as XML, 210 across the day, and 265 as a counter or with rows
 * that have no date. We promise to stay within 300 whatever the file, so no larger one is taken. Reading in pieces would
 * take more, but each shape looks at the whole column to decide day and month, unit and clock.
 */
export const LARGEST_EVIDENCE_BYTES = 16 * 1024 * 1024;

/** Whether a file of that name may be a page of a bill. */
export const isPageName = (name: string): boolean => /\.(?:pdf|jpe?g|png|hei[cf])$/i.test(name);

/** The first of several names that cannot be a page beside the others; one file alone may be anything. */
export const otherThanPage = (names: readonly string[]): string | undefined =>
  names.length < 2 ? undefined : names.find((name) => !isPageName(name));

/**
 * Pages of one bill that are handed over together, packed into one file in their order. Pictures are packed already; this
 * only lays them behind each other, always alike.
 */
export async function bundle(
  files: readonly (readonly [name: string, bytes: Uint8Array])[],
): Promise<{ readonly fileName: string; readonly bytes: Uint8Array }> {
  const [[name, only]] = files as [(typeof files)[number]];
  if (files.length === 1) return { fileName: name, bytes: only };
  // Every start comes by here, and hardly any packs pages.
  const { zipSync } = await import('fflate');
  const bytes = zipSync(
    Object.fromEntries(
      files.map(([page, own], i) => [`${i + 1} ${page}`, [own, { level: 0, mtime: '1980-01-02' }] as const]),
    ) as Parameters<typeof zipSync>[0],
  );
  return { fileName: `${name.replace(/\.[^.]*$/, '')} (${files.length}).zip`, bytes };
}
