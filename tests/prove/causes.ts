/**
 * Every cause alone, every pair that one meter confuses, and none, by three ways of metering: how often it is named
 * rightly, named as one question with others, named wrongly, or left unnamed; and the pounds beside the truth.
 * The homes are made by rules that are none of the model's (`causes/home.ts`).
 */
import { findInReadings } from '../../src/model/findings/find-in-readings.ts';
import type { Finding } from '../../src/model/shapes/finding.ts';
import { type CauseCase, drawCauseCase, METERINGS, type Metering, PAIRS, TRUTHS, type Truth } from './causes/case.ts';
import { causesOf, isTrueOf, upperShare } from './causes/judge.ts';
import type { ProofTable } from './table.ts';

/** A wrong cause may be named in so many homes of any other cause; the upper 95 % bound is held to it. */
const MOST_WRONG = 0.03;

interface Cell {
  homes: number;
  alone: number;
  asked: number;
  silent: number;
  /** By the set of causes that a finding named and none of which was true. */
  readonly wrong: Map<string, number>;
  readonly offPounds: number[];
}

const emptyCell = (): Cell => ({ homes: 0, alone: 0, asked: 0, silent: 0, wrong: new Map(), offPounds: [] });

export function proveCauses(count = 300, seed = 5, truths: readonly (readonly Truth[])[] = ALL): ProofTable {
  const rows = truths.flatMap((truth, i) => {
    const cells = new Map(METERINGS.map((metering) => [metering, emptyCell()]));
    for (let n = 0; n < count; n++) {
      const made = drawCauseCase(truth, seed * 1_000_000 + i * 1000 + n);
      const [machine, house] = [findInReadings(made.machine.input), findInReadings(made.house.input)];
      for (const [metering, cell] of cells) countOne(cell, made, metering, metering === 'machine' ? machine : house);
    }
    return [...cells].map(([metering, cell]) => rowOf(truth, metering, cell));
  });
  return {
    title: `Causes named, over ${count} made homes for each cause, pair and none; a wrong one in at most 3 of 100 (upper 95 % bound)`,
    columns: ['cause', 'metering', 'homes', 'named', 'asked', 'not seen', '£ off', 'most wrong', 'of 100', '≤', 'pass'],
    rows: rows.map(({ cells }) => cells),
    within: rows.every(({ pass }) => pass),
  };
}

const ALL: readonly (readonly Truth[])[] = [...(Object.keys(TRUTHS) as Truth[]).map((truth) => [truth]), ...PAIRS];

function countOne(cell: Cell, made: CauseCase, metering: Metering, findings: readonly Finding[]): void {
  cell.homes++;
  const shown = metering === 'machine' ? made.machine : made.house;
  const right = findings.filter((finding) => causesOf(finding).some((cause) => isTrueOf(cause, made, false)));
  if (right.some((finding) => causesOf(finding).length === 1)) cell.alone++;
  else if (right.length > 0) cell.asked++;
  else cell.silent++;
  const wrong = new Set(
    findings
      .filter((finding) => !causesOf(finding).some((cause) => isTrueOf(cause, made, true)))
      .map((finding) => causesOf(finding).join('/')),
  );
  for (const one of wrong) cell.wrong.set(one, (cell.wrong.get(one) ?? 0) + 1);
  if (right.length > 0) {
    cell.offPounds.push((right.reduce((sum, { pence }) => sum + pence, 0) - shown.pence) / 100);
  }
}

function rowOf(truth: readonly Truth[], metering: Metering, cell: Cell) {
  const { homes, alone, asked, silent, wrong, offPounds } = cell;
  const share = (n: number) => `${((100 * n) / homes).toFixed(0)} %`;
  const [worst, times] = [...wrong].sort((a, b) => b[1] - a[1])[0] ?? ['', 0];
  const off = offPounds.toSorted((a, b) => a - b);
  const bound = upperShare(times, homes);
  // Few homes bound nothing: there the limit is held against the share itself less one standard error.
  const pass = homes >= 300 ? bound <= MOST_WRONG : times / homes - Math.sqrt(MOST_WRONG / homes) <= MOST_WRONG;
  return {
    pass,
    cells: [
      truth.join(' + '),
      metering,
      homes,
      share(alone),
      share(asked),
      share(silent),
      off.length > 0 ? `${quantile(off, 0.1)}…${quantile(off, 0.9)}` : '',
      worst === '' ? '–' : worst,
      times === 0 ? '0' : ((100 * times) / homes).toFixed(1),
      (100 * bound).toFixed(1),
      pass ? 'yes' : 'NO',
    ],
  };
}

const quantile = (sorted: readonly number[], at: number): string =>
  sorted[Math.min(sorted.length - 1, Math.floor(at * sorted.length))]!.toFixed(0);
