import type { Page } from '@playwright/test';
import { comeToRest, expect, keepEstimate, openStage, STAGES, takePicture, test, walkThrough } from './host.ts';
import { findInaccessible, findLabelsOverLabels } from './inspect.ts';

/** Nothing wider than the window. */
async function expectNoSideways(page: Page): Promise<void> {
  expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
}

/** The desk fills the window and its page scrolls within: the window itself has nothing below. */
async function expectNothingBelow(page: Page): Promise<void> {
  expect(await page.evaluate(() => document.documentElement.scrollHeight - window.innerHeight)).toBeLessThanOrEqual(0);
}

const WINDOWS = [
  { width: 1280, height: 800 },
  { width: 1024, height: 768 },
] as const;

test('every screen in two windows, light and dark', async ({ desk }) => {
  const look = async (screen: string) => {
    for (const size of WINDOWS) {
      await desk.setViewportSize(size);
      await comeToRest(desk);
      await expectNoSideways(desk);
      if (!screen.startsWith('walk') && screen !== 'list') await expectNothingBelow(desk);
      // The other theme differs in colours alone, whatever the window: the layout test holds its boxes against the light ones.
      for (const theme of size === WINDOWS[0] ? (['dark', 'light'] as const) : (['light'] as const)) {
        await desk.emulateMedia({ colorScheme: theme });
        const at = `${screen}, ${size.width} wide, ${theme}`;
        expect(await findInaccessible(desk, theme === 'light' ? 'all' : 'colours'), at).toEqual([]);
        await takePicture(desk, `${screen}-${theme}-${size.width}`);
      }
    }
  };
  await look('list');
  await desk.getByRole('link', { name: 'Larch Rise' }).click();
  for (const stage of STAGES) {
    await openStage(desk, stage);
    await expect(desk.getByRole('main').getByRole('heading').first()).toBeVisible();
    await look(stage.toLowerCase().replaceAll(' ', '-'));
  }
  await openStage(desk, 'Running cost');
  await walkThrough(desk, (number) => look(`walk-${number}`));
});

test('in a window of 1280 by 800 enlarged to 200 % no label of the walk-through lies over another', async ({
  desk,
}) => {
  await desk.setViewportSize({ width: 640, height: 400 });
  await desk.getByRole('link', { name: 'Larch Rise' }).click();
  await openStage(desk, 'Running cost');
  await expectNoSideways(desk);
  await walkThrough(desk, async (number) => {
    await expectNoSideways(desk);
    expect.soft(await findLabelsOverLabels(desk), `page ${number}`).toEqual([]);
  });
});

test('older written estimates fold, so that the form for the next one stays near', async ({ desk, host }) => {
  const [home] = await host.call('household.list', {});
  for (let kept = 0; kept < 5; kept++) await keepEstimate(host, home!.id);
  await desk.getByRole('link', { name: 'Larch Rise' }).click();
  await openStage(desk, 'Written estimate');
  const heads = desk.getByRole('heading', { name: /^Estimate no. \d+ ·/ });
  await expect(heads).toHaveCount(3);
  await desk.getByText('2 older estimates').click();
  await expect(heads).toHaveCount(5);
});
