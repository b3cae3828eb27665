/** The seasonal performance factor (SPF), full way: a year of half-hours in, the same answer out as from two typed factors. */

import { evenSpread, type Spread } from '../../chance/multiplier.ts';
import { normalShare } from '../../chance/normal-share.ts';
import type { Figure, MachineResult, Question } from '../../shapes/appraisal.ts';
import type { Household } from '../../shapes/household.ts';
import type { FieldFactor } from '../../shapes/reference.ts';
import { type Grade, weakestGrade } from '../../shapes/working.ts';
import { describeField, factorFigure } from '../factor-spread.ts';
import { COMES_TRUE } from '../field-step.ts';
import type { ReckonedMachine } from '../spf-from-factors.ts';
import { askAboutFull } from './full-questions.ts';
import { extraLines, factorWorking, wholeWorking } from './full-working.ts';
import { runYear } from './run-year.ts';
import { type SettleInput, settleFull } from './settle.ts';
import type { FullYear } from './year.ts';

export interface FullReckoned extends ReckonedMachine {
  readonly full: FullYear;
}

/**
 * Relative standard deviation of a real machine's COP about the one worked out for the same source and flow, where its
 * data sheet is known, and where the machine itself is assumed. Judgements.
 */
const DEVIATION = { sheet: 0.11, assumed: 0.14 };
export const fullWaySpread = ({ full }: Household['machine']): Spread =>
  evenSpread(full?.ratedPoints ? DEVIATION.sheet : DEVIATION.assumed);

/**
 * The same of a year, in which the settings of the home are not known: what metered homes spread by, less half of what
 * sheet, emitters and flow make of it among typical homes worked out so (0.13), since of a design half comes true.
 */
function yearSpread({ full }: Household['machine'], { deviation }: FieldFactor): Spread {
  const told = full?.ratedPoints ? COMES_TRUE * TOLD_DEVIATION : 0;
  return evenSpread(Math.sqrt(deviation ** 2 - told ** 2));
}
const TOLD_DEVIATION = 0.13;

/**
 * Seasonal factors [1] and electricity [kWh a year, and by the half-hour] of a machine worked out from its data sheet.
 * Factors for rooms and hot water are those of the tested COP (H1, with the fan of an air machine H2, without standby); pumps, resistance, standby and the
 * weekly heating of the cylinder are lines of their own; the whole factor is H4 (SEPEMO-Build D4.2).
 */
export function reckonFullMachine(settle: SettleInput): FullReckoned {
  const settled = settleFull(settle);
  const full = runYear(settled.input);
  const { household, demand, reference } = settle;
  const { machine } = household;
  const { year } = full;
  const field = reference.fieldFactor[machine.source];
  const grade: Grade = weakestGrade(['estimated', ...settled.inputs.slice(0, 1).map((input) => input.grade)]);
  const spread = yearSpread(machine, field);
  const parts = { settled, full };
  const spaceValue = year.spaceHeatKWh > 0 ? year.spaceHeatKWh / year.electricityKWh.space : 1;
  const waterValue = year.waterHeatKWh > 0 ? year.waterHeatKWh / year.electricityKWh.water : 1;
  const space = factorFigure({ value: spaceValue, grade }, spread, factorWorking('rooms', spaceValue, parts));
  const water = factorFigure({ value: waterValue, grade }, spread, factorWorking('hot water', waterValue, parts));
  const extras = extraLines(parts);
  const extraKWh = extras.reduce((sum, line) => sum + line.kWh, 0);
  const heatKWh = year.spaceHeatKWh + year.waterHeatKWh + year.resistanceHeatKWh;
  const wholeAt = (spaceFactor: number, waterFactor: number) => {
    const kWh = year.spaceHeatKWh / spaceFactor + year.waterHeatKWh / waterFactor + extraKWh;
    return kWh > 0 && heatKWh > 0 ? heatKWh / kWh : spaceFactor;
  };
  const wholeValue = wholeAt(space.value, water.value);
  const whole: Figure = {
    value: wholeValue,
    low: wholeAt(space.low, water.low),
    high: wholeAt(space.high, water.high),
    unit: '',
    grade: weakestGrade([grade, demand.total.grade]),
    working: wholeWorking(wholeValue, parts, extras, space, water),
  };
  const result: MachineResult = {
    source: machine.source,
    // The tested COP of an air machine holds its fan (EN 14511).
    boundary: machine.source === 'air' ? 'H2' : 'H1',
    space,
    water,
    whole,
    ...(settled.installedShare < 1
      ? { asDesigned: asDataSheet(space, water, settled.installedShare, spread, wholeAt) }
      : {}),
    extraKWh,
    fieldSpread: describeField(field),
  };
  const questions: Question[] = askAboutFull(household, settled, full, whole.value, field);
  return {
    machine: result,
    questions,
    extras,
    spaceKWh: year.electricityKWh.space,
    waterKWh: year.electricityKWh.water,
    spaceSpread: spread,
    waterSpread: spread,
    bySlot: full.bySlot,
    full,
  };
}

/** What the data sheet promises: the factors without what installed machines fall short of it, which is the step of this way. */
function asDataSheet(
  space: Figure,
  water: Figure,
  installedShare: number,
  spread: Spread,
  wholeAt: (spaceFactor: number, waterFactor: number) => number,
): NonNullable<MachineResult['asDesigned']> {
  const [rooms, hotWater] = [space.value / installedShare, water.value / installedShare];
  return {
    space: rooms,
    water: hotWater,
    whole: wholeAt(rooms, hotWater),
    reachedShare: normalShare(Math.log(installedShare) / spread.above),
  };
}
