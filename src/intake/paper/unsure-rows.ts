/** Rows of a picture of paper that did not lie flat: where words might as well belong to the row above or below. */
import type { Word } from '../terms/paper-reading.ts';

/** Words that follow each other closely; where they are long enough to tell, how far they fall for each point to the right. */
interface Run {
  readonly words: readonly Word[];
  /** How far down the first of them stands. */
  readonly middle: number;
  readonly fall?: Range;
}
interface Range {
  readonly least: number;
  readonly most: number;
}

/** Of the height of letters: a wider gap begins another cell, and so far down one word of a run, or of a row, stands from the next. */
const [CELL_GAP, STEP] = [1.1, 0.45];
/** As shares of it too: a place is no surer than that, and nothing farther off is looked at. */
const [BLUR, FAR] = [0.3, 4];

const middleOf = ({ y, height }: Word): number => y + height / 2;
const endOf = ({ x, width }: Word): number => x + width;
const centreOf = ({ x, width }: Word): number => x + width / 2;

/**
 * A row is unsure where a word in it lies where the paper's fall near it does not lead, where that leads to a word of
 * another row just as well, or where words and numbers face each other half a row apart.
 * @param leaning the words of each row, from left to right
 * @param lean how far rows fall for each point to the right
 * @returns the numbers of such rows
 */
export function unsureRows(leaning: readonly (readonly Word[])[], lean = 0): ReadonlySet<number> {
  const rows = leaning.map((row) =>
    row.map(({ level, ...word }) => ({
      ...word,
      y: (level === undefined ? word.y : level - word.height / 2) - lean * centreOf(word),
    })),
  );
  const placeOf = new Map(rows.flatMap((own, row) => own.map((word, at) => [word, { row, at }] as const)));
  const rowOf = (word: Word): number => placeOf.get(word)!.row;
  const beside = (word: Word, by: number): Word | undefined => {
    const { row, at } = placeOf.get(word)!;
    return rows[row]![at + by];
  };
  const runs = runsOf(rows.flat());
  const unsure = new Set<number>();
  for (const { words } of runs)
    if (words.some((word) => rowOf(word) !== rowOf(words[0]!))) for (const word of words) unsure.add(rowOf(word));
  const torn: Facing[] = [];
  for (const one of facing(runs, beside)) {
    const { from, to, down } = one;
    const isSame = rowOf(from) === rowOf(to);
    if (isSame && beside(from, 1) !== to) continue;
    const across = Math.max(0, centreOf(to) - centreOf(from));
    const { least, most } = fallBetween(runs, one);
    const blur = (isSame ? STEP : BLUR) * heightOf(one);
    const isLikely = down >= least * across - blur && down <= most * across + blur;
    if (isSame !== isLikely) for (const word of [from, to]) unsure.add(rowOf(word));
    if (!isSame && Math.abs(down) < TORN * pitchAt(runs, one)) torn.push(one);
  }
  for (const one of torn)
    if (isNumber(rows[rowOf(one.to)]!) || torn.some((other) => isAlike(one, other)))
      for (const word of [one.from, one.to]) unsure.add(rowOf(word));
  return unsure;
}

/** Two words with nothing of their own rows between them, the second to the right and so far down. */
interface Facing {
  readonly from: Word;
  readonly to: Word;
  readonly down: number;
}
const heightOf = ({ from, to }: Facing): number => Math.min(from.height, to.height);

function facing(runs: readonly Run[], beside: (word: Word, by: number) => Word | undefined): Facing[] {
  const found: Facing[] = [];
  for (const { words } of runs) {
    const from = words.at(-1)!;
    const [end, middle, after] = [endOf(from), middleOf(from), beside(from, 1)];
    for (const { words: right } of about(runs, middle, middle, FAR * from.height)) {
      const to = right[0]!;
      const isBefore = to.x - end < -BLUR * Math.min(from.height, to.height);
      if (isBefore || right === words || (after && centreOf(after) < to.x)) continue;
      const before = beside(to, -1);
      if (!before || centreOf(before) <= end) found.push({ from, to, down: middleOf(to) - middle });
    }
  }
  return found;
}

/** The runs that begin between two heights, or as far from one of them. */
function about(runs: readonly Run[], top: number, bottom: number, far: number): readonly Run[] {
  const firstFrom = (height: number): number => {
    let [from, to] = [0, runs.length];
    while (from < to) {
      const half = (from + to) >> 1;
      if (runs[half]!.middle < height) from = half + 1;
      else to = half;
    }
    return from;
  };
  return runs.slice(firstFrom(top - far), firstFrom(bottom + far));
}

/** Each word with the nearest behind it, and so on; from above. */
function runsOf(words: readonly Word[]): Run[] {
  const runs: Word[][] = [];
  // Those that some word may still follow.
  let open: Word[][] = [];
  for (const word of words.toSorted((a, b) => a.x - b.x)) {
    let best: Word[] | undefined;
    let least = Number.POSITIVE_INFINITY;
    const middle = middleOf(word);
    for (const run of open) {
      const last = run.at(-1)!;
      const height = Math.min(last.height, word.height);
      const [gap, away] = [word.x - endOf(last), Math.abs(middle - middleOf(last))];
      if (gap > CELL_GAP * height || gap < -BLUR * height || away >= STEP * height || away >= least) continue;
      [best, least] = [run, away];
    }
    if (best) best.push(word);
    else {
      open = open.filter((run) => word.x - endOf(run.at(-1)!) <= CELL_GAP * run.at(-1)!.height);
      const run = [word];
      runs.push(run);
      open.push(run);
    }
  }
  return runs
    .map((own) => ({ words: own, middle: middleOf(own[0]!), ...fallOf(own) }))
    .toSorted((a, b) => a.middle - b.middle);
}

/** By least squares, as a tangent. */
export function slopeOf(words: readonly Word[]): number {
  const mean = (of: (word: Word) => number) => words.reduce((sum, word) => sum + of(word), 0) / words.length;
  const [x, y] = [mean(centreOf), mean(middleOf)];
  let [spread, sum] = [0, 0];
  for (const word of words) {
    const across = centreOf(word) - x;
    spread += across ** 2;
    sum += across * (middleOf(word) - y);
  }
  return sum / spread;
}

/** How far a word's place may be off, and the least length at which a fall can be told, points. */
const [ERROR, SHORTEST] = [2, 24];
/** Its slope by least squares, as surely as it is known. */
function fallOf(words: readonly Word[]): Pick<Run, 'fall'> {
  const xs = words.map(centreOf);
  const long = xs.at(-1)! - xs[0]!;
  if (long < SHORTEST) return {};
  const slope = slopeOf(words);
  const off = ERROR / Math.sqrt(words.length) / long;
  return { fall: { least: slope - off, most: slope + off } };
}

/** How far above, below and beside a gap its falls are looked for, points; and how many are enough. */
const [ABOVE, ASIDE, ENOUGH] = [60, 160, 3];
/** From the least to the most that words near a gap fall; where too few are near, those of the page. */
function fallBetween(runs: readonly Run[], { from, to }: Facing): Range {
  const [top, bottom] = [Math.min(middleOf(from), middleOf(to)), Math.max(middleOf(from), middleOf(to))];
  const near: Range[] = [];
  for (const { words, fall } of about(runs, top, bottom, ABOVE))
    if (fall && endOf(words.at(-1)!) > from.x - ASIDE && words[0]!.x < endOf(to) + ASIDE) near.push(fall);
  const falls = near.length < ENOUGH ? runs.flatMap(({ fall }) => fall ?? []) : near;
  if (falls.length === 0) return { least: 0, most: 0 };
  // One that falls like no other is a word whose place was mistaken.
  const odd = falls.length > ENOUGH ? 1 : 0;
  const least = falls.map((one) => one.most).toSorted((a, b) => a - b)[odd]!;
  const most = falls.map((one) => one.least).toSorted((a, b) => b - a)[odd]!;
  // As far as their errors tell all may fall alike, and then as little as that allows.
  const alike = Math.max(most, Math.min(least, 0));
  return most <= least ? { least: alike, most: alike } : { least, most };
}

/** Of the distance of two rows: what faces each other within that may be of one row. */
const TORN = 0.75;
/** Of the height of letters: the distance of rows, least and most. */
const [CLOSE, WIDE] = [1.15, 1.8];
/** From one of two words to what stands next above or below it, whichever is more. */
function pitchAt(runs: readonly Run[], one: Facing): number {
  const height = heightOf(one);
  const pitches = [one.from, one.to].map((end) => {
    let pitch = WIDE * height;
    const own = middleOf(end);
    for (const { words, middle } of about(runs, own, own, pitch)) {
      const step = Math.abs(middle - own);
      if (step < pitch && step > CLOSE * height && words.some((word) => word.x < endOf(end) && endOf(word) > end.x))
        pitch = step;
    }
    return pitch;
  });
  return Math.max(...pitches);
}

/** A number alone, with its units, is said of nothing. */
const isNumber = (row: readonly Word[]): boolean => row.length <= 3 && /\d/.test(row[0]!.text);
/** Beside a column of its own that happens once; where the paper is bent it happens in row after row. */
const isAlike = (one: Facing, other: Facing): boolean =>
  one.from !== other.from &&
  one.to !== other.to &&
  Math.abs(one.down - other.down) < 0.2 * one.to.height &&
  Math.abs(middleOf(one.to) - middleOf(other.to)) < 5 * one.to.height;
