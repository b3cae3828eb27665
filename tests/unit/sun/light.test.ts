/** The sun's way, the clearness of days and hours, and light on a slope, against sums made apart from this program. */
import { describe, expect, test } from 'vitest';
import { toDayNumber } from '../../../src/model/calendar/civil.ts';
import { startOfDay, yearSlots } from '../../../src/model/calendar/zone.ts';
import { roofByHalfHour } from '../../../src/model/sun/roof-by-half-hour.ts';
import { horizontalWPerM2 } from '../../../src/model/sun/sun-by-month.ts';
import { clearnessOfDays, clearnessOfHours, clearnessOfYear, sunDay } from '../../../src/model/sun/sun-days.ts';
import { normalNumbers } from '../../../src/model/year/day-pattern.ts';
import { reference } from '../../../src/reference/index.ts';

const midlands = reference.regions.find(({ id }) => id === 6)!;
const slots = yearSlots(2027, 'Europe/London');
const monthOf = (day: number) => slots.month[slots.dayStart[day]!]!;
const radians = (degrees: number) => (degrees * Math.PI) / 180;
const everyDay = Array.from({ length: 365 }, (_, day) => day);

describe('the sun on a day', () => {
  test('of the year is behind and before the clock by the waves that Spencer gives, minutes', () => {
    const wave = (of: (angle: number) => number) =>
      everyDay.reduce((sum, day) => sum + sunDay(day, 52).dialMinutes * of((2 * Math.PI * day) / 365), 0) / 365;
    expect(wave(() => 1)).toBeCloseTo(0.01719, 5);
    expect(2 * wave((b) => Math.cos(b))).toBeCloseTo(0.42815, 5);
    expect(2 * wave((b) => Math.sin(b))).toBeCloseTo(-7.35205, 5);
    expect(2 * wave((b) => Math.cos(2 * b))).toBeCloseTo(-3.34976, 5);
    expect(2 * wave((b) => Math.sin(2 * b))).toBeCloseTo(-9.37199, 5);
  });

  test('stands over the equator on 22 March, over the tropics at midsummer and midwinter', () => {
    for (const [day, degrees] of [
      [80, 0],
      [171, 23.4498],
      [354, -23.4498],
    ] as const)
      expect(sunDay(day, 52).declination).toBeCloseTo(radians(degrees), 5);
  });

  test.each([
    // Latitude, day; half of the day's length in degrees, and W/m² above the air: 1367 (1 + 0.033 cos) × height / π.
    [0, 80, 90, 437.65],
    [0, 364, 90, 413.49],
    [0, 181, 90, 386.98],
    [51.5, 171, 123.047, 483.12],
    [51.5, 354, 56.953, 75.99],
    [70, 171, 180, 494.59],
    [70, 354, 0, 0],
  ])('at %d° on day %i: %d° and %d W/m²', (latitudeN, day, sunset, wPerM2) => {
    const found = sunDay(day, latitudeN);
    expect(found.sunset).toBeCloseTo(radians(sunset), 4);
    expect(found.aboveAirWPerM2).toBeCloseTo(wPerM2, 1);
  });
});

test.each([
  // The distribution of Bendt, Collares-Pereira and Rabl, turned round by halving intervals.
  [0.2, 0.08443, 0.17913, 0.36773],
  [0.3, 0.1106, 0.26523, 0.50778],
  [0.5, 0.28028, 0.54071, 0.70217],
  [0.6, 0.43381, 0.64721, 0.75311],
])('three days of a mean clearness of %d', (mean, ...days) => {
  clearnessOfDays(mean, 3).forEach((one, i) => {
    expect(one).toBeCloseTo(days[i]!, 4);
  });
});

test.each([
  // Day's clearness, declination; each hour at 52° N, worked out of the sine of the sun's height.
  [0.35, 10, [0.27199, 0.33199, 0.24007, 0.2639, 0.45161, 0.44212, 0.36184, 0.33961, 0.34471]],
  [0.6, -5, [0, 0.5643, 0.49482, 0.56883, 0.69834, 0.67802, 0.59929, 0.54434, 0.53965]],
  [0.75, 20, [0.64171, 0.73088, 0.72159, 0.77556, 0.79743, 0.77966, 0.75519, 0.71545, 0.71001]],
])('hours of a day of clearness %d at a declination of %d°', (ofDay, declinationDegrees, hours) => {
  const declination = radians(declinationDegrees);
  const sunset = Math.acos(-Math.tan(declination) * Math.tan(radians(52)));
  const clouds = [1, -0.5, 2, 0.3, 0.8, 0.1].values();
  const angles = Float64Array.from([-100, -52.5, -45, -7.5, 0, 30, 37.5, 60, 67.5], radians);
  const clear = clearnessOfHours(ofDay, { declination, sunset }, 52, angles, () => clouds.next().value!);
  expect([...clear].map((one) => Number(one.toFixed(5)))).toEqual(hours);
});

test('the days of a month are as clear as their draws are high, each like the one before by 0.3', () => {
  const clear = clearnessOfYear(horizontalWPerM2(midlands, reference.sun), midlands.latitudeN, slots);
  const normal = normalNumbers(20_261_129);
  let last = 0;
  const drawn = everyDay.map(() => (last = 0.3 * last + Math.sqrt(0.91) * normal()));
  for (let month = 0; month < 12; month++) {
    const days = everyDay.filter((day) => monthOf(day) === month).sort((a, b) => drawn[a]! - drawn[b]!);
    const aboveAir = days.reduce((sum, day) => sum + sunDay(day, midlands.latitudeN).aboveAirWPerM2, 0) / days.length;
    const mean = horizontalWPerM2(midlands, reference.sun)[month]! / aboveAir;
    clearnessOfDays(mean, days.length).forEach((one, place) => {
      expect(clear[days[place]!]).toBeCloseTo(one, 12);
    });
  }
});

test.each([
  ['SW', 35],
  ['N', 80],
  ['E', 90],
] as const)(
  'light on a slope to the %s at %d° is that of sky, beam and ground by their angles',
  (facing, pitchDegrees) => {
    const clear = clearnessOfYear(horizontalWPerM2(midlands, reference.sun), midlands.latitudeN, slots);
    const cloud = normalNumbers(20_261_130);
    const latitude = radians(midlands.latitudeN);
    const pitch = radians(pitchDegrees);
    const azimuth = radians({ SW: 45, N: 180, E: -90 }[facing]);
    // East, north and up.
    const panels = [-Math.sin(pitch) * Math.sin(azimuth), -Math.sin(pitch) * Math.cos(azimuth), Math.cos(pitch)];
    const light = new Float64Array(slots.count);
    for (const day of everyDay) {
      const { declination, sunset, dialMinutes, aboveAirWPerM2 } = sunDay(day, midlands.latitudeN);
      const number = toDayNumber('2027-01-01') + day;
      const utc = startOfDay('Europe/London', number) / 60_000 - number * 1440;
      const [first, end] = [slots.dayStart[day]!, slots.dayStart[day + 1]!];
      // A sundial at 1.5° west is 6 minutes behind Greenwich; 15° are an hour.
      const angles = Float64Array.from({ length: end - first }, (_, i) =>
        radians((utc + 30 * i + 15 - 6 + dialMinutes) / 4 - 180),
      );
      const hours = clearnessOfHours(clear[day]!, { declination, sunset }, midlands.latitudeN, angles, cloud);
      hours.forEach((k, i) => {
        const [hour, d] = [angles[i]!, declination];
        const up = Math.sin(d) * Math.sin(latitude) + Math.cos(d) * Math.cos(latitude) * Math.cos(hour);
        const sun = [
          -Math.cos(d) * Math.sin(hour),
          Math.sin(d) * Math.cos(latitude) - Math.cos(d) * Math.sin(latitude) * Math.cos(hour),
          up,
        ];
        const onPanels = sun.reduce((sum, one, axis) => sum + one * panels[axis]!, 0);
        const flat = k * Math.max(0, Math.cos(hour) - Math.cos(sunset)) * aboveAirWPerM2;
        // Erbs, Klein and Duffie: by ranges of the clearness.
        const erbs = 0.9511 - 0.1604 * k + 4.388 * k * k - 16.638 * k ** 3 + 12.336 * k ** 4;
        const sky = flat * (k > 0.8 ? 0.165 : k > 0.22 ? erbs : 1 - 0.09 * k);
        const beam = up > 0.05 && onPanels > 0 ? ((flat - sky) * onPanels) / up : 0;
        light[first + i] = (sky * (1 + panels[2]!)) / 2 + beam + (0.2 * flat * (1 - panels[2]!)) / 2;
      });
    }
    const made = roofByHalfHour([{ kWp: 4, facing, pitchDegrees, shading: 'little' }], midlands, slots, reference.sun);
    const byMonth = (values: Float64Array) =>
      values.reduce(
        (months, one, slot) => months.with(slots.month[slot]!, months[slots.month[slot]!]! + one),
        new Array<number>(12).fill(0),
      );
    const [lightOf, madeOf] = [byMonth(light), byMonth(made)];
    const worst = made.reduce((most, kWh, slot) => {
      const month = slots.month[slot]!;
      return Math.max(most, Math.abs(kWh - (light[slot]! * madeOf[month]!) / lightOf[month]!));
    }, 0);
    expect(worst).toBeLessThan(1e-9);
  },
);
