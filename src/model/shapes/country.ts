/** The country a home stands in: climate, built-in prices, money, clock and taxes follow it; the words follow the language. */
import { z } from 'zod';

interface CountryRow {
  readonly currency: 'GBP' | 'EUR';
  readonly zone: string;
  /** Taxes on household energy, the usual one first. */
  readonly vatRates: readonly number[];
}

/** Taxes: Britain, VAT Notice 701/19; Germany, § 12 UStG, from memory. */
export const COUNTRIES = {
  GB: { currency: 'GBP', zone: 'Europe/London', vatRates: [0.05, 0.2, 0] },
  DE: { currency: 'EUR', zone: 'Europe/Berlin', vatRates: [0.19, 0.07, 0] },
} as const satisfies Readonly<Record<string, CountryRow>>;
export type Country = keyof typeof COUNTRIES;
export const Country = z.enum(Object.keys(COUNTRIES) as [Country, ...Country[]]);

/** The country whose clock a home has; undefined where it is none of these. */
export const countryOfZone = (zone: string): Country | undefined =>
  Country.options.find((country) => COUNTRIES[country].zone === zone);

/** Households from before it was asked are British. */
export const countryOf = ({ country }: { readonly country?: Country | undefined }): Country => country ?? 'GB';
export const currencyOf = (household: { readonly country?: Country | undefined }) =>
  COUNTRIES[countryOf(household)].currency;
