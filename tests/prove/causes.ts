/**
 * Every cause alone, every pair that one meter confuses, and none, by three ways of metering: how often it is named
 * rightly, named as one question with others, left open aloud, or missed; what is named wrongly; the pounds beside the
 * truth. The homes are made by rules that are none of the model's (`causes/home.ts`), each with panels, a car, a gap, a new
 * meter or empty weeks beside the cause, or plain. The readings of a house are the same whether its other use is known or not.
 * Where at 300 homes the bound lies above the limit but what was counted below it, four times as many are counted, those
 * 300 among them, and all of them are judged.
 */
import { workBeside } from './beside.ts';
import type { Truth } from './causes/case.ts';
import {
  ALL,
  type CausePiece,
  type Cell,
  type Cells,
  COUNT_CAUSE,
  countCause,
  FULL,
  MORE,
  MOST_WRONG,
  worstOf,
} from './causes/count.ts';
import { upperShare } from './causes/judge.ts';
import type { ProofTable } from './table.ts';

/** From so many homes of a cause on it is worth more than one processor. */
export const MANY = 20;

/** What the machine's own meter does not count: no bill of it is higher for that, and nothing can be missed there. */
const NOT_ON_MACHINE: readonly Truth[] = ['base load', 'other use', 'vehicle', 'none'];

export interface CausesProof extends ProofTable {
  /** Over all homes and both meters: homes with something named that is not true, and reasons that their data contradict. */
  readonly wrongShare: number;
  readonly contradicted: number;
  /** Homes of a cause in which it is named, alone or in a question, or left open aloud. */
  readonly answeredShare: number;
}

export async function proveCauses(count = FULL, seed = 5, named = ''): Promise<CausesProof> {
  const places = [...ALL.keys()].filter((place) => nameOf(place).includes(named));
  const pieces = places.map((place): CausePiece => [place, count, seed]);
  const counted =
    count < MANY
      ? pieces.map((piece) => countCause(...piece))
      : await workBeside<CausePiece, Cells>(COUNT_CAUSE, pieces);
  const rows = places.flatMap((place, i) => {
    const { machine, house } = counted[i]!;
    const isElsewhere = ALL[place]!.every((truth) => NOT_ON_MACHINE.includes(truth));
    return [
      rowOf(nameOf(place), isElsewhere ? 'heat pump, which has none of it' : 'heat pump', machine),
      rowOf(nameOf(place), 'house, other use known or not', house),
    ];
  });
  const cells = counted.flatMap(({ machine, house }) => [machine, house]);
  const sum = (of: (cell: Cell) => number) => cells.reduce((all, cell) => all + of(cell), 0);
  const homes = sum((cell) => cell.homes);
  const wrongs = sum(({ wrong }) => [...wrong.values()].reduce((all, times) => all + times, 0));
  const contradicted = sum((cell) => cell.contradicted);
  return {
    title: `Causes named, over ${count} made homes for each cause, pair and none, ${MORE} times as many where the bound is near the limit`,
    columns: [
      'cause',
      'meter',
      'homes',
      'named',
      'asked',
      'left open',
      'missed',
      '£ off, 10 to 90 %',
      'most named wrongly',
      '%',
      '≤ %',
      'any %',
      'pass',
    ],
    rows: rows.map(({ cells: row }) => row),
    within: rows.every(({ pass }) => pass) && contradicted === 0,
    wrongShare: wrongs / homes,
    contradicted,
    answeredShare: 1 - sum((cell) => cell.silent) / homes,
  };
}

const nameOf = (place: number) => ALL[place]!.join(' + ');

function rowOf(name: string, meter: string, cell: Cell) {
  const { homes, alone, asked, open, silent, offPounds } = cell;
  const share = (n: number) => `${((100 * n) / homes).toFixed(0)} %`;
  const [worst, times] = worstOf(cell);
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
      homes,
      share(alone),
      share(asked),
      share(open),
      share(silent),
      off.length > 0 ? `${at(0.1)} to ${at(0.9)}` : '',
      worst,
      ((100 * times) / homes).toFixed(1),
      (100 * bound).toFixed(1),
      share(cell.anyWrong),
      pass ? 'yes' : 'NO',
    ],
  };
}
