/** Every amount that a screen shows, and whether a working within its figure or section lists it. */
import type { Page } from '@playwright/test';
import { type Amount, readBehind } from './workings.ts';

/** What opens a working: an underlined figure, or one "How do we know?" for a picture or a section. */
const WAYS = 'button.figure-link, button.how-known';

/** Where no way is asked for, each with its reason. */
const EXCUSED = [
  // Typed values stand in their own field, with grade and origin below it; so do the offers of a choice.
  'input, select, textarea, label, .field-note, .what-if',
  // The notes are somebody's own words.
  '.estimate-note, .installer-notes',
  // Marks of an axis are no figures of this home.
  '[class*="axis-tick"], [class*="Axis-tick"], [data-axis], .bore',
  // Read aloud only, from what is seen beside it.
  '.unseen',
  // The painter of charts measures letters here, off the screen.
  '[id^="recharts_measurement"]',
];

/** A custom said as one, which is no figure of this home. */
const CUSTOM = 'A home uses 5 to 60 kWh of electricity a day';

interface Shown extends Amount {
  /** The words around the amount. */
  readonly words: string;
  readonly amount: string;
  /** Index of the place it stands in, which stands in the `data-way` of each of its ways; -1 where no way leads on. */
  readonly place: number;
}

/** Marks the ways of the window and answers the amounts with the place each stands in. */
function findAmounts(page: Page): Promise<Shown[]> {
  return page.evaluate(
    ({ WAYS, CUSTOM, excused }) => {
      const MONTHS =
        'January|February|March|April|May|June|July|August|September|October|November|December|Jan|Feb|Mar|Apr|Jun|Jul|Aug|Sep|Oct|Nov|Dec';
      const dates = new RegExp(
        `\\b\\d{4}-\\d{2}-\\d{2}\\b|\\b\\d{1,2} (?:${MONTHS})\\b(?: \\d{4})?|\\b(?:${MONTHS}) \\d{4}|\\b\\d{1,2}:\\d{2}\\b`,
        'g',
      );
      // "8 times in 10" says how often, and is no amount.
      const often = /\b\d+ times (?:in|of|out of) \d+/g;
      const UNIT = '(?:[ \\u00a0]?(?:p|kWh|units?|°C|%|kW|W/K|litres?|kg|times)(?![\\p{L}/]))';
      const NUMBER = '\\d[\\d,]*(?:\\.\\d+)?';
      const amounts = new RegExp(
        `£${NUMBER}|${NUMBER}(?=${UNIT}|(?: to ${NUMBER}${UNIT}))|(?<=factor )${NUMBER}`,
        'gu',
      );
      const bare = new RegExp(`^[−+-]?(${NUMBER})$`);
      const places: Element[] = [];
      for (const way of document.querySelectorAll('[data-way]')) way.removeAttribute('data-way');
      const placeOf = (element: Element): number => {
        // A picture without a way of its own may lean on its section; beyond that nobody would look for it.
        let scope = element.closest(
          'figure, section, header, aside, table, dialog, .walk-page, main:not(.walk-page) > *, li.estimate',
        );
        for (let climbs = 0; scope && climbs < 3; climbs++) {
          if (scope.querySelector(WAYS)) {
            const known = places.indexOf(scope);
            if (known >= 0) return known;
            places.push(scope);
            for (const way of scope.querySelectorAll(WAYS))
              way.setAttribute('data-way', `${way.getAttribute('data-way') ?? ''} ${places.length - 1}`);
            return places.length - 1;
          }
          if (scope.matches('section, header, aside, dialog, main:not(.walk-page) > *, .walk-page')) return -1;
          scope =
            scope.parentElement?.closest(
              'figure, section, header, aside, dialog, .walk-page, main:not(.walk-page) > *',
            ) ?? null;
        }
        return -1;
      };
      const slackOf = (text: string): number => {
        const size = Number(text.replace(/[£,]/g, ''));
        const decimals = /\.(\d+)/.exec(text)?.[1];
        if (decimals) return 0.5 * 10 ** -decimals.length;
        // Speech rounds to two or three leading digits; a round figure may be as far off as that.
        const power = 10 ** Math.floor(Math.log10(Math.max(1, size)));
        if (size >= 1000)
          return size % (power / 20) === 0 ? power / 20 : size % (power / 100) === 0 ? power / 200 : 0.5;
        if (size >= 100 && size % 10 === 0) return 5;
        if (size >= 100 && size < 200 && size % 5 === 0) return 2.5;
        return 0.5;
      };
      const shown: Shown[] = [];
      const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      const blocks = new Set<Element>();
      for (let node = walker.nextNode(); node; node = walker.nextNode()) {
        const element = node.parentElement;
        if (!element || !/\d/.test(node.textContent ?? '') || element.closest(excused) || !element.checkVisibility())
          continue;
        // An underlined figure is its own way; the block around it is read whole, since React splits its text.
        const block = element.closest('svg')
          ? element.closest('text')!
          : element.closest('p, li, td, th, dd, dt, h1, h2, h3, h4, h5, caption, summary, figcaption, a, span, div')!;
        blocks.add(block.closest('p, h2, h1, dd, li') ?? block);
      }
      for (const block of blocks) {
        const copy = block.cloneNode(true) as Element;
        for (const part of copy.querySelectorAll(
          `.unseen, input, select, ul, ol, table, p, div, h4, h5, details, ${excused}`,
        ))
          part.remove();
        const text = (copy.textContent ?? '')
          .replace(CUSTOM, '')
          .replace(often, ' ')
          .replace(dates, ' ')
          .replaceAll('\u00a0', ' ');
        const found = [...text.matchAll(amounts)].map(([amount]) => amount);
        const plain = bare.exec(text.trim())?.[1];
        const isCell = block.matches('td.number');
        const isMark = block.closest('svg') !== null && !block.matches('.faint');
        if (plain && (isCell || isMark)) found.push(plain);
        for (const amount of new Set(found)) {
          shown.push({
            words: text.replace(/\s+/g, ' ').trim().slice(0, 140),
            amount,
            value: Number(amount.replace(/[£,]/g, '')),
            slack: slackOf(amount),
            place: placeOf(block),
          });
        }
      }
      return shown;
    },
    { WAYS, CUSTOM, excused: EXCUSED.join(', ') },
  );
}

/** What no working lists: amounts without a way, and amounts that their place's workings do not come to. */
export async function findUnexplained(page: Page): Promise<string[]> {
  const shown = await findAmounts(page);
  const faults = shown.filter(({ place }) => place < 0).map(({ words, amount }) => `no way: ${amount} in “${words}”`);
  for (const place of new Set(shown.map(({ place }) => place).filter((place) => place >= 0))) {
    const wanted = shown.filter((one) => one.place === place);
    const { unlisted } = await readBehind(page.locator(`[data-way~="${place}"]`), wanted);
    for (const at of unlisted) faults.push(`not listed: ${wanted[at]!.amount} in “${wanted[at]!.words}”`);
  }
  return [...new Set(faults)];
}
