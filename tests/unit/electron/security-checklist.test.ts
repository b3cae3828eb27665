/**
 * The public checklist of Electron's own documentation ("Security", tutorial, its 20 points), one by one. Electron's
 * binary was not run here: what a stand-in cannot show is read from the sources and the configuration.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { mainWindowOptions, printWindowOptions } from '../../../electron/window-options.ts';
import { SECURITY_HEADERS } from '../../../src/host/web-files.ts';

const root = join(import.meta.dirname, '../../..');
const read = (path: string) => readFileSync(join(root, path), 'utf8');
const shell = readdirSync(join(root, 'electron')).map((name) => ({ name, text: read(`electron/${name}`) }));
/** Lines of the shell that match, without comments. */
const linesWith = (pattern: RegExp) =>
  shell.flatMap(({ name, text }) =>
    text
      .split('\n')
      .filter((line) => pattern.test(line) && !/^\s*(\/\/|\/?\*)/.test(line))
      .map((line) => `${name}: ${line.trim()}`),
  );
const windows = [mainWindowOptions('/preload.cjs'), printWindowOptions()].map(({ webPreferences }) => webPreferences!);
const policy = SECURITY_HEADERS['Content-Security-Policy']!;

describe('the checklist', () => {
  test('1. only secure content is loaded: our own protocol, and no address of the network in the shell', () => {
    expect(linesWith(/https?:\/\//)).toEqual([]);
    expect(linesWith(/loadURL\(/)).toEqual(['shell.ts: await opened.loadURL(START_PAGE);']);
  });
  test('2. no Node in pages', () => {
    for (const { nodeIntegration, nodeIntegrationInWorker, nodeIntegrationInSubFrames } of windows) {
      expect([nodeIntegration, nodeIntegrationInWorker, nodeIntegrationInSubFrames]).toEqual([false, false, false]);
    }
  });
  test('3. the world of the preload is apart', () => {
    expect(windows.map(({ contextIsolation }) => contextIsolation)).toEqual([true, true]);
  });
  test('4. every process is in the sandbox', () => {
    expect(windows.map(({ sandbox }) => sandbox)).toEqual([true, true]);
    expect(linesWith(/no-sandbox/)).toEqual([]);
  });
  test('5. permissions are answered by us, in both sessions', () => {
    expect(linesWith(/setPermissionRequestHandler\(/)).toHaveLength(1);
    expect(linesWith(/setPermissionCheckHandler\(/)).toHaveLength(1);
    expect(linesWith(/lockSession\(/)).toHaveLength(3);
  });
  test('6. webSecurity stays on', () => {
    expect(windows.map(({ webSecurity }) => webSecurity)).toEqual([true, true]);
  });
  test('7. the content policy allows nothing but what is ours, and no script in line or made from text', () => {
    expect(policy).toContain("default-src 'none'");
    expect(policy.match(/script-src[^;]*/)?.[0]).toBe("script-src 'self'");
    expect(policy).not.toMatch(/https?:|unsafe-eval/);
  });
  test('8. no insecure content beside it', () => {
    expect(windows.map(({ allowRunningInsecureContent }) => allowRunningInsecureContent)).toEqual([false, false]);
  });
  test('9. and 10. no experimental and no Blink features', () => {
    for (const options of windows) {
      expect(Object.keys(options)).not.toContain('experimentalFeatures');
      expect(Object.keys(options)).not.toContain('enableBlinkFeatures');
    }
  });
  test('11. and 12. no webview, and none that a page puts there', () => {
    expect(windows.map(({ webviewTag }) => webviewTag)).toEqual([false, false]);
    expect(linesWith(/will-attach-webview/)).toHaveLength(1);
  });
  test('13. and 14. no page goes elsewhere or opens a window', () => {
    for (const event of ['will-navigate', 'will-redirect']) expect(linesWith(new RegExp(event))).toHaveLength(1);
    expect(linesWith(/setWindowOpenHandler\(\(\) => \(\{ action: 'deny' \}\)\)/)).toHaveLength(1);
    expect(linesWith(/web-contents-created/)).toHaveLength(1);
  });
  test('15. nothing is handed to the system to open', () => {
    expect(linesWith(/openExternal|shell\.open/)).toEqual([]);
  });
  test('16. Electron is of a version fixed to the last number', () => {
    const { devDependencies } = JSON.parse(read('package.json')) as { devDependencies: Record<string, string> };
    expect(devDependencies.electron).toMatch(/^\d+\.\d+\.\d+$/);
  });
  test('17. the sender of every message is looked at', () => {
    const handled = linesWith(/ipcMain\.(handle|on)\(/);
    expect(handled).toHaveLength(3);
    const { text } = shell.find(({ name }) => name === 'ipc.ts')!;
    expect(text.match(/isOurs\(event\)/g)).toHaveLength(handled.length);
  });
  test('18. our own protocol in the window; a file only in the hidden one that prints, which runs no script', () => {
    expect(linesWith(/file:\/\/|loadFile\(/)).toEqual(['print.ts: await window.loadFile(path);']);
    expect(printWindowOptions().webPreferences).toMatchObject({ javascript: false });
    expect(printWindowOptions().webPreferences).not.toHaveProperty('preload');
  });
  test('19. the fuses of the packages leave nothing open that is not needed', () => {
    const [, fuses] = /^electronFuses:\n((?: {2}.*\n)+)/m.exec(read('build/package/electron-builder.yml'))!;
    expect(
      Object.fromEntries([...fuses!.matchAll(/^ {2}(\w+): (true|false)$/gm)].map(([, name, on]) => [name, on])),
    ).toEqual({
      runAsNode: 'false',
      enableCookieEncryption: 'true',
      enableNodeOptionsEnvironmentVariable: 'false',
      enableNodeCliInspectArguments: 'false',
      enableEmbeddedAsarIntegrityValidation: 'true',
      onlyLoadAppFromAsar: 'true',
      loadBrowserProcessSpecificV8Snapshot: 'false',
      grantFileProtocolExtraPrivileges: 'false',
    });
  });
  test('20. pages get our five functions and nothing of Electron', () => {
    expect(linesWith(/exposeInMainWorld\(/)).toEqual([
      "preload.ts: contextBridge.exposeInMainWorld('plainwarmth', makeBridge(ipcRenderer));",
    ]);
    const { text } = shell.find(({ name }) => name === 'bridge.ts')!;
    expect(text.match(/^ {4}(\w+)[:(]/gm)).toHaveLength(5);
  });
});
