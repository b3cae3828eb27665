import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { Household } from '../../../src/model/shapes/household.ts';
import { LeaveOut } from '../../../src/screens/walk/leave-out.tsx';
import { PAGE_NAMES, type WalkPage } from '../../../src/screens/walk/page.ts';
import { shownPages } from '../../../src/screens/walk/pages.ts';
import { InstallerNotes } from '../../../src/screens/walk/walk-through.tsx';
import { larchRiseHousehold } from '../leave-behind/larch-rise.ts';

const pages = PAGE_NAMES.map((name) => ({ name }) as WalkPage);
const shown = (leaveOut: readonly string[]) => shownPages(pages, leaveOut).map(({ name }) => name);

describe('pages left out', () => {
  test.each<[readonly string[], number]>([
    [[], 9],
    [['years'], 8],
    [['heat', 'source', 'sure'], 6],
    [['home', 'next'], 9],
    [['a page of a later version'], 9],
    [PAGE_NAMES, 2],
  ])('without %j there are %i', (leaveOut, count) => expect(shown(leaveOut)).toHaveLength(count));
  test('the others keep their order', () =>
    expect(shown(['years', 'heat'])).toEqual(['home', 'source', 'cost', 'sure', 'change', 'watch', 'next']));

  test('are kept with the household, and a household without them is as before', () => {
    const household = larchRiseHousehold();
    expect(Household.parse(household).walk).toBeUndefined();
    const walk = { leaveOut: ['years'] };
    expect(Household.parse({ ...household, walk }).walk).toEqual(walk);
  });
});

test('the list says how many are shown, is folded, and has a tick for each page that may go', () => {
  const html = renderToStaticMarkup(
    <InstallerNotes notes={['Ask about the attic.']}>
      <LeaveOut names={PAGE_NAMES} leaveOut={['years']} onChange={() => {}} />
    </InstallerNotes>,
  );
  expect(html).toContain('Ask about the attic.');
  expect(html).toContain('<details class="walk-leave-out"><summary>Pages shown: 8 of 9</summary>');
  expect(html.match(/type="checkbox"/g)).toHaveLength(7);
  expect(html.match(/checked=""/g)).toHaveLength(6);
});
