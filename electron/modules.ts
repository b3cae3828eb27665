import type * as Electron from 'electron';

/** As much of Electron as the shell uses; it comes in as an argument so that a stand-in can take its place in tests. */
export type Modules = Pick<
  typeof Electron,
  'app' | 'BrowserWindow' | 'dialog' | 'ipcMain' | 'Menu' | 'protocol' | 'session'
>;
