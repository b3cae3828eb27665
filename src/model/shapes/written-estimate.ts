/** A written estimate: a frozen snapshot of what was handed over. It is written once and never changed. */
import { z } from 'zod';
import { Appraisal } from './appraisal.ts';
import { FileAccount, Series } from './evidence.ts';
import { Household } from './household.ts';
import { Lifetime } from './lifetime.ts';
import { OfferResult } from './offer-result.ts';
import { TariffChoice } from './tariff-choice.ts';

export const WrittenEstimate = z.object({
  id: z.string(),
  /** Counts up within one installation, from 1. */
  number: z.int(),
  householdId: z.string(),
  madeOn: z.iso.datetime(),
  note: z.string(),
  /** Money of all its amounts; pounds where it is absent. */
  currency: z.enum(['GBP', 'EUR', 'USD']).optional(),
  household: Household,
  evidence: z.array(Series),
  /** What each column and record of its files was used for; absent in estimates from before it was kept with them. */
  files: z.array(FileAccount).optional(),
  appraisal: Appraisal,
  /** What the next years may bring, as reckoned on that day; absent in estimates from before it was kept with them. */
  lifetime: Lifetime.optional(),
  /** All offers as reckoned on that day, where there were several; which of them this is stands in `household.offer`. */
  offers: z.array(OfferResult).optional(),
  /** What the household can choose, as worked out on that day; absent where it has nothing to choose, and in older estimates. */
  tariffs: TariffChoice.optional(),
});
export type WrittenEstimate = z.infer<typeof WrittenEstimate>;
