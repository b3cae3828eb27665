/** Entry of the desktop shell. */
import { join } from 'node:path';
import { app, BrowserWindow, dialog, ipcMain, Menu, protocol, session } from 'electron';
import { toRefusal } from '../src/desk/refusal.ts';
import { defaultDataFolder } from '../src/host/data-folder.ts';
import { readOptions } from '../src/host/options.ts';
import { startDesk } from '../src/host/start-desk.ts';
import { runShell } from './shell.ts';

async function main(): Promise<void> {
  // Everything after the script's own path is ours; the start script gives no switches of Chromium's.
  const options = readOptions(process.argv.slice(app.isPackaged ? 1 : 2));
  const dataFolder = options.dataFolder ?? defaultDataFolder();
  await runShell({
    modules: { app, BrowserWindow, dialog, ipcMain, Menu, protocol, session },
    startDesk: (printPdf) =>
      startDesk({
        workerFile: join(import.meta.dirname, '../node/desk-worker.js'),
        host: 'electron',
        dataFolder,
        // The start script names the sample of the checkout; a package brings its own.
        sample:
          options.sample ?? (app.isPackaged ? join(import.meta.dirname, '../../../sample-bills/larch-rise') : null),
        printPdf,
        onQuit: () => app.quit(),
      }),
    dataFolder,
    preload: join(import.meta.dirname, 'preload.cjs'),
    webFolder: join(import.meta.dirname, '../web'),
    platform: process.platform,
  });
}

// Not awaited at the top: Electron becomes ready only when this module has been read to its end.
main().catch((error: unknown) => {
  const { message, remedy } = toRefusal(error);
  dialog.showErrorBox('Plainwarmth could not start', [message, remedy].filter(Boolean).join('\n\n'));
  app.exit(1);
});
