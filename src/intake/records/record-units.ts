/** Units and marks of the open market format. */
export const KWH: Readonly<Record<string, number>> = { WH: 0.001, KWH: 1, MWH: 1000 };
/** Substituted and estimated by whatever method; A is actual, V is said by rows 400, N is none. */
export const ESTIMATED = /^[SFE]/i;
