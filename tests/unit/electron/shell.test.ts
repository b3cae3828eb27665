import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { MenuItemConstructorOptions } from 'electron';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { runShell } from '../../../electron/shell.ts';
import { MenuCommand } from '../../../src/desk/contract.ts';
import { WORK_FOLDER } from '../../../src/desk/copies.ts';
import { DeskError } from '../../../src/desk/desk-error.ts';
import type { DeskLink } from '../../../src/host/desk-link.ts';
import { callOverBridge } from '../../../src/screens/desk-bridge.ts';
import { type OpenedShell, openShell } from './open-shell.ts';
import { standInForElectron } from './stand-in.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'plainwarmth-shell-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const NOTE = 'a stand-in for Electron; its binary was not run';

describe(`the window (${NOTE})`, () => {
  let shell: OpenedShell;
  beforeEach(async () => {
    writeFileSync(join(folder, 'index.html'), '<!doctype html>');
    shell = await openShell({}, folder);
  });
  afterEach(() => shell.link.close());

  test.each([
    ['sandbox', true],
    ['contextIsolation', true],
    ['nodeIntegration', false],
    ['nodeIntegrationInWorker', false],
    ['nodeIntegrationInSubFrames', false],
    ['webSecurity', true],
    ['allowRunningInsecureContent', false],
    ['webviewTag', false],
    ['preload', '/preload.cjs'],
  ])('%s is %s', (name, value) => {
    expect(shell.window.options.webPreferences[name]).toBe(value);
  });

  test('comes from its own protocol with the strict policy', async () => {
    expect(shell.window.loaded).toBe('app://plainwarmth/index.html');
    const page = await shell.standIn.pages.get('app')!({ url: 'app://plainwarmth/index.html' });
    expect([page.status, await page.text()]).toEqual([200, '<!doctype html>']);
    expect(page.headers.get('content-security-policy')).toContain("default-src 'none'");
    for (const url of ['app://elsewhere/index.html', 'app://plainwarmth/../x.html', 'app://plainwarmth/none.js']) {
      expect((await shell.standIn.pages.get('app')!({ url })).status).toBe(404);
    }
  });

  test.each([
    { url: 'https://evil.example/', stopped: true },
    { url: 'file:///etc/passwd', stopped: true },
    { url: 'app://elsewhere/', stopped: true },
    { url: 'not an address', stopped: true },
    { url: 'app://plainwarmth/index.html#/settings', stopped: false },
  ])('going to $url is stopped: $stopped', ({ url, stopped }) => {
    for (const way of ['will-navigate', 'will-redirect']) {
      let prevented = false;
      shell.window.webContents.emit(way, { url, preventDefault: () => (prevented = true) });
      expect(prevented).toBe(stopped);
    }
  });

  test('no new window, no embedded page, no permission but to put a picture into the clipboard', () => {
    expect(shell.window.webContents.openHandler?.()).toEqual({ action: 'deny' });
    let prevented = false;
    shell.window.webContents.emit('will-attach-webview', { preventDefault: () => (prevented = true) });
    expect(prevented).toBe(true);
    const asked = ['geolocation', 'clipboard-read', 'media', 'clipboard-sanitized-write'];
    const answers: boolean[] = [];
    for (const permission of asked) shell.standIn.session.request!({}, permission, (granted) => answers.push(granted));
    expect(answers).toEqual([false, false, false, true]);
    expect(asked.map((permission) => shell.standIn.session.check!({}, permission))).toEqual(answers);
  });

  test.each([
    { name: 'another frame of the window', frame: { url: 'app://plainwarmth/index.html' } },
    { name: 'no frame', frame: null },
  ])('$name is not answered', async ({ frame }) => {
    const ipc = shell.standIn.ipcOf(shell.window.webContents, frame);
    expect(await ipc.invoke('plainwarmth:call', 1, 'app.read', {})).toMatchObject({ refusal: { code: 'stranger' } });
    shell.standIn.savePath = join(folder, 'never.txt');
    const file = { fileName: 'never.txt', mediaType: 'text/plain', base64: '' };
    expect(await ipc.invoke('plainwarmth:save-file', file)).toBe(false);
    expect(existsSync(shell.standIn.savePath)).toBe(false);
  });

  test('a page from elsewhere in the main frame is not answered', async () => {
    const { webContents } = shell.window;
    webContents.mainFrame.url = 'https://evil.example/';
    const ipc = shell.standIn.ipcOf(webContents);
    expect(await ipc.invoke('plainwarmth:call', 1, 'app.read', {})).toMatchObject({ refusal: { code: 'stranger' } });
  });

  test('a file is saved where the dialog says, and not when it is called off', async () => {
    const file = {
      fileName: 'Larch Rise.html',
      mediaType: 'text/html',
      base64: Buffer.from('<p>£</p>').toString('base64'),
    };
    expect(await shell.bridge.saveFile(file)).toBe(false);
    shell.standIn.savePath = join(folder, 'chosen.html');
    expect(await shell.bridge.saveFile(file)).toBe(true);
    expect(readFileSync(shell.standIn.savePath, 'utf8')).toBe('<p>£</p>');
  });

  test('the menu speaks to the window by the names of the contract', () => {
    const heard: MenuCommand[] = [];
    const stop = shell.bridge.onMenu((command) => heard.push(command));
    const items = shell.standIn.menu.flatMap(({ submenu }) => (submenu ?? []) as MenuItemConstructorOptions[]);
    const own = items.filter(({ click, label }) => click && !label?.includes('About'));
    for (const { click } of own) (click as () => void)();
    expect(heard.toSorted()).toEqual([...MenuCommand.options].toSorted());
    stop();
    (own[0]!.click as () => void)();
    expect(heard).toHaveLength(own.length);
  });

  test('stopping a call in the window reaches the desk', async () => {
    const stop = new AbortController();
    const call = callOverBridge(shell.bridge);
    const waiting = call('household.list', {}, { signal: stop.signal });
    stop.abort();
    await expect(waiting).rejects.toThrow(/abort/i);
  });

  test('the store is closed before the program ends', async () => {
    shell.standIn.app.quit();
    await expect.poll(() => shell.standIn.app.quits).toBe(2);
    expect(() => shell.store.listShelf()).toThrow(/not open/);
  });
});

describe(`printing (${NOTE})`, () => {
  test('a document is printed from a hidden window without script, and the window goes', async () => {
    const shell = await openShell({ printPdf: null });
    const { household } = (await shell.link.call('household.create', { name: 'Larch Rise' })) as {
      household: { id: string; heat: object };
    };
    const heat = { heatLossKW: { value: 6, grade: 'estimated', origin: 'sheet' } };
    await shell.link.call('household.save', { household: { ...household, heat }, revision: 1 });
    const estimate = (await shell.link.call('estimate.keep', { householdId: household.id, note: '' })) as {
      id: string;
    };
    const pdf = (await shell.link.call('estimate.print', { estimateId: estimate.id, format: 'pdf' })) as {
      base64: string;
    };
    expect(Buffer.from(pdf.base64, 'base64').toString()).toBe("%PDF-1.4 /CreationDate (D:20000101000000+00'00')");
    const hidden = shell.standIn.windows[1]!;
    expect(hidden.loaded).toContain('Larch Rise');
    expect(hidden.options).toMatchObject({ show: false, webPreferences: { javascript: false, sandbox: true } });
    expect(hidden.options.webPreferences.preload).toBeUndefined();
    expect(hidden.webContents.printed).toMatchObject({ preferCSSPageSize: true, generateTaggedPDF: true });
    expect(hidden.destroyed).toBe(true);
    const { dataFolder } = shell.ports;
    expect(hidden.loadedFrom.startsWith(dataFolder)).toBe(true);
    expect(readdirSync(dataFolder).filter((name) => name.startsWith(WORK_FOLDER))).toEqual([]);
    await shell.link.close();
  });
});

describe(`starting (${NOTE})`, () => {
  const start = (standIn: ReturnType<typeof standInForElectron>, desk: Partial<DeskLink>) =>
    runShell({
      modules: standIn.modules,
      startDesk: () => desk as DeskLink,
      dataFolder: '/nowhere',
      preload: '/preload.cjs',
      webFolder: folder,
      platform: 'linux',
    });

  test('a second shell gives way to the first', async () => {
    const standIn = standInForElectron();
    standIn.app.lockFree = false;
    await start(standIn, {});
    expect([standIn.app.quits, standIn.windows.length]).toEqual([1, 0]);
  });

  test('a store that cannot be opened is said in words, and no window opens', async () => {
    const standIn = standInForElectron();
    const refusal = new DeskError({ code: 'store-in-use', message: 'Open elsewhere.', remedy: 'Close the other.' });
    const ready = Promise.reject(refusal);
    await start(standIn, { ready });
    expect(standIn.boxes).toEqual(['Plainwarmth cannot open its data: Open elsewhere.\n\nClose the other.']);
    expect([standIn.app.quits, standIn.windows.length]).toEqual([1, 0]);
  });
});
