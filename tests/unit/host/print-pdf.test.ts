import { readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { findChromium, usualPlaces } from '../../../src/host/find-chromium.ts';
import { printWith } from '../../../src/host/print-pdf.ts';
import { settlePdf } from '../../../src/host/settle-pdf.ts';

const PAGE = `<!doctype html><html lang="en-GB"><head><title>Two pages</title>
  <style>@page { size: 210mm 297mm; margin: 15mm }</style></head>
  <body><h1>First</h1><p>About £1,190 a year.</p><h2 style="break-before: page">Second</h2>
  <script>document.body.textContent = 'a script ran'</script></body></html>`;

const chromium = await findChromium();

/** The browser makes and removes its own meanwhile. */
function orNone<T>(look: () => T, none: T): T {
  try {
    return look();
  } catch {
    return none;
  }
}
const textOf = (path: string): string => orNone(() => readFileSync(path, 'utf8'), '');
const filesOfPrinting = (): string[] =>
  readdirSync(tmpdir())
    .filter((name) => name.startsWith('plainwarmth-print-'))
    .map((name) => join(tmpdir(), name))
    .flatMap((folder) =>
      orNone(() => readdirSync(folder, { recursive: true, encoding: 'utf8' }), []).map((name) => join(folder, name)),
    );

describe.skipIf(!chromium)(`printing with ${chromium?.path ?? 'no Chromium, so not run'}`, () => {
  test('A4, tagged, with an outline, no script run, and the same bytes twice', async () => {
    const pdf = Buffer.from(await printWith(chromium!, PAGE)).toString('latin1');
    expect(pdf.startsWith('%PDF-')).toBe(true);
    // 210 mm × 297 mm in points of 1/72 inch, as the browser rounds them to whole CSS pixels.
    expect(pdf.match(/\/MediaBox \[0 0 59[45][.\d]* 84[12][.\d]*\]/g)).toHaveLength(2);
    expect(pdf).toContain('/StructTreeRoot');
    expect(pdf).toContain('/Outlines');
    await new Promise((resolve) => setTimeout(resolve, 1100));
    expect(Buffer.from(await printWith(chromium!, PAGE)).toString('latin1')).toBe(pdf);
  });

  test('what is printed lies in no file on the way', async () => {
    let isDone = false;
    const printing = printWith(chromium!, PAGE).finally(() => {
      isDone = true;
    });
    const [seen, telling] = [new Set<string>(), new Set<string>()];
    while (!isDone) {
      for (const path of filesOfPrinting()) {
        seen.add(path);
        if (textOf(path).includes('About £1,190')) telling.add(path);
      }
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
    await printing;
    expect([seen.size > 0, [...telling], filesOfPrinting()]).toEqual([true, [], []]);
  });

  test('a program that is no browser is an error, not a hang', async () => {
    await expect(printWith({ path: process.execPath, bundled: false }, PAGE)).rejects.toThrow(process.execPath);
    await expect(printWith({ path: '/no/such/program', bundled: false }, PAGE)).rejects.toThrow('/no/such/program');
  });
});

test('dates and numbers of the printing go, every other byte stays where it was', () => {
  const made =
    "%PDF-1.4\n<</CreationDate (D:20261125134609+01'00')\n/ModDate (D:20261125134609+01'00')>>/ID [<AB12> <CD34>]";
  const settled = Buffer.from(settlePdf(Buffer.from(made, 'latin1'))).toString('latin1');
  expect(settled).toBe(
    "%PDF-1.4\n<</CreationDate (D:20000101000000+00'00')\n/ModDate (D:20000101000000+00'00')>>/ID [<0000> <0000>]",
  );
  // Headings of tables are named by the browser's own count of nodes; the order of the names stays.
  const tagged = (first: number) =>
    Buffer.from(
      `/Headers [(node0000${first + 7}) (node0000${first})] /Limits [(node0000${first}) (node0000${first + 9})]`,
    );
  expect(settlePdf(tagged(1075))).toEqual(settlePdf(tagged(1074)));
  expect(Buffer.from(settlePdf(tagged(1075))).toString()).toBe(
    '/Headers [(node00000002) (node00000001)] /Limits [(node00000001) (node00000003)]',
  );
  const bytes = Uint8Array.from({ length: 256 }, (_, i) => i);
  expect(settlePdf(bytes)).toEqual(bytes);
});

test.each([
  { platform: 'linux' as const, env: { PATH: '/usr/bin' }, place: '/usr/bin/chromium' },
  {
    platform: 'darwin' as const,
    env: { HOME: '/Users/a' },
    place: '/Applications/Chromium.app/Contents/MacOS/Chromium',
  },
  {
    platform: 'win32' as const,
    env: { PROGRAMFILES: 'C:\\Program Files' },
    place: 'C:\\Program Files\\Chromium\\Application\\chrome.exe',
  },
])('on $platform a Chromium is looked for at $place', ({ platform, env, place }) => {
  expect(usualPlaces(platform, env)).toContain(place);
});

test('a browser named in PLAINWARMTH_CHROMIUM is taken, and none in its place when it is not there', async () => {
  expect(await findChromium({ PLAINWARMTH_CHROMIUM: process.execPath })).toEqual({
    path: process.execPath,
    bundled: false,
  });
  expect(await findChromium({ PLAINWARMTH_CHROMIUM: '/no/such/program' })).toBeNull();
});
