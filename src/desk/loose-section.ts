/**
 * A section of the household as a person may write it by hand: a plain value may stand where the document keeps
 * a value with grade and origin, and unknown field names are refused, since a misspelt field would be left out in silence.
 */
import { z } from 'zod';
import type { Given } from '../model/shapes/household.ts';
import { Grade } from '../model/shapes/working.ts';
import { phrase } from '../words/say.ts';

/** Origin of a value that the file gives without saying where it is from. */
const WRITTEN = phrase('written in the household file');

export type Loose<T> = {
  [K in keyof T]: NonNullable<T[K]> extends Given<infer V> ? T[K] | V | Partial<Given<V>> : T[K];
};

const unwrap = (schema: z.ZodType): z.ZodType =>
  schema instanceof z.ZodOptional ? (schema.unwrap() as z.ZodType) : schema;

/** The schema of the bare value, where `schema` is a value with grade and origin; otherwise undefined. */
function bareValue(schema: z.ZodType): z.ZodType | undefined {
  const inner = unwrap(schema);
  if (!(inner instanceof z.ZodObject)) return undefined;
  const shape: z.ZodRawShape = inner.shape;
  return shape.value && shape.grade && shape.origin ? (shape.value as z.ZodType) : undefined;
}

/** The section with every field optional and plain values allowed. */
export function loosen<S extends z.ZodObject>(section: S): z.ZodType<Partial<Loose<z.output<S>>>> {
  const shape: Record<string, z.ZodType> = {};
  for (const [name, field] of Object.entries(section.shape as z.ZodRawShape)) {
    const value = bareValue(field as z.ZodType);
    shape[name] = value
      ? z.union([value, z.strictObject({ value, grade: Grade.optional(), origin: z.string().optional() })]).optional()
      : unwrap(field as z.ZodType).optional();
  }
  return strictly(z.object(shape)) as unknown as z.ZodType<Partial<Loose<z.output<S>>>>;
}

/** Puts grade and origin beside every plain value, as the document keeps it. */
export function tighten(section: z.ZodObject, written: object): Record<string, unknown> {
  const tight: Record<string, unknown> = {};
  for (const [name, field] of Object.entries(section.shape as z.ZodRawShape)) {
    const found = (written as Record<string, unknown>)[name];
    if (found === undefined) continue;
    if (!bareValue(field as z.ZodType)) tight[name] = found;
    else if (typeof found === 'object') tight[name] = { grade: 'estimated', origin: WRITTEN, ...found };
    else tight[name] = { value: found, grade: 'estimated', origin: WRITTEN };
  }
  return tight;
}

/** How a complaint about an unknown field carries the known one that is spelt most like it. */
export const NEAREST = 'nearest: ';

/** One strict form of each schema: what holds itself would never end, and what is used twice is published once. */
const strictForms = new WeakMap<z.ZodType, z.ZodType>();

/** The schema with every object in it, however deep, refusing fields that it does not know. */
export function strictly<S extends z.ZodType>(schema: S): S {
  const strict = strictForms.get(schema) ?? makeStrict(schema);
  strictForms.set(schema, strict);
  return strict as S;
}

function makeStrict(schema: z.ZodType): z.ZodType {
  const inside = (part: unknown) => strictly(part as z.ZodType);
  const again = (def: object) => z.core.clone(schema, { ...schema.def, ...def } as z.ZodType['_zod']['def']);
  if (schema instanceof z.ZodObject) {
    const known = Object.keys(schema.shape);
    const shape = Object.fromEntries(known.map((name) => [name, inside(schema.shape[name])]));
    const error: z.core.$ZodErrorMap = (issue) =>
      issue.code === 'unrecognized_keys' ? `${NEAREST}${nearestOf(issue.keys[0]!, known)}` : undefined;
    return again({ shape, catchall: z.never(), error });
  }
  if (schema instanceof z.ZodLazy) return z.lazy(() => inside(schema.unwrap()));
  if (schema instanceof z.ZodRecord) return again({ valueType: inside(schema.valueType) });
  if (schema instanceof z.ZodArray) return again({ element: inside(schema.element) });
  if (schema instanceof z.ZodUnion) return again({ options: schema.options.map(inside) });
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodNullable || schema instanceof z.ZodDefault)
    return again({ innerType: inside(schema.def.innerType) });
  return schema;
}

/** The name that needs the fewest letters changed; none where more than half of it would. */
function nearestOf(typed: string, known: readonly string[]): string {
  const [best] = known
    .map((name) => ({ name, changes: changesBetween(typed.toLowerCase(), name.toLowerCase()) }))
    .sort((a, b) => a.changes - b.changes);
  return best && best.changes <= Math.max(typed.length, best.name.length) / 2 ? best.name : '';
}

/** Letters to be put in, taken out or exchanged between two words: Levenshtein's distance, row by row. */
function changesBetween(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let k = 1; k <= b.length; k++) {
      const exchanged = row[k - 1]! + Number(a[i - 1] !== b[k - 1]);
      next.push(Math.min(exchanged, row[k]! + 1, next[k - 1]! + 1));
    }
    row = next;
  }
  return row[b.length]!;
}
