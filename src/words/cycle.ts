/** How the machine does it: a name and one everyday sentence for each place on the round, in the household's numbers. */
import type { AirSide } from '../model/cycle/air-side.ts';
import type { HeatFrom, HouseholdLoop, LoopFault } from '../model/cycle/household-loop.ts';
import { usualRefrigerant } from '../model/heat-pump/full/design-loop.ts';
import type { Household } from '../model/shapes/household.ts';
import { gradeName } from './grades.ts';
import { degrees, grouped } from './numbers.ts';
import { phrase, say } from './say.ts';
import { sayTold } from './say-told.ts';

export const CYCLE_STEPS = ['ground', 'evaporator', 'compressor', 'condenser', 'house', 'valve'] as const;
export type CycleStep = (typeof CYCLE_STEPS)[number];
export type HeatedBy = 'floor' | 'radiators';

const NAMES: Readonly<Record<CycleStep, string>> = {
  ground: phrase('The ground'),
  evaporator: phrase('Evaporator'),
  compressor: phrase('Compressor'),
  condenser: phrase('Condenser'),
  house: phrase('The house'),
  valve: phrase('Expansion valve'),
};
export const cycleStepName = (step: CycleStep, from: HeatFrom = 'ground'): string =>
  step === 'ground' && from === 'air' ? say('Outdoor air') : say(NAMES[step]);

/** A temperature as it is said: whole degrees. */
export const wholeDegrees = (celsius: number): string => degrees(Math.round(celsius));

/** Heat or electricity at this moment, in the units that the meter counts: "2.1 units an hour". */
export function unitsAnHour(kW: number): string {
  if (!Number.isFinite(kW)) return say('an unknown number of kWh an hour');
  const count = shortCount(kW);
  return count === '1' ? say('1 kWh an hour') : say('{count} kWh an hour', { count });
}

/** To a tenth below 20, but "2" and not "2.0". */
const shortCount = (value: number): string => {
  const tenths = Math.round(value * 10) / 10;
  return grouped(tenths, value < 20 && !Number.isInteger(tenths) ? 1 : 0);
};

export const barText = (barGauge: number): string => `${grouped(barGauge, 1)} bar`;
export const psiText = (psiGauge: number): string => `${grouped(psiGauge)} psi`;

/** One sentence for a place on the round. */
export function cycleStepSentence(
  step: CycleStep,
  loop: HouseholdLoop,
  heatedBy: HeatedBy,
  from: HeatFrom = 'ground',
): string {
  switch (step) {
    case 'ground':
      if (from === 'air')
        return say(
          'A fan draws in air at {airIn} and blows it out at {airOut}. At times the heat pump stops to melt its frost.',
          { airIn: wholeDegrees(loop.brineInC), airOut: wholeDegrees(loop.brineOutC) },
        );
      return say('Water with frost protection comes up from the ground at {brineIn} and goes back at {brineOut}.', {
        brineIn: wholeDegrees(loop.brineInC),
        brineOut: wholeDegrees(loop.brineOutC),
      });
    case 'evaporator':
      return say(
        'That warms a liquid which boils at {boiling}. As it boils, it takes up the heat of the {source, select, air {air} other {ground}}.',
        { boiling: wholeDegrees(loop.evaporatingC), source: from },
      );
    case 'compressor':
      if (from === 'air')
        return say('The compressor squeezes the vapour until it is {hot} hot. This is most of what the meter counts.', {
          hot: wholeDegrees(loop.dischargeC),
        });
      return say('The compressor squeezes the vapour until it is {hot} hot. This is what the meter counts.', {
        hot: wholeDegrees(loop.dischargeC),
      });
    case 'condenser':
      return say('The hot vapour warms your heating water. It turns back into liquid at about {condensing}.', {
        condensing: wholeDegrees(loop.condensingC),
      });
    case 'house':
      return say(
        'The water goes to your {emitters, select, floor {floor} other {radiators}} at {flow} and comes back at {back}.',
        { emitters: heatedBy, flow: wholeDegrees(loop.flowC), back: wholeDegrees(loop.returnC) },
      );
    case 'valve':
      return say('A narrow valve lets the pressure drop. The liquid cools to {after}, and the cycle begins again.', {
        after: wholeDegrees(loop.afterValveC),
      });
  }
}

/** The whole round in one sentence. */
export function cycleWholeSentence(loop: HouseholdLoop, from: HeatFrom = 'ground', air: AirSide | null = null): string {
  if (air)
    return say(
      'Each hour the air gives {added} kWh of heat and the compressor adds {bought}. The house gets {given}. Fan and defrost take {beside} more.',
      {
        added: shortCount(loop.groundKW),
        bought: shortCount(loop.meterKW),
        given: shortCount(loop.houseKW),
        beside: shortCount(air.fanKW + air.frostKW),
      },
    );
  return say(
    'Each hour the {source, select, air {air} other {ground}} gives {added} kWh of heat and the meter adds {bought}. The house gets {given}.',
    {
      source: from,
      added: shortCount(loop.groundKW),
      bought: shortCount(loop.meterKW),
      given: shortCount(loop.houseKW),
    },
  );
}

const FAULT_PLACES: Readonly<Record<LoopFault['where'], string>> = {
  refrigerant: phrase('The refrigerant'),
  evaporatingC: phrase('The boiling temperature'),
  condensingC: phrase('The condensing temperature'),
  superheatK: phrase('The superheat'),
  subcoolingK: phrase('The subcooling'),
  isentropicEfficiency: phrase('The compressor’s efficiency'),
  dischargeC: phrase('The hot gas temperature'),
  brineOutC: phrase('The brine going back to the ground'),
  returnC: phrase('The return temperature'),
  heatKW: phrase('The heat wanted'),
  cop: phrase('The COP'),
};

/** Why the round cannot be shown: where, what was found, what is expected. */
export function cycleFaultSentence(fault: LoopFault): string {
  const values = { place: say(FAULT_PLACES[fault.where]), expected: sayTold(fault.expected) };
  if (!Number.isFinite(fault.found))
    return say('{place} cannot be reached; we expect {expected}. Correct the temperatures and try again.', values);
  return say('{place} is {found}; we expect {expected}. Correct the temperatures and try again.', {
    ...values,
    found: shortCount(fault.found),
  });
}

/**
 * What stands below the picture inside the machine: whose it is, what is assumed, of which moment it speaks.
 * "Larch Rise · a very cold day, −3 °C outside · R407C, assumed": the round is never the same for long.
 */
export function insideFoot({ name, machine }: Pick<Household, 'name' | 'machine'>, designOutdoorC: number): string {
  const { refrigerant } = machine;
  const gas = refrigerant?.value ?? usualRefrigerant(machine.source);
  return say(
    '{name} · {source, select, air {a very cold day between two defrosts} other {a very cold day}}, {outdoor} outside · {gas}, {grade}',
    {
      name,
      source: machine.source,
      outdoor: wholeDegrees(designOutdoorC),
      gas,
      grade: gradeName(refrigerant?.grade ?? 'assumed'),
    },
  );
}
