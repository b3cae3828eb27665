import type { BrowserWindowConstructorOptions, WebPreferences } from 'electron';

/** Stated in full, though most are the default: a test holds them. */
const SEALED: WebPreferences = {
  sandbox: true,
  contextIsolation: true,
  nodeIntegration: false,
  nodeIntegrationInWorker: false,
  nodeIntegrationInSubFrames: false,
  webSecurity: true,
  allowRunningInsecureContent: false,
  webviewTag: false,
  navigateOnDragDrop: false,
};

export function mainWindowOptions(preload: string): BrowserWindowConstructorOptions {
  return {
    width: 1280,
    height: 800,
    minWidth: 1024,
    minHeight: 700,
    show: false,
    title: 'Plainwarmth',
    webPreferences: { ...SEALED, preload, spellcheck: false },
  };
}

/** The hidden window that a document is printed from: no preload, no script. */
export function printWindowOptions(): BrowserWindowConstructorOptions {
  return { show: false, webPreferences: { ...SEALED, javascript: false, partition: 'plainwarmth-print' } };
}
