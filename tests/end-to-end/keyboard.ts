/** The application with the hands on the keyboard only: where the focus is, whether it can be seen, how to get on. */
import { expect, type Page } from '@playwright/test';

/** More stops than any screen has between two things that follow each other. */
const MOST_STOPS = 160;

interface Stop {
  readonly name: string;
  readonly kind: string;
  /** Why somebody might not see where the focus is; empty when it is plain. */
  readonly hidden: string;
}

/** What has the focus now, named as it is read aloud. */
export function whereAmI(page: Page): Promise<Stop> {
  return page.evaluate(() => {
    const element = document.activeElement;
    if (!element || element === document.body) return { name: '', kind: 'nowhere', hidden: '' };
    const labelled = element.getAttribute('aria-labelledby');
    const labels = 'labels' in element ? [...((element as HTMLInputElement).labels ?? [])] : [];
    const name =
      element.getAttribute('aria-label') ??
      (labelled ? document.getElementById(labelled)?.textContent : undefined) ??
      labels[0]?.textContent ??
      element.textContent ??
      '';
    const kind =
      element.getAttribute('role') ??
      (element.tagName === 'INPUT' ? (element as HTMLInputElement).type : element.tagName.toLowerCase());
    const isRinged = (one: Element | null): boolean => {
      if (!one) return false;
      const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(one);
      return (outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2) || boxShadow !== 'none';
    };
    // A round button drawn by its label wears the ring there.
    const drawn = [element, element.nextElementSibling, element.closest('label')];
    const isClear = Number.parseFloat(getComputedStyle(element).opacity) > 0;
    const ringed = (isClear ? drawn : drawn.slice(1)).some(isRinged);
    const box = element.getBoundingClientRect();
    const inSight = box.bottom > 0 && box.top < window.innerHeight && box.right > 0 && box.left < window.innerWidth;
    const middle = document.elementFromPoint(
      Math.min(window.innerWidth - 1, Math.max(0, box.left + box.width / 2)),
      Math.min(window.innerHeight - 1, Math.max(0, box.top + Math.min(box.height, window.innerHeight) / 2)),
    );
    const isCovered =
      middle !== null && !drawn.some((one) => one && (one === middle || one.contains(middle) || middle.contains(one)));
    const hidden = !ringed
      ? 'no ring'
      : !inSight
        ? 'out of sight'
        : isCovered
          ? `covered by ${middle?.className || middle?.tagName}`
          : '';
    return { name: name.replace(/\s+/g, ' ').trim(), kind, hidden };
  });
}

/** Presses Tab until the focus is on what bears this name; at every stop on the way the focus must be seen. */
export async function tabTo(page: Page, name: string | RegExp, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> {
  const passed: string[] = [];
  for (let stop = 0; stop < MOST_STOPS; stop++) {
    await page.keyboard.press(key);
    const here = await whereAmI(page);
    if (here.kind !== 'nowhere') {
      expect.soft(here.hidden, `the focus on ${here.kind} “${here.name}”`).toBe('');
      passed.push(here.name);
    }
    if (typeof name === 'string' ? here.name === name : name.test(here.name)) return;
  }
  throw new Error(`Tab never came to ${name}. It passed: ${passed.join(' | ')}`);
}

/** Goes to a field and types into it, over what stands there. */
export async function typeAt(page: Page, name: string | RegExp, text: string): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type(text);
}

/** Goes to a button or link and presses it. */
export async function pressAt(page: Page, name: string | RegExp): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press('Enter');
}
