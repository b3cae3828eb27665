/** What the prices and the comparison ask or remark, with the data that the sentence needs. The sentences are in `words`. */
import type { Question } from '../shapes/appraisal.ts';
import type { TariffFaultCode } from '../tariff/check-tariff.ts';

export type PriceQuestionCode =
  /** The prices ended before the day of the comparison. data: fuel, name, from, to ('' for an open end), days */
  | 'prices-old'
  /** The prices begin after the day of the comparison. data: fuel, name, from */
  | 'prices-not-yet'
  /** No tariff of the household bears the id named; the built-in price stands in. data: id, fuel */
  | 'tariff-missing'
  /** The tariff named is for the other fuel; the built-in price stands in. data: id, fuel */
  | 'tariff-other-fuel'
  /** A typed price of a delivered fuel is far from what households pay. data: fuel, pence, low, high (for its base unit) */
  | 'fuel-price-unusual'
  /** A fault found by `findTariffFaults`, its own code after the dash. data: the fault's, with tariff (its name) and version (from 1) */
  | `tariff-${TariffFaultCode}`
  /** Steps: other electricity of the home fills the first ones. data: tariff, kWh (a year), grade */
  | 'blocks-other-use'
  /** A charge on power is counted. data: tariff, homeKW, withKW (highest half-hours of the year), pence (a year more) */
  | 'power-charge-counted'
  /** A charge on power is left out. data: tariff, why ("no-half-hours", "heating-in-record"), pence (a kW for a year) */
  | 'power-charge-unknown'
  /** A charge on an agreed power, which every home on it pays. data: tariff, kW, pence (a year) */
  | 'power-agreed';

export type CostQuestionCode =
  /** What heats the home today has no price, so it stands in no comparison. data: none */
  | 'present-not-priced'
  /** What the home burns has no price: nobody typed one, and none is built in for the country. data: fuel */
  | 'present-price-asked'
  /** Nobody has said what heats the home, and no record tells; a gas boiler stands in. data: none */
  | 'present-assumed'
  /** Not above 0 or above 110 %; the table's efficiency stands in. data: found, high */
  | 'efficiency-refused';

export function askAboutPrices(
  code: PriceQuestionCode,
  weight: Question['weight'],
  data: Question['data'],
  field?: string,
): Question {
  return { code, weight, stage: 'prices', ...(field === undefined ? {} : { field }), data };
}

export function askAboutCost(
  code: CostQuestionCode,
  weight: Question['weight'],
  field: string,
  data: Question['data'] = {},
): Question {
  return { code, weight, stage: 'cost', field, data };
}
