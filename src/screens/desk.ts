/**
 * The desk as the screens know it: `call(name, input)`, saving a file, and the commands of the shell's menu.
 * Under the desktop shell it goes over the preload's bridge, else by HTTP to the host that served the page.
 */
import type { Bridge, Call, FileOut, MenuCommand } from '../desk/contract.ts';
import { callOverBridge } from './desk-bridge.ts';
import { callOverHttp, holdLine, takeTokenFor } from './desk-http.ts';
import { keepAll } from './state/keeper.ts';

declare global {
  interface Window {
    readonly plainwarmth?: Bridge;
  }
}

const TOKEN = 'plainwarmth token';

/**
 * The host's token for this page. It comes after the # of the first address, which no server and no log sees, either
 * itself or as a code for it; it moves to the tab's own storage so that the # is free for the screens and a reload works.
 */
async function takeToken(): Promise<string> {
  const [, kind, given = ''] = /[#&](token|code)=([\w-]+)/.exec(window.location.hash) ?? [];
  if (kind === undefined) return window.sessionStorage.getItem(TOKEN) ?? '';
  window.history.replaceState(null, '', window.location.pathname);
  const token = kind === 'token' ? given : await takeTokenFor(window.location.origin, given);
  window.sessionStorage.setItem(TOKEN, token);
  return token;
}

function callHost(): Call {
  const token = takeToken();
  token.then(holdLine, () => undefined);
  return callOverHttp({ base: window.location.origin, token });
}

const bridge = window.plainwarmth;

/** For those who keep changes, and for nobody else: `call` waits for them. */
export const callAtOnce: Call = bridge ? callOverBridge(bridge) : callHost();

/** No request overtakes a change that waits to be kept: what is read, printed or exported has it. */
export const call: Call = async (name, input, options) => {
  await keepAll();
  return callAtOnce(name, input, options);
};

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
