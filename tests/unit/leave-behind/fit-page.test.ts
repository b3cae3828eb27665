import { expect, test } from 'vitest';
import { fitPage, type LetterRoom, type PageTexts } from '../../../src/leave-behind/letter/fit-page.ts';

const lines = (count: number, words: string) => Array.from({ length: count }, () => words);
const page =
  (unknown: number, heading: string) =>
  (room: LetterRoom): PageTexts => ({
    sender: 'Hill & Daughters',
    heading,
    opening: 'Thank you for telling us.',
    caption: 'A short caption.',
    lists: [
      lines(room.parts + room.findings, 'What is known.'),
      lines(Math.min(unknown, room.unknown), 'What is not known yet. '.repeat(5)),
      lines(room.steps + room.asks, 'What happens next.'),
    ],
  });

test('a page with little on it takes all', () =>
  expect(fitPage(page(2, 'A heading'), 'A4')).toMatchObject({ unknown: 9, steps: 4, asks: 4 }));

test('one that is not full takes what still fits, first what is not known', () => {
  // Nine of what is not known are too many, and so are four beside all else; the step below would keep three.
  const room = fitPage(page(9, 'A heading'), 'A4');
  expect(room.unknown).toBeGreaterThan(3);
  expect(room.unknown).toBeLessThan(9);
});

test('nothing fits: the emptiest', () =>
  expect(fitPage(page(9, 'A heading that never ends. '.repeat(99)), 'A4')).toMatchObject({ unknown: 0, asks: 0 }));
