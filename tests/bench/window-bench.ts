/**
 * Speed as it is seen in the window: from a key to the changed chart, and from the start of the host to the first chart
 * with 200 households. Needs a Chromium. PLAINWARMTH_BENCH_AGAINST names the built `build/out` of another commit, which
 * is then measured in turn with this one.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from '@playwright/test';
import { findChromium } from '../../src/host/find-chromium.ts';
import { appraise } from '../../src/model/appraise.ts';
import { reference } from '../../src/reference/index.ts';
import { type BenchRow, medianOf } from './bench-row.ts';
import { BUILT, type HostProcess, startHost } from './host-process.ts';

const HOUSEHOLDS = 200;
const STARTS = 5;
const KEYS = 40;

interface Followed {
  readonly changed: number[];
  readonly seen: number[];
}
interface Keys extends Followed {
  /** The comparison of the same household at another price, alone, once after each key. */
  readonly sums: number[];
}

/** A host that is built, since `windowBench` has looked. */
const start = async (folder: string, builtIn: string, sample?: string): Promise<HostProcess> =>
  (await startHost(folder, { builtIn, ...(sample === undefined ? {} : { sample }) }))!;

async function openWindow(browser: Browser): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, locale: 'en-GB' });
  return context.newPage();
}

/** A data folder as `builtIn` makes it: 200 households with two years of half-hours each. */
async function fill(builtIn: string, folder: string): Promise<void> {
  const host = await start(folder, builtIn, join(builtIn, '../../sample-bills/larch-rise'));
  const [first] = await host.call('household.list', {});
  for (let n = 1; n < HOUSEHOLDS; n++) await host.call('household.duplicate', { id: first!.id, name: `Home ${n}` });
  await host.end();
}

/** From starting the host to the first chart of the household that stands first in the list [ms]. */
async function startToChart(browser: Browser, builtIn: string, folder: string): Promise<number> {
  const page = await openWindow(browser);
  await page.addInitScript(() => {
    // The list is gone through by the page itself, since a call from outside takes its own time.
    new MutationObserver((_, observer) => {
      const chart = document.querySelector('figure.chart svg');
      if (chart) {
        observer.disconnect();
        requestAnimationFrame(() => Object.assign(window, { chartAt: performance.timeOrigin + performance.now() }));
      } else if (location.hash.length < 3) document.querySelector<HTMLElement>('.household-name')?.click();
    }).observe(document, { childList: true, subtree: true });
  });
  const begun = performance.timeOrigin + performance.now();
  const host = await start(folder, builtIn);
  await page.goto(host.address, { waitUntil: 'commit' });
  const seen = await page.waitForFunction(() => (window as unknown as { chartAt?: number }).chartAt);
  const chartAt = (await seen.jsonValue()) as number;
  await page.context().close();
  await host.end();
  return chartAt - begun;
}

/** Notes for each key when the first chart has changed, and when the frame after it begins. */
function followChart(): void {
  const followed: Followed = { changed: [], seen: [] };
  Object.assign(window, { followed });
  let pressed: number | null = null;
  window.addEventListener(
    'keydown',
    (event) => {
      pressed = event.timeStamp;
    },
    true,
  );
  new MutationObserver(() => {
    if (pressed === null) return;
    const from = pressed;
    pressed = null;
    followed.changed.push(performance.now() - from);
    requestAnimationFrame(() => followed.seen.push(performance.now() - from));
  }).observe(document.querySelector('figure.chart')!, {
    attributes: true,
    childList: true,
    characterData: true,
    subtree: true,
  });
}

/** From a key on the slider of the electricity price to the changed chart [ms each]. */
async function keyToChart(browser: Browser, builtIn: string, folder: string): Promise<Keys> {
  const host = await start(folder, builtIn);
  const [first] = await host.call('household.list', {});
  const { household, series } = await host.call('household.open', { id: first!.id });
  const asOf = new Date().toISOString().slice(0, 10);
  const sums: number[] = [];
  const reckonOnce = (step: number) => {
    const begun = performance.now();
    appraise({ household, series, reference, asOf, whatIf: { electricityShare: 1 + (step % 10) / 100 } });
    sums.push(performance.now() - begun);
  };
  const page = await openWindow(browser);
  await page.goto(host.address);
  await page.locator('.household-name').first().click();
  await page.locator('[aria-busy="false"] .drivers').waitFor();
  await page.evaluate(followChart);
  const slider = page.getByRole('slider', { name: 'Electricity' });
  await slider.focus();
  for (let step = 0; step < KEYS; step++) {
    await page.keyboard.press(Math.floor(step / 5) % 2 === 0 ? 'ArrowRight' : 'ArrowLeft');
    await page.waitForFunction(
      (seen) => (window as unknown as { followed: Followed }).followed.seen.length > seen,
      step,
    );
    await page.evaluate(() => new Promise((next) => requestAnimationFrame(() => setTimeout(next, 20))));
    reckonOnce(step);
  }
  const followed = await page.evaluate(() => (window as unknown as { followed: Followed }).followed);
  await page.context().close();
  await host.end();
  return { ...followed, sums };
}

export async function windowBench(): Promise<BenchRow[]> {
  const found = await findChromium();
  const here = BUILT;
  if (!found || !here) {
    console.warn('NOT MEASURED: there is no Chromium here to open the window in.');
    return [];
  }
  const against = process.env.PLAINWARMTH_BENCH_AGAINST;
  const builds = [here, ...(against ? [against] : [])];
  const folder = mkdtempSync(join(tmpdir(), 'plainwarmth-window-'));
  const browser = await chromium.launch({ executablePath: found.path, args: found.bundled ? ['--no-sandbox'] : [] });
  try {
    const starts = builds.map((): number[] => []);
    for (const [b, builtIn] of builds.entries()) await fill(builtIn, join(folder, `${b}`));
    for (let run = -1; run < STARTS; run++) {
      for (const [b, builtIn] of builds.entries()) {
        const ms = await startToChart(browser, builtIn, join(folder, `${b}`));
        if (run >= 0) starts[b]!.push(ms);
      }
    }
    const keys: Keys[] = [];
    for (const [b, builtIn] of builds.entries()) keys.push(await keyToChart(browser, builtIn, join(folder, `${b}`)));
    const row = (what: string, values: readonly number[], other: readonly number[] | undefined): BenchRow[] => [
      {
        what,
        value: medianOf(values),
        unit: 'ms',
        ...(other ? { peer: { what: 'the other build', value: medianOf(other) } } : {}),
      },
    ];
    const [ours, theirs] = keys;
    const sums = medianOf(ours!.sums);
    const key = 'a key on a slider to the changed chart';
    return [
      ...row(`start of the host to the first chart, ${HOUSEHOLDS} households`, starts[0]!, starts[1]),
      {
        what: key,
        value: medianOf(ours!.changed),
        unit: 'ms',
        peer: { what: 'its sums alone', value: sums },
        aim: 2 * sums,
      },
      ...(theirs ? row(key, ours!.changed, theirs.changed) : []),
      ...row(`${key}, and to the frame after it`, ours!.seen, theirs?.seen),
    ];
  } finally {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  }
}
