/**
 * What the installer corrected of a file is remembered for the next file with the same headings, whoever's it is.
 * It is said in a remark, any new choice goes before it, and `anew` sets it aside.
 */
import { IntakeChoices, type IntakeContext, type IntakePreview, type IntakeResult } from '../intake/intake.ts';
import { readFile } from '../intake/read-file.ts';
import type { Store } from '../store/store.ts';
import { choicesInWords } from '../words/choices.ts';
import { hashOf } from './hash.ts';
import type { OfferedFile } from './offered-files.ts';

/** A calorific value belongs to one bill, a filled gap and a sheet's name to one file, so none of them is remembered. */
const Layout = IntakeChoices.omit({ sheet: true, fill: true, calorificMJPerM3: true, anew: true });

export interface RememberedReading {
  readonly result: IntakeResult;
  /** Under what the choices are to be remembered, and which they are; without headings a file cannot be told again. */
  readonly layout: { readonly key: string; readonly choices: IntakeChoices } | undefined;
}

type LayoutStore = Pick<Store, 'readLayout' | 'writeLayout'>;

export function readRemembered(
  store: LayoutStore,
  file: OfferedFile,
  chosen: IntakeChoices,
  context: IntakeContext,
): RememberedReading {
  const { anew, ...given } = withoutAbsent(chosen);
  const first = readFile(file.fileName, file.bytes, given, context);
  const key = keyOf(first.preview);
  if (key === undefined) return { result: first, layout: undefined };
  const stored = anew ? undefined : Layout.safeParse(store.readLayout(key)).data;
  if (stored === undefined) return { result: first, layout: { key, choices: given } };
  const columns = stored.columns || given.columns ? { columns: { ...stored.columns, ...given.columns } } : {};
  const choices = { ...stored, ...given, ...columns };
  const { preview, intervals } = readFile(file.fileName, file.bytes, choices, context);
  const remark = {
    code: 'layout-remembered',
    weight: 'note' as const,
    file: file.fileName,
    found: choicesInWords(stored),
  };
  return {
    result: { preview: { ...preview, remarks: [remark, ...preview.remarks] }, intervals },
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

/** Headings in their order. Only tables have a choice of shapes; "column 1" stands where there is no heading. */
function keyOf({ candidates, columns }: IntakePreview): string | undefined {
  if (candidates.length < 2 || columns.every((name) => /^column \d+$/.test(name))) return undefined;
  const headings = columns.map((name) => name.trim().toLowerCase());
  return hashOf(new TextEncoder().encode(JSON.stringify(headings)));
}

const withoutAbsent = (choices: IntakeChoices): IntakeChoices =>
  IntakeChoices.parse(Object.fromEntries(Object.entries(choices).filter(([, value]) => value !== undefined)));
