/**
 * Where the regions of each screen lie, against a baseline. No pixels are compared: with the same bundled faces two
 * builds of one browser still paint letters differently (their edges are the machine's), while their boxes agree.
 * After a wanted change: PLAINWARMTH_NEW_LAYOUT=1 npm run test:browser -- layout, and look at the pictures.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { comeToRest, expect, openStage, STAGES, takePicture, test, walkThrough } from './host.ts';
import { findLabelsOverLabels, findTextOutside } from './inspect.ts';

// Dates are of other widths on other days, and prices grow old.
test.use({ sampleName: 'mill-lane', day: '2026-11-30' });

const BASELINE = join(import.meta.dirname, 'layout-baseline.jsonl');
const isNew = process.env.PLAINWARMTH_NEW_LAYOUT === '1';
const SIZES = [
  [1280, 800],
  [1024, 768],
  [1920, 1080],
] as const;

/** Left, top, width and height of each region, px, by the place it has in the page. */
type Boxes = Record<string, readonly [number, number, number, number]>;
type Baseline = Record<string, Boxes>;

const REGIONS =
  '.thread, .page, .page > *, .drivers > *, .check-two > *, .walk-bore, .walk-page, .walk-page > *, .walk-foot > *, .list-page > *';

function findBoxes(page: Page): Promise<Boxes> {
  return page.evaluate((regions) => {
    const seen = new Map<string, number>();
    return Object.fromEntries(
      [...document.querySelectorAll(regions)]
        .filter((element) => element.checkVisibility() && element.getBoundingClientRect().height > 0)
        .map((element) => {
          const kind = `${element.tagName.toLowerCase()}${element.classList[0] ? `.${element.classList[0]}` : ''}`;
          const count = (seen.get(kind) ?? 0) + 1;
          seen.set(kind, count);
          const { left, top, width, height } = element.getBoundingClientRect();
          const box = [left, top + window.scrollY, width, height].map(Math.round);
          return [`${kind} ${count}`, box as unknown as readonly [number, number, number, number]];
        }),
    );
  }, REGIONS);
}

/** Blocks of the page that lie over each other. */
function findOverlaps(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const blocks = [...document.querySelectorAll('.page > *, .walk-page > *')]
      .filter((element) => !['fixed', 'absolute', 'sticky'].includes(getComputedStyle(element).position))
      .map((element) => ({ name: `${element.tagName} ${element.className}`, box: element.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0 && box.height > 0);
    return blocks.slice(1).flatMap(({ name, box }, index) => {
      const before = blocks[index]!;
      const across = Math.min(box.right, before.box.right) - Math.max(box.left, before.box.left);
      return across > 2 && box.top < before.box.bottom - 2 ? [`${name} over ${before.name}`] : [];
    });
  });
}

/** One line a screen, so that a change shows which moved. */
const readBaseline = (): Baseline =>
  existsSync(BASELINE)
    ? Object.fromEntries(
        readFileSync(BASELINE, 'utf8')
          .trim()
          .split('\n')
          .map((line): [string, Boxes] => JSON.parse(line)),
      )
    : {};
const baseline = isNew ? {} : readBaseline();
const found: Baseline = {};

/** Sideways nothing may move; downwards a line of text may come or go where letters fall out a hair wider. */
const SIDEWAYS_PX = 3;
const ONE_LINE_PX = 32;
/** Lines above add up: a page may be this much of its own height off further down. */
const DOWN_SHARE = 0.03;

function expectAsBefore(boxes: Boxes, screen: string): void {
  found[screen] = boxes;
  if (isNew) return;
  const before = baseline[screen];
  expect.soft(before, `${screen} has a baseline`).toBeDefined();
  if (!before) return;
  expect.soft(Object.keys(boxes), `${screen}: the regions there are`).toEqual(Object.keys(before));
  const moved = Object.entries(boxes).flatMap(([name, box]) => {
    const was = before[name];
    if (!was) return [];
    const down = ONE_LINE_PX + DOWN_SHARE * was[1];
    const limits = [SIDEWAYS_PX, down, SIDEWAYS_PX, ONE_LINE_PX + DOWN_SHARE * was[3]];
    return box.some((value, side) => Math.abs(value - was[side]!) > limits[side]!) ? [`${name}: ${was} → ${box}`] : [];
  });
  expect.soft(moved, `${screen}: regions that moved`).toEqual([]);
}

for (const [width, height] of SIZES) {
  test(`every screen keeps its layout at ${width} by ${height}, light and dark`, async ({ desk }) => {
    await desk.setViewportSize({ width, height });
    const look = async (screen: string) => {
      const at = `${screen} ${width}`;
      await comeToRest(desk);
      const light = await findBoxes(desk);
      expectAsBefore(light, at);
      expect.soft(await findTextOutside(desk), at).toEqual([]);
      expect.soft(await findLabelsOverLabels(desk), at).toEqual([]);
      expect.soft(await findOverlaps(desk), at).toEqual([]);
      await takePicture(desk, `layout-${at}-light`.replaceAll(' ', '-'));
      await desk.emulateMedia({ colorScheme: 'dark' });
      expect.soft(await findBoxes(desk), `${at} in the dark`).toEqual(light);
      await takePicture(desk, `layout-${at}-dark`.replaceAll(' ', '-'));
      await desk.emulateMedia({ colorScheme: 'light' });
    };
    await expect(desk.getByRole('link', { name: 'Mill Lane' })).toBeVisible();
    await look('list');
    await desk.getByRole('link', { name: 'Mill Lane' }).click();
    for (const stage of STAGES) {
      await openStage(desk, stage);
      if (stage === 'Running cost') await expect(desk.locator('.drivers figure')).toHaveCount(4);
      await look(stage);
    }
    await openStage(desk, 'Running cost');
    await walkThrough(desk, (number) => look(`walk ${number}`));
  });
}

test.afterAll(() => {
  if (!isNew) return;
  const lines = Object.entries({ ...readBaseline(), ...found }).sort(([a], [b]) => a.localeCompare(b));
  writeFileSync(BASELINE, `${lines.map((line) => JSON.stringify(line)).join('\n')}\n`);
});
