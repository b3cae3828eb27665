/**
 * A section of the household as a person may write it by hand: a plain value may stand where the document keeps
 * a value with grade and origin, and unknown field names are refused, since a misspelt field would be left out in silence.
 */
import { z } from 'zod';
import type { Given } from '../model/shapes/household.ts';
import { Grade } from '../model/shapes/working.ts';
import { phrase } from '../words/say.ts';

/** Origin of a value that the file gives without saying where it is from. */
export const WRITTEN = phrase('written in the household file');

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
  return z.strictObject(shape) as unknown as z.ZodType<Partial<Loose<z.output<S>>>>;
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
