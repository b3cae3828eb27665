import { expect, test } from 'vitest';
import { fitPage, type LetterRoom, type PageTexts } from '../../../src/leave-behind/letter/fit-page.ts';

const lines = (count: number, words: string) => Array.from({ length: count }, () => words);
const page =
  (unknown: number, heading: string) =>
  (room: LetterRoom): PageTexts => ({
    sender: 'Hill & Daughters',
    greeting: 'Dear Mrs Miller,',
    heading,
    urgent: '',
    opening: { thanks: 'Thank you for telling us.', headline: 'The bill is as estimated.', verdict: '' },
    lists: [
      lines(room.parts + room.findings, 'What is known.'),
      lines(Math.min(unknown, room.unknown), 'What is not known yet. '.repeat(12)),
    ],
    steps: lines(room.steps + room.asks, 'What happens next.').map((what) => ({ who: 'We', what, by: '1 May 2027' })),
    endings: ['Please leave it as it is.'],
    signature: 'With kind regards\nAnna Hill',
  });

test('a page with little on it takes all', () =>
  expect(fitPage(page(2, 'A heading'), 'A4')).toMatchObject({ unknown: 5, steps: 3, asks: 3 }));

test('one that is not full takes what still fits, first what is not known', () => {
  // Five of what is not known are too many; the step below would keep two.
  const room = fitPage(page(5, 'A long heading. '.repeat(20)), 'A4');
  expect(room.unknown).toBeGreaterThan(2);
  expect(room.unknown).toBeLessThan(5);
});

test('nothing fits: the emptiest', () =>
  expect(fitPage(page(9, 'A heading that never ends. '.repeat(99)), 'A4')).toMatchObject({ unknown: 0, asks: 0 }));
