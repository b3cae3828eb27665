import type { Page } from '@playwright/test';
import { comeToRest, expect, keepEstimate, STAGES, takePicture, test } from './host.ts';
import { findOddWords, findTextOutside } from './inspect.ts';

/** English that is shown or read aloud, but for what is marked as English, such as the title of a British source. */
async function findEnglish(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const english =
      /(?<![\p{L}-])(the|and|with|from|your|is|are|of|this|what|how|to|we|for|by|no|not|a year)(?![\p{L}-])/iu;
    // The title of a British publication inside a German sentence.
    const TITLE = 'In-situ heat pump performance: analysis of Ofgem data 2017-2022';
    const found = new Set<string>();
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const element = node.parentElement;
      if (!element || element.closest('script, style, noscript, [lang="en"], [translate="no"]')) continue;
      const text = (node.textContent ?? '').replace(TITLE, '');
      if (english.test(text)) found.add(node.textContent!.trim().slice(0, 120));
    }
    for (const element of document.querySelectorAll('[aria-label], [aria-valuetext], [placeholder], [title]')) {
      if (element.closest('[lang="en"]')) continue;
      for (const name of ['aria-label', 'aria-valuetext', 'placeholder', 'title']) {
        const text = element.getAttribute(name) ?? '';
        if (english.test(text)) found.add(text.slice(0, 120));
      }
    }
    return [...found];
  });
}

async function expectGerman(page: Page): Promise<void> {
  expect(await findEnglish(page)).toEqual([]);
  expect(await findOddWords(page)).toEqual([]);
  expect(await findTextOutside(page)).toEqual([]);
}

test('the whole in German, and its paper', async ({ desk, host }) => {
  await desk.getByRole('link', { name: 'Settings' }).click();
  await desk.getByText('Deutsch').click();
  await desk.getByRole('radio', { name: 'Deutschland' }).click();
  await expect(desk.getByText('Gespeichert', { exact: true })).toBeVisible();
  await expectGerman(desk);
  await desk.getByRole('link', { name: 'Alle Haushalte' }).click();
  await expectGerman(desk);
  await desk.getByRole('link', { name: 'Larch Rise' }).click();

  const stages = desk.getByRole('navigation', { name: 'Schritte' }).getByRole('link');
  await expect(stages).toHaveCount(STAGES.length);
  for (let stage = 0; stage < STAGES.length; stage++) {
    await test.step(`stage ${stage + 1}`, async () => {
      await stages.nth(stage).click();
      await expect(stages.nth(stage)).toHaveAttribute('aria-current', /step|page|true/);
      await expect(desk.getByRole('main').getByRole('heading').first()).toBeVisible();
      await comeToRest(desk);
      for (const folded of await desk.getByRole('main').locator('summary').all()) await folded.click();
      await expectGerman(desk);
      await takePicture(desk, `german-${stage}`);
      const figure = desk.getByRole('main').locator('.figure-link').first();
      if (await figure.isVisible()) {
        await figure.click();
        for (const folded of await desk.getByRole('dialog').locator('summary').all()) await folded.click();
        await expectGerman(desk);
        await desk.keyboard.press('Escape');
      }
    });
  }

  const [household] = await host.call('household.list', { find: '', archived: false });
  await test.step('the walk-through', async () => {
    await desk.goto(desk.url().replace(/#.*/, `#/household/${household!.id}/walk`));
    const pages = await desk.getByRole('navigation', { name: 'Seiten' }).getByRole('img').getAttribute('aria-label');
    for (let page = 1; page <= Number(pages!.split(' von ')[1]); page++) {
      await expect(desk.getByText(new RegExp(`^${page} von `))).toBeVisible();
      await desk.keyboard.press('n');
      await expectGerman(desk);
      await desk.keyboard.press('n');
      await takePicture(desk, `german-walk-${page}`);
      await desk.keyboard.press('ArrowRight');
    }
  });

  await test.step('the leave-behind', async () => {
    const estimate = await keepEstimate(host, household!.id);
    const { base64 } = await host.call('estimate.print', { estimateId: estimate.id, format: 'html' });
    // A page of its own: the window allows no style inside a document.
    const paper = await desk.context().newPage();
    await paper.setContent(Buffer.from(base64, 'base64').toString('utf8'));
    expect(await paper.locator('html').getAttribute('lang')).toBe('de-DE');
    expect(await findEnglish(paper)).toEqual([]);
    expect(await findOddWords(paper)).toEqual([]);
    await paper.close();
  });
});
