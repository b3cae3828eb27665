/** Relative standard deviations that the ranges rest on. */
import type { Reference, Value } from '../model/reference.ts';
import { priceSpread } from '../model/tariff/price-spread.ts';
import { quarters } from './prices.ts';

/** Of the mean price of the next twelve months about the price of the day. */
const prices = priceSpread(quarters);

const fromQuarters = (value: number, unit: string): Value => ({
  value,
  unit,
  source: `built-in price quarters from October 2023 on: mean of the next four over the one before, ${prices.count} overlapping cases`,
  provenance: 'computed',
});

export const spread: Reference['spread'] = {
  winter: {
    value: 0.08,
    unit: 'relative standard deviation',
    source: 'degree days of single British heating seasons about their twenty-year mean, about 8 %',
    provenance: 'memory',
  },
  // Two years of one home differed by 12 % in the same weather. The difference of two years is √2 times as wide as one
  // year about its mean: 0.12 / √2 = 0.085.
  habits: {
    value: 0.085,
    unit: 'relative standard deviation',
    source: 'one metered British home used 12 % less in its second year in the same weather; 0.12 / √2',
    provenance: 'computed',
  },
  electricityPrice: fromQuarters(prices.electricity, 'relative standard deviation'),
  gasPrice: fromQuarters(prices.gas, 'relative standard deviation'),
  priceCorrelation: fromQuarters(prices.correlation, 'correlation of electricity and gas price'),
};
