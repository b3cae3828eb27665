import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { Household } from '../../../src/model/shapes/household.ts';
import { PAGE_NAMES, type WalkPage } from '../../../src/screens/walk/page.ts';
import { shownPages } from '../../../src/screens/walk/pages.ts';
import { PagesShown } from '../../../src/screens/walk/pages-shown.tsx';
import { InstallerNotes } from '../../../src/screens/walk/walk-through.tsx';
import { larchRiseHousehold } from '../leave-behind/larch-rise.ts';

const pages = PAGE_NAMES.map((name) => ({ name }) as WalkPage);
const shown = (leaveOut: readonly string[], order?: readonly string[]) =>
  shownPages(pages, { leaveOut, order }).map(({ name }) => name);

describe('pages left out', () => {
  test.each<[readonly string[], number]>([
    [[], 6],
    [['living'], 5],
    [['source', 'change'], 4],
    [['home', 'next'], 6],
    [['a page of a later version', 'watch'], 6],
    [PAGE_NAMES, 2],
  ])('without %j there are %i', (leaveOut, count) => expect(shown(leaveOut)).toHaveLength(count));
  test('the others keep their order', () =>
    expect(shown(['source'])).toEqual(['home', 'cost', 'change', 'living', 'next']));
  test('or stand in the household’s own, with those it does not name behind', () => {
    expect(shown([], ['source', 'home', 'no page'])).toEqual(['source', 'home', 'cost', 'change', 'living', 'next']);
    expect(shown(['cost'], ['living', 'home'])).toEqual(['living', 'home', 'source', 'change', 'next']);
  });

  test('are kept with the household, and a household without them is as before', () => {
    const household = larchRiseHousehold();
    expect(Household.parse(household).walk).toBeUndefined();
    const walk = { leaveOut: ['living'], order: ['cost', 'home'] };
    expect(Household.parse({ ...household, walk }).walk).toEqual(walk);
  });
});

test('the list says how many are shown, is folded, and has a tick for each page that may go', () => {
  const html = renderToStaticMarkup(
    <InstallerNotes notes={['Ask about the attic.']}>
      <PagesShown names={PAGE_NAMES} leaveOut={['living']} onChange={() => {}} />
    </InstallerNotes>,
  );
  expect(html).toContain('Ask about the attic.');
  expect(html).toContain('<details class="walk-leave-out"><summary>Pages shown: 5 of 6</summary>');
  expect(html.match(/type="checkbox"/g)).toHaveLength(4);
  expect(html.match(/checked=""/g)).toHaveLength(3);
  expect(html.match(/>Earlier</g)).toHaveLength(5);
});
