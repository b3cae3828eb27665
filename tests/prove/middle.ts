/**
 * Whether what is shown of a designed machine is the middle of homes as other sources than the step's own have them: as
 * many homes above it as below, and 8 in 10 inside its range.
 */
import { multiplierAt } from '../../src/model/chance/multiplier.ts';
import { Z90 } from '../../src/model/chance/normal-quantile.ts';
import { reckonMachine } from '../../src/model/heat-pump/spf-from-factors.ts';
import { reference } from '../../src/reference/index.ts';
import { makeHousehold, typed } from '../unit/appraisal/make-household.ts';
import { makeDemand } from '../unit/comparison/make-demand.ts';
import { type Chance, chanceOf } from './chance.ts';
import type { ProofTable } from './table.ts';

type Source = 'ground' | 'air';
type Points = readonly [low: number, middle: number, high: number];

/** Median, 10 and 90 % points of declared seasonal COPs at 35 and 55 °C, 123 brine and 1,615 air units (certification dump, 2024). */
const DECLARED: { readonly [source in Source]: { readonly low: Points; readonly medium: Points } } = {
  ground: { low: [4.55, 5.05, 5.32], medium: [3.48, 3.73, 4.17] },
  air: { low: [4.12, 4.6, 5.0], medium: [3.2, 3.4, 3.75] },
};
/** Mean flows of 10, 50 and 90 % of homes: Electrification of Heat (for DESNZ, December 2024). */
const MEAN_FLOW_C: Points = [31.99, 37.84, 44.11];
/** Share of the design flow above room temperature that a season has in its mean: bins of EN 14825, radiators. */
const SEASON_SHARE = 0.643;

interface Field {
  readonly name: string;
  readonly source: Source;
  /** Factors of the whole house at H4 in 10, 50 and 90 % of homes. */
  readonly factor: Points;
  /** Whether it is the source that the step was fitted to. */
  readonly fitted: boolean;
}

/**
 * Ofgem data 2017-2022 (for DESNZ, RECC and GSHPA, 2024): from the shares at 3.0 and 3.5, 67 and 33 % ground, 30 and 8 % air.
 * Electrification of Heat: its own deciles. Of ground source no other British source of these years is published.
 */
const FIELDS: readonly Field[] = [
  { name: 'ground, Ofgem data', source: 'ground', factor: [2.59, 3.24, 4.06], fitted: true },
  { name: 'air, Ofgem data', source: 'air', factor: [2.19, 2.74, 3.42], fitted: true },
  { name: 'air, Electrification of Heat', source: 'air', factor: [2.172, 2.747, 3.316], fitted: false },
];

const LIMITS = { above: [0.45, 0.55], inside: [0.7, 0.9] } as const;

/** A two-piece lognormal through three points. */
function drawn([low, middle, high]: Points, chance: Chance): number {
  const slope = (edge: number) => Math.abs(Math.log(edge / middle)) / Z90;
  return middle * multiplierAt({ below: slope(low), above: slope(high) }, chance.normal(0, 1));
}

/** An installer's design: a declared machine at the flow that the home is designed for; nothing to do with what comes of it. */
function design(source: Source, chance: Chance): { factor: number; flowC: number } {
  const flowC = 20 + (drawn(MEAN_FLOW_C, chance) - 20) / SEASON_SHARE;
  const z = chance.normal(0, 1);
  const at = ([low, middle, high]: Points) =>
    middle * Math.exp((Math.abs(Math.log((z < 0 ? low : high) / middle)) / Z90) * z);
  const { low, medium } = DECLARED[source];
  const [warm, hot] = [at(low), at(medium)];
  return { factor: hot * (warm / hot) ** ((55 - flowC) / 20), flowC };
}

/** Shares of made homes above the middle and inside the range, by field. `count` homes of each. */
export function proveMiddle(count = 4000, seed = 11): ProofTable {
  const demand = makeDemand(12_000, 2500);
  const rows = FIELDS.map(({ name, source, factor, fitted }, place) => {
    const chance = chanceOf(seed + place);
    let [above, inside] = [0, 0];
    for (let i = 0; i < count; i++) {
      const promised = design(source, chance);
      const value = typed(Math.min(8, promised.factor));
      const { machine } = reckonMachine({
        household: makeHousehold({
          machine: { source, spaceFactor: value, waterFactor: value, boundary: 'H4', flowC: typed(promised.flowC) },
        }),
        demand,
        reference,
      });
      const real = drawn(factor, chance);
      if (real > machine.whole.value) above++;
      if (real >= machine.whole.low && real <= machine.whole.high) inside++;
    }
    // Two standard errors of a share near one half are 1 / √count.
    const slack = 1 / Math.sqrt(count);
    const within = ([low, high]: readonly [number, number], share: number) =>
      share >= low - slack && share <= high + slack;
    const pass = within(LIMITS.above, above / count) && within(LIMITS.inside, inside / count);
    const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
    return {
      pass,
      cells: [
        name,
        fitted ? 'fitted on it' : 'tested on it',
        count,
        percent(above / count),
        percent(inside / count),
        pass ? 'yes' : 'NO',
      ],
    };
  });
  return {
    title: `Homes whose factor lies above the one shown (45 to 55 %) and inside its range (70 to 90 %), designs from certificates`,
    columns: ['homes as in', 'the step was', 'homes', 'above the middle', 'inside the range', 'pass'],
    rows: rows.map(({ cells }) => cells),
    within: rows.every(({ pass }) => pass),
  };
}
