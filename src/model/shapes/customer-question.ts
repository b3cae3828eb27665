/** What customers ask before they buy, in the order in which it is listed. */
import type { Country } from './country.ts';
import type { CivilDate } from './dates.ts';

export const QUESTION_IDS = [
  'warm',
  'radiators',
  'hot-water',
  'water-safe',
  'noise',
  'power-cut',
  'grant',
  'lasting',
  'service',
  'garden',
  'permission',
  'gas-hob',
  'stove',
  'solar',
  'car',
  'away',
  'minus-ten',
  'value',
  'cancel',
  'complain',
  'dearer',
] as const;
export type QuestionId = (typeof QUESTION_IDS)[number];

/** What an answer rests on outside the home: its source, the day it was looked up, and after how many days it is old (null: never). */
export interface CustomerFact {
  readonly source: string;
  readonly on: CivilDate;
  readonly provenance: 'read' | 'memory' | 'computed';
  readonly oldAfterDays: number | null;
  readonly values?: Readonly<Record<string, number>>;
}
export type CustomerFacts = Readonly<Record<QuestionId, CustomerFact>>;
export type FactsByCountry = Readonly<Record<Country, CustomerFacts>>;
