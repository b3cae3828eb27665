/** Progress of work in stages: the share of the whole only ever grows, and each stage has its part of it. */

export type Progress = (share: number) => void;

/** A stage that takes the whole from one share to another. */
export const stageOf =
  (whole: Progress | undefined, from: number, to: number): Progress =>
  (share) =>
    whole?.(from + (to - from) * Math.min(1, share));

/** Rows between two looks at the clock of others: about five milliseconds of reading. */
export const ROWS_A_STEP = 0x4000;
