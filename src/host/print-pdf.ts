/** Prints a document to PDF with a Chromium of this machine, in a profile of its own and without a network. */
import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { type Chromium, findChromium } from './find-chromium.ts';
import { settlePdf } from './settle-pdf.ts';

const run = promisify(execFile);
const TIME_OUT_MS = 60_000;

/** The paper's size stands in the document's own @page rule. */
function printFlags(folder: string): string[] {
  return [
    '--headless',
    `--user-data-dir=${join(folder, 'profile')}`,
    `--print-to-pdf=${join(folder, 'document.pdf')}`,
    '--no-pdf-header-footer',
    '--generate-pdf-document-outline',
    '--disable-gpu',
    '--disable-dev-shm-usage',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-default-apps',
    '--disable-domain-reliability',
    '--disable-extensions',
    '--disable-sync',
    '--disable-breakpad',
    '--no-first-run',
    '--no-default-browser-check',
    '--no-pings',
    '--host-resolver-rules=MAP * ~NOTFOUND',
    '--hide-scrollbars',
    '--font-render-hinting=none',
  ];
}

async function print({ path }: Chromium, folder: string, sandbox: boolean): Promise<Uint8Array> {
  const page = pathToFileURL(join(folder, 'document.html')).href;
  const flags = [...printFlags(folder), ...(sandbox ? [] : ['--no-sandbox', '--no-zygote'])];
  await run(path, [...flags, page], { timeout: TIME_OUT_MS, killSignal: 'SIGKILL', maxBuffer: 16 * 1024 * 1024 });
  return readFile(join(folder, 'document.pdf'));
}

export async function printWith(chromium: Chromium, html: string): Promise<Uint8Array> {
  const folder = await mkdtemp(join(tmpdir(), 'plainwarmth-print-'));
  try {
    await writeFile(join(folder, 'document.html'), html);
    // Chromium refuses its sandbox to the superuser. The one unpacked from npm may lack it for anybody; it prints
    // only our own document, which runs no script and fetches nothing.
    const isRoot = process.getuid?.() === 0;
    try {
      return settlePdf(await print(chromium, folder, !isRoot));
    } catch (error) {
      if (isRoot || !chromium.bundled) throw error;
      return settlePdf(await print(chromium, folder, false));
    }
  } finally {
    // A browser that was killed may still be letting go of its profile.
    await rm(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  }
}

/** The document as PDF, or null where no Chromium can be had. */
export async function printWithChromium(html: string): Promise<Uint8Array | null> {
  const chromium = await findChromium();
  return chromium && printWith(chromium, html);
}
