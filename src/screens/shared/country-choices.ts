import type { Country } from '../../model/shapes/country.ts';
import { phrase } from '../../words/say.ts';
import type { Choice } from './choice-field.tsx';

export const COUNTRY_CHOICES: readonly Choice<Country>[] = [
  { value: 'GB', label: phrase('Britain') },
  { value: 'DE', label: phrase('Germany') },
];
