/** Making and marking given values: what is typed is estimated until the installer says that it was measured. */

import type { CivilDate } from '../../model/shapes/dates.ts';
import type { Given } from '../../model/shapes/household.ts';
import { type Told, tell } from '../../model/shapes/told.ts';
import type { Grade } from '../../model/shapes/working.ts';

const typedOrigin = (today: CivilDate): Told => tell('typed-on', { on: { on: today } });

/** A typed value; an earlier grade stays, since correcting a digit does not make a reading less of a reading. */
export function typeGiven<T>(value: T, before: Given<T> | undefined, today: CivilDate): Given<T> {
  return { value, grade: before?.grade ?? 'estimated', origin: typedOrigin(today) };
}

export function regrade<T>(given: Given<T>, grade: Grade): Given<T> {
  return { ...given, grade };
}

/** What holds while a field is empty, and where it comes from. */
export interface Fallback {
  readonly text: string;
  readonly source: string;
}

/** A source cut to its first clause, for the line under a field; the working has the whole of it. */
export function shortSource(source: string): string {
  const first = source
    .split(/[;(]|, codes? /)[0]!
    .trim()
    .replace(/[.,]$/, '')
    .replace(/^assumed, /, '');
  return `${first}.`;
}

/** An origin as a sentence of its own. */
export const sentenceOf = (origin: string): string =>
  origin === '' ? '' : `${origin.charAt(0).toUpperCase()}${origin.slice(1).replace(/\.$/, '')}.`;
