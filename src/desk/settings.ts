import type { Country } from '../model/shapes/country.ts';
import type { Household } from '../model/shapes/household.ts';
import type { Store } from '../store/store.ts';
import { catalogueOf } from '../words/catalogues.ts';
import { speak } from '../words/say.ts';
import { Settings } from './start-requests.ts';

/** The installer's settings; what was never set, or can no longer be read, has its default. */
export function readSettings(store: Store): Settings {
  const kept = { ...((store.readSettings() ?? {}) as Partial<Settings>) };
  const stored = Settings.safeParse({ country: countryOfMoney(kept.currency), ...kept });
  return stored.success ? stored.data : Settings.parse({});
}

/** Where a household stands that was kept before it was asked: money was of all households then. */
const countryOfMoney = (currency: Settings['currency']): Country => (currency === 'EUR' ? 'DE' : 'GB');

export const withCountry = (household: Household, store: Store): Household =>
  household.country ? household : { ...household, country: countryOfMoney(readSettings(store).currency) };

/** Sentences that the desk writes, refusals and documents, are in the installer's language. */
export async function speakAsSet({ language }: Settings): Promise<void> {
  speak({ language, currency: 'GBP' }, await catalogueOf(language));
}
