/** Prints a document to PDF with a Chromium of this machine, in a profile of its own and without a network. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openChromium } from './chromium-pipe.ts';
import { type Chromium, findChromium, QUIET_FLAGS } from './find-chromium.ts';
import { settlePdf } from './settle-pdf.ts';

const TIME_OUT_MS = 60_000;

const FLAGS = [
  '--headless',
  '--disable-gpu',
  '--disable-dev-shm-usage',
  ...QUIET_FLAGS,
  '--host-resolver-rules=MAP * ~NOTFOUND',
  '--hide-scrollbars',
  '--font-render-hinting=none',
];

/** What printing asks for, here and in the desktop shell: the paper's size stands in the document's own @page rule. */
export const PRINT_OPTIONS = {
  preferCSSPageSize: true,
  printBackground: true,
  displayHeaderFooter: false,
  generateTaggedPDF: true,
  generateDocumentOutline: true,
} as const;

async function print({ path }: Chromium, html: string, profile: string, sandbox: boolean): Promise<Uint8Array> {
  const flags = [...FLAGS, `--user-data-dir=${profile}`, ...(sandbox ? [] : ['--no-sandbox'])];
  const browser = openChromium(path, flags, TIME_OUT_MS);
  try {
    const { targetId } = await browser.send('Target.createTarget', { url: 'about:blank' });
    const attached = await browser.send('Target.attachToTarget', { targetId, flatten: true });
    const session = attached.sessionId as string;
    await browser.send('Page.enable', {}, session);
    await browser.send('Emulation.setScriptExecutionDisabled', { value: true }, session);
    const { frameTree } = await browser.send('Page.getFrameTree', {}, session);
    const { id } = (frameTree as { frame: { id: string } }).frame;
    const loaded = browser.next('Page.loadEventFired');
    // Handed over as it is: what stands on a household's paper is laid in no file on the way.
    await Promise.all([loaded, browser.send('Page.setDocumentContent', { frameId: id, html }, session)]);
    await browser.send(
      'Runtime.evaluate',
      { expression: 'document.fonts.ready.then(() => 1)', awaitPromise: true },
      session,
    );
    const { data } = await browser.send('Page.printToPDF', PRINT_OPTIONS, session);
    return Buffer.from(data as string, 'base64');
  } finally {
    await browser.close();
  }
}

export async function printWith(chromium: Chromium, html: string): Promise<Uint8Array> {
  const profile = await mkdtemp(join(tmpdir(), 'plainwarmth-print-'));
  try {
    // Chromium refuses its sandbox to the superuser. The one unpacked from npm may lack it for anybody; it prints
    // only our own document, which runs no script and fetches nothing.
    const isRoot = process.getuid?.() === 0;
    try {
      return settlePdf(await print(chromium, html, profile, !isRoot));
    } catch (error) {
      if (isRoot || !chromium.bundled) throw error;
      return settlePdf(await print(chromium, html, profile, false));
    }
  } finally {
    // A browser that was killed may still be letting go of its profile.
    await rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  }
}

/** The document as PDF, or null where no Chromium can be had. */
export async function printWithChromium(html: string): Promise<Uint8Array | null> {
  const chromium = await findChromium();
  return chromium && printWith(chromium, html);
}
