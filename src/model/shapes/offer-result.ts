/** What one offer among several comes to: shape only; `reckonOffers()` fills it. Money in pence. */
import { z } from 'zod';

export const OfferResult = z.object({
  id: z.string(),
  name: z.string(),
  source: z.enum(['ground', 'air']),
  /** Flow temperature on the coldest day, °C. */
  flowC: z.number(),
  /** Whole-house seasonal factor, in the middle of what homes get. */
  wholeFactor: z.number(),
  /** A year of heating and hot water, with its 10 and 90 % points. */
  yearPence: z.number(),
  lowPence: z.number(),
  highPence: z.number(),
  /** To put in, and what a grant pays of it; absent where nobody typed it. */
  pricePence: z.number().optional(),
  grantPence: z.number().optional(),
});
export type OfferResult = z.infer<typeof OfferResult>;
