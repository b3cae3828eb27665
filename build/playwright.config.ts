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
    // One process for everything ends with its first closed page; a graphics card made of software, which its flags
    // ask for, takes five times the processor for the same picture. The other flags are what a server needs.
    const unwanted = /single-process|web-security|gpu|angle|swiftshader/;
    return {
      executablePath: await chromium.executablePath(),
      args: [...chromium.args.filter((flag) => !unwanted.test(flag)), '--disable-gpu'],
    };
  }
  return { channel: 'chrome' };
}

export default defineConfig({
  testDir: fileURLToPath(new URL('../tests/end-to-end', import.meta.url)),
  outputDir: fileURLToPath(new URL('../tests/output/end-to-end', import.meta.url)),
  globalSetup: fileURLToPath(new URL('../tests/own-tmp.ts', import.meta.url)),
  // Each test has a host and a data folder of its own; they share two browsers.
  fullyParallel: true,
  workers: 2,
  // What passes only the second time is broken.
  retries: 0,
  // Waits are for what is on the screen; these only end what never comes, on a slow and busy machine too.
  timeout: 600_000,
  expect: { timeout: 60_000 },
  reporter: [['list']],
  use: {
    actionTimeout: 60_000,
    screenshot: 'only-on-failure',
    viewport: { width: 1280, height: 800 },
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    launchOptions: await launchOptions(),
    reducedMotion: 'reduce',
  },
});
