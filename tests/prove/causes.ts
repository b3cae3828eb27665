/**
 * Every cause alone, every pair that one meter confuses, and none, by three ways of metering: how often it is named
 * rightly, named as one question with others, left open aloud, or missed; what is named wrongly; the pounds beside the
 * truth. The homes are made by rules that are none of the model's (`causes/home.ts`), each with panels, a car, a gap, a new
 * meter or empty weeks beside the cause, or plain. The readings of a house are the same whether its other use is known or not.
 */
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { ALL, type Cell, type Cells, countCause } from './causes/count.ts';
import { upperShare } from './causes/judge.ts';
import type { ProofTable } from './table.ts';

/** A wrong cause may be named in so many homes of any other cause; the upper 95 % bound is held to it. */
const MOST_WRONG = 0.03;
/** From so many homes on the bound is held to the limit; from so many it is worth more than one processor. */
const FULL = 300;
const MANY = 20;

export interface CausesProof extends ProofTable {
  /** Over all homes and both meters: homes with something named that is not true, and reasons that their data contradict. */
  readonly wrongShare: number;
  readonly contradicted: number;
  /** Homes of a cause in which it is named, alone or in a question, or left open aloud. */
  readonly answeredShare: number;
}

export async function proveCauses(count = 300, seed = 5): Promise<CausesProof> {
  const counted = count < MANY ? ALL.map((_, place) => countCause(place, count, seed)) : await countBeside(count, seed);
  const rows = ALL.flatMap((truths, place) => {
    const { machine, house } = counted[place]!;
    const name = truths.join(' + ');
    return [rowOf(name, 'heat pump', machine), rowOf(name, 'house, other use known or not', house)];
  });
  const cells = counted.flatMap(({ machine, house }) => [machine, house]);
  const sum = (of: (cell: Cell) => number) => cells.reduce((all, cell) => all + of(cell), 0);
  const homes = sum((cell) => cell.homes);
  const wrongs = sum(({ wrong }) => [...wrong.values()].reduce((all, times) => all + times, 0));
  const contradicted = sum((cell) => cell.contradicted);
  return {
    title: `Causes named, over ${count} made homes for each cause, pair and none`,
    columns: [
      'cause',
      'meter',
      'named',
      'asked',
      'left open',
      'missed',
      '£ off, 10 to 90 %',
      'most named wrongly',
      '%',
      '≤ %',
      'pass',
    ],
    rows: rows.map(({ cells: row }) => row),
    within: rows.every(({ pass }) => pass) && contradicted === 0,
    wrongShare: wrongs / homes,
    contradicted,
    answeredShare: 1 - sum((cell) => cell.silent) / homes,
  };
}

/** The causes shared out over the processors. */
async function countBeside(count: number, seed: number): Promise<Cells[]> {
  const places = ALL.map((_, place) => place);
  const counted: Cells[] = [];
  const shares = Math.min(availableParallelism(), places.length);
  await Promise.all(
    Array.from({ length: shares }, (_, share) => {
      const causes = places.filter((place) => place % shares === share);
      const worker = new Worker(new URL('./causes/count.ts', import.meta.url), { workerData: { causes, count, seed } });
      return new Promise<void>((resolve, reject) => {
        worker.on('message', ({ place, cells }: { place: number; cells: Cells }) => {
          counted[place] = cells;
        });
        worker.on('error', reject);
        worker.on('exit', () => resolve());
      });
    }),
  );
  return counted;
}

function rowOf(name: string, meter: string, cell: Cell) {
  const { homes, alone, asked, open, silent, wrong, offPounds } = cell;
  const share = (n: number) => `${((100 * n) / homes).toFixed(0)} %`;
  const [worst, times] = [...wrong].sort((a, b) => b[1] - a[1])[0] ?? ['–', 0];
  const off = offPounds.toSorted((a, b) => a - b);
  const at = (quantile: number) => off[Math.min(off.length - 1, Math.floor(quantile * off.length))]!.toFixed(0);
  const bound = upperShare(times, homes);
  // Few homes bound nothing: there the share itself, less one standard error of the limit, is held against it.
  const pass = homes >= FULL ? bound <= MOST_WRONG : times / homes - Math.sqrt(MOST_WRONG / homes) <= MOST_WRONG;
  return {
    pass,
    cells: [
      name,
      meter,
      share(alone),
      share(asked),
      share(open),
      share(silent),
      off.length > 0 ? `${at(0.1)} to ${at(0.9)}` : '',
      worst,
      ((100 * times) / homes).toFixed(1),
      (100 * bound).toFixed(1),
      pass ? 'yes' : 'NO',
    ],
  };
}
