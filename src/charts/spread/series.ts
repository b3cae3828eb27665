/** Yearly cost of each way of heating, as rows sorted by cost; what is not known comes last and stays open. */
import {
  type Appraisal,
  basisOf,
  isOpenPrice,
  type SystemResult,
  type Verdict,
  verdictAgainst,
} from '../../model/shapes/appraisal.ts';
import type { TariffChoice } from '../../model/shapes/tariff-choice.ts';
import type { Grade } from '../../model/shapes/working.ts';
import { priceInShort } from '../../words/prices.ts';
import { systemName } from '../../words/systems.ts';
import { cheapestInShort, tariffName } from '../../words/which-tariff.ts';

export interface SpreadRow {
  readonly id: string;
  readonly name: string;
  /** True for the heat pump: green and bold among slate ones. */
  readonly ours: boolean;
  readonly grade: Grade;
  /** Pence a year; null where nothing is known. */
  readonly cost: { readonly low: number; readonly middle: number; readonly high: number } | null;
  /** Cost if it works as designed, pence a year; absent where no design stands behind it. */
  readonly designed?: number | undefined;
  /** Under the name: day and kind of the price, or how often a tariff is the cheapest; empty where there is nothing to say. */
  readonly price?: string;
  /** True for a price that is old or nobody's: the band is dashed. */
  readonly openPrice?: boolean;
  /** Whether the heat pump costs less or more than this, where it may be said. */
  readonly against?: Verdict | undefined;
}

type Compared = Pick<Appraisal, 'systems' | 'machine' | 'versus' | 'prices'>;

function rowOf(system: SystemResult, { machine: { source }, versus, prices }: Compared): SpreadRow {
  const basis = basisOf(prices, system)?.basis;
  const { value, low, high } = system.cost;
  const known = [value, low, high].every(Number.isFinite);
  return {
    id: system.id,
    name: systemName(system.id, system.kind, source),
    ours: system.id === 'heat-pump',
    grade: system.grade,
    // A range never leaves its own most likely value outside.
    cost: known ? { low: Math.min(low, high, value), middle: value, high: Math.max(low, high, value) } : null,
    designed: known ? system.asDesigned?.costPence : undefined,
    price: basis?.kind ? priceInShort(basis) : '',
    openPrice: basis !== undefined && isOpenPrice(basis),
    against: verdictAgainst(versus, system.id),
  };
}

/** The tariffs of a home as rows, in their own order; the one that the estimate rests on stands out. */
export const tariffRows = (choice: TariffChoice): SpreadRow[] =>
  choice.costs.map((cost) => ({
    id: cost.tariffId ?? 'published',
    name: tariffName(cost),
    ours: cost.tariffId === choice.inUse,
    grade: cost.whole.grade,
    price: cheapestInShort(cost, choice),
    cost: { low: cost.whole.low, middle: cost.whole.value, high: cost.whole.high },
  }));

const byCost = (a: SpreadRow, b: SpreadRow): number => {
  if (a.cost === null || b.cost === null) return Number(a.cost === null) - Number(b.cost === null);
  return a.cost.middle - b.cost.middle;
};

/** Rows for the picture. With `most`, the heat pump and the present heating stay and the cheapest others fill up. */
export function spreadSeries(appraisal: Compared, most = Infinity): SpreadRow[] {
  const rows = appraisal.systems.map((system) => rowOf(system, appraisal)).sort(byCost);
  const always = rows.filter((row) => row.ours || row.id === 'present');
  const others = rows.filter((row) => !always.includes(row)).slice(0, Math.max(0, most - always.length));
  return rows.filter((row) => always.includes(row) || others.includes(row));
}
