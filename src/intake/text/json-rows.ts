/** A list of records in JSON as lines of a table: one line a record, one column a name. */

const MOST_NAMES = 60;
type Value = string | number | boolean | null;
type Row = Readonly<Record<string, Value>>;

/** Undefined where the text is no JSON, or holds no list of plain records. */
export function linesOfJson(text: string): string | undefined {
  if (!/^\s*[[{]/.test(text)) return undefined;
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    return undefined;
  }
  const found = findRows(parsed);
  if (!found) return undefined;
  const names = [...new Set(found.rows.flatMap((row) => Object.keys(row)))];
  if (names.length > MOST_NAMES) return undefined;
  const write = (value: Value | undefined) => String(value ?? '').replaceAll(/[\t\r\n"]/g, ' ');
  const titles = found.titles.map(([name, value]) => `${write(name)}: ${write(value)}`);
  const rows = found.rows.map((row) => names.map((name) => write(row[name])).join('\t'));
  return `${[...titles, names.map(write).join('\t'), ...rows].join('\n')}\n`;
}

const isPlain = (value: unknown): value is Value =>
  value === null || ['string', 'number', 'boolean'].includes(typeof value);
const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isRow = (value: unknown): value is Row => isObject(value) && Object.values(value).every(isPlain);

/** The one list of records, with the plain values beside it as titles; two lists in one file say nothing of which. */
function findRows(value: unknown): { rows: readonly Row[]; titles: readonly (readonly [string, Value])[] } | undefined {
  if (Array.isArray(value)) return value.length > 1 && value.every(isRow) ? { rows: value, titles: [] } : undefined;
  if (!isObject(value)) return undefined;
  const inner = Object.values(value).flatMap((one) => findRows(one) ?? []);
  if (inner.length !== 1) return undefined;
  const own = Object.entries(value).flatMap(([name, one]) => (isPlain(one) ? [[name, one] as const] : []));
  return { rows: inner[0]!.rows, titles: [...own, ...inner[0]!.titles] };
}
