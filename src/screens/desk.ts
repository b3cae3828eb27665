/**
 * The desk as the screens know it: `call(name, input)`, saving a file, and the commands of the shell's menu.
 * Under the desktop shell it goes over the preload's bridge, else by HTTP to the host that served the page.
 */
import type { Bridge, Call, FileOut, MenuCommand } from '../desk/contract.ts';
import { callOverBridge } from './desk-bridge.ts';
import { callOverHttp } from './desk-http.ts';

declare global {
  interface Window {
    readonly plainwarmth?: Bridge;
  }
}

const TOKEN = 'plainwarmth token';

/**
 * The host's token for this start comes after the # of the first address, which no server and no log sees;
 * it moves to the tab's own storage so that the # is free for the screens and a reload still works.
 */
function takeToken(): string {
  const found = /[#&]token=([\w-]+)/.exec(window.location.hash)?.[1];
  if (found) {
    window.sessionStorage.setItem(TOKEN, found);
    window.history.replaceState(null, '', window.location.pathname);
  }
  return found ?? window.sessionStorage.getItem(TOKEN) ?? '';
}

const bridge = window.plainwarmth;

export const call: Call = bridge
  ? callOverBridge(bridge)
  : callOverHttp({ base: window.location.origin, token: takeToken() });

/** Hands a file to the person: a save dialog in the shell, a download in a browser. False when they thought better of it. */
export async function saveFile(file: FileOut): Promise<boolean> {
  if (bridge) return bridge.saveFile(file);
  const bytes = Uint8Array.from(atob(file.base64), (char) => char.charCodeAt(0));
  const url = URL.createObjectURL(new Blob([bytes], { type: file.mediaType }));
  const link = document.createElement('a');
  link.href = url;
  link.download = file.fileName;
  link.click();
  // The browser reads the bytes after the click; a minute is plenty.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
  return true;
}

/** Hears the commands of the shell's menu; in a browser there is none. Answers how to stop listening. */
export function onMenuCommand(listener: (command: MenuCommand) => void): () => void {
  return bridge ? bridge.onMenu(listener) : () => undefined;
}
