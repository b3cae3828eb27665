/** Counts what is named in the made homes of one cause, or of one pair. */
import { contradictingUnits } from '../../../src/model/bill-gap/bill-doubts.ts';
import { findInReadings } from '../../../src/model/findings/find-in-readings.ts';
import { notRuledOut } from '../../../src/model/findings/not-ruled-out.ts';
import type { BillCheckInput } from '../../../src/model/shapes/bill-check.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import { answerPieces } from '../beside.ts';
import { type CauseCase, drawCauseCase, PAIRS, type Shown, TRUTHS, type Truth } from './case.ts';
import { causesOf, isLeftOpen, isTrue, upperShare } from './judge.ts';

export const ALL: readonly (readonly Truth[])[] = [
  ...(Object.keys(TRUTHS) as Truth[]).map((truth) => [truth]),
  ...PAIRS,
];

/** A wrong cause may be named in so many homes of any other cause; the upper 95 % bound is held to it. */
export const MOST_WRONG = 0.03;
/** From so many homes on the bound is held to the limit; where it is near, so many times as many are counted. */
export const FULL = 300;
export const MORE = 4;

/** Homes of one cause or pair on one meter. */
export interface Cell {
  homes: number;
  /** One thing is named, and it is true; several as one question, the truth among them. */
  alone: number;
  asked: number;
  /** Nothing is named, and the cause is said to be one that the readings cannot rule out; or not even that. */
  open: number;
  silent: number;
  /** Homes by what was named in them and is not true. */
  readonly wrong: Map<string, number>;
  /** Homes in which anything was named that is not true. */
  anyWrong: number;
  /** Homes in which a sentence gave a reason that its data contradict. */
  contradicted: number;
  /** What is named rightly, less the true cost, £; only what is priced. */
  readonly offPounds: number[];
}

export interface Cells {
  readonly machine: Cell;
  readonly house: Cell;
}

const emptyCell = (): Cell => ({
  homes: 0,
  alone: 0,
  asked: 0,
  open: 0,
  silent: 0,
  wrong: new Map(),
  anyWrong: 0,
  contradicted: 0,
  offPounds: [],
});

/** What was named wrongly in the most homes, and in how many. */
export const worstOf = ({ wrong }: Cell): readonly [string, number] =>
  [...wrong].sort((a, b) => b[1] - a[1])[0] ?? ['–', 0];

/** Whether the bound lies above the limit where what was counted lies below it. */
function isNear(cell: Cell): boolean {
  const [, times] = worstOf(cell);
  return cell.homes >= FULL && times <= MOST_WRONG * cell.homes && upperShare(times, cell.homes) > MOST_WRONG;
}

/** The `place`-th of `ALL`, over `count` homes, over more where that many cannot tell. */
export function countCause(place: number, count: number, seed: number): Cells {
  const cells = { machine: emptyCell(), house: emptyCell() };
  countHomes(cells, place, [0, count], seed);
  if (isNear(cells.machine) || isNear(cells.house)) countHomes(cells, place, [count, MORE * count], seed);
  return cells;
}

function countHomes(cells: Cells, place: number, [from, to]: readonly [number, number], seed: number): void {
  for (let n = from; n < to; n++) {
    const made = drawCauseCase(ALL[place]!, seed * 1_000_000 + place * 10_000 + n);
    for (const meter of ['machine', 'house'] as const) countOne(cells[meter], made, made[meter]);
  }
}

function countOne(cell: Cell, made: CauseCase, { input, pence }: Shown): void {
  cell.homes++;
  const findings = findInReadings(input);
  const right = findings.filter((finding) => isTrue(finding, made, false));
  const billPence = contradictedBy(input);
  const isCarried = made.truths.includes('reading carried over');
  const isRightBill = isCarried && billPence !== undefined;
  if (isRightBill || right.some((finding) => causesOf(finding).length === 1)) cell.alone++;
  else if (right.length > 0) cell.asked++;
  else if (isLeftOpen(notRuledOut(input.readings, input.outdoor, findings, input.prices), made)) cell.open++;
  else cell.silent++;
  const wrong = findings.filter((finding) => !isTrue(finding, made, true));
  const named = new Set(wrong.map((finding) => causesOf(finding).slice(0, 2).join('/')));
  if (billPence !== undefined && !isCarried) named.add('bill against readings');
  if (named.size > 0) cell.anyWrong++;
  for (const one of named) cell.wrong.set(one, (cell.wrong.get(one) ?? 0) + 1);
  if (findings.some(({ seen }) => contradicts(seen))) cell.contradicted++;
  const priced = right.filter((finding) => finding.pence !== 0);
  if (isRightBill) cell.offPounds.push((billPence - pence()) / 100);
  else if (priced.length > 0) cell.offPounds.push((priced.reduce((sum, one) => sum + one.pence, 0) - pence()) / 100);
}

/** "Grows with the cold" where the difference does not fall with the outdoor temperature, "the same" where it does. */
function contradicts({ kind, coldCorrelation, kWhPerDay }: { readonly [name: string]: number | string }): boolean {
  if (typeof coldCorrelation !== 'number' || typeof kWhPerDay !== 'number') return false;
  const falls = coldCorrelation * Math.sign(kWhPerDay);
  if (kind === 'with-the-cold' || kind === 'while-heated') return falls >= 0;
  return kind === 'steady' && Math.abs(coldCorrelation) > 0.5;
}

/** Cost of the units that bills have and the readings of the same days have not, pence; undefined where all agree. */
function contradictedBy({ readings, periods = [], prices }: Shown['input']): number | undefined {
  const { meter, days } = readings[0]!;
  const first = days[0]!.date;
  const length = Math.round((Date.parse(days.at(-1)!.date) - Date.parse(first)) / 86_400_000) + 1;
  const values: (number | null)[] = Array.from({ length }, () => null);
  for (const { date, values: each } of days) {
    const day = Math.round((Date.parse(date) - Date.parse(first)) / 86_400_000);
    values[day] = Array.from(each).reduce((sum, kWh) => sum + kWh, 0);
  }
  const series = {
    ...{ id: 'm', evidenceId: 'm', name: 'meter', carrier: 'electricity', resolution: 'day' },
    ...{ role: meter === 'heat-pump' ? 'heat-pump' : 'import', from: first, to: days.at(-1)!.date },
    ...{ total: 0, days: { first, values }, present: 1, expected: 1, estimatedCount: 0 },
  } satisfies Record<string, unknown> as Series;
  const wrong = periods.flatMap(({ from, to, kWh }) => {
    const bill: BillCheckInput = {
      ...{ estimateId: '', from, to, boughtKWh: kWh, otherKWh: 0, meter },
      ...{ pencePerKWh: prices.pencePerKWh, readings: 'actual' },
    };
    const read = contradictingUnits(bill, [series]);
    return read === undefined ? [] : [(kWh - read) * prices.pencePerKWh];
  });
  return wrong.length > 0 ? wrong.reduce((sum, pence) => sum + pence, 0) : undefined;
}

export const COUNT_CAUSE = import.meta.url;
export type CausePiece = Parameters<typeof countCause>;
answerPieces(COUNT_CAUSE, (piece: CausePiece) => countCause(...piece));
