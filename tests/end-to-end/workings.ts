/** What stands behind a figure: the sum is there, its inputs carry their grade, and it comes to what was shown. */
import type { Locator, Page } from '@playwright/test';
import { expect } from './host.ts';

const GRADE = /^(measured|estimated|assumed)/;

export interface Amount {
  readonly value: number;
  /** How far the shown figure may lie from the exact one by rounding alone. */
  readonly slack: number;
}

/** Ratios are said in words, to the nearest half. */
const IN_WORDS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven'];
function inWords(text: string): Amount[] {
  const whole = IN_WORDS.indexOf(text.replace(/ and a half$/, ''));
  return whole < 0 ? [] : [{ value: whole + (text.endsWith('half') ? 0.5 : 0), slack: 0.25 }];
}

/** The amounts in a text such as "£1,190", "−£13.20", "13,900 units", "26.3 p", with the rounding of their kind. */
function amountsIn(text: string, isSpoken = false): Amount[] {
  return [...text.matchAll(/([−-]?)(£?)(\d[\d,]*)(\.\d+)?/g)].map(([, minus, pound, whole, decimals]) => {
    const size = Number(`${whole!.replaceAll(',', '')}${decimals ?? ''}`);
    return { value: minus ? -size : size, slack: slackOf(size, decimals, pound === '£', isSpoken) };
  });
}

/** Speech rounds pounds and units to fives from 100 on and tens from 200 on, units to three leading digits from 1,000 on, sums of many years to two and a half. */
function slackOf(size: number, decimals: string | undefined, isMoney: boolean, isSpoken: boolean): number {
  if (decimals) return 0.5 * 10 ** (1 - decimals.length);
  const power = 10 ** Math.floor(Math.log10(Math.max(1, size)));
  if (isMoney && isSpoken && size >= 1000 && size % 50 === 0) return power / 20;
  const five = size >= 100 && size < 200;
  if (isMoney) return size >= 100 && size % 10 === 0 ? 5 : five && size % 5 === 0 ? 2.5 : 0.5;
  const step = size >= 1000 ? power / 100 : size >= 100 && size % 10 === 0 ? 10 : five ? 5 : 1;
  return size % step === 0 ? step / 2 : 0.5;
}

/** By size: a sentence says "saves £59" where the sum comes to −£58.50. */
const isNear = (shown: Amount, exact: Amount) =>
  Math.abs(Math.abs(shown.value) - Math.abs(exact.value)) <= shown.slack + exact.slack;

interface Read {
  readonly formula: string;
  readonly origins: readonly string[];
  readonly results: readonly string[];
  readonly text: string;
  readonly isInSight: boolean;
}

/**
 * The workings that each of these ways opens; where amounts are wanted, only until each of them has been listed, and which
 * were not. Opened and closed within the page: a mouse opens figures elsewhere, and a dialog that stands over the page
 * makes the browser style all of it anew.
 */
export function readBehind(
  ways: Locator,
  wanted?: readonly Amount[],
): Promise<{ readonly behind: readonly Read[][]; readonly unlisted: readonly number[] }> {
  return ways.evaluateAll(async (buttons, wanted) => {
    const MOST_MS = 60_000;
    const { showModal } = HTMLDialogElement.prototype;
    HTMLDialogElement.prototype.showModal = HTMLDialogElement.prototype.show;
    let unlisted = wanted?.map((_, index) => index) ?? [];
    const behind: Read[][] = [];
    for (const [index, button] of buttons.entries()) {
      if (wanted && unlisted.length === 0) break;
      const begun = performance.now();
      const until = async (holds: () => boolean) => {
        while (!holds()) {
          if (performance.now() - begun > MOST_MS) throw new Error(`working ${index} does not come or go`);
          await new Promise((turn) => setTimeout(turn));
        }
      };
      (button as HTMLElement).click();
      await until(() => document.querySelector('dialog[open]') !== null);
      const dialog = document.querySelector('dialog[open]')!;
      const said = dialog.textContent ?? '';
      behind.push(
        [...dialog.querySelectorAll('.panel-inside > .working')].map((working) => {
          const texts = (selector: string) =>
            [...working.querySelectorAll(selector)].map(({ textContent }) => textContent ?? '');
          return {
            formula: texts('.working-formula')[0] ?? '',
            origins: texts('.working-origin'),
            results: texts('.working-result'),
            text: working.textContent ?? '',
            isInSight: working.checkVisibility() && working.getBoundingClientRect().height > 0,
          };
        }),
      );
      // As Esc does.
      dialog.dispatchEvent(new Event('cancel', { cancelable: true }));
      await until(() => !dialog.isConnected);
      // Every number in the workings, with the rounding of its kind.
      for (const [number, decimals] of said.matchAll(/\d[\d,]*(?:\.(\d+))?/g)) {
        const value = Number(number.replaceAll(',', ''));
        const slack = 0.5 * 10 ** -(decimals?.length ?? 0);
        unlisted = unlisted.filter((at) => Math.abs(value - wanted![at]!.value) > slack + wanted![at]!.slack);
      }
    }
    HTMLDialogElement.prototype.showModal = showModal;
    return { behind, unlisted };
  }, wanted);
}

/** What is wrong with one working; empty when nothing is. */
function findFaults({ formula, origins, text, isInSight }: Read): string[] {
  const faults: string[] = [];
  if (!isInSight) faults.push('not to be seen');
  if (!/\S{3}/.test(formula)) faults.push('no formula');
  if (origins.length === 0) faults.push('no input');
  for (const origin of origins) {
    if (!GRADE.test(origin)) faults.push(`an input without a grade: ${origin}`);
    if (!/· \S/.test(origin)) faults.push(`an input without an origin: ${origin}`);
  }
  if (/NaN|undefined|Infinity/.test(text)) faults.push('a number that is none');
  return faults;
}

/** The mouse opens this figure, and Esc leads back to it. */
async function expectOpened(figure: Locator, text: string): Promise<void> {
  const dialog = figure.page().locator('dialog[open]');
  await figure.click();
  await expect(dialog).toContainText(text);
  await figure.page().keyboard.press('Escape');
  await expect(dialog).toHaveCount(0);
  await expect(figure).toBeFocused();
}

/** Every figure of the stage, the first of a sentence and the first of a table with the mouse; answers how many there are. */
export async function openEachFigure(page: Page, where: string): Promise<number> {
  const figures = page.getByRole('main').locator('button.figure-link');
  const all = await figures.evaluateAll((buttons) =>
    buttons.map((button) => ({ shown: (button.textContent ?? '').trim(), isSpoken: !button.closest('table') })),
  );
  const { behind } = await readBehind(figures);
  for (const [index, { shown, isSpoken }] of all.entries()) {
    const at = `${where}: ${shown}`;
    const [working] = behind[index]!;
    expect.soft(behind[index], at).toHaveLength(1);
    expect.soft(findFaults(working!), at).toEqual([]);
    const result = working!.results[0] ?? '';
    const [exact] = amountsIn(result);
    expect.soft(exact, `${at} opens ${result}`).toBeDefined();
    // A count of futures stands on a difference that is a sum of its own; a whole sentence may name more than the sum.
    if (exact && !/ of 20| in 20| out of 20/.test(shown)) {
      const near = [...inWords(shown), ...amountsIn(shown, isSpoken)].some((amount) => isNear(amount, exact));
      expect.soft(near, `${at} opens ${result}`).toBe(true);
    }
    const first = all.findIndex((one) => one.isSpoken === isSpoken);
    if (index === first) await expectOpened(figures.nth(index), working!.formula);
  }
  return all.length;
}

/** Every figure in the table of running costs opens a sum. */
export async function expectSumsInTable(page: Page): Promise<void> {
  const table = page.getByRole('table', { name: /A year, at/ });
  const cells = await table.getByRole('cell').all();
  const without: string[] = [];
  for (const cell of cells) {
    const text = (await cell.textContent()) ?? '';
    if (/\d/.test(text) && (await cell.getByRole('button').count()) === 0) without.push(text);
  }
  // The heat pump, what stands here now and the nearest other machine: units, three parts, cost and carbon of each.
  expect(cells).toHaveLength(3 * 6);
  expect(without, 'figures without a working').toEqual([]);
}

/** The page of the walk-through that is open says how we know. */
export async function expectHowWeKnow(page: Page, number: number): Promise<void> {
  const way = page.getByRole('button', { name: 'How we know' });
  const workings = (await readBehind(way)).behind.flat();
  expect(workings.length, `page ${number}`).toBeGreaterThan(0);
  for (const working of workings) {
    expect.soft(findFaults(working), `page ${number}: ${working.text.slice(0, 60)}`).toEqual([]);
  }
  // The amount that the page says in its sentence is the result of one of them.
  if ([1, 2].includes(number)) {
    const said = amountsIn((await page.getByRole('heading', { level: 1 }).textContent()) ?? '', true);
    const results = workings.flatMap(({ results }) => results.flatMap((text) => amountsIn(text)));
    const near = said.some((amount) => results.some((exact) => isNear(amount, exact)));
    expect.soft(near, `page ${number} says ${said.map(({ value }) => value).join(', ')}`).toBe(true);
  }
  await expectOpened(way, workings[0]!.formula);
}
