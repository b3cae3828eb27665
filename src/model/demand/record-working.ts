/** The record's estimate of yearly heat with the sums it came from. */

import { toCivilDate } from '../calendar/civil.ts';
import type { DemandEstimate } from '../shapes/appraisal.ts';
import type { Reference } from '../shapes/reference.ts';
import type { Grade, Working } from '../shapes/working.ts';
import { together } from './figure.ts';
import type { FittedRecord } from './fit-record.ts';
import type { HotWaterDemand } from './hot-water.ts';
import { efficiencyInput, type PresentEfficiency } from './present-efficiency.ts';
import type { HeatRecord } from './record.ts';
import type { TypicalUse } from './record-use.ts';
import { type BaseSplit, UNCOUNTED_KWH } from './split-base.ts';

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
    title: 'Heat for the rooms, from the record',
    formula: 'use of a typical year that follows the weather × seasonal efficiency',
    inputs: [
      {
        name: 'use that follows the weather',
        value: use.spaceKWh,
        unit: 'kWh',
        grade,
        origin: originOf(record, fitted),
      },
      efficiencyInput('seasonal efficiency for the rooms', efficiency.space),
    ],
    result: { value: spaceKWh, unit: 'kWh a year' },
    source: 'three-parameter energy signature by ordinary least squares; seasonal efficiency as named',
    steps: [workingOfUse(record, fitted, use, reference), workingOfWater(record, use, of, efficiency, grade)],
  };
  const water =
    split.waterKWh === undefined ? {} : { waterKWh: split.waterKWh, waterErrorKWh: split.waterErrorKWh ?? 0 };
  return { way: 'record', spaceKWh, spaceErrorKWh, ...water, grade, working };
}

function originOf(record: HeatRecord, fitted: FittedRecord): string {
  const first = record.spans[0]!;
  const last = record.spans.at(-1)!;
  const names = record.series.map((s) => s.name).join(', ');
  return `${names}: ${Math.round(fitted.kWh)} kWh from ${toCivilDate(first.first)} to ${toCivilDate(last.first + last.days)}`;
}

function workingOfUse(record: HeatRecord, fitted: FittedRecord, use: TypicalUse, reference: Reference): Working {
  const grade: Grade = fitted.estimatedShare > 0 || record.deliveries ? 'estimated' : 'measured';
  const degreeDays = {
    name: 'degree days of the typical year',
    value: use.degreeDays,
    unit: `K·day to ${use.baseC} °C`,
    grade: 'estimated' as const,
    origin: 'monthly means of the region',
  };
  const origin = originOf(record, fitted);
  const bySignature = use.by === 'signature' && use.degreeDays > 0;
  // All base temperatures answered together: this is the slope that gives their answer at the mean one.
  const slope = bySignature ? use.spaceKWh / use.degreeDays : 0;
  const inputs = bySignature
    ? [{ name: 'slope', value: slope, unit: 'kWh per K and day', grade, origin }, degreeDays]
    : [{ name: 'total of the record', value: fitted.kWh, unit: 'kWh', grade, origin }, degreeDays];
  const habits = reference.spread.habits;
  return {
    title: 'Use that follows the weather',
    formula: bySignature
      ? 'slope of the signature × degree days of the typical year'
      : '(total − daily base × days) × degree days of the typical year / degree days of the span',
    inputs: [
      ...inputs,
      {
        name: 'habits from year to year',
        value: habits.value,
        unit: 'of the use',
        grade: 'estimated',
        origin: habits.source,
      },
    ],
    result: { value: use.spaceKWh, unit: 'kWh a year' },
    ...(bySignature
      ? {
          source:
            'energy signature by least squares; base temperatures from 8 to 22 °C weighed by fit and by what homes are like',
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
    title: 'Heat for hot water, from the record',
    formula:
      'what the people need, moved towards (use of every day − what else runs in any weather) × seasonal efficiency, as far as the spread of each allows',
    inputs: [
      {
        name: 'what the people need',
        value: water.kWh,
        unit: 'kWh a year',
        grade: water.grade,
        origin: `sum below, ± ${Math.round(water.errorKWh)} kWh (one standard error)`,
      },
      {
        name: 'use of every day',
        value: use.baseKWh,
        unit: 'kWh a year',
        grade,
        origin: `base of the record, ± ${Math.round(use.baseErrorKWh)} kWh (one standard error)`,
      },
      {
        name: whole ? 'lights and appliances' : 'cooking',
        value: split.besideKWh,
        unit: 'kWh a year',
        grade: 'assumed',
        origin: whole ? 'SAP 10.2 Appendix L, from memory' : 'BREDEM 2012, from memory',
      },
      efficiencyInput('seasonal efficiency for hot water', efficiency.water),
      {
        name: 'left over: losses and anything else',
        value: split.leftoverKWh,
        unit: 'kWh a year',
        grade: 'estimated',
        origin: `what neither explains; ${UNCOUNTED_KWH} kWh are usual (pipes between boiler and cylinder, SAP 2009 Table 3)`,
      },
    ],
    result: { value: split.waterKWh ?? 0, unit: 'kWh a year' },
    source: 'Bayes’ rule: need and cooking normal, the rest exponential',
    steps: [water.working],
  };
}
