/** The record's estimate of yearly heat with the sums it came from. */

import { toCivilDate } from '../calendar/civil.ts';
import type { DemandEstimate } from '../shapes/appraisal.ts';
import type { Reference } from '../shapes/reference.ts';
import { type Told, tell } from '../shapes/told.ts';
import type { Grade, Working } from '../shapes/working.ts';
import { together } from './figure.ts';
import type { FittedRecord } from './fit-record.ts';
import type { HotWaterDemand } from './hot-water.ts';
import { UNCOUNTED_KWH } from './known-base.ts';
import { efficiencyInput, type PresentEfficiency } from './present-efficiency.ts';
import type { HeatRecord } from './record.ts';
import type { TypicalUse } from './record-use.ts';
import type { BaseSplit } from './split-base.ts';

/** The estimate with its error and its working. */
export function estimateOfRecord(
  record: HeatRecord,
  fitted: FittedRecord,
  use: TypicalUse,
  of: { readonly split: BaseSplit; readonly water: HotWaterDemand },
  efficiency: PresentEfficiency,
  reference: Reference,
): DemandEstimate {
  const { split } = of;
  const spaceKWh = use.spaceKWh * efficiency.space.value;
  const spaceErrorKWh = together(use.spaceErrorKWh * efficiency.space.value, spaceKWh * efficiency.space.error);
  const measured =
    use.by === 'signature' &&
    fitted.weather.weather === 'own' &&
    fitted.estimatedShare === 0 &&
    efficiency.space.grade === 'measured';
  const grade: Grade = measured ? 'measured' : 'estimated';
  const working: Working = {
    title: tell('room-heat-by-record'),
    formula: tell('weather-use-by-efficiency'),
    inputs: [
      {
        name: tell('use-with-weather'),
        value: use.spaceKWh,
        unit: 'kWh',
        grade,
        origin: originOf(record, fitted),
      },
      efficiencyInput(tell('room-efficiency'), efficiency.space),
    ],
    result: { value: spaceKWh, unit: tell('kwh-a-year') },
    source: tell('least-squares-with-efficiency'),
    steps: [workingOfUse(record, fitted, use, reference), workingOfWater(record, use, of, efficiency, grade)],
  };
  const water = split.waterKWh === undefined ? {} : { waterKWh: split.waterKWh, waterErrorKWh: split.waterErrorKWh! };
  return { way: 'record', spaceKWh, spaceErrorKWh, ...water, grade, working };
}

function originOf(record: HeatRecord, fitted: FittedRecord): Told {
  const first = record.spans[0]!;
  const last = record.spans.at(-1)!;
  const names = record.series.map((s) => s.name).join(', ');
  const span = { from: { on: toCivilDate(first.first) }, to: { on: toCivilDate(last.first + last.days - 1) } };
  return tell('total-of-series', { names, kWh: fitted.kWh, ...span });
}

function workingOfUse(record: HeatRecord, fitted: FittedRecord, use: TypicalUse, reference: Reference): Working {
  const grade: Grade = fitted.estimatedShare > 0 || record.deliveries ? 'estimated' : 'measured';
  const degreeDays = {
    name: tell('typical-degree-days'),
    value: use.degreeDays,
    unit: tell('degree-days-to', { baseC: use.baseC }),
    grade: 'estimated' as const,
    origin: tell('monthly-means'),
  };
  const origin = originOf(record, fitted);
  const bySignature = use.by === 'signature' && use.degreeDays > 0;
  // All base temperatures answered together: this is the slope that gives their answer at the mean one.
  const slope = bySignature ? use.spaceKWh / use.degreeDays : 0;
  const inputs = bySignature
    ? [{ name: tell('slope'), value: slope, unit: tell('kwh-a-kelvin-and-day'), grade, origin }, degreeDays]
    : [{ name: tell('record-total'), value: fitted.kWh, unit: 'kWh', grade, origin }, degreeDays];
  const habits = reference.spread.habits;
  return {
    title: tell('weather-use'),
    formula: tell(bySignature ? 'slope-by-degree-days' : 'total-less-base'),
    inputs: [
      ...inputs,
      {
        name: tell('habits'),
        value: habits.value,
        unit: tell('of-the-use'),
        grade: 'estimated',
        origin: habits.source,
      },
    ],
    result: { value: use.spaceKWh, unit: tell('kwh-a-year') },
    ...(bySignature
      ? {
          source: tell('least-squares-weighed'),
        }
      : {}),
  };
}

function workingOfWater(
  record: HeatRecord,
  use: TypicalUse,
  { split, water }: { readonly split: BaseSplit; readonly water: HotWaterDemand },
  efficiency: PresentEfficiency,
  grade: Grade,
): Working {
  const whole = record.meter === 'whole-house';
  return {
    title: tell('water-heat-by-record'),
    formula: tell('need-moved-to-record'),
    inputs: [
      {
        name: tell('people-need'),
        value: water.kWh,
        unit: tell('kwh-a-year'),
        grade: water.grade,
        origin: tell('sum-below-with-error', { errorKWh: water.errorKWh }),
      },
      {
        name: tell('daily-use'),
        value: use.baseKWh,
        unit: tell('kwh-a-year'),
        grade,
        origin: tell('base-of-record', { errorKWh: use.baseErrorKWh }),
      },
      {
        name: tell(whole ? 'lights-and-appliances' : 'cooking'),
        value: split.besideKWh,
        unit: tell('kwh-a-year'),
        grade: 'assumed',
        origin: tell(whole ? 'appliances-source' : 'cooking-source'),
      },
      efficiencyInput(tell('water-efficiency'), efficiency.water),
      {
        name: tell('left-over'),
        value: split.leftoverKWh,
        unit: tell('kwh-a-year'),
        grade: 'estimated',
        origin: tell('neither-explains', { kWh: UNCOUNTED_KWH }),
      },
    ],
    result: { value: split.waterKWh ?? 0, unit: tell('kwh-a-year') },
    source: tell('bayes-rule'),
    steps: [water.working],
  };
}
