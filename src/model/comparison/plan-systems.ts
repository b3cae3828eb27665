/** Which systems are held beside each other, and what each would buy. */

import { evenSpread, evenSpreadOf } from '../chance/multiplier.ts';
import { type Efficiency, presentEfficiency } from '../demand/present-efficiency.ts';
import { fieldSpread } from '../heat-pump/factor-spread.ts';
import { tellSource } from '../heat-pump/full/settle-source.ts';
import { settleFactors } from '../heat-pump/settle-factors.ts';
import type { ReckonedMachine } from '../heat-pump/spf-from-factors.ts';
import type { Appraisal, Demand, Question, WhatIf, WhyLeftOut } from '../shapes/appraisal.ts';
import {
  type Heater,
  isDelivered,
  priceKey,
  type RivalMachine,
  SYSTEMS,
  type System,
  serviceKey,
} from '../shapes/heating.ts';
import type { Household, WaterHours } from '../shapes/household.ts';
import type { EfficiencyDefault, Reference } from '../shapes/reference.ts';
import { type Told, tell } from '../shapes/told.ts';
import { type WorkingInput, weakestGrade } from '../shapes/working.ts';
import type { Plan, SystemName } from './plan.ts';
import { askAboutCost } from './price-questions.ts';
import type { PricesInUse } from './prices-of.ts';
import { choosable, whyLeftOut } from './why-left-out.ts';

export interface PlanInput {
  readonly household: Household;
  readonly demand: Demand;
  readonly machine: ReckonedMachine;
  /** The same without any what-if, where a heat pump stands there already. */
  readonly presentMachine?: ReckonedMachine;
  readonly prices: PricesInUse;
  readonly reference: Reference;
  readonly whatIf?: WhatIf;
}

/** Below this much heat a boiler's pump and fan run in proportion, kWh a year. */
const FULL_SEASON_KWH = 5000;
const MOST_EFFICIENCY = 1.1;

export type LeftOut = NonNullable<Appraisal['leftOut']>;

/** The heat pump first, then what the household has, then every other way that this home could really have. */
export function planSystems(input: PlanInput, questions: Question[]): { plans: Plan[]; leftOut: LeftOut } {
  const { household } = input;
  const present = planPresent(input, questions);
  // The home's own gas record says what heats it as well as a word would.
  const { assumed, ...seen } = household.present;
  const rule = whyLeftOut(assumed && hasRecord(input.demand) ? { ...household, present: seen } : household);
  const why = (system: System): WhyLeftOut | null =>
    rule(system) ?? (isPriced(system, input.prices) ? null : 'no-price');
  const others = choosable(household);
  return {
    plans: [
      planHeatPump(input),
      ...(present ? [present] : []),
      ...others.filter((system) => why(system) === null).map((system) => planOther(system, input)),
    ],
    leftOut: others.flatMap((system) => {
      const reason = why(system);
      return reason === null ? [] : [{ system, why: reason }];
    }),
  };
}

const hasRecord = ({ estimates }: Demand) => estimates.some(({ way }) => way === 'record');

/** Whether what a way of heating is bought with has a price. */
const isPriced = (system: System, prices: PricesInUse): boolean => {
  const { carrier, hours } = SYSTEMS[system];
  return (hours === 'storage' ? prices.storage : prices[carrier]) !== null;
};

const planOther = (system: ReturnType<typeof choosable>[number], input: PlanInput): Plan =>
  system === 'air-source' || system === 'ground-source'
    ? planRivalMachine(system, input)
    : planHeater(system, system, input);

function planHeatPump({ household, demand, machine, reference }: PlanInput, id: SystemName = 'heat-pump'): Plan {
  const { space, water, boundary, asDesigned } = machine.machine;
  const factor = (name: Told, figure: typeof space): WorkingInput => ({
    name,
    value: figure.value,
    grade: figure.grade,
    origin: tell('at-boundary', { boundary }),
  });
  return {
    id,
    kind: 'heat-pump',
    carrier: 'electricity',
    hours: 'heat-pump',
    ...hoursSaid(id === 'present' ? household.present.hotWaterHours : household.hotWater.hours),
    spaceEfficiency: space.value,
    waterEfficiency: water.value,
    spaceSpread: machine.spaceSpread,
    waterSpread: machine.waterSpread,
    moves: 'machine',
    ...(asDesigned ? { asDesigned } : {}),
    grade: weakestGrade([space.grade, water.grade, demand.total.grade]),
    inputs: [factor(tell('factor-for-rooms'), space), factor(tell('factor-for-water'), water)],
    steps: [space.working, water.working, ...machine.extras.map((extra) => extra.working)],
    spaceKWh: machine.spaceKWh,
    waterKWh: machine.waterKWh,
    extras: machine.extras,
    ...(machine.bySlot ? { bySlot: machine.bySlot } : {}),
    pumpKWh: 0,
    pumpSource: '',
    electricWaterKWh: 0,
    standing: standingOf('electricity', household),
    ...serviceOf('heat-pump', household, reference),
  };
}

const hoursSaid = (waterHours: WaterHours | undefined) => (waterHours ? { waterHours } : {});

/** The other kind of machine as the field knows it, at the same emitters: factors for rooms and hot water together. */
function planRivalMachine(id: RivalMachine, { household, demand, reference, whatIf }: PlanInput): Plan {
  const { emitters, flowC } = household.machine;
  const source = id === 'air-source' ? 'air' : 'ground';
  const like = { source, ...(emitters ? { emitters } : {}), ...(flowC ? { flowC } : {}) } as const;
  const { space, water, field } = settleFactors(like, reference, whatIf?.flowC);
  const spread = fieldSpread(field);
  const factor = (name: Told, value: number): WorkingInput => ({
    name,
    value,
    grade: 'assumed',
    origin: field.source,
  });
  return {
    id,
    kind: id,
    carrier: 'electricity',
    hours: 'heat-pump',
    ...hoursSaid(household.hotWater.hours),
    spaceEfficiency: space.value,
    waterEfficiency: water.value,
    spaceSpread: spread,
    waterSpread: spread,
    moves: 'other-machine',
    grade: 'assumed',
    inputs: [factor(tell('factor-for-rooms'), space.value), factor(tell('factor-for-water'), water.value)],
    steps: [],
    spaceKWh: demand.space.value / space.value,
    waterKWh: demand.water.value / water.value,
    extras: [],
    pumpKWh: 0,
    pumpSource: '',
    electricWaterKWh: 0,
    standing: standingOf('electricity', household),
    ...serviceOf('heat-pump', household, reference),
  };
}

function planPresent(input: PlanInput, questions: Question[]): Plan | null {
  const { household, presentMachine } = input;
  const { system } = household.present;
  if (system === 'other') {
    questions.push(askAboutCost('present-not-priced', 'question', 'present.system'));
    return null;
  }
  if (!isPriced(system, input.prices)) {
    const fuel = SYSTEMS[system].carrier;
    const field = isDelivered(fuel) ? `prices.${priceKey(fuel)}` : 'prices.storageTariffId';
    questions.push(askAboutCost('present-price-asked', 'question', field, { fuel }));
    return null;
  }
  // A machine that stands there already is the one described; a changed flow temperature is a plan, not the present.
  if (system === 'heat-pump') return planHeatPump({ ...input, machine: presentMachine ?? input.machine }, 'present');
  const accepted = acceptEfficiency(household, questions);
  const plan = planHeater('present', system, input, presentEfficiency(accepted, 'fuel', input.reference));
  const isAssumed = household.present.assumed && !hasRecord(input.demand);
  if (!isAssumed) return plan;
  questions.push(askAboutCost('present-assumed', 'question', 'present.system'));
  return { ...plan, kind: 'gas-assumed' };
}

/** The household, without its efficiency where that is not above 0 and at most 110 %. */
function acceptEfficiency(household: Household, questions: Question[]): Household {
  const { efficiency, ...present } = household.present;
  if (!efficiency || (efficiency.value > 0 && efficiency.value <= MOST_EFFICIENCY)) return household;
  const data = { found: efficiency.value, high: MOST_EFFICIENCY };
  questions.push(askAboutCost('efficiency-refused', 'refusal', 'present.efficiency', data));
  return { ...household, present };
}

interface TwoEfficiencies {
  readonly space: Efficiency;
  readonly water: Efficiency;
}

const tableEfficiency = (row: EfficiencyDefault): Efficiency => ({
  value: row.middle,
  error: 0,
  grade: 'assumed',
  origin: row.source,
});

/** A boiler, panel heaters or storage heaters: heat over seasonal efficiency, rooms and hot water apart. */
function planHeater(id: SystemName, kind: Heater, input: PlanInput, own?: TwoEfficiencies): Plan {
  const { household, demand, reference } = input;
  const { carrier, hours, service } = SYSTEMS[kind];
  const table = reference.efficiency[kind];
  const typed = id === 'present' && household.present.efficiency !== undefined;
  const space = own?.space ?? tableEfficiency(table.space);
  const water = own?.water ?? tableEfficiency(table.water);
  const immersion = id === 'present' && household.present.hotWaterFrom === 'immersion' && carrier !== 'electricity';
  const waterInput: WorkingInput = immersion
    ? { name: tell('water-by-immersion'), value: 1, grade: 'estimated', origin: tell('how-fitted') }
    : { name: tell('efficiency-for-water'), value: water.value, grade: water.grade, origin: water.origin };
  const running = Math.min(1, (demand.space.value + demand.water.value) / FULL_SEASON_KWH);
  return {
    id,
    kind,
    carrier,
    hours,
    ...hoursSaid(id === 'present' ? household.present.hotWaterHours : undefined),
    spaceEfficiency: space.value,
    waterEfficiency: immersion ? 1 : water.value,
    spaceSpread: typed ? evenSpread(space.error) : evenSpreadOf(table.space),
    waterSpread: typed ? evenSpread(water.error) : evenSpreadOf(table.water),
    moves: id === 'present' ? 'efficiency' : 'other-efficiency',
    grade: weakestGrade([space.grade, demand.total.grade]),
    inputs: [
      { name: tell('efficiency-for-rooms'), value: space.value, grade: space.grade, origin: space.origin },
      waterInput,
    ],
    steps: [],
    spaceKWh: demand.space.value / space.value,
    waterKWh: immersion ? 0 : demand.water.value / water.value,
    extras: [],
    pumpKWh: table.ownElectricityKWh.value * running,
    pumpSource: table.ownElectricityKWh.source,
    electricWaterKWh: immersion ? demand.water.value : 0,
    standing: standingOf(carrier, household),
    ...serviceOf(service, household, reference),
  };
}

/** The electricity standing charge is paid by every home and stands in none; that of gas goes with the gas. */
const standingOf = (carrier: Plan['carrier'], { present }: Household): Plan['standing'] =>
  carrier === 'gas' || present.cooksOnGas ? 'gas' : 'none';

function serviceOf(
  system: keyof Reference['service'],
  { prices }: Household,
  reference: Reference,
): Pick<Plan, 'serviceGBP' | 'serviceSpread'> {
  const typed =
    system === 'electric' ? undefined : system === 'heat-pump' ? prices.serviceHeatPumpGBP : prices[serviceKey(system)];
  const fallback = reference.service[system];
  const name = tell('service-of-year');
  // A price that was typed is a price agreed.
  if (typed) {
    const { value, grade, origin } = typed;
    return { serviceGBP: { name, value, unit: '£', grade, origin }, serviceSpread: 0 };
  }
  const origin = tellSource(fallback);
  return {
    serviceGBP: { name, value: fallback.value, unit: '£', grade: 'assumed', origin },
    serviceSpread: reference.spread.service.value,
  };
}
