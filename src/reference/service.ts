/** What a yearly service costs, pounds. Custom of the trade, to be overwritten with the installer's own price. */
import type { Reference, Value } from '../model/shapes/reference.ts';

const custom = (value: number): Value => ({
  value,
  unit: 'pounds a year',
  source: 'usual price of one visit a year',
  provenance: 'common practice, no source',
});

export const service: Reference['service'] = {
  'heat-pump': custom(180),
  gas: custom(100),
  oil: custom(120),
  lpg: custom(110),
  electric: custom(0),
};
