/** What is kept and what is handed out, without whom its files are of. */
import { foundWithoutPeople, namesWithoutPeople, withoutPeople } from '../intake/layout/without-people.ts';
import type { Evidence, FileAccount, Remark, Series } from '../model/shapes/evidence.ts';
import type { WholeHousehold } from './household-file.ts';

/** A remark repeats titles, footers and cells of the file. */
const ofRemark = (remark: Remark): Remark => ({
  ...remark,
  file: withoutPeople(remark.file),
  ...(remark.column === undefined ? {} : { column: withoutPeople(remark.column) }),
  ...(remark.found === undefined ? {} : { found: foundWithoutPeople(remark.found) }),
  ...(remark.expected === undefined ? {} : { expected: foundWithoutPeople(remark.expected) }),
  ...(remark.foundTold === undefined ? {} : { foundTold: eachText(remark.foundTold, foundWithoutPeople) }),
  ...(remark.expectedTold === undefined ? {} : { expectedTold: eachText(remark.expectedTold, foundWithoutPeople) }),
});

const named = <T extends { readonly name: string }>(one: T): T => ({ ...one, name: withoutPeople(one.name) });

/** Records whose names differ by people alone stay apart. */
function apart(series: readonly Series[]): Series[] {
  const all = [...new Set(series.map(({ name }) => name))];
  const own = namesWithoutPeople(all);
  return series.map((one) => ({ ...one, name: own[all.indexOf(one.name)]! }));
}

/** What was typed at the table stays as it was typed. */
export const evidenceWithoutPeople = (evidence: Evidence): Evidence =>
  evidence.shape === 'typed'
    ? evidence
    : {
        ...evidence,
        fileName: withoutPeople(evidence.fileName),
        ...(evidence.part?.sheet === undefined
          ? {}
          : { part: { ...evidence.part, sheet: withoutPeople(evidence.part.sheet) } }),
        ...(evidence.columns ? { columns: evidence.columns.map(named) } : {}),
        series: apart(evidence.series),
        remarks: evidence.remarks.map(ofRemark),
      };

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
