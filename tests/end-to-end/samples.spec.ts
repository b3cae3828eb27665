/**
 * Each invented household, on every stage and every page: nothing odd in its words, nothing cut off, and nothing said
 * without its sum: every amount leads to a working that lists it. Where said, every figure is opened with the mouse.
 */
import type { Page } from '@playwright/test';
import { findUnexplained } from './amounts.ts';
import {
  comeToRest,
  expect,
  type Host,
  keepEstimate,
  openStage,
  STAGES,
  takePicture,
  test,
  walkThrough,
} from './host.ts';
import { findLabelsOverLabels, findOddWords, findTextOutside } from './inspect.ts';
import { expectHowWeKnow, expectSumsInTable, openEachFigure } from './workings.ts';

const SAMPLES = [
  { folder: 'larch-rise', name: 'Larch Rise', isOpened: true },
  { folder: 'holm-farm', name: 'Holm Farm', isOpened: false },
  { folder: 'quay-flat', name: 'Quay Flat', isOpened: false },
  { folder: 'beacon-view', name: 'Beacon View', isOpened: false },
  { folder: 'mill-lane', name: 'Mill Lane', isOpened: true },
] as const;

const WINDOWS = [
  { width: 1024, height: 768 },
  { width: 1280, height: 800 },
] as const;

async function expectNothingOdd(page: Page, where: string): Promise<void> {
  for (const size of WINDOWS) {
    await page.setViewportSize(size);
    await comeToRest(page);
    const at = `${where}, ${size.width} wide`;
    expect.soft(await findOddWords(page), at).toEqual([]);
    expect.soft(await findTextOutside(page), at).toEqual([]);
    expect.soft(await findLabelsOverLabels(page), at).toEqual([]);
  }
}

/** The bill check of the household with a complaint stands, with the parts that make up the difference. */
async function expectSplit(page: Page, host: Host): Promise<void> {
  const main = page.getByRole('main');
  await expect(main).toContainText(/above|inside|below/);
  const summary = (await host.call('household.list', {}))[0]!;
  const { checks } = await host.call('household.open', { id: summary.id });
  expect(checks.length).toBeGreaterThanOrEqual(1);
  const { parts, actualPence, estimatedPence } = checks[0]!;
  // The split is exact: its parts sum to the difference to the penny.
  const sum = parts.reduce((total, part) => total + part.pence, 0);
  expect(Math.abs(sum - (actualPence - estimatedPence))).toBeLessThan(0.5);
  await expect(main).toContainText('Guided search');
}

for (const { folder, name, isOpened } of SAMPLES) {
  test.describe(name, () => {
    test.use({ sampleName: folder });
    test(`${name}: every stage and every page says something sound, and how it comes to it`, async ({ desk, host }) => {
      const counts: string[] = [];
      const explain = async (stage: string) => {
        if (isOpened) counts.push(`${stage} ${await openEachFigure(desk, stage)}`);
        await desk.locator('main details').evaluateAll((all) => {
          for (const one of all) one.setAttribute('open', '');
        });
        await comeToRest(desk);
        expect.soft(await findUnexplained(desk), stage).toEqual([]);
      };
      await desk.getByRole('link', { name }).click();
      for (const stage of STAGES) {
        await openStage(desk, stage);
        await expect(desk.getByRole('main').getByRole('heading').first()).toBeVisible();
        await expectNothingOdd(desk, stage);
        await takePicture(desk, `${folder}-${stage.toLowerCase().replaceAll(' ', '-')}`);
        if (folder === 'larch-rise' && stage === 'Running cost') await expectSumsInTable(desk);
        if (folder === 'mill-lane' && stage === 'Bill check') await expectSplit(desk, host);
        await explain(stage);
      }
      const { id } = (await host.call('household.list', {}))[0]!;
      if ((await host.call('household.open', { id })).estimates.length === 0) {
        await keepEstimate(host, id);
        await desk.reload();
        for (const stage of ['Written estimate', 'Bill check']) {
          await openStage(desk, stage);
          await explain(stage);
        }
      }
      await openStage(desk, 'Running cost');
      const pages = await walkThrough(desk, async (number) => {
        await expect(desk.getByRole('heading', { level: 1 })).not.toBeEmpty();
        const page = `page ${number} of the walk-through`;
        await expectNothingOdd(desk, page);
        if (isOpened) await expectHowWeKnow(desk, number);
        expect.soft(await findUnexplained(desk), page).toEqual([]);
        await takePicture(desk, `${folder}-walk-${number}`);
      });
      expect(pages).toBe(6);
      if (isOpened) console.log(`  Figures opened: ${counts.join(', ')}.`);
    });
  });
}
