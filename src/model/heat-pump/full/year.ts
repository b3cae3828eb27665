/** What goes into and comes out of a machine's year by the half-hour: the shapes. */
import type { YearSlots } from '../../calendar/zone.ts';
import type { Boundary } from '../../shapes/household.ts';
import type { HeatingCurve } from './heating-curve.ts';
import type { Source } from './source.ts';
import type { Surface } from './surface.ts';

export interface YearInput {
  readonly slots: YearSlots;
  /** Outdoor temperature, one a half-hour, °C. */
  readonly outdoorC: Float64Array;
  /** Heat of the year for rooms, kWh, and its share of each day; the shares sum to 1. */
  readonly spaceKWh: number;
  readonly spaceShare: ArrayLike<number>;
  /** Heat for hot water, one a day, kWh. */
  readonly waterByDayKWh: Float64Array;
  readonly waterFlowC: number;
  /** When hot water is made, 48 weights of the half-hours of a day. */
  readonly waterHours: readonly number[];
  readonly source: Source;
  readonly curve: HeatingCurve;
  /** Electricity a unit of heat at full load, and most output [kW]. */
  readonly perHeat: Surface;
  readonly outputKW: Surface;
  /** Least share of its output that the machine runs at without stopping: 1 for one of fixed speed. */
  readonly leastShare: number;
  readonly degradation: number;
  /** Heat loss at the design outdoor temperature, kW; only the ground array is held against it. */
  readonly designKW: number;
  /** Share of all heat given by a resistance heater in any case; beyond that, what the output falls short of. */
  readonly backupShare: number;
  readonly pasteurisationKWh: number;
  /** Power of the pumps while the machine runs at its output, and of its controls at all times, W. */
  readonly sourcePumpW: number;
  readonly circulatorW: number;
  readonly standbyW: number;
}

/** Every use of electricity; each has its own half-hours. */
export const USES = ['space', 'water', 'source-pump', 'backup', 'pasteurisation', 'circulator', 'standby'] as const;
export type ElectricUse = (typeof USES)[number];

/** Electricity, one a half-hour, kWh. */
export type BySlot = { readonly [use in ElectricUse]: Float64Array };

/** Heat and electricity of a month or a year, kWh. */
export interface Balance {
  /** Given by the machine. */
  readonly spaceHeatKWh: number;
  readonly waterHeatKWh: number;
  /** Given by resistance heaters: in place of the machine, and the weekly heating of the cylinder. */
  readonly resistanceHeatKWh: number;
  /** Taken from ground or air. */
  readonly sourceHeatKWh: number;
  readonly electricityKWh: { readonly [use in ElectricUse]: number };
  /** Null where nothing is heated. */
  readonly factors: Readonly<Record<Boundary, number>> | null;
}

/** A year's half-hours at one outdoor temperature, to the nearest °C: hours, heat given and electricity taken [kWh]. */
export interface OutdoorHours {
  readonly outdoorC: number;
  readonly hours: number;
  readonly spaceHeatKWh: number;
  readonly spaceKWh: number;
  readonly waterHeatKWh: number;
  readonly waterKWh: number;
  /** Resistance in place of the machine. */
  readonly backupKWh: number;
}

export interface FullYear {
  readonly bySlot: BySlot;
  /** From the coldest up. */
  readonly byOutdoor: readonly OutdoorHours[];
  readonly year: Balance;
  readonly monthly: readonly Balance[];
  readonly electricityKWh: number;
  /** Means weighted by the heat for rooms, °C, and the share that stopping and starting leaves of the COP. */
  readonly means: { readonly flowC: number; readonly sourceC: number; readonly partLoad: number };
  /** Source of the day on which it is coldest, °C. */
  readonly coldestSourceC: number;
  /** Share of all heat from resistance in place of the machine. */
  readonly backupShare: number;
  /** Entering temperature of each day, °C. */
  readonly sourceByDayC: Float64Array;
}
