import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';

/**
 * The browser: the one that npm brings (Linux x64), else an installed Chrome.
 * PLAINWARMTH_CHROMIUM names another.
 */
async function launchOptions() {
  const named = process.env.PLAINWARMTH_CHROMIUM;
  if (named && existsSync(named)) return { executablePath: named };
  if (process.platform === 'linux' && process.arch === 'x64') {
    const { default: chromium } = await import('@sparticuz/chromium');
    // One process for everything ends with its first closed page; the other flags are what a server needs.
    return {
      executablePath: await chromium.executablePath(),
      args: chromium.args.filter((flag) => !['--single-process', '--disable-web-security'].includes(flag)),
    };
  }
  return { channel: 'chrome' };
}

export default defineConfig({
  testDir: fileURLToPath(new URL('../tests/end-to-end', import.meta.url)),
  outputDir: fileURLToPath(new URL('../tests/output/end-to-end', import.meta.url)),
  fullyParallel: false,
  // Each test has a host and a data folder of its own; the files share two browsers.
  workers: 2,
  // A busy machine may miss a wait; what passes only the second time is listed as flaky.
  retries: 1,
  timeout: 90_000,
  expect: { timeout: 10_000 },
  reporter: [['list']],
  use: {
    actionTimeout: 10_000,
    viewport: { width: 1280, height: 800 },
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    launchOptions: await launchOptions(),
    reducedMotion: 'reduce',
  },
});
