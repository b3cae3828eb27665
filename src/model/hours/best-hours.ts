/** At which half-hours a heat pump runs best on a tariff, while the rooms stay within what the household accepts. */

import { usedAtOnceKWh } from '../balance/used-at-once.ts';
import { flowTable, readFlow } from '../heat-pump/full/heating-curve.ts';
import { runDays } from '../heat-pump/full/run-days.ts';
import { readSurface } from '../heat-pump/full/surface.ts';
import type { YearInput } from '../heat-pump/full/year.ts';
import type { Comfort } from '../shapes/choices.ts';
import type { ColdDay } from '../shapes/tariff-choice.ts';
import { sumOf } from '../units/sums.ts';
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
export function findBestHours(input: HoursInput, laid: LaidHeat = layHeat(input.year)): BestHours {
  const { usual } = laid;
  const water = moveWater(input, laid);
  const room = moveRooms(input, laid, water);
  const { start } = coldDay(input.year);
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

/** What no price changes: by half-hour the usual heat, the source, the flow that the weather sets, and hot water as it is made and drawn. */
export type LaidHeat = ReturnType<typeof layHeat>;

export function layHeat(year: YearInput) {
  const { slots, outdoorC, waterFlowC, curve } = year;
  const flow = flowTable(curve);
  const days = runDays(year, flow);
  const usual = usualHeat(year, days);
  const sourceC = year.source.kind === 'air' ? outdoorC : Float64Array.from(slots.day, (day) => days.sourceC[day]!);
  const waterByDayKWh = new Float64Array(slots.dayStart.length - 1);
  const waterPerHeat = new Float64Array(slots.count);
  const mostWaterKWh = new Float64Array(slots.count);
  const mostSpaceKWh = new Float64Array(slots.count);
  const designFlowC = readFlow(flow, curve.designOutdoorC);
  for (let slot = 0; slot < slots.count; slot++) {
    const source = sourceC[slot]!;
    waterByDayKWh[slots.day[slot]!]! += usual.water[slot]!;
    waterPerHeat[slot] = readSurface(year.perHeat, source, waterFlowC);
    mostWaterKWh[slot] = Math.max(usual.water[slot]!, readSurface(year.outputKW, source, waterFlowC) * HOURS);
    mostSpaceKWh[slot] = Math.min(readSurface(year.outputKW, source, designFlowC), year.designKW) * HOURS;
  }
  return {
    usual,
    flow,
    sourceC,
    weatherFlowC: outdoorC.map((c) => readFlow(flow, c)),
    waterPerHeat,
    mostWaterKWh,
    mostSpaceKWh,
    drawnWaterKWh: drawnWater(usual.water, waterByDayKWh, slots),
  };
}

/** The usual hours lose something from the cylinder too; what is drawn is what they leave, so that their year closes. */
function drawnWater(usual: Float64Array, byDayKWh: Float64Array, slots: YearInput['slots']): Float64Array {
  const drawn = overSlots([{ kWh: 1, dayShare: byDayKWh, weights: DRAWN_WATER }], slots);
  let [filled, emptied] = [0, 0];
  for (let slot = 0; slot < slots.count; slot++) {
    filled = CYLINDER_KEEP * filled + usual[slot]!;
    emptied = CYLINDER_KEEP * emptied + drawn[slot]!;
  }
  const share = emptied > 0 ? filled / emptied : 1;
  return drawn.map((kWh) => kWh * share);
}

/** Heat of the machine in the usual hours by half-hour, kWh. */
function usualHeat(
  { slots, waterByDayKWh, waterHours }: YearInput,
  { spaceKWh, backupShare }: ReturnType<typeof runDays>,
) {
  const ofMachine = (byDayKWh: Float64Array, weights: readonly number[]) =>
    overSlots([{ kWh: 1, dayShare: byDayKWh.map((kWh, day) => kWh * (1 - backupShare[day]!)), weights }], slots);
  return { space: ofMachine(spaceKWh, STEADY_HEATING), water: ofMachine(waterByDayKWh, waterHours) };
}

/**
 * The cost [pence] of each level of heat, as the search takes it: electricity bought at the price of its half-hour, less what
 * the sun gives in it at what that is worth otherwise. It grows with the kWh where buying costs more than that; where it does
 * not, the line is straight, at the COP of `evenKWh` of heat. `kWhOf` is the electricity of so much heat in a half-hour.
 */
function penceOfLevels(
  { pencePerKWh, atHome }: Pick<HoursInput, 'pencePerKWh' | 'atHome'>,
  mostKWh: Float64Array,
  kWhOf: (slot: number, heatKWh: number) => number,
  evenKWh: Float64Array,
  alsoKWh?: Float64Array,
): Float64Array {
  const out = new Float64Array(mostKWh.length * LEVELS);
  for (let slot = 0; slot < mostKWh.length; slot++) {
    const part = mostKWh[slot]! / (LEVELS - 1);
    if (part === 0) continue;
    const price = pencePerKWh[slot]!;
    const made = atHome?.madeKWh?.[slot] ?? 0;
    const isSunny = made > 0;
    const sunPence = isSunny ? atHome!.sunPence : 0;
    const other = isSunny ? atHome!.otherKWh[slot]! + (alsoKWh?.[slot] ?? 0) : 0;
    const otherUsed = isSunny ? usedAtOnceKWh(made, other) : 0;
    const cost = (kWh: number) => {
      if (!isSunny) return kWh * price;
      const used = usedAtOnceKWh(made, other + kWh) - otherUsed;
      return (kWh - used) * price + used * sunPence;
    };
    const even = evenKWh[slot]!;
    const isEven = price < Math.max(0, sunPence);
    const perHeat = isEven ? cost(kWhOf(slot, even)) / even : 0;
    for (let level = 1; level < LEVELS; level++)
      out[slot * LEVELS + level] = isEven ? level * part * perHeat : cost(kWhOf(slot, level * part));
  }
  return out;
}

function moveWater({ cylinderKWh, movesWater, ...input }: HoursInput, laid: LaidHeat) {
  const usual = laid.usual.water;
  const { waterPerHeat: perHeat, mostWaterKWh: mostKWh, drawnWaterKWh: drawn } = laid;
  let [held, least, most] = [0, 0, cylinderKWh];
  for (let slot = 0; slot < usual.length; slot++) {
    held = CYLINDER_KEEP * held + usual[slot]! - drawn[slot]!;
    least = Math.min(least, held);
    most = Math.max(most, held);
  }
  const store: HeatStore = {
    drawnKWh: drawn,
    mostKWh,
    pence: penceOfLevels(input, mostKWh, (slot, heat) => heat * perHeat[slot]!, mostKWh),
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
  { usual: { space: usual }, flow, sourceC, weatherFlowC, mostSpaceKWh }: LaidHeat,
  water: Pick<ReturnType<typeof moveWater>, 'runShare' | 'bestKWh'>,
) {
  const { year, warmth, roomC, comfort } = input;
  const { curve } = year;
  const mostKWh = usual.map((kWh, slot) =>
    kWh === 0 ? 0 : Math.max(kWh, mostSpaceKWh[slot]! * (1 - water.runShare[slot]!)),
  );
  const outdoorLike = (heatKWh: number) =>
    curve.roomC - (heatKWh / HOURS / year.designKW) * (curve.designRoomC - curve.designOutdoorC);
  /** The flow that so much heat needs, or the one that the curve sets by the weather where that is hotter. */
  const electricity = (slot: number, heatKWh: number) => {
    const flowC = Math.max(weatherFlowC[slot]!, readFlow(flow, outdoorLike(heatKWh)));
    return heatKWh * readSurface(year.perHeat, sourceC[slot]!, flowC);
  };
  const downK = Math.max(0, Math.min(comfort.downK ?? USUAL_BAND_K.down, roomC - LEAST_ROOM_C));
  const upK = comfort.upK ?? USUAL_BAND_K.up;
  const store: HeatStore = {
    drawnKWh: usual,
    mostKWh,
    // Paid to buy, hotter water would earn: it is counted at the usual flow, since costs may not fall by the kWh.
    pence: penceOfLevels(input, mostKWh, electricity, usual, input.atHome?.madeKWh && water.bestKWh()),
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
  const usualKWh = sumOf(usual);
  return usualKWh > 0 ? Math.min(1, sumOf(best) / usualKWh) : 1;
}
