/** What the next years may bring: the shapes. `reckonLifetime()` fills them. Money in pence of today. */
import { z } from 'zod';
import { Figure, SystemResult } from './appraisal.ts';
import { Working, WorkingInput } from './working.ts';

/** An input as it was settled on, with the line that a working shows of it. */
const Settled = z.object({ value: z.number(), line: WorkingInput });

export const LifetimeInputs = z.object({
  years: Settled,
  discount: Settled,
  electricityGrowth: Settled,
  fuelGrowth: Settled,
  growthSpread: Settled,
  pumpLife: Settled,
  replacementLife: Settled,
  presentYearsLeft: Settled,
});
export type LifetimeInputs = z.infer<typeof LifetimeInputs>;

/**
 * A figure with its 50 % point besides: `value` is reckoned with every input at its middle, so that its parts add up, and
 * lies within 6 % of the width of the range of `middle`, which a test holds.
 */
export const LifetimeFigure = Figure.extend({ middle: z.number() });
export type LifetimeFigure = z.infer<typeof LifetimeFigure>;

/** What has been paid by the end of a year, with the 10, 50 and 90 % points. */
export const YearPoint = z.object({
  year: z.int(),
  value: z.number(),
  low: z.number(),
  middle: z.number(),
  high: z.number(),
  /** Paid for equipment at the end of this year, contained in the figures above. */
  outlay: z.number(),
});
export type YearPoint = z.infer<typeof YearPoint>;

/** Years until a purchase is brought back. Null stands for: not within the years looked ahead. */
export const Payback = z.object({
  years: z.number().nullable(),
  low: z.number().nullable(),
  middle: z.number().nullable(),
  high: z.number().nullable(),
  /** Share of the futures in which it is brought back within the years, 0 to 1. */
  chance: z.number(),
  working: Working,
});
export type Payback = z.infer<typeof Payback>;

/** What was not given or had to be taken, to be said beside the figures. */
export const LifetimeNote = z.enum([
  'no-purchase',
  'no-grant',
  'no-replacement',
  'grant-above-price',
  'present-due-now',
  'renewal-at-full-price',
]);
export type LifetimeNote = z.infer<typeof LifetimeNote>;

/** The price of putting it in, less the grant, in level instalments. */
export const Instalments = z.object({
  years: z.int(),
  /** Interest a year, 0.05 for 5 %; 0 where none was given. */
  perYear: z.number(),
  /** Pence a month. */
  pence: z.number(),
  working: Working,
});
export type Instalments = z.infer<typeof Instalments>;

export const Lifetime = z.object({
  /** `running` where the price of the heat pump was not given: then nothing is counted but running costs. */
  kind: z.enum(['whole', 'running']),
  years: z.int(),
  pumpSource: z.enum(['ground', 'air']),
  against: SystemResult.pick({ id: true, kind: true }),
  pump: z.array(YearPoint),
  beside: z.array(YearPoint),
  /** What the heat pump has saved in all by the end of the years; positive means that it has cost less. */
  saved: LifetimeFigure,
  /** Share of the futures in which it has cost less in all by the end, 0 to 1; the same counts half. */
  chanceLess: z.number(),
  payback: z.object({ simple: Payback, discounted: Payback }).nullable(),
  /** Years after which it falls behind, where it cost less before; null where it does not. */
  fallsBehind: z.number().nullable(),
  netPresentValue: LifetimeFigure.nullable(),
  /** All that is paid, less the worth of the life that is left at the end, as one level amount a year. */
  annual: z.object({ pump: LifetimeFigure, beside: LifetimeFigure }).nullable(),
  /** Absent where no price was given, and in what was kept before it was reckoned. */
  instalments: Instalments.optional(),
  inputs: LifetimeInputs,
  notes: z.array(LifetimeNote),
});
export type Lifetime = z.infer<typeof Lifetime>;

/** Whether the years to come may stand as a page: once price and grant are typed; before that they are a working. */
export const mayLead = ({ kind, notes }: Pick<Lifetime, 'kind' | 'notes'>): boolean =>
  kind === 'whole' && !notes.includes('no-grant');
