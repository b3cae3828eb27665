import type { Appraisal } from '../../model/shapes/appraisal.ts';

export type Reckoned =
  | { readonly appraisal: Appraisal; readonly failure: '' }
  | { readonly appraisal: null; readonly failure: string };

/** Runs the model; a fault of ours becomes a sentence instead of a blank window. */
export function reckon(run: () => Appraisal): Reckoned {
  try {
    return { appraisal: run(), failure: '' };
  } catch (reason) {
    console.error(reason);
    return { appraisal: null, failure: reason instanceof Error ? reason.message : String(reason) };
  }
}
