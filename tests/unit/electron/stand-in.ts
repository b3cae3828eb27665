/**
 * Stands in for Electron's modules: it remembers what it was told and lets a test play the window.
 * What crosses between window and main process is copied as Electron copies it (structured clone).
 */
import { EventEmitter } from 'node:events';
import type { IpcRenderer, MenuItemConstructorOptions } from 'electron';
import type { Modules } from '../../../electron/modules.ts';
import { START_PAGE } from '../../../electron/web-protocol.ts';

type Listener = (...args: unknown[]) => unknown;

class Contents extends EventEmitter {
  url = START_PAGE;
  readonly mainFrame = { url: START_PAGE };
  readonly session = new FakeSession();
  readonly toWindow = new EventEmitter();
  openHandler: (() => { action: string }) | undefined;
  printed: unknown;
  isDestroyed = () => false;
  send = (channel: string, ...args: unknown[]) => this.toWindow.emit(channel, {}, ...structuredClone(args));
  setWindowOpenHandler(handler: () => { action: string }): void {
    this.openHandler = handler;
  }
  async printToPDF(options: unknown): Promise<Buffer> {
    this.printed = options;
    return Buffer.from("%PDF-1.4 /CreationDate (D:20261125134609+00'00')");
  }
}

export class FakeSession {
  request: ((contents: unknown, permission: string, answer: (granted: boolean) => void) => void) | undefined;
  check: ((contents: unknown, permission: string) => boolean) | undefined;
  setPermissionRequestHandler = (handler: FakeSession['request']) => {
    this.request = handler;
  };
  setPermissionCheckHandler = (handler: FakeSession['check']) => {
    this.check = handler;
  };
}

export class FakeWindow extends EventEmitter {
  readonly webContents = new Contents();
  readonly options: { webPreferences: Record<string, unknown> } & Record<string, unknown>;
  loaded = '';
  loadedFrom = '';
  destroyed = false;
  constructor(options: FakeWindow['options']) {
    super();
    this.options = options;
  }
  loadURL = async (url: string) => {
    this.loaded = url;
  };
  loadFile = async (path: string) => {
    const { readFileSync } = await import('node:fs');
    this.loadedFrom = path;
    this.loaded = readFileSync(path, 'utf8');
  };
  show = () => undefined;
  focus = () => undefined;
  restore = () => undefined;
  isMinimized = () => false;
  destroy = () => {
    this.destroyed = true;
  };
}

export interface StandIn {
  readonly modules: Modules;
  readonly app: EventEmitter & { lockFree: boolean; quits: number; quit(): void };
  readonly windows: FakeWindow[];
  readonly session: FakeSession;
  readonly schemes: unknown[];
  readonly pages: Map<string, (request: { url: string }) => Promise<Response>>;
  readonly boxes: string[];
  menu: MenuItemConstructorOptions[];
  savePath: string | undefined;
  /** The window's end of the channels, as the preload gets it. */
  ipcOf(contents: Contents, frame?: unknown): Pick<IpcRenderer, 'invoke' | 'send' | 'on' | 'removeListener'>;
}

export function standInForElectron(): StandIn {
  const handlers = new Map<string, Listener>();
  const toMain = new EventEmitter();
  const app = Object.assign(new EventEmitter(), {
    lockFree: true,
    quits: 0,
    requestSingleInstanceLock: (): boolean => app.lockFree,
    whenReady: () => Promise.resolve(),
    quit() {
      app.quits++;
      app.emit('will-quit', { preventDefault: () => undefined });
    },
  });
  const standIn = {
    app,
    windows: [] as FakeWindow[],
    session: new FakeSession(),
    schemes: [] as unknown[],
    pages: new Map<string, (request: { url: string }) => Promise<Response>>(),
    boxes: [] as string[],
    menu: [] as MenuItemConstructorOptions[],
    savePath: undefined as string | undefined,
    ipcOf(contents: Contents, frame: unknown = contents.mainFrame) {
      const event = { sender: contents, senderFrame: frame };
      return {
        invoke: async (channel: string, ...args: unknown[]) =>
          structuredClone(await handlers.get(channel)?.(event, ...structuredClone(args))),
        send: (channel: string, ...args: unknown[]) => void toMain.emit(channel, event, ...structuredClone(args)),
        on: (channel: string, listener: Listener) => contents.toWindow.on(channel, listener),
        removeListener: (channel: string, listener: Listener) => contents.toWindow.removeListener(channel, listener),
      } as unknown as IpcRenderer;
    },
  };
  class BrowserWindow extends FakeWindow {
    constructor(options: FakeWindow['options']) {
      super(options);
      standIn.windows.push(this);
      app.emit('web-contents-created', {}, this.webContents);
    }
  }
  const modules = {
    app,
    BrowserWindow,
    session: { defaultSession: standIn.session },
    dialog: {
      showErrorBox: (title: string, text: string) => standIn.boxes.push(`${title}: ${text}`),
      showMessageBox: async ({ message }: { message: string }) => standIn.boxes.push(message),
      showSaveDialog: async () => ({ canceled: standIn.savePath === undefined, filePath: standIn.savePath ?? '' }),
    },
    ipcMain: {
      handle: (channel: string, listener: Listener) => handlers.set(channel, listener),
      on: (channel: string, listener: Listener) => toMain.on(channel, listener),
    },
    Menu: {
      buildFromTemplate: (template: MenuItemConstructorOptions[]) => template,
      setApplicationMenu(template: MenuItemConstructorOptions[]) {
        standIn.menu = template;
      },
    },
    protocol: {
      registerSchemesAsPrivileged: (schemes: unknown[]) => standIn.schemes.push(...schemes),
      handle: (scheme: string, answer: (request: { url: string }) => Promise<Response>) =>
        standIn.pages.set(scheme, answer),
    },
  };
  return Object.assign(standIn, { modules: modules as unknown as Modules });
}
