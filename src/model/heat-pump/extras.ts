/** Electricity that the household's meter sees and the typed factor does not count, each as a line of its own. */
import type { Boundary } from '../shapes/household.ts';
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
  readonly origin: string;
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
  readonly backupShare: { readonly value: number; readonly grade: Grade; readonly origin: string } | null;
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
export const STANDBY_SOURCE = 'declared no-load powers of 123 brine units: median standby 11 W';
export const EXAMPLE_SOURCE =
  'worked example of an 8 kW house: 90 W source pump, 45 W circulator; a judgement, not a measurement';

const assumed = (name: string, value: number, unit: string, origin: string): WorkingInput => ({
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
  if (outside('H3') && input.backupShare && input.backupShare.value > 0) lines.push(backup(input, input.backupShare));
  if (input.pasteurisation && input.waterKWh > 0) lines.push(pasteurise(input.pasteurisation));
  if (outside('H4') && input.spaceKWh > 0) lines.push(circulator(input.spaceKWh, input.capacityKW));
  return lines.filter((line) => line.kWh > 0);
}

function line(name: ExtraName, grade: Grade, working: Working): ExtraLine {
  return { name, kWh: working.result.value, grade, working };
}

function standby(): ExtraLine {
  return line('standby', 'assumed', {
    title: 'Standby of the machine',
    formula: 'power × hours of the year / 1000',
    inputs: [assumed('Standby power', STANDBY_W, 'W', STANDBY_SOURCE), assumed('Hours', 8760, 'h', 'a year')],
    result: { value: (STANDBY_W * 8760) / 1000, unit: 'kWh' },
    source: STANDBY_SOURCE,
  });
}

function sourcePump(heatKWh: number, capacityKW: number): ExtraLine {
  const watts = SOURCE_PUMP_W_PER_KW * capacityKW;
  const hours = heatKWh / capacityKW;
  return line('source-pump', 'assumed', {
    title: 'Pump or fan of the source',
    formula: 'power × hours of running / 1000, hours = heat / output of the machine',
    inputs: [
      assumed('Pump power', watts, 'W', EXAMPLE_SOURCE),
      assumed('Hours of running', hours, 'h', `${Math.round(heatKWh)} kWh at ${capacityKW.toFixed(1)} kW`),
    ],
    result: { value: (watts * hours) / 1000, unit: 'kWh' },
    source: EXAMPLE_SOURCE,
  });
}

function backup(input: ExtrasInput, share: NonNullable<ExtrasInput['backupShare']>): ExtraLine {
  const heatKWh = input.spaceKWh + input.waterKWh;
  const pumpedKWh = input.spaceKWh / input.spaceFactor + input.waterKWh / input.waterFactor;
  return line('backup', share.grade, {
    title: 'Resistance heater in place of the machine',
    formula: 'share × (heat − electricity that the machine would have used for it)',
    inputs: [
      { name: 'Share of all heat', value: share.value, grade: share.grade, origin: share.origin },
      { name: 'Heat', value: heatKWh, unit: 'kWh', grade: 'estimated', origin: 'heat needed' },
      {
        name: 'Electricity of the machine',
        value: pumpedKWh,
        unit: 'kWh',
        grade: 'estimated',
        origin: 'heat / factor',
      },
    ],
    result: { value: Math.max(0, share.value * (heatKWh - pumpedKWh)), unit: 'kWh' },
    source: 'identity: a share x of resistance heat beside a factor S adds x (S − 1) to the electricity',
  });
}

/** Heat [kWh a year] of bringing the cylinder to 60 °C once a week: 52 × litres × 4.18 × (60 − from) / 3600. */
export function pasteurisationKWh(litres: number, fromC: number): number {
  return (52 * litres * 4.18 * Math.max(0, 60 - fromC)) / 3600;
}

function pasteurise(how: Pasteurisation): ExtraLine {
  return line('pasteurisation', how.grade, {
    title: 'Weekly heating of the cylinder to 60 °C by the immersion heater',
    formula: '52 × litres × 4.18 × (60 − temperature) / 3600',
    inputs: [
      { name: 'Cylinder', value: how.litres, unit: 'litres', grade: how.grade, origin: how.origin },
      { name: 'Temperature it is kept at', value: how.fromC, unit: '°C', grade: how.grade, origin: how.origin },
    ],
    result: { value: pasteurisationKWh(how.litres, how.fromC), unit: 'kWh' },
    source: 'specific heat of water 4.18 kJ/(kg K)',
  });
}

function circulator(spaceKWh: number, capacityKW: number): ExtraLine {
  const hours = Math.min(CIRCULATOR_HOURS, (CIRCULATING_PER_FULL_HOUR * spaceKWh) / capacityKW);
  return line('circulator', 'assumed', {
    title: 'Pump of the heating circuit',
    formula: 'power × hours of the season / 1000',
    inputs: [
      assumed('Pump power', CIRCULATOR_W, 'W', EXAMPLE_SOURCE),
      assumed('Hours', hours, 'h', 'heating season, at most 4,200 h'),
    ],
    result: { value: (CIRCULATOR_W * hours) / 1000, unit: 'kWh' },
    source: EXAMPLE_SOURCE,
  });
}
