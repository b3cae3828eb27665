import { expect, test } from 'vitest';
import { drawDialect } from '../../dialects/draw.ts';
import { judgeDialect } from '../../dialects/judge.ts';

/** A few of the dialects of `npm run dialects`, those with the fewest rows. */
const COUNT = 24;
const seeds: number[] = [];
for (let seed = 1; seeds.length < COUNT; seed++) {
  const { minutes } = drawDialect(seed);
  if (minutes === 0 || minutes >= 60) seeds.push(seed);
}

test(`a made year written in ${COUNT} dialects is read back right, or the thing in doubt is asked about`, () => {
  const verdicts = seeds.map(judgeDialect);
  const told = ({ dialect, why }: (typeof verdicts)[number]) => `${dialect.seed}: ${why}`;
  expect(verdicts.filter(({ outcome }) => outcome === 'wrong').map(told)).toEqual([]);
  expect(verdicts.filter(({ outcome }) => outcome === 'asked needlessly').map(told)).toEqual([]);
  expect(verdicts.filter(({ outcome }) => outcome === 'right').length).toBeGreaterThan(COUNT / 2);
});
