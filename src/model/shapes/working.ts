/**
 * A sum comes back with its steps: the shapes in which the model hands over a figure
 * together with what it rests on.
 */
import { z } from 'zod';
import { Wording } from './told.ts';

/** How far a value can be trusted: read off a meter, worked out from something, or taken from a table. */
export const Grade = z.enum(['measured', 'estimated', 'assumed']);
export type Grade = z.infer<typeof Grade>;

/** One input of a sum. `origin` says where it came from: file and row, typed by whom and when, or table and edition. */
export const WorkingInput = z.object({
  name: Wording,
  value: z.union([z.number(), Wording]),
  unit: Wording.optional(),
  grade: Grade,
  origin: Wording,
});
export type WorkingInput = z.infer<typeof WorkingInput>;

/** The sum behind one figure: formula in words, inputs, result, source, and the sums its inputs come from. */
export interface Working {
  readonly title: Wording;
  readonly formula: Wording;
  readonly inputs: readonly WorkingInput[];
  readonly result: { readonly value: number; readonly unit: Wording };
  readonly source?: Wording;
  readonly steps?: readonly Working[];
}
export const Working: z.ZodType<Working> = z.lazy(() =>
  z.object({
    title: Wording,
    formula: Wording,
    inputs: z.array(WorkingInput),
    result: z.object({ value: z.number(), unit: Wording }),
    source: Wording.optional(),
    steps: z.array(Working).optional(),
  }),
);

/** The weakest grade among those given: a sum is only as good as its worst input. */
export function weakestGrade(grades: readonly Grade[]): Grade {
  if (grades.includes('assumed')) return 'assumed';
  if (grades.includes('estimated')) return 'estimated';
  return 'measured';
}
