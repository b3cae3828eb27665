/** Each picture: the same figures as a table, as files, on paper, enlarged, and in the person's own colours. */
import type { Locator, Page } from '@playwright/test';
import { comeToRest, download, expect, openStage, STAGES, takePicture, test } from './host.ts';
import { findInaccessible, findTextOutside } from './inspect.ts';

// With evidence, a written estimate and a bill check, so that every kind of picture has something to draw.
test.use({ sampleName: 'mill-lane' });

/** The pictures in sight that can be saved; by their place, since the words on their buttons change with what they show. */
async function chartsOf(page: Page): Promise<Locator[]> {
  const all = await page.locator('figure.chart').all();
  const savable = await Promise.all(all.map((chart) => chart.locator('.chart-take > summary').isVisible()));
  return all.filter((_, index) => savable[index]);
}

/** The cells of a table, row by row. */
const cellsOf = (table: Locator): Promise<string[][]> =>
  table
    .locator('tr')
    .evaluateAll((rows) =>
      rows.map((row) => [...row.querySelectorAll('th, td')].map((cell) => cell.textContent?.trim() ?? '')),
    );

/** Reads back what we write: quoted cells, and doubled quotes in them. */
function readCsv(text: string): string[][] {
  const lines = text
    .replace(/^\uFEFF/, '')
    .trimEnd()
    .split('\r\n');
  // A comma before each line makes every cell one comma and what follows it.
  return lines.map((line) =>
    [...`,${line}`.matchAll(/,("(?:[^"]|"")*"|[^,]*)/g)].map(([, cell]) =>
      cell!.startsWith('"') ? cell!.slice(1, -1).replaceAll('""', '"') : cell!,
    ),
  );
}
const asInCsv = (cell: string) => cell.replaceAll('−', '-');

/** Every picture in sight gives its figures as a table, by key and by button, and as files; answers their names. */
async function takeEachChart(desk: Page, reader: Page, stage: string): Promise<string[]> {
  const seen: string[] = [];
  for (const chart of await chartsOf(desk)) {
    const menu = chart.locator('.chart-take > summary');
    const name = ((await menu.textContent()) ?? '').replace(/^.*: /, '');
    await menu.click();
    const at = `${stage}, ${name}`;
    const picture = chart.getByRole('img').first();
    expect((await picture.getAttribute('aria-label'))?.length, `${at}: a sentence as its name`).toBeGreaterThan(20);

    await picture.focus();
    await desk.keyboard.press('t');
    const table = chart.getByRole('table');
    await expect(table, at).toBeVisible();
    await expect(chart.getByRole('region', { name: 'as a table' }), `${at}: the stop stays`).toBeFocused();
    const byKey = await cellsOf(table);
    expect(byKey.length, at).toBeGreaterThan(1);
    expect(
      byKey.every((row) => row[0] !== ''),
      `${at}: every row has its name`,
    ).toBe(true);
    await desk.keyboard.press('t');
    await expect(table).toBeHidden();
    await chart.getByRole('button', { name: /^As a table/ }).click();
    expect(await cellsOf(table), at).toEqual(byKey);
    const figures = await download(desk, chart.getByRole('button', { name: /^Save figures/ }));
    expect(figures.name).toMatch(/^[a-z0-9-]+\.csv$/);
    const read = readCsv(figures.bytes.toString()).map((row) => row.map((cell) => cell.replace(/^'/, '')));
    expect(read, at).toEqual(byKey.map((row) => row.map(asInCsv)));
    await chart.getByRole('button', { name: /^As a picture/ }).click();

    const saved = await download(desk, chart.getByRole('button', { name: /^Save picture/ }));
    const svg = saved.bytes.toString();
    expect(saved.name).toMatch(/^[a-z0-9-]+\.svg$/);
    expect(svg, at).not.toContain('var(');
    const drawn = await reader.evaluate((text) => {
      const root = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
      return { name: root.nodeName, marks: root.querySelectorAll('rect, circle, path, line').length };
    }, svg);
    expect(drawn.name, at).toBe('svg');
    expect(drawn.marks, at).toBeGreaterThan(2);
    seen.push(name);
  }
  return seen;
}

/** On paper no button stands, and every picture still does. */
async function expectOnPaper(desk: Page, stage: string): Promise<void> {
  const pictures = await desk.locator('.chart-picture:visible').count();
  await desk.emulateMedia({ media: 'print' });
  const left = await desk
    .locator('button:visible, input[type="range"]:visible')
    .evaluateAll((buttons) =>
      buttons.filter((button) => !button.matches('.figure-link')).map((button) => button.textContent),
    );
  expect.soft(left, `${stage}: buttons on paper`).toEqual([]);
  // Paper may show more: a folded finding opens there.
  await expect.poll(() => desk.locator('.chart-picture:visible').count()).toBeGreaterThanOrEqual(pictures);
  if (stage === 'Running cost') await takePicture(desk, 'print-running-cost');
  await desk.emulateMedia({ media: 'screen' });
}

/** All that can be pressed, filled in or read as a heading, by its name. */
const offered = (page: Page): Promise<string[]> =>
  page.locator('h1, h2, h3, a, button, input, select, textarea, summary').evaluateAll((elements) =>
    elements
      .filter((element) => element.checkVisibility() && !element.matches('.unseen'))
      .map((element) => {
        const labels = 'labels' in element ? [...((element as HTMLInputElement).labels ?? [])] : [];
        const text = element.getAttribute('aria-label') ?? labels[0]?.textContent ?? element.textContent ?? '';
        return `${element.tagName.toLowerCase()} ${text.replace(/\s+/g, ' ').trim()}`;
      }),
  );

/** Enlarged to 200 %, nothing is lost and nothing scrolls sideways. */
async function expectWholeEnlarged(desk: Page, stage: string): Promise<void> {
  const [whole, half] = [
    { width: 1280, height: 800 },
    { width: 640, height: 400 },
  ];
  await comeToRest(desk);
  const before = await offered(desk);
  await desk.setViewportSize(half!);
  await comeToRest(desk);
  expect.soft(await offered(desk), stage).toEqual(before);
  expect.soft(await findTextOutside(desk), stage).toEqual([]);
  await takePicture(desk, `zoom-${stage.toLowerCase().replaceAll(' ', '-')}`);
  await desk.setViewportSize(whole!);
}

/** In the colours of the person every mark still stands out, and a dark button keeps its letters. */
async function expectOwnColours(desk: Page, stage: string): Promise<void> {
  await desk.emulateMedia({ forcedColors: 'active' });
  expect.soft(await findInaccessible(desk), stage).toEqual([]);
  const faint = await desk.locator('.chart-picture svg').evaluateAll((pictures) =>
    pictures.map((picture) => {
      const paper = getComputedStyle(document.body).backgroundColor;
      const marks = [...picture.querySelectorAll('rect, circle, path, line')].filter((mark) => {
        const { fill, stroke } = getComputedStyle(mark);
        const drawn = (colour: string) => colour !== 'none' && colour !== paper && colour !== 'rgba(0, 0, 0, 0)';
        return drawn(stroke) || (drawn(fill) && mark.tagName !== 'line');
      });
      return marks.length;
    }),
  );
  for (const marks of faint) expect.soft(marks, `${stage}: marks that differ from the paper`).toBeGreaterThan(2);
  await takePicture(desk, `forced-colours-${stage.toLowerCase().replaceAll(' ', '-')}`);
  if (stage === 'Running cost') {
    // Else the browser lays a plate in the colour of the paper behind letters of that same colour.
    await expect(desk.getByRole('button', { name: 'Show the customer' })).toHaveCSS('forced-color-adjust', 'none');
  }
  await desk.emulateMedia({ forcedColors: 'none' });
}

test('every picture on every stage: on paper, enlarged, in the person’s own colours, as a table and as files', async ({
  desk,
}) => {
  const seen: string[] = [];
  // A window of its own reads the files, since the desk's own lets no foreign style in.
  const reader = await desk.context().newPage();
  await desk.getByRole('link', { name: 'Mill Lane' }).click();
  for (const stage of STAGES) {
    await openStage(desk, stage);
    await expect(desk.getByRole('main').getByRole('heading').first()).toBeVisible();
    await expectOnPaper(desk, stage);
    await expectWholeEnlarged(desk, stage);
    await expectOwnColours(desk, stage);
    seen.push(...(await takeEachChart(desk, reader, stage)));
  }
  await reader.close();
  console.log(`  Pictures: ${seen.join('; ')}.`);
  expect(new Set(seen).size).toBeGreaterThanOrEqual(7);
});
