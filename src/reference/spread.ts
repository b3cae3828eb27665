/** Relative standard deviations that the ranges rest on. */
import type { Reference, Value } from '../model/shapes/reference.ts';
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
  machineExtras: {
    value: 0.3,
    unit: 'relative standard deviation',
    source: 'a pump left on a high speed takes half as much again, one well set a third less; a judgement',
    provenance: 'common practice, no source',
  },
  // With the fan of 45 kWh 86 to 210 kWh about 160; as 10 and 90 % points (210 − 86) / 2 / 1.2816 / 160 = 0.30.
  boilerElectricity: {
    value: 0.3,
    unit: 'relative standard deviation',
    source: 'SAP 10.2 Table 4f, heating pump 41 kWh (2013 or later) to 165 kWh (2012 or earlier)',
    provenance: 'memory',
  },
  // A visit costs about £75 to £140 where £100 is usual: as 10 and 90 % points 0.25.
  service: {
    value: 0.25,
    unit: 'relative standard deviation',
    source: 'price of one visit from region to region and firm to firm',
    provenance: 'common practice, no source',
  },
};
