/** How the machine does it: a name and one everyday sentence for each place on the round, in the household's numbers. */
import type { HeatFrom, HouseholdLoop, LoopFault } from '../model/cycle/household-loop.ts';
import { degrees, grouped } from './numbers.ts';

export const CYCLE_STEPS = ['ground', 'evaporator', 'compressor', 'condenser', 'house', 'valve'] as const;
export type CycleStep = (typeof CYCLE_STEPS)[number];
export type HeatedBy = 'floor' | 'radiators';

const NAMES: Readonly<Record<CycleStep, string>> = {
  ground: 'The ground',
  evaporator: 'Evaporator',
  compressor: 'Compressor',
  condenser: 'Condenser',
  house: 'The house',
  valve: 'Expansion valve',
};
export const cycleStepName = (step: CycleStep, from: HeatFrom = 'ground'): string =>
  step === 'ground' && from === 'air' ? 'Outdoor air' : NAMES[step];

/** A temperature as it is said: whole degrees. */
export const wholeDegrees = (celsius: number): string => degrees(Math.round(celsius));

/** Heat or electricity at this moment, in the units that the meter counts: "2.1 units an hour". */
export function unitsAnHour(kW: number): string {
  if (!Number.isFinite(kW)) return 'an unknown number of units an hour';
  const count = grouped(kW, kW < 20 ? 1 : 0).replace(/\.0$/, '');
  return `${count} ${count === '1' ? 'unit' : 'units'} an hour`;
}

export const barText = (barGauge: number): string => `${grouped(barGauge, 1)} bar`;
export const psiText = (psiGauge: number): string => `${grouped(psiGauge)} psi`;

/** One sentence for a place on the round. */
export function cycleStepSentence(
  step: CycleStep,
  loop: HouseholdLoop,
  heatedBy: HeatedBy,
  from: HeatFrom = 'ground',
): string {
  const emitters = heatedBy === 'floor' ? 'floor' : 'radiators';
  switch (step) {
    case 'ground':
      if (from === 'air')
        return `A fan draws in air at ${wholeDegrees(loop.brineInC)} and blows it out at ${wholeDegrees(loop.brineOutC)}. At times the machine stops to melt its frost.`;
      return `Water with frost protection comes up from the ground at ${wholeDegrees(loop.brineInC)} and goes back at ${wholeDegrees(loop.brineOutC)}.`;
    case 'evaporator':
      return `That warms a liquid which boils at ${wholeDegrees(loop.evaporatingC)}. As it boils, it takes up the heat of the ${from}.`;
    case 'compressor':
      return `The compressor squeezes the vapour until it is ${wholeDegrees(loop.dischargeC)} hot. This is what the meter counts.`;
    case 'condenser':
      return `The hot vapour warms your heating water. It turns back into liquid at about ${wholeDegrees(loop.condensingC)}.`;
    case 'house':
      return `The water goes to your ${emitters} at ${wholeDegrees(loop.flowC)} and comes back at ${wholeDegrees(loop.returnC)}.`;
    case 'valve':
      return `A narrow valve lets the pressure go. The liquid cools to ${wholeDegrees(loop.afterValveC)}, and the round begins again.`;
  }
}

/** The whole round in one sentence. */
export function cycleWholeSentence(loop: HouseholdLoop, from: HeatFrom = 'ground'): string {
  const plain = (kW: number) => unitsAnHour(kW).replace(/ units? an hour$/, '');
  return `Each hour the ${from} gives ${plain(loop.groundKW)} units of heat and the meter adds ${plain(loop.meterKW)}. The house gets ${plain(loop.houseKW)}.`;
}

const FAULT_PLACES: Readonly<Record<LoopFault['where'], string>> = {
  refrigerant: 'The refrigerant',
  evaporatingC: 'The boiling temperature',
  condensingC: 'The condensing temperature',
  superheatK: 'The superheat',
  subcoolingK: 'The subcooling',
  isentropicEfficiency: 'The compressor’s efficiency',
  shellLossShare: 'The loss of the compressor’s shell',
  dischargeC: 'The hot gas temperature',
  brineOutC: 'The brine going back to the ground',
  returnC: 'The return temperature',
  heatKW: 'The heat wanted',
  cop: 'The COP',
};

/** Why the round cannot be shown: where, what was found, what is expected. */
export function cycleFaultSentence(fault: LoopFault): string {
  const found = Number.isFinite(fault.found) ? `is ${grouped(fault.found, 1).replace(/\.0$/, '')}` : 'is out of reach';
  return `${FAULT_PLACES[fault.where]} ${found}; expected is ${fault.expected}. Correct the temperatures and try again.`;
}
