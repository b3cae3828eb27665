/** Brine by visit, as it came in and went out, and where it would freeze. */
import type { BrineCourse } from '../../model/site-readings/brine-course.ts';

export type BrineSeries = BrineCourse;

/** More visits than this are hard to tell apart; the table holds them all. */
const VISITS_IN_PICTURE = 12;
export const shownReadings = ({ readings }: BrineSeries) => readings.slice(-VISITS_IN_PICTURE);
