/** How soon a chart follows a slider, printed beside the aim and not failed on: the machine may be shared. */
import type { Page } from '@playwright/test';
import { comeToRest, expect, openStage, test } from './host.ts';

const STEPS = 50;
const FRAME_MS = 16.7;

interface Followed {
  /** From the key to the change of the chart. */
  readonly changed: number[];
  /** From the key to the next frame after it, when the change is to be seen. */
  readonly seen: number[];
}

/** Notes for each key when the first chart of the page has changed. */
async function followChart(page: Page): Promise<void> {
  await page.evaluate(() => {
    const followed: { changed: number[]; seen: number[] } = { changed: [], seen: [] };
    Object.assign(window, { followed });
    let pressed: number | null = null;
    window.addEventListener(
      'keydown',
      (event) => {
        pressed = event.timeStamp;
      },
      true,
    );
    const chart = document.querySelector('figure svg')!.closest('figure')!;
    new MutationObserver(() => {
      if (pressed === null) return;
      const from = pressed;
      pressed = null;
      followed.changed.push(performance.now() - from);
      requestAnimationFrame(() => followed.seen.push(performance.now() - from));
    }).observe(chart, { attributes: true, childList: true, characterData: true, subtree: true });
  });
}

const followed = (page: Page) => page.evaluate(() => (window as unknown as { followed: Followed }).followed);
const median = (values: readonly number[]) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)]!;

test('the chart follows two sliders', async ({ desk }) => {
  await desk.getByRole('link', { name: 'Larch Rise' }).click();
  await openStage(desk, 'Running cost');
  const before = await desk.getByRole('heading', { level: 2 }).first().textContent();
  await followChart(desk);
  for (const [label, unit] of [
    ['Electricity', 'p'],
    ['Rooms', '°C'],
  ] as const) {
    const slider = desk.getByRole('slider', { name: label });
    await slider.focus();
    const already = (await followed(desk)).changed.length;
    for (let step = 0; step < STEPS; step++) {
      // To and fro about today's value, so that the end of the slider is never reached.
      await desk.keyboard.press(Math.floor(step / 5) % 2 === 0 ? 'ArrowRight' : 'ArrowLeft');
      await desk.waitForFunction(
        (steps) => (window as unknown as { followed: Followed }).followed.seen.length > steps,
        already + step,
      );
    }
    const changed = (await followed(desk)).changed.slice(already);
    const seen = (await followed(desk)).seen.slice(already);
    expect(changed.length, 'every step of the slider moves the chart, once').toBe(STEPS);
    console.log(
      `  ${label}: ${changed.length} steps of ${STEPS} seen; from key to change ${median(changed).toFixed(1)} ms, to the frame after it ${median(seen).toFixed(1)} ms (median; aim ${FRAME_MS} ms; longest ${Math.max(...changed).toFixed(1)} ms).`,
    );
    await slider.press('ArrowRight');
    await slider.press('ArrowRight');
    await expect(desk.getByText(/What if: /).first()).toContainText(unit);
    // The press that takes every what-if back keeps the focus.
    const reset = desk.getByRole('button', { name: /^Reset/ });
    await expect(reset).toBeEnabled();
    await reset.press('Enter');
    await expect(reset).toHaveAttribute('aria-disabled', 'true');
    await expect(reset).toBeFocused();
    await expect(desk.getByRole('heading', { level: 2 }).first()).toHaveText(before!);
    await comeToRest(desk);
  }
});
