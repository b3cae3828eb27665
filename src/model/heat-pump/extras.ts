/** Electricity that the household's meter sees and the typed factor does not count, each as a line of its own. */
import type { Boundary } from '../shapes/household.ts';
import { type Told, tell, type Wording } from '../shapes/told.ts';
import type { Grade, Working, WorkingInput } from '../shapes/working.ts';
import { isInside } from './boundaries.ts';

export type ExtraName = 'standby' | 'source-pump' | 'backup' | 'pasteurisation' | 'circulator';
export interface ExtraLine {
  readonly name: ExtraName;
  readonly kWh: number;
  readonly grade: Grade;
  readonly working: Working;
}

export interface Pasteurisation {
  readonly litres: number;
  readonly fromC: number;
  readonly grade: Grade;
  readonly origin: Wording;
}

export interface ExtrasInput {
  /** Heat from the heat pump, kWh a year. */
  readonly spaceKWh: number;
  readonly waterKWh: number;
  readonly spaceFactor: number;
  readonly waterFactor: number;
  readonly boundary: Boundary;
  /** A metered factor has standby in it; a reckoned one is for the hours of running (SCOPon). */
  readonly metered: boolean;
  /** Output of the machine at design, kW. */
  readonly capacityKW: number;
  readonly backupShare: { readonly value: number; readonly grade: Grade; readonly origin: Wording } | null;
  /** Null where none is done or the hot-water factor already has it inside. */
  readonly pasteurisation: Pasteurisation | null;
}

/** Worked example of an 8 kW house: source pump 90 W, circulator 45 W for 4,200 h, standby 10 W. */
export const SOURCE_PUMP_W_PER_KW = 90 / 8;
export const CIRCULATOR_W = 45;
const CIRCULATOR_HOURS = 4200;
/** An hour of full load is at most four of circulating, so that a home needing hardly any heat circulates hardly at all. */
export const CIRCULATING_PER_FULL_HOUR = 4;
export const STANDBY_W = 10;
export const STANDBY_SOURCE = tell('standby-source');
export const EXAMPLE_SOURCE = tell('example-source');

const assumed = (name: Told, value: number, unit: string, origin: Wording): WorkingInput => ({
  name,
  value,
  unit,
  grade: 'assumed',
  origin,
});

/** The lines [kWh a year] outside the typed boundary, in the order of the boundaries; none where no heat is needed. */
export function reckonExtras(input: ExtrasInput): ExtraLine[] {
  const heatKWh = input.spaceKWh + input.waterKWh;
  if (!(heatKWh > 0)) return [];
  const lines: ExtraLine[] = [];
  const outside = (line: Boundary) => !isInside(line, input.boundary);
  if (outside('H4') && !input.metered) lines.push(standby());
  if (outside('H2')) lines.push(sourcePump(heatKWh, input.capacityKW));
  if (outside('H3') && input.backupShare) lines.push(backup(input, input.backupShare));
  if (input.pasteurisation && input.waterKWh > 0) lines.push(pasteurise(input.pasteurisation));
  if (outside('H4')) lines.push(circulator(input.spaceKWh, input.capacityKW));
  return lines.filter((line) => line.kWh > 0);
}

function line(name: ExtraName, grade: Grade, working: Working): ExtraLine {
  return { name, kWh: working.result.value, grade, working };
}

function standby(): ExtraLine {
  return line('standby', 'assumed', {
    title: tell('standby-line'),
    formula: tell('power-by-year'),
    inputs: [
      assumed(tell('standby-power'), STANDBY_W, 'W', STANDBY_SOURCE),
      assumed(tell('hours'), 8760, 'h', tell('a-year')),
    ],
    result: { value: (STANDBY_W * 8760) / 1000, unit: 'kWh' },
    source: STANDBY_SOURCE,
  });
}

function sourcePump(heatKWh: number, capacityKW: number): ExtraLine {
  const watts = SOURCE_PUMP_W_PER_KW * capacityKW;
  const hours = heatKWh / capacityKW;
  return line('source-pump', 'assumed', {
    title: tell('source-pump-line'),
    formula: tell('power-by-running'),
    inputs: [
      assumed(tell('pump-power'), watts, 'W', EXAMPLE_SOURCE),
      assumed(tell('hours-of-running'), hours, 'h', tell('heat-at-output', { heatKWh, capacityKW })),
    ],
    result: { value: (watts * hours) / 1000, unit: 'kWh' },
    source: EXAMPLE_SOURCE,
  });
}

function backup(input: ExtrasInput, share: NonNullable<ExtrasInput['backupShare']>): ExtraLine {
  const heatKWh = input.spaceKWh + input.waterKWh;
  const pumpedKWh = input.spaceKWh / input.spaceFactor + input.waterKWh / input.waterFactor;
  return line('backup', share.grade, {
    title: tell('backup-line'),
    formula: tell('share-of-rest'),
    inputs: [
      { name: tell('share-of-heat'), value: share.value, grade: share.grade, origin: share.origin },
      { name: tell('heat'), value: heatKWh, unit: 'kWh', grade: 'estimated', origin: tell('heat-needed-origin') },
      {
        name: tell('electricity-of-machine'),
        value: pumpedKWh,
        unit: 'kWh',
        grade: 'estimated',
        origin: tell('heat-by-factor'),
      },
    ],
    result: { value: share.value * (heatKWh - pumpedKWh), unit: 'kWh' },
    source: tell('backup-identity'),
  });
}

/** Heat [kWh a year] of bringing the cylinder to 60 °C once a week: 52 × litres × 4.18 × (60 − from) / 3600. */
export function pasteurisationKWh(litres: number, fromC: number): number {
  return (52 * litres * 4.18 * Math.max(0, 60 - fromC)) / 3600;
}

function pasteurise(how: Pasteurisation): ExtraLine {
  return line('pasteurisation', how.grade, {
    title: tell('pasteurisation-line'),
    formula: tell('litres-to-sixty'),
    inputs: [
      { name: tell('cylinder'), value: how.litres, unit: tell('litres'), grade: how.grade, origin: how.origin },
      { name: tell('kept-at'), value: how.fromC, unit: '°C', grade: how.grade, origin: how.origin },
    ],
    result: { value: pasteurisationKWh(how.litres, how.fromC), unit: 'kWh' },
    source: tell('specific-heat'),
  });
}

function circulator(spaceKWh: number, capacityKW: number): ExtraLine {
  const hours = Math.min(CIRCULATOR_HOURS, (CIRCULATING_PER_FULL_HOUR * spaceKWh) / capacityKW);
  return line('circulator', 'assumed', {
    title: tell('circulator-line'),
    formula: tell('power-by-season'),
    inputs: [
      assumed(tell('pump-power'), CIRCULATOR_W, 'W', EXAMPLE_SOURCE),
      assumed(tell('hours'), hours, 'h', tell('season-hours')),
    ],
    result: { value: (CIRCULATOR_W * hours) / 1000, unit: 'kWh' },
    source: EXAMPLE_SOURCE,
  });
}
