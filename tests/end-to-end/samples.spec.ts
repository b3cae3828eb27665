/**
 * Each invented household, on every stage and every page: nothing odd in its words, nothing cut off, and nothing said
 * without its sum: every amount leads to a working that lists it.
 */
import type { Page } from '@playwright/test';
import { findUnexplained } from './amounts.ts';
import { comeToRest, expect, keepEstimate, openStage, STAGES, takePicture, test, walkThrough } from './host.ts';
import { findLabelsOverLabels, findOddWords, findTextOutside } from './inspect.ts';

const SAMPLES = [
  { folder: 'larch-rise', name: 'Larch Rise' },
  { folder: 'holm-farm', name: 'Holm Farm' },
  { folder: 'quay-flat', name: 'Quay Flat' },
  { folder: 'beacon-view', name: 'Beacon View' },
  { folder: 'mill-lane', name: 'Mill Lane' },
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

for (const { folder, name } of SAMPLES) {
  test.describe(name, () => {
    test.use({ sampleName: folder });
    test(`${name}: every stage and every page says something sound, and how it comes to it`, async ({ desk, host }) => {
      const explain = async (stage: string) => {
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
        await expectNothingOdd(desk, `page ${number} of the walk-through`);
        expect.soft(await findUnexplained(desk), `page ${number} of the walk-through`).toEqual([]);
        await takePicture(desk, `${folder}-walk-${number}`);
      });
      expect(pages).toBe(6);
    });
  });
}

test.describe('the household with a complaint', () => {
  test.use({ sampleName: 'mill-lane' });
  test('its bill check stands, with the parts that make up the difference', async ({ desk, host }) => {
    await desk.getByRole('link', { name: 'Mill Lane' }).click();
    await openStage(desk, 'Bill check');
    const page = desk.getByRole('main');
    await expect(page).toContainText(/above|inside|below/);
    const summary = (await host.call('household.list', {}))[0]!;
    const { checks } = await host.call('household.open', { id: summary.id });
    expect(checks.length).toBeGreaterThanOrEqual(1);
    const { parts, actualPence, estimatedPence } = checks[0]!;
    // The split is exact: its parts sum to the difference to the penny.
    const sum = parts.reduce((total, part) => total + part.pence, 0);
    expect(Math.abs(sum - (actualPence - estimatedPence))).toBeLessThan(0.5);
    await expect(page).toContainText('Guided search');
  });
});
