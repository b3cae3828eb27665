/**
 * Days of sun and of cloud. The months of a usual year are known, their days are not: they are spread as the days of most
 * places on earth are, and come in one fixed order, so that the same home has the same year whenever it is worked out.
 */
import type { YearSlots } from '../calendar/zone.ts';
import { normalNumbers } from '../year/day-pattern.ts';

/** Solar constant, W/m². Duffie and Beckman, Solar Engineering of Thermal Processes, from memory, as are the rules below. */
const SOLAR_W_PER_M2 = 1367;
const LEAST_CLEARNESS = 0.05;
/** Likeness of one day's clearness to the day before: Graham, Hollands and Huget 1988, about 0.3. */
const DAY_TO_DAY = 0.3;
const SEED = 20_261_129;

/** The sun's way over one day; angles in radians. */
export interface SunDay {
  readonly declination: number;
  /** Half the day's length as an angle of the hour. */
  readonly sunset: number;
  /** Radiation on the flat above the air, W/m² as a mean of 24 hours. */
  readonly aboveAirWPerM2: number;
  /** Of a sundial less a clock at the same place, minutes. */
  readonly dialMinutes: number;
}

/** The sun on a day of the year, from 0 (Cooper 1969; equation of time by Spencer 1971). */
export function sunDay(day: number, latitudeN: number): SunDay {
  const n = day + 1;
  const latitude = (latitudeN * Math.PI) / 180;
  const declination = ((23.45 * Math.PI) / 180) * Math.sin((2 * Math.PI * (284 + n)) / 365);
  const sunset = Math.acos(Math.max(-1, Math.min(1, -Math.tan(latitude) * Math.tan(declination))));
  const nearness = 1 + 0.033 * Math.cos((2 * Math.PI * n) / 365);
  const height =
    Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset) + sunset * Math.sin(latitude) * Math.sin(declination);
  const b = (2 * Math.PI * (n - 1)) / 365;
  const dialMinutes =
    229.2 *
    (0.000075 +
      0.001868 * Math.cos(b) -
      0.032077 * Math.sin(b) -
      0.014615 * Math.cos(2 * b) -
      0.04089 * Math.sin(2 * b));
  return { declination, sunset, aboveAirWPerM2: (SOLAR_W_PER_M2 * nearness * height) / Math.PI, dialMinutes };
}

/**
 * Clearness of so many days whose mean is given, from the dullest to the clearest: the share of the radiation above the air
 * that reaches the ground. Spread by Bendt, Collares-Pereira and Rabl 1981, with the exponent of Herzog 1985 and the
 * clearest day of Hollands and Huget 1983, whose last term counts for means above 0.75 only, which no month has.
 * A year measured at 52° N (Wageningen 1992, weather files of WOFOST) strays by 0.15 where this strays by 0.19. With its days
 * homes would use about three hundredths more of their sun themselves: on mean days of use 0.47 where these days
 * give 0.45 and field homes used 0.37 (2.9 kWp, 4,000 kWh). So the wider spread stays, on the cautious side.
 */
export function clearnessOfDays(mean: number, days: number): Float64Array {
  const most = 0.6313 + 0.267 * mean;
  const span = most - LEAST_CLEARNESS;
  const xi = span / (most - mean);
  const gamma = -1.498 + (1.184 * xi - 27.182 * Math.exp(-1.5 * xi)) / span;
  const low = Math.exp(gamma * LEAST_CLEARNESS);
  const high = Math.exp(gamma * most);
  return Float64Array.from({ length: days }, (_, i) => Math.log(low + ((i + 0.5) / days) * (high - low)) / gamma);
}

/** Places of the days of the year among those of their month, from the dullest: one fixed order. */
function placesOfDays(slots: YearSlots): Uint8Array {
  const normal = normalNumbers(SEED);
  let last = 0;
  const days = slots.dayStart.length - 1;
  const drawn = Float64Array.from({ length: days }, () => {
    last = DAY_TO_DAY * last + Math.sqrt(1 - DAY_TO_DAY ** 2) * normal();
    return last;
  });
  const monthOf = (day: number) => slots.month[slots.dayStart[day]!]!;
  const places = new Uint8Array(days);
  for (let day = 0; day < days; day++)
    for (let other = Math.max(0, day - 31); other < Math.min(days, day + 31); other++)
      if (monthOf(other) === monthOf(day) && drawn[other]! < drawn[day]!) places[day]! += 1;
  return places;
}

/** Clearness of every day of a year, where each month has the given mean radiation on the flat [W/m²]. */
export function clearnessOfYear(flatWPerM2: readonly number[], latitudeN: number, slots: YearSlots): Float64Array {
  const days = slots.dayStart.length - 1;
  const ofMonth = Array.from({ length: 12 }, () => ({ days: 0, aboveAir: 0 }));
  const monthOf = (day: number) => slots.month[slots.dayStart[day]!]!;
  for (let day = 0; day < days; day++) {
    const month = ofMonth[monthOf(day)]!;
    month.days += 1;
    month.aboveAir += sunDay(day, latitudeN).aboveAirWPerM2;
  }
  const spread = ofMonth.map(({ days, aboveAir }, month) =>
    clearnessOfDays((flatWPerM2[month]! * days) / aboveAir, days),
  );
  const places = placesOfDays(slots);
  return Float64Array.from({ length: days }, (_, day) => spread[monthOf(day)]![places[day]!]!);
}

/**
 * Clearness of the half-hours of a day at the given angles of the sun; the day's own is kept. An hour is as clear as the
 * sun's height lets it be (Collares-Pereira and Rabl 1979), and about that clouds come and go as in Aguiar and
 * Collares-Pereira 1992 (Solar Energy 49, 167), read in a public implementation: what an hour is off is like the hour before.
 */
export function clearnessOfHours(
  ofDay: number,
  { declination, sunset }: Pick<SunDay, 'declination' | 'sunset'>,
  latitudeN: number,
  hours: Float64Array,
  normal: () => number,
): Float64Array {
  const a = 0.409 + 0.5016 * Math.sin(sunset - Math.PI / 3);
  const b = 0.6609 - 0.4767 * Math.sin(sunset - Math.PI / 3);
  const likeness = 0.38 + 0.06 * Math.cos(7.4 * ofDay - 2.5);
  const low = 0.14 * Math.exp(-20 * (ofDay - 0.35) ** 2);
  const more = 3 * (ofDay - 0.45) ** 2 + 16 * ofDay ** 5;
  const full = Math.cos(declination) * Math.cos((latitudeN * Math.PI) / 180);
  let off = 0;
  let [whole, light] = [0, 0];
  const clear = hours.map((hour, i) => {
    const above = Math.cos(hour) - Math.cos(sunset);
    if (above <= 0) return 0;
    if (i % 2 === 0 || off === 0) off = likeness * off + Math.sqrt(1 - likeness ** 2) * normal();
    const spread = low * Math.exp(more * (1 - full * above));
    const k = ofDay * (a + b * Math.cos(hour)) + spread * off;
    const kept = Math.min(Math.max(k, DULLEST * ofDay), CLEAR_SKY * Math.cos(0.4 * hour));
    whole += above;
    light += above * kept;
    return kept;
  });
  return light > 0 ? clear.map((k) => (k * ofDay * whole) / light) : clear;
}
/** Some light comes through every cloud; a clear sky lets this much through at noon. The first by hand, the second as there. */
const DULLEST = 0.1;
const CLEAR_SKY = 0.88;
