/** At which half-hours a heat pump runs best on a tariff, while the rooms stay within what the household accepts. */

import { usedAtOnceKWh } from '../balance/used-at-once.ts';
import { flowTable, readFlow } from '../heat-pump/full/heating-curve.ts';
import { runDays } from '../heat-pump/full/run-days.ts';
import { readSurface } from '../heat-pump/full/surface.ts';
import type { YearInput } from '../heat-pump/full/year.ts';
import type { Comfort } from '../shapes/choices.ts';
import type { ColdDay } from '../shapes/tariff-choice.ts';
import { DRAWN_WATER, STEADY_HEATING } from '../year/day-profiles.ts';
import { overSlots } from '../year/share-out.ts';
import { coldDay } from './cold-day.ts';
import { type HeatStore, LEVELS, penceOfHeat, type Shifted, shiftHeat } from './shift-heat.ts';
import { type HomeWarmth, shareCooled } from './warmth.ts';

/** Not below this by shifting, °C: least indoor temperature of the WHO for health, 18. */
const LEAST_ROOM_C = 18;
/** Kelvin down and up that are taken where nothing is said; from memory of field trials. */
const USUAL_BAND_K = { down: 1, up: 0.5 } as const;
/** A full cylinder's standing loss a half-hour, as a share of its heat: about 1.5 of 9 kWh a day. Common practice, no source. */
const CYLINDER_KEEP = 1 - 1.5 / 9 / 48;
const HOURS = 0.5;

export interface HoursInput {
  readonly year: YearInput;
  /** Price of each half-hour [pence/kWh, VAT included]. */
  readonly pencePerKWh: Float64Array;
  readonly warmth: HomeWarmth;
  readonly roomC: number;
  readonly comfort: Comfort;
  /** Heat that the cylinder holds between its cold and its hot state, kWh. */
  readonly cylinderKWh: number;
  /** Whether hot water is to be moved, or is made in cheap hours as it is. */
  readonly movesWater: boolean;
  readonly atHome?: AtHome;
}

/** What the electricity of the heat pump meets at home [kWh by half-hour]. */
export interface AtHome {
  readonly otherKWh: Float64Array;
  /** Absent without panels. */
  readonly madeKWh?: Float64Array;
  /** What a kWh of sun is worth that is not used as it falls, pence. */
  readonly sunPence: number;
}

/** Electricity of the machine for rooms and for hot water by half-hour, kWh. */
export interface HeatElectricity {
  readonly space: Float64Array;
  readonly water: Float64Array;
}

export interface BestHours {
  /** Share of the cost [1] that moving saves, for rooms and for hot water. */
  readonly spaceSaved: number;
  readonly waterSaved: number;
  /** Room temperature at the end of each half-hour with the best hours, °C. */
  readonly roomC: Float64Array;
  /** A cold day, half-hour by half-hour. */
  readonly day: ColdDay;
  /** What the usual and the best hours take; only where the search was told what else the home needs. */
  readonly electricity?: {
    readonly usual: HeatElectricity;
    readonly best: HeatElectricity;
    /** How much of the usual heat the best hours give, 1 at most. */
    readonly heatShare: { readonly space: number; readonly water: number };
  };
}

/**
 * What the best hours save [share] against the usual ones, and room temperature [°C] by half-hour. COP by that half-hour's source
 * and flow; more heat than usual needs hotter water, never hotter than the design flow. The usual room temperature is
 * taken as steady, and what cooler rooms would save by themselves is left out of the saving. Never dearer than the usual hours: where shifting earns nothing, they stay. Resistance, pumps, standby and the weekly 60 °C are not moved.
 */
export function findBestHours(input: HoursInput): BestHours {
  const { year } = input;
  const flow = flowTable(year.curve);
  const days = runDays(year, flow);
  const usual = usualHeat(year, days);
  const sourceC = (slot: number, day: number) =>
    year.source.kind === 'air' ? year.outdoorC[slot]! : days.sourceC[day]!;
  const water = moveWater(input, usual.water, sourceC);
  const room = moveRooms(input, usual.space, flow, sourceC, water);
  const { start } = coldDay(year);
  const electricity = input.atHome && {
    usual: { space: room.usualKWh(), water: water.usualKWh() },
    best: { space: room.bestKWh(), water: water.bestKWh() },
    heatShare: { space: heatShare(usual.space, room.heat), water: heatShare(usual.water, water.heat) },
  };
  const ofDay = (at: (slot: number) => number) => Array.from({ length: 48 }, (_, half) => at(start + half));
  return {
    spaceSaved: room.saved,
    waterSaved: water.saved,
    roomC: room.roomC,
    day: {
      pencePerKWh: ofDay((slot) => input.pencePerKWh[slot]!),
      usualKW: ofDay((slot) => (usual.space[slot]! + usual.water[slot]!) / HOURS),
      bestKW: ofDay((slot) => (room.heat[slot]! + water.heat[slot]!) / HOURS),
      roomC: ofDay((slot) => room.roomC[slot]!),
    },
    ...(electricity ? { electricity } : {}),
  };
}

type SourceAt = (slot: number, day: number) => number;

/** Heat of the machine in the usual hours by half-hour, kWh. */
function usualHeat(
  { slots, waterByDayKWh, waterHours }: YearInput,
  { spaceKWh, backupShare }: ReturnType<typeof runDays>,
) {
  const ofMachine = (byDayKWh: Float64Array, weights: readonly number[]) =>
    overSlots([{ kWh: 1, dayShare: byDayKWh.map((kWh, day) => kWh * (1 - backupShare[day]!)), weights }], slots);
  return { space: ofMachine(spaceKWh, STEADY_HEATING), water: ofMachine(waterByDayKWh, waterHours) };
}

/** Pence for so much electricity in a half-hour, beside what else is needed there. */
type Cost = (slot: number, kWh: number) => number;

/**
 * The cost of the heat pump's electricity: bought at the price of its half-hour, less what the sun gives in it at what that
 * is worth otherwise. It grows with the kWh where buying costs more than that; where it does not, `isEven` asks for a
 * straight line.
 */
function costIn(
  { pencePerKWh, atHome }: HoursInput,
  alsoKWh?: Float64Array,
): { cost: Cost; isEven: (slot: number) => boolean } {
  const made = atHome?.madeKWh;
  const plain = (slot: number) => !made || made[slot]! <= 0;
  const costWith = (slot: number, needed: number) => {
    const used = usedAtOnceKWh(made![slot]!, needed);
    return (needed - used) * pencePerKWh[slot]! + used * atHome!.sunPence;
  };
  return {
    cost: (slot, kWh) => {
      if (plain(slot)) return kWh * pencePerKWh[slot]!;
      const other = atHome!.otherKWh[slot]! + (alsoKWh?.[slot] ?? 0);
      return costWith(slot, other + kWh) - costWith(slot, other);
    },
    isEven: (slot) => pencePerKWh[slot]! < (plain(slot) ? 0 : Math.max(0, atHome!.sunPence)),
  };
}

function moveWater(input: HoursInput, usual: Float64Array, sourceC: SourceAt) {
  const { year, cylinderKWh, movesWater } = input;
  const { slots, waterFlowC } = year;
  const { cost, isEven } = costIn(input);
  const byDayKWh = new Float64Array(slots.dayStart.length - 1);
  const perHeat = new Float64Array(slots.count);
  const mostKWh = new Float64Array(slots.count);
  for (let slot = 0; slot < slots.count; slot++) {
    const day = slots.day[slot]!;
    byDayKWh[day]! += usual[slot]!;
    perHeat[slot] = readSurface(year.perHeat, sourceC(slot, day), waterFlowC);
    mostKWh[slot] = Math.max(usual[slot]!, readSurface(year.outputKW, sourceC(slot, day), waterFlowC) * HOURS);
  }
  const drawn = overSlots([{ kWh: 1, dayShare: byDayKWh, weights: DRAWN_WATER }], slots);
  // The usual hours lose something from the cylinder too; what is drawn is what they leave, so that their year closes.
  let [filled, emptied] = [0, 0];
  for (let slot = 0; slot < slots.count; slot++) {
    filled = CYLINDER_KEEP * filled + usual[slot]!;
    emptied = CYLINDER_KEEP * emptied + drawn[slot]!;
  }
  const share = emptied > 0 ? filled / emptied : 1;
  let [held, least, most] = [0, 0, cylinderKWh];
  for (let slot = 0; slot < slots.count; slot++) {
    drawn[slot]! *= share;
    held = CYLINDER_KEEP * held + usual[slot]! - drawn[slot]!;
    least = Math.min(least, held);
    most = Math.max(most, held);
  }
  const pence = levels(mostKWh, (slot, heat) =>
    isEven(slot)
      ? (heat / mostKWh[slot]!) * cost(slot, mostKWh[slot]! * perHeat[slot]!)
      : cost(slot, heat * perHeat[slot]!),
  );
  const store: HeatStore = {
    drawnKWh: drawn,
    mostKWh,
    pence,
    keep: CYLINDER_KEEP,
    leastKWh: least,
    fullKWh: most,
  };
  const { saved, heat } = cheaper(store, usual, movesWater ? shiftHeat(store) : null);
  const electricity = (heatKWh: Float64Array) => () => heatKWh.map((kWh, slot) => kWh * perHeat[slot]!);
  const runShare = heat.map((kWh, slot) => (mostKWh[slot]! > 0 ? kWh / mostKWh[slot]! : 0));
  return { saved, heat, runShare, usualKWh: electricity(usual), bestKWh: electricity(heat) };
}

function moveRooms(
  input: HoursInput,
  usual: Float64Array,
  flow: Float64Array,
  sourceC: SourceAt,
  water: Pick<ReturnType<typeof moveWater>, 'runShare' | 'bestKWh'>,
) {
  const { year, warmth, roomC, comfort } = input;
  const { slots, curve } = year;
  const { cost, isEven } = costIn(input, input.atHome?.madeKWh && water.bestKWh());
  const mostKWh = new Float64Array(slots.count);
  const source = new Float64Array(slots.count);
  const outdoorLike = (heatKWh: number) =>
    curve.roomC - (heatKWh / HOURS / year.designKW) * (curve.designRoomC - curve.designOutdoorC);
  for (let slot = 0; slot < slots.count; slot++) {
    source[slot] = sourceC(slot, slots.day[slot]!);
    if (usual[slot] === 0) continue;
    const output = readSurface(year.outputKW, source[slot]!, readFlow(flow, curve.designOutdoorC));
    const left = Math.min(output, year.designKW) * HOURS * (1 - water.runShare[slot]!);
    mostKWh[slot] = Math.max(usual[slot]!, left);
  }
  /** The flow that so much heat needs, or the one that the curve sets by the weather where that is hotter. */
  const electricity = (slot: number, heatKWh: number) => {
    const flowC = Math.max(readFlow(flow, year.outdoorC[slot]!), readFlow(flow, outdoorLike(heatKWh)));
    return heatKWh * readSurface(year.perHeat, source[slot]!, flowC);
  };
  const downK = Math.max(0, Math.min(comfort.downK ?? USUAL_BAND_K.down, roomC - LEAST_ROOM_C));
  const upK = comfort.upK ?? USUAL_BAND_K.up;
  const store: HeatStore = {
    drawnKWh: usual,
    mostKWh,
    pence: levels(mostKWh, (slot, heat) =>
      // Paid to buy, hotter water would earn: it is counted at the usual flow, since costs may not fall by the kWh.
      isEven(slot)
        ? (heat * cost(slot, electricity(slot, usual[slot]!))) / usual[slot]!
        : cost(slot, electricity(slot, heat)),
    ),
    keep: 1 - shareCooled(HOURS, warmth.timeConstantHours),
    leastKWh: -downK * warmth.kWhPerK,
    fullKWh: upK * warmth.kWhPerK,
  };
  const moves = (downK > 0 || upK > 0) && warmth.kWhPerK > 0;
  const { saved, heat, held } = cheaper(store, usual, moves ? shiftHeat(store) : null);
  const electricityOf = (heatKWh: Float64Array) => () =>
    heatKWh.map((kWh, slot) => (kWh > 0 ? electricity(slot, kWh) : 0));
  return {
    saved,
    heat,
    roomC: held.map((kWh) => roomC + (warmth.kWhPerK > 0 ? kWh / warmth.kWhPerK : 0)),
    usualKWh: electricityOf(usual),
    bestKWh: electricityOf(heat),
  };
}

/** Cost [pence] at each level of heat, as the search takes it. */
function levels(mostKWh: Float64Array, pence: (slot: number, heatKWh: number) => number): Float64Array {
  const out = new Float64Array(mostKWh.length * LEVELS);
  for (let slot = 0; slot < mostKWh.length; slot++) {
    if (mostKWh[slot] === 0) continue;
    for (let level = 1; level < LEVELS; level++) {
      out[slot * LEVELS + level] = pence(slot, (mostKWh[slot]! * level) / (LEVELS - 1));
    }
  }
  return out;
}

/** The hours found where they cost less than the usual ones for the same heat, else the usual ones; and the share saved. */
function cheaper(store: HeatStore, usual: Float64Array, found: Shifted | null) {
  let usualPence = 0;
  for (let slot = 0; slot < usual.length; slot++) usualPence += penceOfHeat(store, slot, usual[slot]!);
  const none = { saved: 0, heat: usual, held: new Float64Array(usual.length) };
  if (!found || !(usualPence > 0)) return none;
  // Cooler rooms need less heat, and a cylinder held longer more: neither is a merit of the hours.
  const samePence = usualPence * heatShare(usual, found.heatKWh);
  const saved = (samePence - found.pence) / usualPence;
  return saved > 0 ? { saved, heat: found.heatKWh, held: found.heldKWh } : none;
}

function heatShare(usual: Float64Array, best: Float64Array): number {
  const usualKWh = sum(usual);
  return usualKWh > 0 ? Math.min(1, sum(best) / usualKWh) : 1;
}

function sum(values: Float64Array): number {
  let total = 0;
  for (let i = 0; i < values.length; i++) total += values[i]!;
  return total;
}
