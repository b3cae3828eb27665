/** The machine, by whichever way the household asks for. */
import type { TypicalYear } from '../weather/typical-year.ts';
import { reckonFullMachine } from './full/full-machine.ts';
import { type MachineInput, type ReckonedMachine, reckonMachine } from './quick-factors.ts';

export interface YearOfHeat {
  readonly year: TypicalYear;
  /** Share of each day in the year's heat for rooms; sums to 1. */
  readonly spaceShare: ArrayLike<number>;
}

/** Factors [1] and electricity [kWh a year] of the machine: worked out by the half-hour where `machine.way` is full, else as typed. */
export function reckonEitherWay(input: MachineInput & YearOfHeat): ReckonedMachine {
  return input.household.machine.way === 'full' ? reckonFullMachine(input) : reckonMachine(input);
}
