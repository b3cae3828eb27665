/** One way of heating as a plan: what it buys for rooms and hot water, on which prices and at which hours. */

import type { z } from 'zod';
import type { Spread } from '../chance/multiplier.ts';
import type { ExtraLine } from '../heat-pump/extras.ts';
import type { ReckonedMachine } from '../heat-pump/spf-from-factors.ts';
import type { MachineResult, SystemId } from '../shapes/appraisal.ts';
import type { PricedCarrier, SYSTEMS, System } from '../shapes/heating.ts';
import type { WaterHours } from '../shapes/household.ts';
import type { Grade, Working, WorkingInput } from '../shapes/working.ts';
import type { Moves } from '../uncertainty/simulate.ts';

export type SystemName = z.infer<typeof SystemId>;
export type Hours = (typeof SYSTEMS)[System]['hours'];

export interface Plan {
  readonly id: SystemName;
  readonly kind: System | 'gas-assumed';
  readonly carrier: PricedCarrier;
  readonly hours: Hours;
  /** When hot water is made, where somebody has said so. */
  readonly waterHours?: WaterHours;
  readonly spaceEfficiency: number;
  readonly waterEfficiency: number;
  readonly spaceSpread: Spread;
  readonly waterSpread: Spread;
  readonly moves: Moves;
  /** Factors of the design, where those above are what homes get of it. */
  readonly asDesigned?: MachineResult['asDesigned'];
  readonly grade: Grade;
  /** Efficiencies with grade and origin, for the working. */
  readonly inputs: readonly WorkingInput[];
  readonly steps: readonly Working[];
  /** Bought for rooms and hot water, kWh a year. */
  readonly spaceKWh: number;
  readonly waterKWh: number;
  /** Lines of a machine beside its factors. */
  readonly extras: readonly ExtraLine[];
  /** Electricity of rooms, hot water and each line by the half-hour, kWh, where it was worked out so. */
  readonly bySlot?: ReckonedMachine['bySlot'];
  /** Electricity of a boiler's pump and fan, kWh a year. */
  readonly pumpKWh: number;
  readonly pumpSource: string;
  /** Hot water made by electricity beside a fuel, kWh a year. */
  readonly electricWaterKWh: number;
  readonly standing: 'gas' | 'none';
  readonly serviceGBP: WorkingInput & { readonly value: number };
  /** Relative standard deviation of its price. */
  readonly serviceSpread: number;
}
