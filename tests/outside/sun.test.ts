/** What a roof makes, is used and is paid for, against published results and rates. */
import { describe, expect, test } from 'vitest';
import { balanceHome } from '../../src/model/balance/balance-home.ts';
import { settleCar } from '../../src/model/balance/settle-home.ts';
import { yearSlots } from '../../src/model/calendar/zone.ts';
import { restBySlot, restOfHome } from '../../src/model/comparison/rest-of-home.ts';
import type { CivilDate } from '../../src/model/shapes/dates.ts';
import { emptyHousehold } from '../../src/model/shapes/household.ts';
import type { Facing } from '../../src/model/shapes/reference.ts';
import { exportPrice } from '../../src/model/sun/export-price.ts';
import { roofByHalfHour } from '../../src/model/sun/roof-by-half-hour.ts';
import { ownUseByStandard, slopeWPerM2, sunByMonth } from '../../src/model/sun/sun-by-month.ts';
import { reference, referenceOf } from '../../src/reference/index.ts';

const region = (id: number) => reference.regions.find((one) => one.id === id)!;
const panels = (kWp: number, facing: Facing, pitchDegrees: number, shading: 'little' | 'some' = 'little') => [
  { kWp, facing, pitchDegrees, shading },
];
const sum = (list: ArrayLike<number>) => Array.from(list).reduce((total, one) => total + one, 0);

describe('SAP 10.2 Appendices U and M', () => {
  test('outputs stored in a public implementation (sap10calcs): 1 kWp, 2.5 kWp and 5 kWp in modest shade', () => {
    expect(sum(sunByMonth(panels(1, 'S', 30), region(0), reference.sun))).toBeCloseTo(863.6196964310479, 9);
    const shaded = sunByMonth(panels(2.5, 'S', 30, 'some'), region(0), reference.sun);
    expect(sum(shaded)).toBeCloseTo(1727.239392862096, 9);
    const stored = [
      50.087, 83.58, 142.346, 190.772, 235.683, 231.714, 228.652, 199.774, 156.463, 106.846, 59.41, 41.914,
    ];
    shaded.forEach((kWh, month) => {
      expect(kWh).toBeCloseTo(stored[month]!, 3);
    });
    expect(sum(sunByMonth(panels(5, 'S', 30, 'some'), region(0), reference.sun))).toBeCloseTo(3454.4787857241918, 9);
  });

  test('vertical window to the south, January to March, W/m²', () => {
    [46.752065, 76.567835, 97.53384].forEach((wPerM2, month) => {
      expect(slopeWPerM2(panels(1, 'S', 90)[0]!, region(0), month, reference.sun)).toBeCloseTo(wPerM2, 6);
    });
  });

  test.each([
    // region, facing, slope; kWh of 4 kWp, worked out by hand of the tables
    [6, 'S', 30, 3532.01],
    [1, 'S', 30, 3648.32],
    [4, 'S', 30, 3906.07],
    [14, 'S', 30, 3284.27],
    [21, 'S', 30, 3411.56],
    [20, 'S', 30, 3086.49],
    [6, 'E', 30, 2987.0],
    [6, 'W', 30, 2987.0],
    [6, 'SE', 45, 3283.02],
    [6, 'SW', 45, 3283.02],
    [6, 'N', 30, 2393.36],
    [6, 'S', 90, 2478.74],
    [6, 'N', 0, 3130.75],
  ] as const)('region %d, %s at %d°: %d kWh', (id, facing, pitch, kWh) => {
    expect(sum(sunByMonth(panels(4, facing, pitch), region(id), reference.sun))).toBeCloseTo(kWh, 1);
  });

  test('Midlands by month; 13.9 % of the year from November to February', () => {
    const months = sunByMonth(panels(4, 'S', 30), region(6), reference.sun);
    [106.4, 168.1, 284.6, 386.1, 466.3, 479.7, 467.0, 412.0, 326.1, 220.7, 124.3, 90.5].forEach((kWh, month) => {
      expect(months[month]).toBeCloseTo(kWh, 1);
    });
    expect((months[10]! + months[11]! + months[0]! + months[1]!) / sum(months)).toBeCloseTo(0.139, 3);
  });

  test.each([
    // made, needed, battery kWh; own use as a share of what is made
    [100, 200, 0, 0.4863570787],
    [100, 200, 5, 0.7929003224],
    [50.087, 378.044, 0, 0.693736206],
    [463.427, 267.17, 0, 0.256389364],
    [300, 200, 15, 0.66667],
    [500, 100, 10, 0.2],
    [75, 100, 2, 0.53768],
  ])('own use of %d made and %d needed with %d kWh: %d', (made, needed, battery, share) => {
    expect(ownUseByStandard([made], [needed], battery) / made).toBeCloseTo(share, 5);
  });
});

test('2.9 kWp and 4,000 kWh a year: about the 37 % of British field data is used at home (McKenna, Pless and Darby)', () => {
  const slots = yearSlots(2027, 'Europe/London');
  const monthlyKWh = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31].map((days) => (days * 4000) / 365);
  const loadKWh = restBySlot(
    { ...restOfHome(emptyHousehold('h', 'Home'), []), monthlyKWh },
    slots,
    reference.homeHours,
  );
  const sunKWh = roofByHalfHour(panels(2.9, 'S', 30), region(0), slots, reference.sun);
  const flat = new Float64Array(slots.count).fill(25);
  const { ownUseKWh } = balanceHome({ slots, loadKWh, sunKWh, pencePerKWh: flat, exportPence: 5 });
  expect(ownUseKWh / sum(sunKWh)).toBeCloseTo(0.37, 2);
});

test('a wall to the south in Potsdam is near that of DIN V 18599-10, though the slope rule was made for Britain', () => {
  const german = referenceOf({ country: 'DE' });
  const stated = [59, 47, 98, 147, 132, 124, 113, 127, 123, 106, 39, 29];
  const worked = stated.map((_, month) => slopeWPerM2(panels(1, 'S', 90)[0]!, german.regions[0]!, month, german.sun));
  expect(sum(worked) / sum(stated)).toBeCloseTo(1, 1);
});

test.each([
  // first day and kWp; cents for a kWh of surplus, as the Federal Network Agency announced them
  ['2025-02-01', 8, 7.94],
  ['2025-08-01', 8, 7.86],
  ['2026-02-01', 10, 7.78],
  ['2024-08-15', 5, 8.03],
  ['2022-08-01', 10, 8.2],
  ['2026-08-01', 10, 7.7],
] as const)('feed-in by law from %s, %d kWp: %d ct', (on, kWp, cents) => {
  const { sun } = referenceOf({ country: 'DE' });
  const roof = { panels: panels(kWp, 'S', 30), exportedOn: on as CivilDate };
  expect(exportPrice(roof, sun, '2026-11-29' as CivilDate)?.value).toBeCloseTo(cents, 9);
});

test('above 10 kWp the rates are mixed by share; after the last day of the rule nothing is known', () => {
  const { sun } = referenceOf({ country: 'DE' });
  const on = (exportedOn: string, kWp: number) =>
    exportPrice({ panels: panels(kWp, 'S', 30), exportedOn: exportedOn as CivilDate }, sun, '2026-11-29' as CivilDate);
  expect(on('2025-02-01', 20)?.value).toBeCloseTo((7.94 + 6.88) / 2, 9);
  expect(on('2027-02-01', 8)).toBeNull();
  expect(on('2022-07-29', 8)).toBeNull();
  expect(on('2025-02-01', 41)).toBeNull();
});

test.each([
  [12_309, 2548],
  [15_906, 3293],
  [16_180, 3349],
  [7000 * 1.609344, 2332],
])('an electric car of %d km a year takes %d kWh', (km, kWh) => {
  const car = { kmPerYear: { value: km, grade: 'estimated', origin: '' } } as const;
  expect(settleCar(car, reference).kWhPerYear).toBeCloseTo(kWh, -0.5);
});
