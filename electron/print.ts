/** Prints a document from a hidden window of Electron's own Chromium. */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { WORK_FOLDER } from '../src/desk/copies.ts';
import type { PrintPdf } from '../src/desk/desk.ts';
import { PRINT_OPTIONS } from '../src/host/print-pdf.ts';
import { settlePdf } from '../src/host/settle-pdf.ts';
import { lockSession } from './lock-down.ts';
import type { Modules } from './modules.ts';
import { printWindowOptions } from './window-options.ts';

/** The document lies beside the data meanwhile, where nobody else may read; what a kill leaves there goes with the next copy. */
export function printWithElectron({ BrowserWindow }: Pick<Modules, 'BrowserWindow'>, dataFolder: string): PrintPdf {
  return async (html) => {
    const folder = await mkdtemp(join(dataFolder, WORK_FOLDER));
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
