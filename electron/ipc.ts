/** The main process's end of the channels: calls to the desk, stops, saving a file. The sender is looked at every time. */
import { writeFile } from 'node:fs/promises';
import { extname } from 'node:path';
import type { BrowserWindow, IpcMainEvent, IpcMainInvokeEvent } from 'electron';
import { type BridgeAnswer, FileOut } from '../src/desk/contract.ts';
import { toRefusal } from '../src/desk/refusal.ts';
import type { DeskLink } from '../src/host/desk-link.ts';
import { CHANNELS } from './channels.ts';
import type { Modules } from './modules.ts';
import { isOwnPage } from './web-protocol.ts';

interface IpcOptions {
  readonly modules: Pick<Modules, 'ipcMain' | 'dialog'>;
  readonly desk: Pick<DeskLink, 'call'>;
  /** The one window, or null when it is closed. */
  readonly window: () => BrowserWindow | null;
}

const STRANGER: BridgeAnswer = {
  refusal: { code: 'stranger', message: "This request does not come from Plainwarmth's own page." },
};

export function answerWindow({ modules: { ipcMain, dialog }, desk, window }: IpcOptions): void {
  const running = new Map<number, AbortController>();

  /** Only the main frame of the one window, showing one of our own pages. */
  function isOurs({ senderFrame, sender }: IpcMainEvent | IpcMainInvokeEvent): boolean {
    const contents = window()?.webContents;
    return (
      contents !== undefined && sender === contents && senderFrame === contents.mainFrame && isOwnPage(senderFrame.url)
    );
  }

  async function call(
    event: IpcMainInvokeEvent,
    callId: unknown,
    name: unknown,
    input: unknown,
  ): Promise<BridgeAnswer> {
    if (!isOurs(event) || typeof callId !== 'number' || typeof name !== 'string') return STRANGER;
    const stopped = new AbortController();
    running.set(callId, stopped);
    try {
      const result = await desk.call(name, input, {
        signal: stopped.signal,
        onProgress(share) {
          if (!event.sender.isDestroyed()) event.sender.send(CHANNELS.progress, callId, share);
        },
      });
      return { result };
    } catch (error) {
      return { refusal: toRefusal(error) };
    } finally {
      running.delete(callId);
    }
  }

  async function saveFile(event: IpcMainInvokeEvent, given: unknown): Promise<boolean> {
    const owner = window();
    if (!isOurs(event) || !owner) return false;
    const file = FileOut.parse(given);
    const ending = extname(file.fileName).slice(1);
    const { canceled, filePath } = await dialog.showSaveDialog(owner, {
      defaultPath: file.fileName,
      filters: ending === '' ? [] : [{ name: ending.toUpperCase(), extensions: [ending] }],
    });
    if (canceled || !filePath) return false;
    await writeFile(filePath, Buffer.from(file.base64, 'base64'));
    return true;
  }

  ipcMain.handle(CHANNELS.call, call);
  ipcMain.handle(CHANNELS.saveFile, saveFile);
  ipcMain.on(CHANNELS.cancel, (event, callId: unknown) => {
    if (isOurs(event) && typeof callId === 'number') running.get(callId)?.abort();
  });
}
