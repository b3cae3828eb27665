/** Changes of a household's roof, battery and car, and what stands in their empty fields. */
import type { Household } from '../../model/shapes/household.ts';
import type { Value } from '../../model/shapes/reference.ts';
import { sayTold } from '../../words/say-told.ts';
import type { Fallback } from '../shared/given.ts';
import { formatPlain } from '../shared/number-text.ts';

export const PER_CENT = 100;

/** A field set to undefined is taken out, since absent is not zero. */
export const withField = <T extends object>(part: T, field: Partial<{ [K in keyof T]: T[K] | undefined }>): T =>
  Object.fromEntries(Object.entries({ ...part, ...field }).filter(([, value]) => value !== undefined)) as T;

/** The household with its roof, battery or car as it is now. */
export const putEquipment =
  (part: Partial<{ [P in 'roof' | 'battery' | 'car']: Household[P] | undefined }>) =>
  (household: Household): Household =>
    withField<Household>(household, part);

/** What holds while a field is empty, in the unit of the field. */
export const usual = ({ value, source, provenance }: Value, scale = 1): Fallback => ({
  text: formatPlain(Number((value * scale).toPrecision(6))),
  source: `${sayTold(source)} (${provenance})`,
});
