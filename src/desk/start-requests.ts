/**
 * What goes into the requests that a start makes, and the settings that it reads: apart from the rest of the contract,
 * whose schemas take longer to make than a start takes to be answered.
 */
import { z } from 'zod';
import { Country } from '../model/shapes/country.ts';
import { CURRENCIES, LANGUAGES } from '../words/say.ts';

export const Id = z.string().min(1).max(64);
export const Nothing = z.object({});

export const Settings = z.object({
  installerName: z.string().max(120).default(''),
  installerContact: z.string().max(400).default(''),
  theme: z.enum(['as the system', 'light', 'dark']).default('as the system'),
  paper: z.enum(['A4', 'Letter']).default('A4'),
  language: z.enum(LANGUAGES).default('en-GB'),
  /** Country of new households. */
  country: Country.default('GB'),
  /** Money from before a household had a country; one that has none stands where this money was paid. */
  currency: z.enum(CURRENCIES).optional(),
  /** The installer's own logo, a PNG or JPEG as a data address; empty for none. Its bytes are checked when it is written. */
  logo: z.string().default(''),
});
export type Settings = z.infer<typeof Settings>;

export const startInputs = {
  'app.read': Nothing,
  'data.read': Nothing,
  'values.read': Nothing,
  'settings.read': Nothing,
  'household.list': z.object({ find: z.string().max(200).optional(), archived: z.boolean().optional() }),
  'household.open': z.object({ id: Id }),
} as const;
