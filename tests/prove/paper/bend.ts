/** Pages of paper that did not lie flat: where their words lie after waves, a curled edge, a fold or a lean. */
import type { Page, Word } from '../../../src/intake/terms/paper-reading.ts';
import type { Chance } from '../chance.ts';

/** How far a place of the page, as shares of its width and height, has moved across and down, points. */
type Bend = (x: number, y: number) => readonly [across: number, down: number];

const wave = (chance: Chance): Bend => {
  const [long, turned] = [chance.uniform(0.6, 3), chance.uniform(-1.2, 1.2)];
  const [alongX, alongY] = [Math.cos(turned) / long, Math.sin(turned) / long];
  const [phase, down, across] = [chance.uniform(0, 6.28), chance.uniform(2, 14), chance.uniform(0, 4)];
  return (x, y) => {
    const at = 2 * Math.PI * (x * alongX + y * alongY) + phase;
    return [across * Math.cos(at), down * Math.sin(at)];
  };
};

/** Beyond a line near an edge the paper rises: what lies there is lifted off its row, and drawn together. */
const curl = (chance: Chance): Bend => {
  const [from, rise, narrow] = [chance.uniform(0.4, 0.8), chance.uniform(-30, 30), chance.uniform(0, 0.25)];
  const [side, slant] = [chance.pick([0, 1, 2]), chance.uniform(-0.4, 0.4)];
  return (x, y) => {
    const along = [x, 1 - x, y][side]! + slant * ([y, y, x][side]! - 0.5);
    const beyond = Math.max(0, along - from) / (1 - from);
    const back = narrow * beyond ** 2 * 150;
    return [[-back, back, 0][side]!, rise * beyond ** 2 - (side === 2 ? back : 0)];
  };
};

/** Two panels that lie at an angle to each other, and a little aside where they were glued or torn. */
const fold = (chance: Chance): Bend => {
  const turned = chance.pick([0, 0, Math.PI / 2, chance.uniform(0, Math.PI)]);
  const [normalX, normalY, at] = [Math.cos(turned), Math.sin(turned), chance.uniform(0.25, 0.75)];
  const upTo = (most: number) => chance.uniform(-most, most);
  const [step, kink, lean, aside] = [upTo(7), upTo(45), upTo(18), upTo(3)];
  return (x, y) => {
    const beyond = x * normalX + y * normalY - at * (Math.abs(normalX) + Math.abs(normalY));
    return beyond < 0 ? [0, 0] : [aside, step + kink * beyond + lean * normalY * (x - 0.5)];
  };
};
const lean = (chance: Chance): Bend => {
  const fall = chance.uniform(-24, 24);
  return (x) => [0, fall * (x - 0.5)];
};

const each = (chance: Chance, ...bends: readonly ((chance: Chance) => Bend)[]): Bend => {
  const made = bends.map((one) => one(chance));
  return (x, y) =>
    made.reduce<readonly [number, number]>(
      ([across, down], bend) => {
        const [moreAcross, moreDown] = bend(x, y);
        return [across + moreAcross, down + moreDown];
      },
      [0, 0],
    );
};

export const BENDS: Readonly<Record<string, (chance: Chance) => Bend>> = {
  'nothing: places as unsure as a recogniser says them': (chance) => () => [0, chance.uniform(-0.4, 0.4)],
  waves: (chance) => each(chance, wave, wave),
  'a curled edge': curl,
  'a fold': fold,
  'a lean': lean,
  'waves, curl, fold and lean': (chance) => each(chance, wave, curl, fold, lean),
};

/** Each word moved as the paper moved under its middle, and as much narrower; its letters stay as high. */
export function bentPage(page: Page, bend: Bend): Page {
  const at = (x: number, y: number) => bend(x / page.width, y / page.height);
  const moved = (word: Word): Word => {
    const middle = word.y + word.height / 2;
    const [left] = at(word.x, middle);
    const [right] = at(word.x + word.width, middle);
    const [across, down] = at(word.x + word.width / 2, middle);
    const width = Math.max(1, word.width + right - left);
    return { ...word, x: word.x + word.width / 2 + across - width / 2, y: word.y + down, width };
  };
  return { ...page, words: page.words.map(moved) };
}
