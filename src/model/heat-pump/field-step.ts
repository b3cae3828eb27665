/** The one step from a designer's factor to what homes really get, the same for ground and air. */

import { normalQuantile } from '../chance/normal-quantile.ts';
import { normalShare } from '../chance/normal-share.ts';
import type { Household } from '../shapes/household.ts';
import type { Reference } from '../shapes/reference.ts';
import { type Told, tell } from '../shapes/told.ts';
import type { Working } from '../shapes/working.ts';
import { type ExtraLine, reckonExtras } from './extras.ts';
import { findPasteurisation } from './pasteurisation.ts';
import { type SettledFactor, type SettledFactors, settleFactors } from './settle-factors.ts';

/** A usual home, for the share of pumps and standby alone: it hardly changes with the heat. kWh a year and kW. */
const USUAL = { spaceKWh: 12_000, waterKWh: 2500, capacityKW: 7 } as const;
/** How much of a design's distance from the usual design comes true in the home: half of it, between none and all. */
export const COMES_TRUE = 0.5;

export interface FieldStep {
  /** What both typed factors are multiplied by, at most 1. */
  readonly share: number;
  /** Standard deviation of ln(real factor) about the factor after the step. */
  readonly deviation: number;
  /** Share of homes, 0 to 1, in which the factor is at least the designer's. */
  readonly reachedShare: number;
  readonly working: Working;
}

export interface FactorsAtMiddle {
  /** The factors as given, derived or from the field. */
  readonly design: SettledFactors;
  /** The factors in the middle of what homes get. */
  readonly space: SettledFactor;
  readonly water: SettledFactor;
  /** Null where nothing but metered and field figures is reckoned with. */
  readonly step: FieldStep | null;
}

/** Whether a factor is a designer's: typed, and not metered. */
const isDesigned = ({ from, grade }: SettledFactor): boolean => from === 'typed' && grade !== 'measured';

/** Factors [1] for rooms and hot water in the middle of what homes get, beside those of the design. */
export function settleAtMiddle(household: Household, reference: Reference, flowC?: number): FactorsAtMiddle {
  const design = settleFactors(household.machine, reference, flowC);
  const space = isDesigned(design.spaceAsGiven);
  // A hot-water factor goes with the one for the rooms that it was derived from.
  const water = design.water.from === 'derived' ? space : isDesigned(design.water);
  if (!space && !water) return { design, space: design.space, water: design.water, step: null };
  const step = stepToField(household, reference, design);
  const stepped = (factor: SettledFactor): SettledFactor => ({
    ...factor,
    value: Math.max(1, factor.value * step.share),
    origin: tell('from-design', { origin: factor.origin, share: step.share }),
  });
  return {
    design,
    space: space ? stepped(design.space) : design.space,
    water: water ? stepped(design.water) : design.water,
    step,
  };
}

/** Electricity of a usual home on the machine's own meter [kWh]: by the two factors alone, and with every line. */
function usualElectricity(household: Household, settled: Pick<SettledFactors, 'boundary'> & FactorPair) {
  const { heat, machine } = household;
  const lines: readonly ExtraLine[] = reckonExtras({
    ...USUAL,
    capacityKW: heat.heatLossKW && heat.heatLossKW.value > 0 ? heat.heatLossKW.value : USUAL.capacityKW,
    spaceFactor: settled.space.value,
    waterFactor: settled.water.value,
    boundary: settled.boundary,
    metered: settled.space.grade === 'measured',
    backupShare: machine.backupShare ?? null,
    pasteurisation: findPasteurisation(household, settled),
  });
  const countedKWh = USUAL.spaceKWh / settled.space.value + USUAL.waterKWh / settled.water.value;
  return { countedKWh, allKWh: lines.reduce((sum, { kWh }) => sum + kWh, countedKWh) };
}
type FactorPair = { readonly space: SettledFactor; readonly water: SettledFactor };

/**
 * What to multiply a designer's factors by [1], so that the whole house comes out at
 * F = middle of the field × (design / usual design)^½, usual design = middle of the field × e^(z σ).
 * z is the normal quantile at which as many homes as in the field reach their design (16 % ground, 6 % air), and
 * σ = √(field² + design²) the deviation of ln(real / design) where the two have nothing to do with each other. Half the
 * distance of a design from the usual one comes true: no link at all was found between forecasts and results, yet a colder
 * flow does help, so a judgement between the two. What hot water, pumps and standby take off the design's own factor at a
 * usual home counts towards the step, so that nothing is taken off twice; it never adds.
 * Valid for factors of 1 to 8. Sources: analysis of Ofgem data 2017-2022 (for DESNZ, RECC and GSHPA, 2024), to which it is
 * fitted; no link: Heat pumps and the UK's heat decarbonisation, lessons from an Ofgem dataset (Leeds Beckett repository).
 * Tested on declared EN 14825 certificates and Electrification of Heat (for DESNZ, December 2024).
 */
function stepToField(household: Household, reference: Reference, design: SettledFactors): FieldStep {
  const { field, spaceAsGiven, water } = design;
  const given = isDesigned(spaceAsGiven) ? spaceAsGiven : water;
  const { reachedDesignShare, deviation: among } = field;
  const promised = reference.designDeviation.value;
  const usualDesign = field.middle * Math.exp(normalQuantile(1 - reachedDesignShare) * Math.hypot(among, promised));
  const middle = field.middle * (given.value / usualDesign) ** COMES_TRUE;
  const { allKWh } = usualElectricity(household, { space: spaceAsGiven, water, boundary: design.boundary });
  const designWhole = (USUAL.spaceKWh + USUAL.waterKWh) / allKWh;
  const share = Math.min(1, middle / designWhole);
  // What of the design does not come true strays about the middle too.
  const deviation = Math.hypot(among, COMES_TRUE * promised);
  const source = tell('both', { first: field.source, second: reference.designDeviation.source });
  const line = (name: Told, value: number, unit: string, grade: 'measured' | 'estimated' | 'assumed') => ({
    name,
    value,
    unit,
    grade,
    origin: grade === 'estimated' ? given.origin : source,
  });
  return {
    share,
    deviation,
    reachedShare: normalShare(Math.log(share) / deviation),
    working: {
      title: tell('design-to-homes'),
      formula: tell('middle-by-root'),
      inputs: [
        line(tell('middle-of-homes'), field.middle, 'factor', 'measured'),
        line(tell('reached-design'), reachedDesignShare, 'share', 'measured'),
        line(tell('factor-as-given'), given.value, 'factor', 'estimated'),
        line(tell('usual-design'), usualDesign, 'factor', 'assumed'),
        {
          ...line(tell('design-for-usual-home'), designWhole, 'factor', 'estimated'),
          origin: tell('pumps-counted-in'),
        },
      ],
      result: { value: share, unit: tell('of-the-factor') },
      source,
    },
  };
}

/**
 * What turns the record of the heat pump's own meter into heat: factors [1] for rooms and hot water over all electricity that the machine's meter counts: those that homes get at the
 * typed boundary × E / (E + lines outside it), E and the lines being those of a usual home.
 * Valid within about 2 % for homes of 6,000 to 25,000 kWh; at H4 with both factors metered they are the typed ones.
 */
export function factorsAtMeter(household: Household, reference: Reference) {
  const { design, space, water, step } = settleAtMiddle(household, reference);
  const { countedKWh, allKWh } = usualElectricity(household, { space, water, boundary: design.boundary });
  const share = countedKWh / allKWh;
  const atMeter = (factor: SettledFactor): SettledFactor =>
    share === 1
      ? factor
      : {
          ...factor,
          value: factor.value * share,
          origin: tell('with-pumps', { origin: factor.origin, share }),
        };
  return { space: atMeter(space), water: atMeter(water), field: design.field, step };
}
