/** The English of every code that the model tells. */
import type { ToldCode } from '../../model/shapes/told.ts';
import { BILL } from './bill.ts';
import { COST } from './cost.ts';
import { FINDING } from './finding.ts';
import { HEAT } from './heat.ts';
import { INTAKE } from './intake.ts';
import { MACHINE } from './machine.ts';
import { ROUND } from './round.ts';
import { UNIT } from './unit.ts';

export const TOLD: Readonly<Record<ToldCode, string>> = {
  ...HEAT,
  ...MACHINE,
  ...ROUND,
  ...COST,
  ...BILL,
  ...FINDING,
  ...UNIT,
  ...INTAKE,
};
