/** What a household's roof, battery and car change of what its home buys and sends out over a year. */
import { balanceHome } from '../balance/balance-home.ts';
import { carByHalfHour, standsAt } from '../balance/car-by-half-hour.ts';
import { settleBattery, settleCar } from '../balance/settle-home.ts';
import type { YearSlots } from '../calendar/zone.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { Household } from '../shapes/household.ts';
import type { ClimateRegion, Reference } from '../shapes/reference.ts';
import type { OwnChange, TariffChoice } from '../shapes/tariff-choice.ts';
import { exportPrice } from '../sun/export-price.ts';
import { roofByHalfHour } from '../sun/roof-by-half-hour.ts';
import { ownUseByStandard, sunByMonth } from '../sun/sun-by-month.ts';
import { sumOf } from '../units/sums.ts';

/** The equipment laid over a year, as far as it is the same on every tariff. */
export interface OwnEquipment {
  readonly slots: YearSlots;
  readonly sunKWh: Float64Array | undefined;
  readonly battery: ReturnType<typeof settleBattery> | undefined;
  readonly car: ReturnType<typeof settleCar> | undefined;
  /** What is paid for a kWh sent out; nothing where nobody knows it. */
  readonly exportPence: number;
}

/** Roof, battery and car of a household over a year; null where it has none of them. */
export function layEquipment(
  household: Household,
  region: ClimateRegion,
  slots: YearSlots,
  reference: Reference,
  asOf: CivilDate,
): OwnEquipment | null {
  const { roof, battery, car } = household;
  if (!roof && !battery && !car) return null;
  return {
    slots,
    sunKWh: roof && roofByHalfHour(roof.panels, region, slots, reference.sun),
    battery: battery && settleBattery(battery, reference),
    car: car && settleCar(car, reference),
    exportPence: roof ? (exportPrice(roof, reference.sun, asOf)?.value ?? 0) : 0,
  };
}

/**
 * What they change on one tariff, for a home that needs so much without them [kWh and pence by half-hour, VAT included]:
 * the car's units and the units not bought at what `priceUnits` makes of a year [pence], and what is paid for the sun sent out.
 */
export function changeByEquipment(
  own: OwnEquipment,
  loadKWh: Float64Array,
  pencePerKWh: Float64Array,
  priceUnits: (kWh: Float64Array) => number,
): OwnChange {
  const { slots, sunKWh, battery, car, exportPence } = own;
  const carKWh = car && carByHalfHour(car, slots, pencePerKWh);
  const needed = carKWh ? loadKWh.map((kWh, i) => kWh + carKWh[i]!) : loadKWh;
  const balance = balanceHome({ slots, loadKWh: needed, sunKWh, battery, pencePerKWh, exportPence });
  const { boughtKWh, soldKWh, ownUseKWh, filledKWh, batteryLossKWh, sunLossKWh } = balance;
  const sold = sumOf(soldKWh);
  const charged = carKWh ? sumOf(carKWh) : 0;
  const outside = car && carKWh ? sumOf(carKWh.map((kWh, i) => (standsAt(car, slots.minute[i]!) ? 0 : kWh))) : 0;
  return {
    unitsPence: priceUnits(boughtKWh) - priceUnits(loadKWh),
    exportPence: sold * exportPence,
    ...(sunKWh && pencePerKWh.every((pence) => pence < exportPence) ? { exportAbovePrice: true } : {}),
    carKWh: charged,
    carLeftKWh: car ? Math.max(0, car.kWhPerYear - charged) : 0,
    ...(outside > 0 ? { carOutsideKWh: outside } : {}),
    ownUseKWh,
    soldKWh: sold,
    filledKWh,
    batteryLossKWh,
    sunLossKWh,
  };
}

const COLD_MONTHS = [10, 11, 0, 1];

/** What a roof makes [kWh a year], how much of it in the four cold months, and its own use by the standard, of a home that needs so much. */
export function factsOfRoof(
  { roof, battery }: Household,
  own: OwnEquipment,
  loadKWh: Float64Array,
  region: ClimateRegion,
  { sun }: Reference,
  asOf: CivilDate,
): TariffChoice['roof'] {
  if (!roof) return undefined;
  const months = sunByMonth(roof.panels, region, sun);
  const madeKWh = sumOf(months);
  const needed = new Array<number>(12).fill((own.car?.kWhPerYear ?? 0) / 12);
  for (let i = 0; i < loadKWh.length; i++) needed[own.slots.month[i]!]! += loadKWh[i]!;
  const pay = exportPrice(roof, sun, asOf);
  return {
    madeKWh,
    coldShare: COLD_MONTHS.reduce((total, month) => total + months[month]!, 0) / madeKWh,
    standardUseKWh: ownUseByStandard(months, needed, battery?.usableKWh ?? 0),
    exportPay: pay,
    source: sun.source,
  };
}
