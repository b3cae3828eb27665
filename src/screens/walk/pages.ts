/** The walk-through in its order: one idea a page, the household's own name and numbers on each. */
import type { PageName, WalkInput, WalkPage } from './page.ts';
import { changePage } from './pages/change-page.ts';
import { costPage } from './pages/cost-page.ts';
import { heatPage } from './pages/heat-page.ts';
import { homePage } from './pages/home-page.ts';
import { nextPage } from './pages/next-page.ts';
import { sourcePage } from './pages/source-page.ts';
import { surePage } from './pages/sure-page.ts';
import { watchPage } from './pages/watch-page.ts';
import { yearsPages } from './pages/years-page.ts';

export function walkPages(input: WalkInput): WalkPage[] {
  return [
    homePage(input),
    heatPage(input),
    sourcePage(input),
    costPage(input),
    surePage(input),
    changePage(input),
    ...yearsPages(input),
    watchPage(input),
    nextPage(input),
  ];
}

/** Without the first page there would be no place to bring the others back, and the last says what was agreed. */
export const mayBeLeftOut = (name: PageName): boolean => name !== 'home' && name !== 'next';

/** The pages that this household is shown. */
export function shownPages(pages: readonly WalkPage[], leaveOut: readonly string[]): WalkPage[] {
  return pages.filter(({ name }) => !(mayBeLeftOut(name) && leaveOut.includes(name)));
}
