/** What a roof makes in every half-hour of a usual year. */
import { toDayNumber } from '../calendar/civil.ts';
import { startOfDay, type YearSlots } from '../calendar/zone.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { ClimateRegion, SunFacts } from '../shapes/reference.ts';
import { normalNumbers } from '../year/day-pattern.ts';
import { horizontalWPerM2, type Panels, panelsByMonth } from './sun-by-month.ts';
import { clearnessOfHours, clearnessOfYear, sunDay } from './sun-days.ts';

/** Light thrown back by the ground, as a share: common practice for grass and paving, Liu and Jordan 1963. */
const GROUND_SHARE = 0.2;
/** So low above the horizon (sine of the height) no beam is counted: its share on a slope would be without bound. */
const LOWEST_SINE = 0.05;
const CLOUD_SEED = 20_261_130;
const AZIMUTH = { N: 180, NE: -135, E: -90, SE: -45, S: 0, SW: 45, W: 90, NW: 135 } as const;

/**
 * Electricity of a roof by half-hour [kWh]; its months are those of `sunByMonth` to rounding, whatever the year's length.
 * Within a month sunny and dull days follow the published spread in a fixed order; within a day the
 * sun's height and passing clouds do, with the sky's share by Erbs 1982, a sky of even light, and ground that throws back 0.2.
 */
export function roofByHalfHour(
  slopes: readonly Panels[],
  region: ClimateRegion,
  slots: YearSlots,
  sun: SunFacts,
): Float64Array {
  const light = lightOfYear(region, slots, sun);
  const roof = new Float64Array(slots.count);
  for (const panels of slopes) {
    const shape = onSlope(light, panels, region.latitudeN, slots);
    const shapeByMonth = new Float64Array(12);
    for (let slot = 0; slot < slots.count; slot++) shapeByMonth[slots.month[slot]!]! += shape[slot]!;
    const scale = panelsByMonth(panels, region, sun).map((kWh, m) =>
      shapeByMonth[m]! > 0 ? kWh / shapeByMonth[m]! : 0,
    );
    for (let slot = 0; slot < slots.count; slot++) roof[slot]! += shape[slot]! * scale[slots.month[slot]!]!;
  }
  return roof;
}

interface Light {
  /** Of the sky and of the sun's beam on the flat, and the sun's angle of the hour at the middle of each half-hour. */
  readonly sky: Float64Array;
  readonly beam: Float64Array;
  readonly hourAngle: Float64Array;
}

function lightOfYear(region: ClimateRegion, slots: YearSlots, sun: SunFacts): Light {
  const { latitudeN } = region;
  const clearness = clearnessOfYear(horizontalWPerM2(region, sun), latitudeN, slots);
  const sky = new Float64Array(slots.count);
  const beam = new Float64Array(slots.count);
  const hourAngle = new Float64Array(slots.count);
  const cloud = normalNumbers(CLOUD_SEED);
  const first = toDayNumber(`${slots.year}-01-01` as CivilDate);
  for (let day = 0; day < clearness.length; day++) {
    const { dialMinutes, ...ofDay } = sunDay(day, latitudeN);
    const utcMinutes = startOfDay(slots.zone, first + day) / 60_000 - (first + day) * 1440;
    const dayStart = slots.dayStart[day]!;
    for (let slot = dayStart; slot < slots.dayStart[day + 1]!; slot++) {
      const dial = utcMinutes + (slot - dayStart) * 30 + 15 + 4 * sun.longitudeE.value + dialMinutes;
      hourAngle[slot] = ((dial - 720) * Math.PI) / 720;
    }
    const hours = hourAngle.subarray(dayStart, slots.dayStart[day + 1]!);
    const clear = clearnessOfHours(clearness[day]!, ofDay, latitudeN, hours, cloud);
    for (let i = 0; i < hours.length; i++) {
      const flat = clear[i]! * Math.max(0, Math.cos(hours[i]!) - Math.cos(ofDay.sunset)) * ofDay.aboveAirWPerM2;
      const skyShare = skyShareAt(clear[i]!);
      sky[dayStart + i] = flat * skyShare;
      beam[dayStart + i] = flat * (1 - skyShare);
    }
  }
  return { sky, beam, hourAngle };
}

/** Share of an hour's radiation that comes from the sky and not from the sun itself: Erbs, Klein and Duffie 1982, from memory. */
function skyShareAt(k: number): number {
  if (k <= 0.22) return 1 - 0.09 * k;
  return k <= 0.8 ? 0.9511 - 0.1604 * k + 4.388 * k ** 2 - 16.638 * k ** 3 + 12.336 * k ** 4 : 0.165;
}

/** Light on a slope by half-hour, in the unit of the light given. */
function onSlope({ sky, beam, hourAngle }: Light, panels: Panels, latitudeN: number, slots: YearSlots): Float64Array {
  const pitch = (panels.pitchDegrees * Math.PI) / 180;
  const azimuth = (AZIMUTH[panels.facing] * Math.PI) / 180;
  const latitude = (latitudeN * Math.PI) / 180;
  const skySeen = (1 + Math.cos(pitch)) / 2;
  const groundSeen = (GROUND_SHARE * (1 - Math.cos(pitch))) / 2;
  const shape = new Float64Array(slots.count);
  for (let day = 0; day < slots.dayStart.length - 1; day++) {
    const { declination } = sunDay(day, latitudeN);
    const [sinD, cosD] = [Math.sin(declination), Math.cos(declination)];
    const [sinL, cosL] = [Math.sin(latitude), Math.cos(latitude)];
    const [sinP, cosP] = [Math.sin(pitch), Math.cos(pitch)];
    const still = sinD * (sinL * cosP - cosL * sinP * Math.cos(azimuth));
    const withCos = cosD * (cosL * cosP + sinL * sinP * Math.cos(azimuth));
    const withSin = cosD * sinP * Math.sin(azimuth);
    for (let slot = slots.dayStart[day]!; slot < slots.dayStart[day + 1]!; slot++) {
      if (sky[slot] === 0) continue;
      const [cosH, sinH] = [Math.cos(hourAngle[slot]!), Math.sin(hourAngle[slot]!)];
      const sine = sinD * sinL + cosD * cosL * cosH;
      const onPanels = still + withCos * cosH + withSin * sinH;
      const facingSun = sine > LOWEST_SINE && onPanels > 0 ? onPanels / sine : 0;
      shape[slot] = sky[slot]! * (skySeen + groundSeen) + beam[slot]! * (facingSun + groundSeen);
    }
  }
  return shape;
}
