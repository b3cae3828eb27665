/**
 * Built-in prices, each dated. Averages of Great Britain, direct debit, 5 % VAT included. October 2022 to June 2023 are
 * what households paid under the Energy Price Guarantee; later rows the default-tariff cap, single rate.
 * Every quarter gives the published typical bill back within 1.50 pounds (tests/outside/prices.test.ts).
 */
import type { DeliveredPrice, PriceQuarter, Sourced, TwoRate } from '../model/shapes/reference.ts';
import { assumedPrices } from './fuels.ts';

type Prices = readonly [pencePerKWh: number, standingPencePerDay: number];

function quarter(
  from: string,
  to: string,
  electricity: Prices,
  gas: Prices,
  source: string,
  provenance: Sourced['provenance'],
): PriceQuarter[] {
  const row = (fuel: PriceQuarter['fuel'], [pencePerKWh, standingPencePerDay]: Prices): PriceQuarter => ({
    fuel,
    from,
    to,
    pencePerKWh,
    standingPencePerDay,
    source,
    provenance,
  });
  return [row('electricity', electricity), row('gas', gas)];
}

/** One relative standard deviation of next year's oil price: of the yearly means below from 2022 on, year over year. */
const OIL_SPREAD = 0.17;

function oil(
  from: string,
  to: string,
  pencePerUnit: number,
  source: string,
  provenance: Sourced['provenance'],
): DeliveredPrice {
  const kind = source === 'recollection' ? 'assumed' : /page/.test(source) ? 'guide' : 'average';
  return { fuel: 'oil', from, to, pencePerUnit, kind, spread: OIL_SPREAD, source, provenance };
}

export const quarters: readonly PriceQuarter[] = [
  ...quarter(
    '2022-10-01',
    '2022-12-31',
    [34.04, 46.36],
    [10.33, 28.49],
    'Energy Price Guarantee, UK Government 2022: 34p and 10.33p read, standing charges read rounded as 46p and 28p; second decimals from memory',
    'memory',
  ),
  ...quarter(
    '2023-01-01',
    '2023-03-31',
    [34.04, 46.36],
    [10.33, 28.49],
    'Energy Price Guarantee, UK Government: press report says no change to the direct-debit averages from October 2022 quarter',
    'memory',
  ),
  ...quarter(
    '2023-04-01',
    '2023-06-30',
    [33.2, 52.92],
    [10.31, 29.09],
    'Energy Price Guarantee Apr-Jun 2023: 31.62p and 9.82p ex VAT, standing charges 50.4p and 27.7p ex VAT (x1.05)',
    'read',
  ),
  ...quarter(
    '2023-07-01',
    '2023-09-30',
    [30.11, 52.97],
    [7.51, 29.11],
    'Ofgem energy price cap page, Jul-Sep 2023, read rounded as 30p/53p and 8p/29p; electricity 30.1p read in press; other decimals from memory',
    'memory',
  ),
  ...quarter(
    '2023-10-01',
    '2023-12-31',
    [27.35, 53.37],
    [6.89, 29.62],
    'Energy Saving Trust statement of the Ofgem cap, Aug 2023',
    'read',
  ),
  ...quarter(
    '2024-01-01',
    '2024-03-31',
    [28.62, 53.35],
    [7.42, 29.6],
    'Local advice-charity statement of the Ofgem cap, 2024',
    'read',
  ),
  ...quarter(
    '2024-04-01',
    '2024-06-30',
    [24.5, 60.1],
    [6.04, 31.43],
    'Ofgem, Changes to energy price cap between 1 April and 30 June 2024',
    'read',
  ),
  ...quarter(
    '2024-07-01',
    '2024-09-30',
    [22.36, 60.12],
    [5.48, 31.41],
    'Ofgem, New energy price cap level for July to September 2024',
    'read',
  ),
  ...quarter('2024-10-01', '2024-12-31', [24.5, 60.99], [6.24, 31.66], 'Price-cap history page, 2024', 'read'),
  ...quarter(
    '2025-01-01',
    '2025-03-31',
    [24.86, 60.97],
    [6.34, 31.65],
    'Price-cap history page, 2024 (gas standing charge 31.66 there; 31.65 in a second page)',
    'read',
  ),
  ...quarter(
    '2025-04-01',
    '2025-06-30',
    [27.03, 53.8],
    [6.99, 32.67],
    'Debt-advice body statement of the Ofgem cap, May 2025',
    'read',
  ),
  ...quarter(
    '2025-07-01',
    '2025-09-30',
    [25.73, 51.37],
    [6.33, 29.82],
    'Ofgem text reprinted by local news, May 2025',
    'read',
  ),
  ...quarter(
    '2025-10-01',
    '2025-12-31',
    [26.35, 53.68],
    [6.29, 34.03],
    'Ofgem text reprinted by national press, Aug 2025',
    'read',
  ),
  ...quarter(
    '2026-01-01',
    '2026-03-31',
    [27.69, 54.75],
    [5.93, 35.09],
    'Press statement of the Ofgem cap, Dec 2025',
    'read',
  ),
  ...quarter(
    '2026-04-01',
    '2026-06-30',
    [24.67, 57.21],
    [5.74, 29.09],
    'Public answer page stating the Ofgem cap, 2026; the 1641 GBP typical bill confirmed by Ofgem press notice Feb 2026',
    'read',
  ),
  ...quarter(
    '2026-07-01',
    '2026-09-30',
    [26.11, 57.19],
    [7.33, 29.04],
    'Public explainer stating the Ofgem cap announced 27 May 2026',
    'read',
  ),
  ...quarter(
    '2026-10-01',
    '2026-12-31',
    [26.32, 54.83],
    [7.97, 29.68],
    'Ofgem price cap, October to December 2026, average for Great Britain, as quoted alike in two public files',
    'read',
  ),
];

/** Kerosene, United Kingdom average, delivered, about 1,000 litres, 5 % VAT included. Yearly means are remembered, +/- 4 to 5 p. */
const oilPrices: readonly DeliveredPrice[] = [
  oil('2020-01-01', '2020-12-31', 37, 'recollection', 'memory'),
  oil('2020-04-01', '2020-06-30', 20, 'House of Commons Library, Domestic energy prices (CBP-9491)', 'read'),
  oil('2021-01-01', '2021-12-31', 52, 'recollection', 'memory'),
  oil('2021-10-01', '2021-10-31', 60, 'House of Commons Library, Domestic energy prices (CBP-9491)', 'read'),
  oil('2022-01-01', '2022-12-31', 95, 'recollection', 'memory'),
  oil('2022-02-01', '2022-02-28', 69.57, 'ONS average price quoted by a fuel distributor', 'read'),
  oil('2022-03-01', '2022-03-31', 100.99, 'ONS average price quoted by a fuel distributor', 'read'),
  oil('2022-06-01', '2022-06-30', 111, 'ONS average price quoted by a fuel distributor', 'read'),
  oil('2022-08-01', '2022-08-31', 89, 'ONS average price quoted by a fuel distributor', 'read'),
  oil('2023-01-01', '2023-12-31', 77, 'recollection', 'memory'),
  oil('2023-03-01', '2023-03-31', 76, 'ONS average price quoted by a fuel distributor', 'read'),
  oil('2024-01-01', '2024-03-31', 70, 'fuel distributor market page, Q1 2024', 'read'),
  oil('2024-01-01', '2024-12-31', 66, 'recollection', 'memory'),
  oil('2025-01-01', '2025-12-31', 62, 'recollection', 'memory'),
  oil('2026-01-01', '2026-01-31', 58, 'public guide page, January 2026', 'read'),
];

export const deliveredPrices: readonly DeliveredPrice[] = [...oilPrices, ...assumedPrices];

/**
 * A day and night pair that stands in until the household's own is typed. Chosen so that 58 % at the day price and
 * 42 % at the night price come to the single-rate cap, with a night price of 0.61 of the day price.
 */
export const twoRate: TwoRate = {
  from: '2026-10-01',
  to: '2026-12-31',
  dayPence: 31.5,
  nightPence: 19.2,
  standingPencePerDay: 54.8,
  nightFrom: '00:30',
  nightTo: '07:30',
  source: 'illustrative pair, not published; derived from the cap of October to December 2026 and a 58/42 split',
  provenance: 'memory',
};
