/** The desktop shell: one window on the desk, locked down, with its menu. */
import type { MenuCommand } from '../src/desk/contract.ts';
import type { PrintPdf } from '../src/desk/desk.ts';
import { DeskError, type DeskRefusal } from '../src/desk/desk-error.ts';
import { toRefusal } from '../src/desk/refusal.ts';
import { VERSION, VERSION_DATE } from '../src/desk/version.ts';
import type { DeskLink } from '../src/host/desk-link.ts';
import { CHANNELS } from './channels.ts';
import { answerWindow } from './ipc.ts';
import { lockEverything } from './lock-down.ts';
import { menuTemplate } from './menu.ts';
import type { Modules } from './modules.ts';
import { printWithElectron } from './print.ts';
import { announceScheme, START_PAGE, serveWindow } from './web-protocol.ts';
import { mainWindowOptions } from './window-options.ts';

export interface ShellOptions {
  readonly modules: Modules;
  readonly startDesk: (printPdf: PrintPdf) => DeskLink;
  readonly dataFolder: string;
  readonly preload: string;
  readonly webFolder: string;
  readonly platform: NodeJS.Platform;
}

/** Resolves when the window shows, or when there is already a shell and this one gave way. */
export async function runShell({
  modules,
  startDesk,
  dataFolder,
  preload,
  webFolder,
  platform,
}: ShellOptions): Promise<void> {
  const { app, BrowserWindow, dialog, Menu, protocol } = modules;
  if (!app.requestSingleInstanceLock()) {
    app.quit();
    return;
  }
  announceScheme(protocol);
  let window: InstanceType<typeof BrowserWindow> | null = null;

  app.on('second-instance', () => {
    if (window?.isMinimized()) window.restore();
    window?.focus();
  });
  await app.whenReady();
  lockEverything(modules);
  serveWindow(protocol, webFolder);

  const desk = startDesk(printWithElectron(modules, dataFolder));
  try {
    await desk.ready;
  } catch (error) {
    const { message, remedy } = sentenceOf(error);
    dialog.showErrorBox('Plainwarmth cannot open its data', [message, remedy].filter(Boolean).join('\n\n'));
    app.quit();
    return;
  }
  answerWindow({ modules, desk, window: () => window });
  Menu.setApplicationMenu(
    Menu.buildFromTemplate(
      menuTemplate({
        platform,
        send: (command: MenuCommand) => window?.webContents.send(CHANNELS.menu, command),
        about: () =>
          void dialog.showMessageBox({ title: 'Plainwarmth', message: `Plainwarmth ${VERSION} of ${VERSION_DATE}` }),
      }),
    ),
  );

  async function show(): Promise<void> {
    const opened = new BrowserWindow(mainWindowOptions(preload));
    window = opened;
    opened.once('ready-to-show', () => opened.show());
    opened.on('closed', () => {
      window = null;
    });
    await opened.loadURL(START_PAGE);
  }
  app.on('window-all-closed', () => {
    if (platform !== 'darwin') app.quit();
  });
  app.on('activate', () => {
    if (!window) void show();
  });
  closeDeskBeforeQuitting(app, desk);
  await show();
}

/** The store is closed before the process ends, so that its log is written back into the file. */
function closeDeskBeforeQuitting(app: Modules['app'], desk: DeskLink): void {
  let closed = false;
  app.on('will-quit', (event) => {
    if (closed) return;
    event.preventDefault();
    void desk.close().then(() => {
      closed = true;
      app.quit();
    });
  });
}

const sentenceOf = (error: unknown): DeskRefusal => (error instanceof DeskError ? error.toRefusal() : toRefusal(error));
