import { z } from 'zod';

/** A point of the data sheet, such as B0/W35 or A7/W35: source in, water out (EN 14511). */
export const RatedPoint = z.object({
  sourceC: z.number().min(-30).max(40),
  flowC: z.number().min(20).max(80),
  cop: z.number().min(1).max(12),
  /** Heat output at that point, kW. */
  outputKW: z.number().positive().max(200).optional(),
});
export type RatedPoint = z.infer<typeof RatedPoint>;
