/** What is kept and what is handed out, without whom its files are of. */
import type { IntakePreview } from '../intake/intake.ts';
import { foundWithoutPeople, recordsWithoutPeople, withoutPeople } from '../intake/layout/without-people.ts';
import type { BillCheck } from '../model/shapes/bill-check.ts';
import type { Evidence, FileAccount, Remark, Series } from '../model/shapes/evidence.ts';
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import type { Store } from '../store/store.ts';
import type { WholeHousehold } from './household-file.ts';

/** A remark repeats titles, footers and cells of the file. `people` are words that the file shows to be somebody's. */
export function remarkWithoutPeople(remark: Remark, people: readonly string[] = []): Remark {
  const { file, column, found, expected, foundTold, expectedTold } = remark;
  const own = (text: string) => foundWithoutPeople(text, people);
  return {
    ...remark,
    file: withoutPeople(file, people),
    ...(column === undefined ? {} : { column: withoutPeople(column, people) }),
    ...(found === undefined ? {} : { found: own(found) }),
    ...(expected === undefined ? {} : { expected: own(expected) }),
    ...(foundTold === undefined ? {} : { foundTold: eachText(foundTold, own) }),
    ...(expectedTold === undefined ? {} : { expectedTold: eachText(expectedTold, own) }),
  };
}

/** What was typed at the table stays as it was typed. */
export function evidenceWithoutPeople(evidence: Evidence, people: readonly string[] = []): Evidence {
  const { shape, fileName, part, columns, series, remarks } = evidence;
  if (shape === 'typed') return evidence;
  return {
    ...evidence,
    fileName: withoutPeople(fileName, people),
    ...(part?.sheet === undefined ? {} : { part: { ...part, sheet: withoutPeople(part.sheet, people) } }),
    ...(columns ? { columns: columns.map((one) => ({ ...one, name: withoutPeople(one.name, people) })) } : {}),
    series: recordsWithoutPeople(series, people),
    remarks: remarks.map((one) => remarkWithoutPeople(one, people)),
  };
}

/** What was understood of a file, as it is printed. */
export function previewWithoutPeople(preview: IntakePreview, people: readonly string[] = []): IntakePreview {
  const cell = (text: string) => foundWithoutPeople(text, people);
  return {
    ...preview,
    fileName: withoutPeople(preview.fileName, people),
    columns: preview.columns.map((name) => withoutPeople(name, people)),
    rows: preview.rows.map((row) => ({ ...row, cells: row.cells.map(cell) })),
    remarks: preview.remarks.map((one) => remarkWithoutPeople(one, people)),
  };
}

/** Kept by an earlier version, texts of files may name people, and what was estimated from them repeats those texts. */
export function householdWithoutPeople(whole: WholeHousehold): WholeHousehold {
  const { household, evidence, estimates, checks } = whole;
  const imports = evidence.map((one) => one.import);
  const typed = new Set(
    imports.filter(({ shape }) => shape === 'typed').flatMap((one) => [one.fileName, ...one.series.map(nameOf)]),
  );
  const texts = [
    ...imports.flatMap((one) => [one.fileName, ...(one.columns ?? []).map(nameOf), ...one.series.map(nameOf)]),
    ...estimates.flatMap((one) => [...one.evidence.map(nameOf), ...(one.files ?? []).flatMap(textsOfFile)]),
  ].filter((text) => !typed.has(text) && withoutPeople(text) !== text);
  const known = [...new Set(texts)].toSorted((a, b) => b.length - a.length);
  const mask = (text: string) => known.reduce((own, one) => own.replaceAll(one, withoutPeople(one)), text);
  const masked = <T>(value: T): T => (known.length === 0 ? value : eachText(value, mask));
  return {
    household,
    evidence: evidence.map((one) => ({ ...one, import: evidenceWithoutPeople(one.import) })),
    estimates: estimates.map((one) => ({ ...masked(one), household: one.household })),
    checks: checks.map(masked),
  };
}

/** An estimate and what was checked against it as they are printed: as they would leave with their household. */
export function printedWithoutPeople(
  store: Pick<Store, 'listEvidence'>,
  estimate: WrittenEstimate,
  checks: readonly BillCheck[] = [],
): Pick<WholeHousehold, 'estimates' | 'checks'> {
  const imports = store.listEvidence(estimate.householdId, () => undefined);
  const evidence = imports.map((one) => ({ import: one, rawFile: null, intervals: [] }));
  return householdWithoutPeople({ household: estimate.household, evidence, estimates: [estimate], checks });
}

const nameOf = ({ name }: Pick<Series, 'name'>): string => name;
const textsOfFile = ({ fileName, columns = [], records }: FileAccount): string[] => [
  fileName,
  ...columns.map(nameOf),
  ...records.map(nameOf),
];

/** The same value with each text in it, keys aside, as `change` makes it. */
function eachText<T>(value: T, change: (text: string) => string): T {
  const walk = (one: unknown): unknown => {
    if (typeof one === 'string') return change(one);
    if (Array.isArray(one)) return one.map(walk);
    if (typeof one !== 'object' || one === null) return one;
    return Object.fromEntries(Object.entries(one).map(([key, own]) => [key, key === 'code' ? own : walk(own)]));
  };
  return walk(value) as T;
}
