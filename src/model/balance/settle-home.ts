/** A household's battery and car as they are worked with: what nobody has said is taken from the reference tables. */
import { minuteOf } from '../calendar/civil.ts';
import type { ElectricCar, HomeBattery } from '../shapes/choices.ts';
import type { Reference } from '../shapes/reference.ts';
import type { Battery } from './battery.ts';
import type { CarAtHome } from './car-by-half-hour.ts';

/** Hours in which a car stands at home where nobody has said them, from memory: home from work, off to work. */
export const CAR_FROM = '18:00';
export const CAR_UNTIL = '07:00';

/** Power where only the size is known [kW]: the same for each kWh as in a usual battery. */
export const usualPowerKW = (usableKWh: number, { battery }: Pick<Reference, 'battery'>): number =>
  usableKWh * battery.powerPerKWh.value;

export function settleBattery(battery: HomeBattery, reference: Pick<Reference, 'battery'>): Battery {
  const { usableKWh } = battery;
  return {
    usableKWh,
    powerKW: battery.powerKW?.value ?? usualPowerKW(usableKWh, reference),
    roundTripShare: battery.roundTripShare?.value ?? reference.battery.roundTripShare.value,
    standbyW: battery.standbyW?.value ?? reference.battery.standbyW.value,
    fromNight: battery.fromNight ?? false,
  };
}

/** Its year's kWh are those charged at home: km × kWh/100 km × share. All of it where nobody has said the share. */
export function settleCar(car: ElectricCar, { car: usual }: Pick<Reference, 'car'>): CarAtHome {
  const km = car.kmPerYear?.value ?? usual.kmPerYear.value;
  const kWhPer100Km = car.kWhPer100Km?.value ?? usual.kWhPer100Km.value;
  return {
    kWhPerYear: (km / 100) * kWhPer100Km * (car.homeShare?.value ?? 1),
    chargerKW: car.chargerKW?.value ?? usual.chargerKW.value,
    fromMinute: minuteOf(car.from ?? CAR_FROM),
    untilMinute: minuteOf(car.until ?? CAR_UNTIL),
  };
}
