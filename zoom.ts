import { chromium } from '@playwright/test';
import { startHost } from './tests/end-to-end/host.ts';
import { mkdtempSync } from 'node:fs';
const out = '/tmp/h-seven-shots3';
const host = await startHost(mkdtempSync('/tmp/h-seven-data-'), 'larch-rise');
const id = (await host.call('household.list', {}))[0]!.id;
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium' });
const runs = { zoom: { viewport: { width: 640, height: 400 }, deviceScaleFactor: 2 }, forced: { viewport: { width: 1280, height: 800 }, forcedColors: 'active' as const }, forceddark: { viewport: { width: 1280, height: 800 }, forcedColors: 'active' as const, colorScheme: 'dark' as const } };
for (const [name, options] of Object.entries(runs)) {
  const page = await browser.newPage({ ...options, reducedMotion: 'reduce' });
  await page.goto(host.url); await page.waitForTimeout(600);
  await page.evaluate((h) => { location.hash = h; }, `#/household/${id}/cost`); await page.waitForTimeout(1500);
  await page.screenshot({ path: `${out}/${name}-cost.png` });
  const tallest = await page.evaluate(() => Math.max(...[...document.querySelectorAll('*')].filter((e) => ['auto','scroll'].includes(getComputedStyle(e).overflowY)).map((e) => e.scrollHeight), document.documentElement.scrollHeight));
  console.log(name, 'wide', await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth), 'moving', await page.evaluate(() => document.getAnimations().length));
  const size = page.viewportSize()!;
  await page.setViewportSize({ width: size.width, height: Math.min(tallest + 20, 4000) }); await page.waitForTimeout(500);
  await page.screenshot({ path: `${out}/${name}-cost-all.png` });
  await page.setViewportSize(size);
  await page.evaluate((h) => { location.hash = h; }, `#/household/${id}/walk`); await page.waitForTimeout(900);
  for (let n = 1; n < 10; n++) { await page.waitForTimeout(500); await page.screenshot({ path: `${out}/${name}-walk-${n}.png` }); console.log(name, n, await page.evaluate(() => [document.documentElement.scrollWidth - innerWidth, document.documentElement.scrollHeight - innerHeight].join())); await page.keyboard.press('ArrowRight'); }
  await page.close();
}
await browser.close(); await host.stop();
