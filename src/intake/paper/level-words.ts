/** Words seen on paper that did not lie flat, each with the height at which it would stand if it did. */
import type { Page, Word } from '../terms/paper-reading.ts';
import { cellsOf, inRows, middleOf } from './page.ts';
import { slopeOf } from './unsure-rows.ts';
import { type Lean, wavesAlong } from './waves.ts';

/** Tiles across and down by whose leans rows are followed, how much each must lean like those beside it, and how often they are. */
const [COLUMNS, ROWS, STIFF, TURNS] = [8, 14, 0.3, 4];
/** Steeper no paper lies after its picture was levelled, and so long is what tells a lean well, points. */
const [STEEPEST, LONG] = [0.12, 60];

/** What two words of a row tell: how the paper leans between them. */
interface Link {
  readonly left: number;
  readonly right: number;
  readonly middle: number;
  readonly lean: number;
}

/** @param page with words in their places in the picture */
export function levelWords(page: Page): Page {
  let { words } = page;
  for (let turn = 0; turn < TURNS; turn++) {
    const levelOf = wavesAlong(
      leansOf(
        page,
        inRows(words, middleOf).flatMap((row) => linksOf(row.words, turn > 0)),
      ),
      page,
    );
    words = words.map((word) => ({ ...word, level: levelOf(word.x + word.width / 2, word.y + word.height / 2) }));
  }
  return { ...page, words };
}

/** In each cell of a row from its first word to its last, and from each cell to the next. */
function linksOf(row: readonly Word[], acrossGaps: boolean): Link[] {
  const cells = cellsOf(row.toSorted((a, b) => a.x - b.x));
  const link = (from: Word, to: Word, lean?: number): Link[] => {
    const [left, right] = [from.x + from.width / 2, to.x + to.width / 2];
    const [above, below] = [from.y + from.height / 2, to.y + to.height / 2];
    const own = lean ?? (below - above) / (right - left);
    return right - left < 1 || Math.abs(own) > STEEPEST
      ? []
      : [{ left, right, middle: (above + below) / 2, lean: own }];
  };
  return cells.flatMap((cell, i) => [
    ...(cell.length > 1 ? link(cell[0]!, cell.at(-1)!, slopeOf(cell)) : []),
    ...(i === 0 || !acrossGaps ? [] : link(cells[i - 1]!.at(-1)!, cell[0]!)),
  ]);
}

function leansOf({ width, height }: Page, links: readonly Link[]): Parameters<typeof wavesAlong>[0] {
  const sums = Array.from({ length: COLUMNS * ROWS }, () => ({ lean: 0, weight: 0 }));
  for (const { left, right, middle, lean } of links) {
    const row = Math.max(0, Math.min(ROWS - 1, Math.floor((middle / height) * ROWS)));
    for (let column = 0; column < COLUMNS; column++) {
      const over = Math.min(right, ((column + 1) * width) / COLUMNS) - Math.max(left, (column * width) / COLUMNS);
      if (over <= 0) continue;
      const weight = (over / (width / COLUMNS)) * Math.min(1, ((right - left) / LONG) ** 2);
      const own = sums[row * COLUMNS + column]!;
      own.lean += weight * lean;
      own.weight += weight;
    }
  }
  const leans = sums.map(({ lean, weight }): Lean => ({ lean: weight > 0 ? lean / weight : 0, weight }));
  return { columns: COLUMNS, rows: ROWS, leans, stiff: STIFF };
}
