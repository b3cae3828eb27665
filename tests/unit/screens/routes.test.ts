import { describe, expect, test } from 'vitest';
import { formatRoute, parseRoute, type Route, STAGES } from '../../../src/screens/routes.ts';
import { splitSpoken } from '../../../src/screens/shared/split-spoken.ts';

describe('addresses', () => {
  const routes: Route[] = [
    { screen: 'list' },
    { screen: 'settings' },
    ...STAGES.map((stage): Route => ({ screen: 'household', id: 'a b/ü', stage })),
  ];
  test.each(routes)('%j comes back as it was', (route) => expect(parseRoute(formatRoute(route))).toEqual(route));
  test.each([
    ['', { screen: 'list' }],
    ['#/nowhere', { screen: 'list' }],
    ['#/household/x', { screen: 'household', id: 'x', stage: 'evidence' }],
    ['#/household/x/nowhere', { screen: 'household', id: 'x', stage: 'evidence' }],
  ])('%j leads somewhere', (hash, route) => expect(parseRoute(hash)).toEqual(route));
});

describe('figures in a sentence', () => {
  test('each figure is found once, and nothing of the sentence is lost', () => {
    const sentence = 'It should cost £1,190 a year. Today it costs £1,600.';
    const parts = splitSpoken(sentence, ['£1,600', '£1,190']);
    expect(parts.map((part) => [part.text, part.figure])).toEqual([
      ['It should cost ', null],
      ['£1,190', 1],
      [' a year. Today it costs ', null],
      ['£1,600', 0],
      ['.', null],
    ]);
  });
  test('two equal figures take two places', () => {
    const parts = splitSpoken('£10 or £10', ['£10', '£10']);
    expect(parts.filter((part) => part.figure !== null)).toHaveLength(2);
  });
  test('a figure that does not stand in the sentence is left out', () =>
    expect(splitSpoken('nothing here', ['£5', ''])).toEqual([{ at: 0, text: 'nothing here', figure: null }]));
});
