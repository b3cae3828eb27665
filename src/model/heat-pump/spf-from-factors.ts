/** The seasonal performance factor (SPF), quick way: two factors and their boundary in, what the household's meter sees out. */

import { evenSpread, type Spread } from '../chance/multiplier.ts';
import type { Demand, Figure, MachineResult, Question, WhatIf } from '../shapes/appraisal.ts';
import type { Household } from '../shapes/household.ts';
import type { Reference } from '../shapes/reference.ts';
import { weakestGrade } from '../shapes/working.ts';
import { type ExtraLine, reckonExtras } from './extras.ts';
import { derivedSpread, describeField, factorFigure, fieldSpread, meteredSpread } from './factor-spread.ts';
import { type FieldStep, settleAtMiddle } from './field-step.ts';
import { factorWorking, wholeWorking } from './machine-working.ts';
import { findPasteurisation } from './pasteurisation.ts';
import type { SettledFactor, SettledFactors } from './settle-factors.ts';

export interface ReckonedMachine {
  readonly machine: MachineResult;
  readonly questions: Question[];
  /** Lines outside the typed boundary; they sum to `machine.extraKWh`. */
  readonly extras: readonly ExtraLine[];
  /** Electricity of a year, kWh: for rooms and hot water by their factors, and the lines. */
  readonly spaceKWh: number;
  readonly waterKWh: number;
  /** Spread of the real factors over the ones reckoned with. */
  readonly spaceSpread: Spread;
  readonly waterSpread: Spread;
  /** Electricity of every use by the half-hour, kWh, where it was worked out so. */
  readonly bySlot?: Readonly<Record<'space' | 'water' | ExtraLine['name'], Float64Array>>;
}

export interface MachineInput {
  readonly household: Household;
  readonly demand: Demand;
  readonly reference: Reference;
  readonly whatIf?: WhatIf;
}

/** Outdoor temperature for sizing where none was typed, °C; usual for lowland England. Common practice, no source. */
const CUSTOMARY_OUTDOOR_C = -3;
const SMALLEST_MACHINE_KW = 3;

/**
 * Seasonal factors [1] of the machine and the electricity [kWh a year] that its heat takes on the household's meter, both
 * in the middle of what homes get; the design's own factors stand beside them.
 * E = Q_space / F_space + Q_water / F_water + Σ lines outside the typed boundary;
 * whole factor = (Q_space + Q_water + heat of the weekly immersion) / E, which is the H4 of SEPEMO-Build D4.2.
 * Valid for factors of 1 to 8; others become a refusal and the field's middle stands in.
 */
export function reckonMachine({ household, demand, reference, whatIf }: MachineInput): ReckonedMachine {
  const { machine } = household;
  const settled = settleAtMiddle(household, reference, whatIf?.flowC);
  const { design, step } = settled;
  const pasteurisation = findPasteurisation(household, design);
  const heat = { spaceKWh: demand.space.value, waterKWh: demand.water.value };
  const capacityKW = Math.max(SMALLEST_MACHINE_KW, findCapacity(household, demand));
  const reckonAt = (spaceFactor: number, waterFactor: number) => {
    const extras = reckonExtras({
      ...heat,
      spaceFactor,
      waterFactor,
      boundary: design.boundary,
      metered: design.space.grade === 'measured',
      capacityKW,
      backupShare: machine.backupShare ?? null,
      pasteurisation,
    });
    return reckonWhole(heat, spaceFactor, waterFactor, extras);
  };
  const at = reckonAt(settled.space.value, settled.water.value);
  const spaceSpread = spreadOf(design.spaceAsGiven, step, design);
  const waterSpread =
    design.water.from === 'derived' ? derivedSpread(spaceSpread) : spreadOf(design.water, step, design);
  const space = factorFigure(
    settled.space,
    spaceSpread,
    factorWorking('rooms', settled.space.value, design.space, settled),
  );
  const water = factorFigure(
    settled.water,
    waterSpread,
    factorWorking('hot water', settled.water.value, design.water, settled),
  );
  const whole: Figure = {
    value: at.whole,
    low: reckonAt(space.low, water.low).whole,
    high: reckonAt(space.high, water.high).whole,
    unit: '',
    grade: weakestGrade([settled.space.grade, settled.water.grade, demand.total.grade]),
    working: wholeWorking({ ...at, demand, space, water, boundary: design.boundary }),
  };
  return {
    machine: {
      source: machine.source,
      boundary: design.boundary,
      space,
      water,
      whole,
      ...(step && step.share < 1
        ? {
            asDesigned: {
              space: design.space.value,
              water: design.water.value,
              whole: reckonAt(design.space.value, design.water.value).whole,
              reachedShare: step.reachedShare,
            },
          }
        : {}),
      extraKWh: at.extraKWh,
      fieldSpread: describeField(design.field),
    },
    questions: [...design.questions],
    extras: at.extras,
    spaceKWh: at.spaceKWh,
    waterKWh: at.waterKWh,
    spaceSpread,
    waterSpread,
  };
}

function reckonWhole(
  heat: { spaceKWh: number; waterKWh: number },
  spaceFactor: number,
  waterFactor: number,
  extras: readonly ExtraLine[],
) {
  const spaceKWh = heat.spaceKWh / spaceFactor;
  const waterKWh = heat.waterKWh / waterFactor;
  const extraKWh = extras.reduce((sum, line) => sum + line.kWh, 0);
  const immersionKWh = extras.find((line) => line.name === 'pasteurisation')?.kWh ?? 0;
  const electricityKWh = spaceKWh + waterKWh + extraKWh;
  // With no heat needed there is no factor of a year; the room factor stands in, so that nothing divides by zero.
  const whole = electricityKWh > 0 ? (heat.spaceKWh + heat.waterKWh + immersionKWh) / electricityKWh : spaceFactor;
  return { spaceKWh, waterKWh, extraKWh, immersionKWh, electricityKWh, whole, extras };
}

function spreadOf(given: SettledFactor, step: FieldStep | null, { field }: SettledFactors): Spread {
  if (given.from === 'field') return fieldSpread(field);
  return given.grade === 'measured' || step === null ? meteredSpread() : evenSpread(step.deviation);
}

/** Heat output of the machine at design [kW]: the heat loss typed, else the loss coefficient over the design difference. */
function findCapacity({ heat }: Household, demand: Demand): number {
  if (heat.heatLossKW) return heat.heatLossKW.value;
  const outdoorC = heat.designOutdoorC?.value ?? CUSTOMARY_OUTDOOR_C;
  const kW = (demand.heatLossWPerK * (demand.roomC - outdoorC)) / 1000;
  return Number.isFinite(kW) ? kW : SMALLEST_MACHINE_KW;
}
