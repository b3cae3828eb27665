/** The years to come, from an appraisal and what a purchase costs. Pure, and it works on a kept estimate as well. */

import { quantilesOf, shareAboveZero, valuesAt } from '../chance/quantiles.ts';
import { findSideBySide } from '../comparison/beside.ts';
import type { Appraisal } from '../shapes/appraisal.ts';
import type { Household } from '../shapes/household.ts';
import type { Lifetime, LifetimeFigure, LifetimeInputs, LifetimeNote, Payback, YearPoint } from '../shapes/lifetime.ts';
import type { Reference } from '../shapes/reference.ts';
import type { Working } from '../shapes/working.ts';
import { drawFutures, type Future } from './draw-futures.ts';
import { reckonInstalments } from './instalments.ts';
import { settleInputs } from './lifetime-inputs.ts';
import { lifetimeWorkings, type MiddlePath } from './lifetime-working.ts';
import { type Outlays, presentOutlays, pumpOutlays } from './outlays.ts';
import { type Paths, reckonPaths } from './reckon-path.ts';
import { costsTogether, runningCost } from './running-cost.ts';

export interface LifetimeInput {
  readonly household: Pick<Household, 'purchase'>;
  readonly appraisal: Pick<Appraisal, 'systems' | 'versus' | 'prices' | 'demand' | 'machine'>;
  readonly reference: Pick<Reference, 'spread'>;
  /** Futures behind the ranges; 0 leaves the ranges out. */
  readonly draws?: number;
}

/** Enough for steady 10 and 90 % points, few enough for a frame. */
const USUAL_FUTURES = 1000;

/**
 * Cumulative cost by year, payback, net present value and equivalent annual cost of the heat pump against what it is held
 * against [pence of today, years]. The first year costs what the appraisal says; units then go with the growth of their
 * price; standing charge and service keep pace with general inflation. Null where there is nothing to hold it against.
 */
export function reckonLifetime({
  household,
  appraisal,
  reference,
  draws = USUAL_FUTURES,
}: LifetimeInput): Lifetime | null {
  const { purchase } = household;
  const { pump, beside, versus } = findSideBySide(appraisal as Appraisal);
  if (!beside || !Number.isFinite(pump.cost.value) || !Number.isFinite(beside.cost.value)) return null;
  const inputs = settleInputs(purchase, appraisal.machine.source);
  const years = inputs.years.value;
  const whole = purchase.heatPumpGBP !== undefined;
  const bought = whole ? purchase : {};
  const sides = {
    pump: { running: runningCost(pump, appraisal.prices), outlays: pumpOutlays(bought, inputs) },
    beside: { running: runningCost(beside, appraisal.prices), outlays: presentOutlays(bought, inputs) },
  };
  const growth = { electricity: inputs.electricityGrowth.value, fuel: inputs.fuelGrowth.value };
  const follow = (futures: readonly Future[]) =>
    reckonPaths(sides.pump, sides.beside, futures, years, inputs.discount.value);
  const path = follow([{ pumpShare: 1, besideShare: 1, growth }]);
  const futures = drawFutures(
    {
      pump: sides.pump.running,
      beside: sides.beside.running,
      together: versus ? costsTogether(pump.cost, beside.cost, versus.saving) : 0,
      electricityGrowth: growth.electricity,
      fuelGrowth: growth.fuel,
      growthSpread: inputs.growthSpread.value,
      carrier: beside.carrier,
      spread: reference.spread,
    },
    draws,
  );
  const paths = follow(futures);
  const workings = lifetimeWorkings({ purchase, inputs, pump, beside, sides, path: middleOf(path), whole });
  const figure = (
    of: 'saved' | 'netPresentValue' | 'pumpAnnual' | 'besideAnnual',
    unit: string,
    working: Working,
    // How prices grow and what is left of a machine is never more than assumed.
  ): LifetimeFigure => ({ ...pointsOf(path[of][0]!, paths[of]), unit, grade: 'assumed', working });
  return {
    kind: whole ? 'whole' : 'running',
    years,
    pumpSource: appraisal.machine.source,
    against: { id: beside.id, kind: beside.kind },
    pump: pathPoints(path.pump, paths.pump, sides.pump.outlays),
    beside: pathPoints(path.beside, paths.beside, sides.beside.outlays),
    saved: figure('saved', 'p', workings.saved),
    chanceLess: shareAboveZero((draws ? paths : path).saved),
    payback: whole
      ? {
          simple: paybackOf(path.simple[0]!, paths.simple, workings.simple),
          discounted: paybackOf(path.discounted[0]!, paths.discounted, workings.discounted),
        }
      : null,
    fallsBehind: whole ? yearsOrNull(path.fallsBehind[0]!) : null,
    netPresentValue: whole ? figure('netPresentValue', 'p', workings.netPresentValue) : null,
    annual: whole
      ? {
          pump: figure('pumpAnnual', 'p', workings.pumpAnnual),
          beside: figure('besideAnnual', 'p', workings.besideAnnual),
        }
      : null,
    ...instalmentsOf(purchase),
    inputs,
    notes: whole ? notesOf(purchase, inputs) : ['no-purchase'],
  };
}

const instalmentsOf = (purchase: Household['purchase']) => {
  const instalments = reckonInstalments(purchase);
  return instalments ? { instalments } : {};
};

const yearsOrNull = (years: number) => (years === Number.POSITIVE_INFINITY ? null : years);

function middleOf(path: Paths): MiddlePath {
  return {
    saved: path.saved[0]!,
    simple: yearsOrNull(path.simple[0]!),
    discounted: yearsOrNull(path.discounted[0]!),
    netPresentValue: path.netPresentValue[0]!,
    pumpAnnual: path.pumpAnnual[0]!,
    besideAnnual: path.besideAnnual[0]!,
  };
}

/** 10, 50 and 90 % points, widened to hold the value itself; the value alone without futures. */
function pointsOf(value: number, values: Float64Array) {
  if (values.length === 0) return { value, low: value, middle: value, high: value };
  const [low, middle, high] = quantilesOf(values, [0.1, 0.5, 0.9]) as [number, number, number];
  return { value, low: Math.min(value, low), middle, high: Math.max(value, high) };
}

function pathPoints(path: readonly Float64Array[], paths: readonly Float64Array[], outlays: Outlays): YearPoint[] {
  return path.map(([value], year) => ({ year, ...pointsOf(value!, paths[year]!), outlay: outlays.byYear[year]! }));
}

/** Null: never. */
type Years = number | null;

/** Points of a payback: futures in which it never comes stand behind all others, and no point lies between the two. */
function paybackOf(middle: number, values: Float64Array, working: Working): Payback {
  const years = yearsOrNull(middle);
  if (values.length === 0)
    return { years, low: years, middle: years, high: years, chance: Number(years !== null), working };
  const places = [0.1, 0.5, 0.9].map((p) => Math.floor(p * values.length));
  const [low, half, high] = valuesAt(values, places).map(yearsOrNull) as [Years, Years, Years];
  const chance = values.filter((value) => value !== Number.POSITIVE_INFINITY).length / values.length;
  return { years, low, middle: half, high, chance, working };
}

function notesOf(purchase: Household['purchase'], inputs: LifetimeInputs): LifetimeNote[] {
  const notes: LifetimeNote[] = [];
  if (!purchase.grantGBP) notes.push('no-grant');
  const price = purchase.heatPumpGBP?.value;
  if (price !== undefined && (purchase.grantGBP?.value ?? 0) > price) notes.push('grant-above-price');
  if (!purchase.replacementGBP) notes.push('no-replacement');
  else if (!purchase.presentYearsLeft) notes.push('present-due-now');
  if (!purchase.renewalGBP && inputs.pumpLife.value < inputs.years.value) notes.push('renewal-at-full-price');
  return notes;
}
