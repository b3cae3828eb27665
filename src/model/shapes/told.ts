/**
 * What the model tells: a code and the values of its gaps, no sentence. English and German are made of it in `words`,
 * numbers and all, so that what is kept can be said in any language later on.
 */
import { z } from 'zod';
import { codeOf } from './code.ts';
import { CivilDate } from './dates.ts';
import type { ToldBill } from './told-bill.ts';
import type { ToldCost } from './told-cost.ts';
import type { ToldFinding } from './told-finding.ts';
import type { ToldHeat } from './told-heat.ts';
import type { ToldIntake } from './told-intake.ts';
import type { ToldMachine } from './told-machine.ts';
import type { ToldRound } from './told-round.ts';
import type { ToldUnit } from './told-unit.ts';

/** Every code with its gaps: numbers, words (told or somebody's own), a day, months or a list; `null` where it has none. */
export interface Gaps extends ToldHeat, ToldMachine, ToldRound, ToldCost, ToldBill, ToldFinding, ToldUnit, ToldIntake {}
export type ToldCode = keyof Gaps;

/** The months that hold both days. */
export const Months = z.object({ from: CivilDate, to: CivilDate });
export type Months = Readonly<z.infer<typeof Months>>;
export const Day = z.object({ on: CivilDate });
export type Day = Readonly<z.infer<typeof Day>>;
export type ToldValue = number | Wording | Day | Months | readonly Told[];
export interface Told {
  readonly code: ToldCode;
  readonly data?: Readonly<Record<string, ToldValue>>;
}
/** What the model tells, or a text of somebody else: typed, the name of a publication, or kept before there were codes. */
export type Wording = Told | string;

type Filled<G> = {
  readonly [N in keyof G]: G[N] extends number
    ? number
    : G[N] extends 'list'
      ? readonly Told[]
      : G[N] extends 'months'
        ? Months
        : G[N] extends 'day'
          ? Day
          : Wording;
};

export function tell<C extends ToldCode>(code: C, ...data: Gaps[C] extends null ? [] : [Filled<Gaps[C]>]): Told {
  return data.length === 0 ? { code } : { code, data: data[0] };
}

export const isCode = (wording: Wording, code: ToldCode): boolean =>
  typeof wording !== 'string' && wording.code === code;

export const Told: z.ZodType<Told> = z.lazy(() =>
  z.object({
    code: codeOf<ToldCode>(),
    data: z.record(z.string(), z.union([z.number(), Wording, Day, Months, z.array(Told)])).optional(),
  }),
);
export const Wording: z.ZodType<Wording> = z.lazy(() => z.union([z.string(), Told]));
