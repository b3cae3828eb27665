/** What a tariff file leaves to the home that it is for: the coin of its prices, and the tax in them. */
import { COUNTRIES } from '../../model/shapes/country.ts';
import type { IntakeContext } from '../terms/choices.ts';
import { UNITS_OF } from '../terms/money-words.ts';

export type TariffContext = Pick<IntakeContext, 'zone' | 'money'>;

/** "p" or "ct". */
export const coinOf = ({ money = '£' }: TariffContext): string => UNITS_OF[money][1];

/** The usual tax on household energy where that money is paid. */
export const usualVatRate = ({ money }: TariffContext): number => COUNTRIES[money === '€' ? 'DE' : 'GB'].vatRates[0];
