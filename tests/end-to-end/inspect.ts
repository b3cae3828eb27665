/** What an attentive person would find wrong with a screen: letters cut off or out of the window, figures that are none. */
import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** Rules that hang on colours: all that another theme of a screen already looked at can break. */
const COLOUR_RULES = ['color-contrast', 'link-in-text-block'];

/** What axe calls serious or critical, by the rules of WCAG 2.2 A and AA, or by those of colours alone. */
export async function findInaccessible(page: Page, rules: 'all' | 'colours' = 'all'): Promise<string[]> {
  // Half a megabyte of it is brought into each page once.
  const isThere = await page.evaluate(() => 'axe' in window);
  // Only what is wrong is described; the rest would be named element by element, for nobody.
  const axe = new AxeBuilder({ page, ...(isThere ? { axeSource: 'void 0' } : {}) }).options({
    resultTypes: ['violations'],
  });
  if (rules === 'colours') axe.withRules(COLOUR_RULES);
  else axe.withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']);
  const { violations } = await axe
    // In the page itself: there are no frames of others here for which a second page would be opened each time.
    .setLegacyMode()
    .analyze();
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target).join(' ')}`);
}

/** Words that stand for a number gone wrong, in text and in the names that are read aloud. */
export async function findOddWords(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const odd = /NaN|undefined|Infinity|\[object|(?<![\w\d.,])[−-]£?0(?:[.,]0+)?(?![\d.,]*\d)/;
    // Block by block: words of neighbours would run into each other.
    const texts = [
      ...document.body.querySelectorAll('h1, h2, h3, h4, p, li, td, th, dt, dd, label, legend, button, a, span'),
    ].map((block) => block.textContent ?? '');
    for (const element of document.querySelectorAll('[aria-label], [aria-valuetext], [placeholder], [title]')) {
      for (const name of ['aria-label', 'aria-valuetext', 'placeholder', 'title'])
        texts.push(element.getAttribute(name) ?? '');
    }
    for (const text of document.querySelectorAll('svg text')) texts.push(text.textContent ?? '');
    return [...new Set(texts.filter((text) => odd.test(text)))];
  });
}

/** Text that reaches past the window, past the picture it stands in, or past a box that cuts it off. */
export async function findTextOutside(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    const slack = 1.5;
    const scrolls = (element: Element) =>
      element.closest('.scroll-x, .chart-as-table, .unseen, [hidden]') !== null ||
      getComputedStyle(element).visibility === 'hidden';
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const element = node.parentElement;
      if (!element || !node.textContent?.trim() || element.closest('svg') || scrolls(element)) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const box = range.getBoundingClientRect();
      if (box.width === 0 || box.height <= 1) continue;
      const words = node.textContent.trim().slice(0, 60);
      if (box.right > window.innerWidth + slack || box.left < -slack) found.push(`outside the window: ${words}`);
      for (let around: Element | null = element; around; around = around.parentElement) {
        const style = getComputedStyle(around);
        if (style.overflowX !== 'hidden' && style.overflowX !== 'clip') continue;
        const edge = around.getBoundingClientRect();
        if (edge.width > 2 && (box.right > edge.right + slack || box.left < edge.left - slack))
          found.push(`cut off: ${words}`);
      }
    }
    for (const svg of document.querySelectorAll('svg')) {
      const edge = svg.getBoundingClientRect();
      if (edge.width === 0) continue;
      for (const text of svg.querySelectorAll('text')) {
        const box = text.getBoundingClientRect();
        if (box.width === 0) continue;
        const out = Math.max(
          box.right - edge.right,
          edge.left - box.left,
          box.bottom - edge.bottom,
          edge.top - box.top,
        );
        if (out > 3) found.push(`outside its picture by ${out.toFixed(0)} px: ${text.textContent}`);
      }
    }
    if (document.documentElement.scrollWidth > window.innerWidth) found.push('the window scrolls sideways');
    return [...new Set(found)];
  });
}

/** Labels of a picture that lie over each other. */
export async function findLabelsOverLabels(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    for (const svg of document.querySelectorAll('figure svg')) {
      const labels = [...svg.querySelectorAll('text')]
        .map((text) => ({ words: text.textContent ?? '', box: text.getBoundingClientRect() }))
        .filter(({ words, box }) => words.trim() !== '' && box.width > 0);
      labels.forEach((one, index) => {
        for (const other of labels.slice(index + 1)) {
          const across = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
          const down = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
          // The box of a letter is a third taller than what is drawn of it.
          if (across > 2 && down > one.box.height / 3) found.push(`“${one.words}” over “${other.words}”`);
        }
      });
    }
    return [...new Set(found)];
  });
}
