import { z } from 'zod';
import { Wording } from './told.ts';
import { Grade } from './working.ts';

/** A value somebody gave, with how far it can be trusted and where it came from. */
export const given = <T extends z.ZodType>(value: T) => z.object({ value, grade: Grade, origin: Wording });
export interface Given<T> {
  value: T;
  grade: Grade;
  origin: Wording;
}
