import { z } from 'zod';

/** A code that is kept: one of those known here, or one of another version, of which `words` says just that. */
export const codeOf = <T extends string>(): z.ZodType<T> => z.string() as unknown as z.ZodType<T>;
