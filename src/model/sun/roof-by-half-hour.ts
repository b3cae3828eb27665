/** What a roof makes in every half-hour of a usual year. */
import { toDayNumber } from '../calendar/civil.ts';
import { startOfDay, type YearSlots } from '../calendar/zone.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { ClimateRegion, SunFacts } from '../shapes/reference.ts';
import { horizontalWPerM2, type Panels, panelsByMonth } from './sun-by-month.ts';
import { clearnessOfYear, sunDay } from './sun-days.ts';

/** Light thrown back by the ground, as a share: common practice for grass and paving, Liu and Jordan 1963. */
const GROUND_SHARE = 0.2;
/** So low above the horizon (sine of the height) no beam is counted: its share on a slope would be without bound. */
const LOWEST_SINE = 0.05;
const AZIMUTH = { N: 180, NE: -135, E: -90, SE: -45, S: 0, SW: 45, W: 90, NW: 135 } as const;

/**
 * Electricity of a roof by half-hour [kWh]; its months are those of `sunByMonth` to rounding, whatever the year's length.
 * Within a month sunny and dull days follow the published spread in a fixed order; within a day the sun's height does
 * (Collares-Pereira and Rabl 1979), with the sky's share by Erbs 1982, a sky of even light, and ground that throws back 0.2.
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
    const scale = panelsByMonth(panels, region, sun).map((kWh, m) => (shapeByMonth[m]! > 0 ? kWh / shapeByMonth[m]! : 0));
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
  const clearness = clearnessOfYear(horizontalWPerM2(region, sun), region.latitudeN, slots);
  const [sky, beam, hourAngle] = [0, 1, 2].map(() => new Float64Array(slots.count)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const first = toDayNumber(`${slots.year}-01-01` as CivilDate);
  for (let day = 0; day < clearness.length; day++) {
    const { sunset, aboveAirWPerM2, dialMinutes } = sunDay(day, region.latitudeN);
    const utcMinutes = startOfDay(slots.zone, first + day) / 60_000 - (first + day) * 1440;
    const flat = clearness[day]! * aboveAirWPerM2;
    const skyShare = skyShareOfDay(clearness[day]!, sunset);
    const a = 0.409 + 0.5016 * Math.sin(sunset - Math.PI / 3);
    const b = 0.6609 - 0.4767 * Math.sin(sunset - Math.PI / 3);
    const day0 = slots.dayStart[day]!;
    for (let slot = day0; slot < slots.dayStart[day + 1]!; slot++) {
      const dial = utcMinutes + (slot - day0) * 30 + 15 + 4 * sun.longitudeE.value + dialMinutes;
      const hour = ((dial - 720) * Math.PI) / 720;
      const above = Math.cos(hour) - Math.cos(sunset);
      hourAngle[slot] = hour;
      if (above <= 0) continue;
      sky[slot] = flat * skyShare * above;
      beam[slot] = Math.max(0, flat * above * (a + b * Math.cos(hour)) - sky[slot]!);
    }
  }
  return { sky, beam, hourAngle };
}

/** Share of a day's radiation that comes from the sky and not from the sun itself (Erbs, Klein and Duffie 1982, days). */
function skyShareOfDay(clearness: number, sunset: number): number {
  const k = clearness;
  if (sunset <= (81.4 * Math.PI) / 180)
    return k < 0.715 ? 1 - 0.2727 * k + 2.4495 * k ** 2 - 11.9514 * k ** 3 + 9.3879 * k ** 4 : 0.143;
  return k < 0.722 ? 1 + 0.2832 * k - 2.5557 * k ** 2 + 0.8448 * k ** 3 : 0.175;
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
