/** Ways (c) and (d): the certificate's own figures, and floor area with age where nothing better is to hand. */

import { COMMON_MONTH_DAYS } from '../calendar/civil.ts';
import type { DemandEstimate } from '../shapes/appraisal.ts';
import type { Household } from '../shapes/household.ts';
import type { ClimateRegion, EfficiencyDefault, Reference } from '../shapes/reference.ts';
import { tell } from '../shapes/told.ts';
import { BASE_C, FLOOR_AREA_M2 } from '../shapes/usual-home.ts';
import { type WorkingInput, weakestGrade } from '../shapes/working.ts';
import { degreeDaysHitchin } from '../weather/degree-days.ts';
import { CERTIFICATE_ERROR, TEN_PERCENT } from './demand-assumptions.ts';

/** Heat of a typical year [kWh] as the energy certificate states it; null where no figure was typed. */
export function demandFromCertificate(heat: Household['heat']): DemandEstimate | null {
  const space = heat.certificateSpaceKWh;
  if (!space) return null;
  const water = heat.certificateWaterKWh;
  return {
    way: 'certificate',
    spaceKWh: space.value,
    spaceErrorKWh: CERTIFICATE_ERROR * space.value,
    ...(water ? { waterKWh: water.value, waterErrorKWh: CERTIFICATE_ERROR * water.value } : {}),
    grade: weakestGrade(['estimated', space.grade]),
    working: {
      title: tell('room-heat-by-certificate'),
      formula: tell('certificate-formula'),
      inputs: [{ name: tell('space-heating'), unit: tell('kwh-a-year'), ...space }],
      result: { value: space.value, unit: tell('kwh-a-year') },
      source: tell('certificate-with-doubt'),
    },
  };
}

const degreeDaysOf = (region: ClimateRegion): number =>
  region.monthlyMeanC.reduce((sum, mean, m) => sum + degreeDaysHitchin(mean, COMMON_MONTH_DAYS[m]!, BASE_C), 0);

/**
 * Heat for the rooms of a typical year [kWh] = floor area × heat per m² of the age band × degree days of the region
 * over those of the United Kingdom. Without an area a typical British home stands in. Source: the table's own rows.
 */
export function demandFromFloorArea(
  home: Household['home'],
  region: ClimateRegion,
  reference: Reference,
): DemandEstimate {
  const row = home.ageBand ? reference.spacePerM2.find((r) => r.ageBand === home.ageBand?.value) : undefined;
  const perM2 = row ?? meanOf(reference.spacePerM2);
  const area: WorkingInput & { value: number } = home.floorAreaM2
    ? { name: tell('floor-area'), unit: 'm²', ...home.floorAreaM2 }
    : {
        name: tell('floor-area'),
        value: FLOOR_AREA_M2,
        unit: 'm²',
        grade: 'assumed',
        origin: tell('usual-home-area'),
      };
  const average = reference.regions.find((r) => r.id === 0) ?? reference.regions[0] ?? region;
  const climate = degreeDaysOf(region) / degreeDaysOf(average);
  const spaceKWh = area.value * perM2.middle * climate;
  const share = Math.log(perM2.high / perM2.low) / (2 * TEN_PERCENT);
  // An area nobody named may be half or double.
  const areaShare = home.floorAreaM2 ? 0 : 0.4;
  return {
    way: 'floor-area',
    spaceKWh,
    spaceErrorKWh: Math.hypot(share, areaShare) * spaceKWh,
    grade: 'assumed',
    working: {
      title: tell(home.floorAreaM2 ? 'room-heat-by-floor-area' : 'room-heat-of-usual-home'),
      formula: tell('area-by-climate'),
      inputs: [
        area,
        {
          name: tell('heat-per-area'),
          value: perM2.middle,
          unit: tell('kwh-a-square-metre-and-year'),
          grade: 'assumed',
          origin: row?.ageBand ? tell('built-in-band', { band: row.ageBand }) : tell('age-not-known'),
        },
        { name: tell('climate'), value: climate, unit: tell('of-uk-average'), grade: 'estimated', origin: region.name },
      ],
      result: { value: spaceKWh, unit: tell('kwh-a-year') },
      source: perM2.source,
    },
  };
}

/** Where the age is not known: the mean of the middles, as wide as the bands are within and among themselves. */
function meanOf(rows: Reference['spacePerM2']): EfficiencyDefault {
  const first = rows[0]!;
  const mean = (of: (row: EfficiencyDefault) => number) => rows.reduce((sum, row) => sum + of(row), 0) / rows.length;
  const middle = mean((row) => row.middle);
  const within = mean((row) => Math.log(row.high / row.low) / 2);
  const among = TEN_PERCENT * Math.sqrt(mean((row) => Math.log(row.middle / middle) ** 2));
  const reach = Math.exp(Math.hypot(within, among));
  return { middle, low: middle / reach, high: middle * reach, source: first.source, provenance: first.provenance };
}
