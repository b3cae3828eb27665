import { describe, expect, test } from 'vitest';
import { deliveredPriceOn, quarterOn } from '../../src/model/tariff/built-in.ts';
import { deliveredPrices, quarters } from '../../src/reference/prices.ts';

/** The cap is rounded by region before averaging, so a typical bill comes back within 1.50 pounds. */
const CAP_TOLERANCE_GBP = 1.5;

describe('a typical household’s yearly bill at each quarter’s prices is the published one', () => {
  const E2020 = 2900; // Ofgem, Typical Domestic Consumption Values 2020, medium
  const G2020 = 12_000; // as above
  const E2023 = 2700; // Ofgem, Typical Domestic Consumption Values 2023, medium
  const G2023 = 11_500; // as above
  const E2026 = 2500; // Ofgem, Typical Domestic Consumption Values 2026, medium
  const G2026 = 9500; // as above
  test.each([
    ['2022-10-01', E2020, G2020, 2500], // UK Government, Energy Price Guarantee, 2022: typical bill 2,500
    ['2023-01-01', E2020, G2020, 2500], // UK Government, Energy Price Guarantee, 2022: typical bill 2,500
    ['2023-04-01', E2020, G2020, 2500], // UK Government, Energy Price Guarantee, April 2023: typical bill 2,500
    ['2023-07-01', E2020, G2020, 2074], // Ofgem energy price cap, July to September 2023
    ['2023-10-01', E2023, G2023, 1834], // Ofgem energy price cap, October to December 2023
    ['2024-01-01', E2023, G2023, 1928], // Ofgem energy price cap, January to March 2024
    ['2024-04-01', E2023, G2023, 1690], // Ofgem, Changes to energy price cap between 1 April and 30 June 2024
    ['2024-07-01', E2023, G2023, 1568], // Ofgem, New energy price cap level for July to September 2024
    ['2024-10-01', E2023, G2023, 1717], // Ofgem energy price cap, October to December 2024
    ['2025-01-01', E2023, G2023, 1738], // Ofgem energy price cap, January to March 2025
    ['2025-04-01', E2023, G2023, 1849], // Ofgem energy price cap, April to June 2025
    ['2025-07-01', E2023, G2023, 1720], // Ofgem energy price cap, July to September 2025
    ['2025-10-01', E2023, G2023, 1755], // Ofgem energy price cap, October to December 2025
    ['2026-01-01', E2023, G2023, 1758], // Ofgem energy price cap, January to March 2026
    ['2026-04-01', E2023, G2023, 1641], // Ofgem press notice, February 2026
    ['2026-07-01', E2023, G2023, 1862], // Ofgem energy price cap, July to September 2026, former typical use
    ['2026-07-01', E2026, G2026, 1663], // Ofgem energy price cap, July to September 2026, new typical use
    ['2026-10-01', E2026, G2026, 1723], // Ofgem energy price cap, October to December 2026
  ])('%s: %d kWh electricity and %d kWh gas', (date, electricityKWh, gasKWh, publishedGBP) => {
    const electricity = quarterOn(quarters, 'electricity', date);
    const gas = quarterOn(quarters, 'gas', date);
    const standing = 365 * (electricity.standingPencePerDay + gas.standingPencePerDay);
    const pence = electricityKWh * electricity.pencePerKWh + gasKWh * gas.pencePerKWh + standing;
    expect([electricity.from, gas.from]).toEqual([date, date]);
    expect(Math.abs(pence / 100 - publishedGBP)).toBeLessThanOrEqual(CAP_TOLERANCE_GBP);
  });

  test('the quarters follow each other without a gap, both fuels', () => {
    for (const fuel of ['electricity', 'gas'] as const) {
      const rows = quarters.filter((quarter) => quarter.fuel === fuel);
      expect(rows).toHaveLength(17);
      rows.slice(1).forEach((row, i) => {
        expect(Date.parse(row.from) - Date.parse(rows[i]!.to)).toBe(86_400_000);
      });
    }
  });

  test('every price says where it is from and how sure that is', () => {
    for (const row of [...quarters, ...deliveredPrices]) {
      expect(row.source.length).toBeGreaterThan(8);
      expect(['read', 'memory']).toContain(row.provenance);
    }
    expect(quarters.filter(({ provenance }) => provenance === 'read')).toHaveLength(2 * 14);
  });
});

describe('what a unit of heat costs, October to December 2026', () => {
  const oil2025 = deliveredPrices.find(
    ({ fuel, from, to }) => fuel === 'oil' && from === '2025-01-01' && to === '2025-12-31',
  )!;
  const OIL_KWH_PER_LITRE = 10.3; // DESNZ, GHG conversion factors 2025, 0.53078 / 0.05153, gross
  const PROPANE_KWH_PER_LITRE = 7.21; // DESNZ, GHG conversion factors 2025, 1.54358 / 0.2141, gross
  const electricity = quarterOn(quarters, 'electricity', '2026-11-25').pencePerKWh;
  const gas = quarterOn(quarters, 'gas', '2026-11-25').pencePerKWh;
  const oil = oil2025.pencePerUnit / OIL_KWH_PER_LITRE;
  const lpg = deliveredPriceOn(deliveredPrices, 'lpg', '2026-11-25')!.pencePerUnit / PROPANE_KWH_PER_LITRE;
  const HEAT_KWH = 14_100;
  // Expected figures computed by hand from the published prices above: heat ÷ efficiency × price.
  test.each([
    ['gas, 84 %', gas, 0.84, 7.97, 1337.8],
    ['gas, 90 %', gas, 0.9, 7.97, 1248.6],
    ['oil at 62 p a litre', oil, 0.84, 6.019, 1010.4],
    ['propane at 70 p a litre, assumed', lpg, 0.84, 9.709, 1629.7],
    ['direct electric', electricity, 1, 26.32, 3711.1],
    ['heat pump, factor 3.2', electricity, 3.2, 26.32, 1159.7],
  ])('%s', (_, pencePerKWh, efficiency, expectedPrice, expectedGBP) => {
    expect(pencePerKWh).toBeCloseTo(expectedPrice, 3);
    expect((HEAT_KWH / efficiency) * (pencePerKWh / 100)).toBeCloseTo(expectedGBP, 0);
  });
  test('the factor at which a heat pump costs the same as gas moved from 3.61 to 2.77 within two quarters', () => {
    const breakEven = (date: string) =>
      (quarterOn(quarters, 'electricity', date).pencePerKWh / quarterOn(quarters, 'gas', date).pencePerKWh) * 0.84;
    expect(breakEven('2026-05-01')).toBeCloseTo(3.61, 2); // computed from the caps of April and October 2026
    expect(breakEven('2026-11-01')).toBeCloseTo(2.77, 2); // as above
  });
});
