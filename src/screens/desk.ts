/**
 * The desk as the screens know it: `call(name, input)`, saving a file, and the commands of the shell's menu.
 * Under the desktop shell it goes over the preload's bridge, else by HTTP to the host that served the page.
 */
import { saveInBrowser } from '../charts/frame/save.ts';
import type { Call, FileOut, MenuCommand } from '../desk/contract.ts';
import { callOverBridge } from './desk-bridge.ts';
import { callOverHttp, holdLine } from './desk-http.ts';
import { host } from './first.ts';
import { keepAll } from './state/keeper.ts';

const bridge = window.plainwarmth;

/** For those who keep changes, and for nobody else: `call` waits for them. */
export const callAtOnce: Call = bridge ? callOverBridge(bridge) : callOverHttp(host!);
host?.token.then(holdLine, () => undefined);

/** No request overtakes a change that waits to be kept: what is read, printed or exported has it. */
export const call: Call = async (name, input, options) => {
  await keepAll();
  return callAtOnce(name, input, options);
};

/** Hands a file to the person: a save dialog in the shell, a download in a browser. False when they thought better of it. */
export async function saveFile(file: FileOut): Promise<boolean> {
  if (bridge) return bridge.saveFile(file);
  const bytes = Uint8Array.from(atob(file.base64), (char) => char.charCodeAt(0));
  saveInBrowser(new Blob([bytes], { type: file.mediaType }), file.fileName);
  return true;
}

/** Hears the commands of the shell's menu; in a browser there is none. Answers how to stop listening. */
export function onMenuCommand(listener: (command: MenuCommand) => void): () => void {
  return bridge ? bridge.onMenu(listener) : () => undefined;
}
