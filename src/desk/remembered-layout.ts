/**
 * What the installer corrected of a file is remembered for the next file with the same headings, whoever's it is;
 * where a file has none, for the next of as many columns that are written alike.
 * It is said in a remark, any new choice goes before it, and `anew` sets it aside.
 */
import { IntakeChoices, type IntakeContext, type IntakePreview, type IntakeResult } from '../intake/intake.ts';
import type { Store } from '../store/store.ts';
import { choicesInWords } from '../words/choices.ts';
import { hashOf } from './hash.ts';
import type { OfferedFile } from './offered-files.ts';
import type { ReadEvidence } from './ports.ts';

/** What belongs to one bill, one file, one meter or one home is not remembered: it would hold for others in silence. */
const Layout = IntakeChoices.omit({
  sheet: true,
  fill: true,
  overlaps: true,
  calorificMJPerM3: true,
  pulsesPerKWh: true,
  beside: true,
  besideOf: true,
  weatherMeasured: true,
  leaveUnread: true,
  shortMonths: true,
  anew: true,
});

export interface RememberedReading {
  readonly result: IntakeResult;
  /** Under what the choices are to be remembered, and which they are; undefined for what is no table. */
  readonly layout: { readonly key: string; readonly choices: IntakeChoices } | undefined;
}

type LayoutStore = Pick<Store, 'readLayout' | 'writeLayout'>;

export async function readRemembered(
  store: LayoutStore,
  readEvidence: ReadEvidence,
  file: OfferedFile,
  chosen: IntakeChoices,
  context: IntakeContext,
  signal?: AbortSignal,
): Promise<RememberedReading> {
  const { anew, ...given } = withoutAbsent(chosen);
  const first = await readEvidence(file.fileName, file.bytes, given, context, signal);
  const key = keyOf(first.preview);
  if (key === undefined) return { result: first, layout: undefined };
  const stored = anew ? undefined : Layout.safeParse(store.readLayout(key)).data;
  if (stored === undefined) return { result: first, layout: { key, choices: given } };
  const columns = stored.columns || given.columns ? { columns: { ...stored.columns, ...given.columns } } : {};
  const choices = { ...stored, ...given, ...columns };
  const again = await readEvidence(file.fileName, file.bytes, choices, context, signal);
  const { preview } = again;
  const remark = {
    code: hasHeadings(first.preview) ? 'layout-remembered' : 'layout-remembered-bare',
    weight: 'note' as const,
    file: file.fileName,
    found: choicesInWords(stored),
  };
  return {
    result: { ...again, preview: { ...preview, remarks: [remark, ...preview.remarks] } },
    layout: { key, choices },
  };
}

/** Remembers the layout of a file that was kept; where nothing was chosen for it, forgets an earlier one. */
export function rememberLayout(store: LayoutStore, layout: RememberedReading['layout']): void {
  if (!layout) return;
  const kept = Layout.parse(layout.choices);
  const isNothing = Object.keys(kept).length === 0;
  if (isNothing && store.readLayout(layout.key) === undefined) return;
  store.writeLayout(layout.key, isNothing ? undefined : kept);
}

/** "column 1" stands where there is no heading. */
const hasHeadings = ({ columns }: IntakePreview): boolean => !columns.every((name) => /^column \d+$/.test(name));

/** Headings in their order, or how each column is written. Only tables have a choice of shapes. */
function keyOf(preview: IntakePreview): string | undefined {
  const { candidates, columns, rows } = preview;
  if (candidates.length < 2 || columns.length === 0) return undefined;
  const marks = hasHeadings(preview)
    ? columns.map((name) => name.trim().toLowerCase())
    : { written: columns.map((_, column) => commonest(rows.map(({ cells }) => writingOf(cells[column] ?? '')))) };
  return hashOf(new TextEncoder().encode(JSON.stringify(marks)));
}

/** A date as its pattern ("99/99/9999 99:99"), else whether it is a number, a word or nothing. */
function writingOf(cell: string): string {
  const text = cell.trim();
  if (text === '') return 'nothing';
  if (/^[-+]?[\d., ]+$/.test(text) && !/\d[.,]\d+[.,]\d/.test(text)) return 'number';
  return /\d.*[-/.:].*\d/.test(text) ? text.replaceAll(/\d/g, '9').replaceAll(/\b9\b/g, '99') : 'word';
}

function commonest(names: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].reduce((best, one) => (one[1] > best[1] ? one : best), ['nothing', 0] as const)[0];
}

const withoutAbsent = (choices: IntakeChoices): IntakeChoices =>
  IntakeChoices.parse(Object.fromEntries(Object.entries(choices).filter(([, value]) => value !== undefined)));
