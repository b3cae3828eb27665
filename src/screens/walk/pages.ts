/** The walk-through in its order: one question of the customer's a page, the household's own name and numbers on each. */
import type { PageName, WalkInput, WalkPage } from './page.ts';
import { changePage } from './pages/change-page.ts';
import { costPage } from './pages/cost-page.ts';
import { homePage } from './pages/home-page.ts';
import { livingPage } from './pages/living-page.ts';
import { nextPage } from './pages/next-page.ts';
import { sourcePage } from './pages/source-page.ts';

export function walkPages(input: WalkInput): WalkPage[] {
  return [homePage(input), costPage(input), sourcePage(input), changePage(input), livingPage(input), nextPage(input)];
}

/** Without the first page there would be nothing to begin from, and the last says what was agreed. */
export const mayBeLeftOut = (name: PageName): boolean => name !== 'home' && name !== 'next';

interface Walk {
  readonly leaveOut: readonly string[];
  readonly order?: readonly string[] | undefined;
}

/** In the household's own order; a page that it does not name keeps its place after those it does. */
export function inOrder<T extends { readonly name: PageName }>(pages: readonly T[], order: readonly string[]): T[] {
  const place = ({ name }: T) => (order.includes(name) ? order.indexOf(name) : order.length);
  return pages.toSorted((a, b) => place(a) - place(b));
}

/** The pages that this household is shown. */
export const shownPages = <T extends { readonly name: PageName }>(pages: readonly T[], walk: Walk): T[] =>
  inOrder(pages, walk.order ?? []).filter(({ name }) => !(mayBeLeftOut(name) && walk.leaveOut.includes(name)));
