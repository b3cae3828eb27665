/** The years to come, from an appraisal and what a purchase costs. Pure, and it works on a kept promise as well. */
import type { Appraisal } from '../appraisal/appraisal.ts';
import { findSideBySide } from '../appraisal/beside.ts';
import type { Household } from '../household/household.ts';
import type { Reference } from '../reference.ts';
import { quantileOfSorted, shareAboveZero } from '../uncertainty/quantiles.ts';
import type { Working } from '../working.ts';
import { type LifetimeInputs, settleInputs } from './assumptions.ts';
import { drawFutures } from './draw-futures.ts';
import type { Lifetime, LifetimeFigure, LifetimeNote, Payback, YearPoint } from './lifetime.ts';
import { lifetimeWorkings } from './lifetime-working.ts';
import { type Outlays, presentOutlays, pumpOutlays } from './outlays.ts';
import { type Path, reckonPath } from './reckon-path.ts';
import { runningCost, savingWithCost } from './running-cost.ts';

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
  const none: Outlays = { byYear: new Array<number>(years + 1).fill(0), leftPence: 0 };
  const sides = {
    pump: {
      running: runningCost(pump, appraisal.prices),
      outlays: whole ? pumpOutlays(purchase, inputs) : none,
    },
    beside: {
      running: runningCost(beside, appraisal.prices),
      outlays: whole ? presentOutlays(purchase, inputs) : none,
    },
  };
  const growth = { electricity: inputs.electricityGrowth.value, fuel: inputs.fuelGrowth.value };
  const middle = { pumpShare: 1, besideShare: 1, growth };
  const follow = (future: typeof middle) => reckonPath(sides.pump, sides.beside, future, years, inputs.discount.value);
  const path = follow(middle);
  const futures = drawFutures(
    {
      pump: sides.pump.running,
      beside: sides.beside.running,
      twenty: versus?.twenty ?? [beside.cost.value - pump.cost.value],
      savingWithCost: versus ? savingWithCost(pump.cost, beside.cost, versus.saving) : 0,
      electricityGrowth: growth.electricity,
      fuelGrowth: growth.fuel,
      growthSpread: inputs.growthSpread.value,
      carrier: beside.carrier,
      spread: reference.spread,
    },
    draws,
  );
  const paths = futures.map(follow);
  const workings = lifetimeWorkings({ purchase, inputs, pump, beside, sides, path, whole });
  const figure = (of: (path: Path) => number, unit: string, working: Working): LifetimeFigure => ({
    ...pointsOf(of(path), sorted(paths, of)),
    unit,
    grade: workings.grade,
    working,
  });
  const savedOf = (one: Path) => one.beside.at(-1)! - one.pump.at(-1)!;
  const savings = sorted(draws > 0 ? paths : [path], savedOf);
  return {
    kind: whole ? 'whole' : 'running',
    years,
    pumpSource: appraisal.machine.source,
    against: { id: beside.id, kind: beside.kind },
    pump: pathPoints((one) => one.pump, path, paths, sides.pump.outlays),
    beside: pathPoints((one) => one.beside, path, paths, sides.beside.outlays),
    saved: figure(savedOf, 'p', workings.saved),
    chanceLess: shareAboveZero(savings),
    payback: whole
      ? {
          simple: paybackOf((one) => one.simple.payback, path, paths, workings.simple),
          discounted: paybackOf((one) => one.discounted.payback, path, paths, workings.discounted),
        }
      : null,
    fallsBehind: whole ? path.simple.fallsBehind : null,
    netPresentValue: whole ? figure((one) => one.netPresentValue, 'p', workings.netPresentValue) : null,
    annual: whole
      ? {
          pump: figure((one) => one.pumpAnnual, 'pence a year', workings.pumpAnnual),
          beside: figure((one) => one.besideAnnual, 'pence a year', workings.besideAnnual),
        }
      : null,
    inputs,
    notes: whole ? notesOf(purchase, inputs) : ['no-purchase'],
  };
}

const sorted = (paths: readonly Path[], of: (path: Path) => number) => Float64Array.from(paths, of).sort();

/** 10, 50 and 90 % points, widened to hold the value itself; the value alone without futures. */
function pointsOf(value: number, values: Float64Array) {
  if (values.length === 0) return { value, low: value, middle: value, high: value };
  const at = (p: number) => quantileOfSorted(values, p);
  return { value, low: Math.min(value, at(0.1)), middle: at(0.5), high: Math.max(value, at(0.9)) };
}

function pathPoints(
  of: (path: Path) => Float64Array,
  path: Path,
  paths: readonly Path[],
  outlays: Outlays,
): YearPoint[] {
  return Array.from(of(path), (value, year) => ({
    year,
    ...pointsOf(
      value,
      sorted(paths, (one) => of(one)[year]!),
    ),
    outlay: outlays.byYear[year]!,
  }));
}

/** Points of a payback: futures in which it never comes stand behind all others, and no point lies between the two. */
function paybackOf(of: (path: Path) => number | null, path: Path, paths: readonly Path[], working: Working): Payback {
  const years = of(path);
  if (paths.length === 0)
    return { years, low: years, middle: years, high: years, chance: Number(years !== null), working };
  const never = Number.POSITIVE_INFINITY;
  const values = sorted(paths, (one) => of(one) ?? never);
  const at = (p: number) => {
    const found = values[Math.min(values.length - 1, Math.floor(p * values.length))]!;
    return found === never ? null : found;
  };
  const chance = values.filter((value) => value !== never).length / values.length;
  return { years, low: at(0.1), middle: at(0.5), high: at(0.9), chance, working };
}

function notesOf(purchase: Household['purchase'], inputs: LifetimeInputs): LifetimeNote[] {
  const notes: LifetimeNote[] = [];
  if (!purchase.grantGBP) notes.push('no-grant');
  if (!purchase.replacementGBP) notes.push('no-replacement');
  else if (!purchase.presentYearsLeft) notes.push('present-due-now');
  if (!purchase.renewalGBP && inputs.pumpLife.value < inputs.years.value) notes.push('renewal-at-full-price');
  return notes;
}
