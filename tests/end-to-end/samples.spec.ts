/** Each invented household, on every stage and every page: nothing odd in its words, nothing cut off. */
import type { Page } from '@playwright/test';
import { comeToRest, expect, openStage, STAGES, takePicture, test, walkThrough } from './host.ts';
import { findLabelsOverLabels, findOddWords, findTextOutside } from './inspect.ts';

const SAMPLES = [
  { folder: 'larch-rise', name: 'Larch Rise' },
  { folder: 'holm-farm', name: 'Holm Farm' },
  { folder: 'quay-flat', name: 'Quay Flat' },
  { folder: 'beacon-view', name: 'Beacon View' },
  { folder: 'mill-lane', name: 'Mill Lane' },
] as const;

const WINDOWS = [
  { width: 1280, height: 800 },
  { width: 1024, height: 768 },
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
    test(`${name}: every stage and every page says something sound`, async ({ desk }) => {
      await desk.getByRole('link', { name }).click();
      for (const stage of STAGES) {
        await openStage(desk, stage);
        await expect(desk.getByRole('main').getByRole('heading').first()).toBeVisible();
        await expectNothingOdd(desk, stage);
        await takePicture(desk, `${folder}-${stage.toLowerCase().replaceAll(' ', '-')}`);
      }
      await openStage(desk, 'Running cost');
      const pages = await walkThrough(desk, async (number) => {
        await expect(desk.getByRole('heading', { level: 1 })).not.toBeEmpty();
        await expectNothingOdd(desk, `page ${number} of the walk-through`);
        await takePicture(desk, `${folder}-walk-${number}`);
      });
      expect(pages).toBeGreaterThanOrEqual(6);
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
    await expect(page).toContainText('Look at next');
  });
});
