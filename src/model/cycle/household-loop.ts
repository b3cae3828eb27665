/** The refrigerant loop of one household: its own brine and water temperatures, and what follows from them. */

import type { Refrigerant, RefrigerantName } from '../shapes/refrigerant.ts';
import { type Told, tell } from '../shapes/told.ts';
import { fromBarAbsolute } from './pressure.ts';
import { pressureAt, temperatureAt } from './saturation.ts';
import { type Cycle, type CycleFault, type CycleInput, reckonCycle } from './single-stage.ts';
import { vapourAt } from './states.ts';

/** What the compressor makes of its electricity: typed, or such that the COP comes out as known from elsewhere. */
export type Compression =
  | { readonly kind: 'efficiency'; readonly isentropic: number }
  | { readonly kind: 'cop'; readonly cop: number };

/** What the machine takes its heat from; of an air machine, the brine temperatures are those of the air. */
export type HeatFrom = 'ground' | 'air';

export interface LoopInput {
  readonly refrigerant: Refrigerant;
  readonly brineInC: number;
  readonly brineOutC: number;
  readonly flowC: number;
  readonly returnC: number;
  /** Heat to the house at this moment. */
  readonly heatKW: number;
  readonly compression: Compression;
  readonly exchange?: Partial<LoopExchange>;
}

/** What the heat exchangers and the motor lose. */
export interface LoopExchange {
  /** Mean evaporating temperature below the brine that leaves. */
  readonly evaporatorApproachK: number;
  /** Mean condensing temperature above the flow. */
  readonly condenserApproachK: number;
  readonly superheatK: number;
  readonly subcoolingK: number;
  /** Share of the electricity that warms the suction gas as it cools the motor. */
  readonly motorShare: number;
}

/** Common practice, no source: 3 to 5 K at each exchanger, the better end taken. */
export const USUAL_EXCHANGE: LoopExchange = {
  evaporatorApproachK: 3,
  condenserApproachK: 3,
  superheatK: 5,
  subcoolingK: 5,
  motorShare: 0.15,
};
/** Share of ideal work; scroll compressors of house size with their motor reach 0.6 to 0.75. From memory. */
export const USUAL_EFFICIENCY = 0.7;

export interface LoopPressure {
  readonly barAbsolute: number;
  readonly barGauge: number;
  readonly psiGauge: number;
}

export interface HouseholdLoop {
  readonly refrigerant: RefrigerantName;
  readonly brineInC: number;
  readonly brineOutC: number;
  readonly flowC: number;
  readonly returnC: number;
  /** Means over the glide; of a pure fluid the saturation temperature itself. */
  readonly evaporatingC: number;
  readonly condensingC: number;
  readonly low: LoopPressure;
  readonly high: LoopPressure;
  /** Gas as it leaves the evaporator, and after it has cooled the motor. */
  readonly suctionC: number;
  readonly afterMotorC: number;
  readonly dischargeC: number;
  /** Liquid before the expansion valve and the cold mix behind it. */
  readonly liquidC: number;
  readonly afterValveC: number;
  readonly groundKW: number;
  readonly meterKW: number;
  readonly houseKW: number;
  readonly cop: number;
  readonly isentropicEfficiency: number;
  readonly refrigerantGPerS: number;
  readonly cycle: Cycle;
}

export type LoopFault =
  | CycleFault
  | {
      readonly code: 'brine-not-cooled' | 'flow-not-warmer' | 'bad-heat' | 'cop-out-of-reach';
      readonly where: 'brineOutC' | 'returnC' | 'heatKW' | 'cop';
      readonly found: number;
      readonly expected: Told;
    };
export type LoopResult =
  | { readonly ok: true; readonly loop: HouseholdLoop }
  | { readonly ok: false; readonly fault: LoopFault };

const fault = (
  code: Exclude<LoopFault['code'], CycleFault['code']>,
  where: 'brineOutC' | 'returnC' | 'heatKW' | 'cop',
  found: number,
  expected: Told,
): LoopResult => ({ ok: false, fault: { code, where, found, expected } });

const pressure = (barAbsolute: number): LoopPressure => ({
  barAbsolute,
  barGauge: fromBarAbsolute(barAbsolute, 'bar', 'gauge'),
  psiGauge: fromBarAbsolute(barAbsolute, 'psi', 'gauge'),
});

/** Glide [K] of a blend at a pressure [bar absolute]; 0 for a pure fluid or outside the table. */
function glideAt(refrigerant: Refrigerant, barAbsolute: number): number {
  const dewC = temperatureAt(refrigerant, barAbsolute, 'dew');
  const bubbleC = temperatureAt(refrigerant, barAbsolute, 'bubble');
  return dewC === null || bubbleC === null ? 0 : dewC - bubbleC;
}

/** Bubble temperature [°C] of the pressure whose glide has its mean at `meanC`. */
function bubbleOfMean(refrigerant: Refrigerant, meanC: number): number {
  let bubbleC = meanC;
  for (let round = 0; round < 4; round += 1)
    bubbleC = meanC - glideAt(refrigerant, pressureAt(refrigerant, bubbleC, 'bubble') ?? 0) / 2;
  return bubbleC;
}

/** Work at which the COP is the one wanted: w = q_ground/(COP − 1), so η = (h2s − h1)/w. */
function efficiencyOfCop(cycle: Cycle, cop: number): number {
  const { suction, idealDischarge, fromSource } = cycle.kJPerKg;
  return ((idealDischarge - suction) * (cop - 1)) / fromSource;
}

/**
 * The household's loop from brine and water temperatures [°C] and the heat wanted [kW].
 * Evaporating = brine out − approach, condensing = flow + approach, both as means over a blend's glide (the valve has
 * evaporated a share x already, so the rest of the glide is 1 − x). Ground + meter = house; the shell loses nothing.
 * Valid where `reckonCycle` is. Source of the approaches: 3 to 5 K at each exchanger, common practice, no source.
 */
export function reckonLoop(input: LoopInput): LoopResult {
  const { refrigerant, brineInC, brineOutC, flowC, returnC, heatKW, compression } = input;
  const exchange = { ...USUAL_EXCHANGE, ...input.exchange };
  const below = (celsius: number) => tell('below-celsius', { celsius });
  if (!(brineInC > brineOutC)) return fault('brine-not-cooled', 'brineOutC', brineOutC, below(brineInC));
  if (!(flowC > returnC)) return fault('flow-not-warmer', 'returnC', returnC, below(flowC));
  if (!(heatKW > 0 && heatKW < Number.POSITIVE_INFINITY))
    return fault('bad-heat', 'heatKW', heatKW, tell('above-nought-kw'));
  if (compression.kind === 'cop' && !(compression.cop > 1))
    return fault('cop-out-of-reach', 'cop', compression.cop, tell('above-one'));

  const meanEvaporatingC = brineOutC - exchange.evaporatorApproachK;
  const meanCondensingC = flowC + exchange.condenserApproachK;
  const condensingC = bubbleOfMean(refrigerant, meanCondensingC);
  const asked = (evaporatingC: number, isentropicEfficiency: number): CycleInput => ({
    refrigerant,
    evaporatingC,
    condensingC,
    superheatK: exchange.superheatK,
    subcoolingK: exchange.subcoolingK,
    isentropicEfficiency,
  });
  const typed = compression.kind === 'efficiency' ? compression.isentropic : USUAL_EFFICIENCY;
  // The dew point lies above the mean by half the glide that is left, which hangs on the cycle itself.
  let reckoned = reckonCycle(asked(meanEvaporatingC, typed));
  let left = 0;
  for (let round = 0; round < 5 && reckoned.ok; round += 1) {
    left = glideAt(refrigerant, reckoned.cycle.evaporatingBar) * (1 - reckoned.cycle.flashShare);
    reckoned = reckonCycle(asked(meanEvaporatingC + left / 2, typed));
  }
  if (!reckoned.ok) return { ok: false, fault: reckoned.fault };
  let efficiency = typed;
  if (compression.kind === 'cop') {
    efficiency = efficiencyOfCop(reckoned.cycle, compression.cop);
    if (!(efficiency <= 1)) {
      const best = 1 + (compression.cop - 1) / efficiency;
      return fault('cop-out-of-reach', 'cop', compression.cop, tell('below-cop', { cop: best }));
    }
    reckoned = reckonCycle(asked(meanEvaporatingC + left / 2, efficiency));
    if (!reckoned.ok) return { ok: false, fault: reckoned.fault };
  }
  const { cycle } = reckoned;
  const { suction, work, toHouse, fromSource } = cycle.kJPerKg;
  const kgPerS = heatKW / toHouse;
  const suctionSide = vapourAt(refrigerant, cycle.evaporatingBar)!;
  const motorSuperheat = suctionSide.superheatAtEnthalpy(suction + exchange.motorShare * work) ?? Number.NaN;
  return {
    ok: true,
    loop: {
      refrigerant: refrigerant.name,
      brineInC,
      brineOutC,
      flowC,
      returnC,
      evaporatingC: meanEvaporatingC,
      condensingC: meanCondensingC,
      low: pressure(cycle.evaporatingBar),
      high: pressure(cycle.condensingBar),
      suctionC: cycle.suctionC,
      afterMotorC: suctionSide.dewC + motorSuperheat,
      dischargeC: cycle.dischargeC,
      liquidC: cycle.liquidC,
      afterValveC: meanEvaporatingC - left / 2,
      groundKW: kgPerS * fromSource,
      meterKW: kgPerS * work,
      houseKW: heatKW,
      cop: cycle.cop,
      isentropicEfficiency: efficiency,
      refrigerantGPerS: kgPerS * 1000,
      cycle,
    },
  };
}
