/** Prints a document from a hidden window of Electron's own Chromium. */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { PrintPdf } from '../src/desk/desk.ts';
import { PRINT_OPTIONS } from '../src/host/print-pdf.ts';
import { settlePdf } from '../src/host/settle-pdf.ts';
import { lockSession } from './lock-down.ts';
import type { Modules } from './modules.ts';
import { printWindowOptions } from './window-options.ts';

export function printWithElectron({ BrowserWindow }: Pick<Modules, 'BrowserWindow'>): PrintPdf {
  return async (html) => {
    const folder = await mkdtemp(join(tmpdir(), 'plainwarmth-print-'));
    const window = new BrowserWindow(printWindowOptions());
    try {
      lockSession(window.webContents.session);
      const path = join(folder, 'document.html');
      await writeFile(path, html);
      await window.loadFile(path);
      return settlePdf(await window.webContents.printToPDF(PRINT_OPTIONS));
    } finally {
      window.destroy();
      await rm(folder, { recursive: true, force: true });
    }
  };
}
