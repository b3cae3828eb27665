/** The sums of a bill with what holds for homes in its country, and the tariff that a bill from a file is held against. */

import { type CheckedBill, checkBillSums } from '../../model/bill/check-bill-sums.ts';
import type { Bill } from '../../model/shapes/bill.ts';
import { COUNTRIES, countryOf } from '../../model/shapes/country.ts';
import type { Household } from '../../model/shapes/household.ts';
import type { Tariff } from '../../model/shapes/tariff.ts';
import { findTariffFaults } from '../../model/tariff/check-tariff.ts';
import { referenceOf } from '../../reference/index.ts';

export function sumsOf(bill: Bill, tariff: Tariff | undefined, household: Household): CheckedBill {
  const { correction, imperialM3PerHundredCubicFeet, calorificMJPerM3 } = referenceOf(household).gasVolume;
  const gas = {
    correction: correction.value,
    imperialM3PerHundredCubicFeet: imperialM3PerHundredCubicFeet.value,
    calorificMJPerM3: calorificMJPerM3.value,
  };
  return checkBillSums({ bill, gas, vatRate: COUNTRIES[countryOf(household)].vatRates[0], tariff });
}

const isRefused = (tariff: Tariff) => findTariffFaults(tariff).some(({ weight }) => weight === 'refusal');

/** Tariffs that a bill of a fuel can be held against. */
export const fittingTariffs = (tariffs: readonly Tariff[], fuel: Bill['fuel']): Tariff[] =>
  tariffs.filter((one) => one.fuel === fuel && !isRefused(one));

/** The only tariff of the fuel, where it was in force on the bill's first day and has as many prices as the bill. */
export function tariffOfBill(tariffs: readonly Tariff[], { fuel, from, meters }: Bill): Tariff | undefined {
  const fitting = fittingTariffs(tariffs, fuel);
  const [only] = fitting;
  if (fitting.length !== 1 || !only!.versions.some((version) => version.from <= from)) return undefined;
  return only!.versions.every(({ bands }) => bands.length === meters.length) ? only : undefined;
}
