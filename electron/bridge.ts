import type { IpcRenderer } from 'electron';
import type { Bridge, BridgeAnswer, MenuCommand } from '../src/desk/contract.ts';
import { CHANNELS } from './channels.ts';

/** The bridge over the window's end of the channels. */
export function makeBridge(ipc: Pick<IpcRenderer, 'invoke' | 'send' | 'on' | 'removeListener'>): Bridge {
  return {
    call: (callId, name, input) => ipc.invoke(CHANNELS.call, callId, name, input) as Promise<BridgeAnswer>,
    cancel: (callId) => ipc.send(CHANNELS.cancel, callId),
    onProgress(listener) {
      ipc.on(CHANNELS.progress, (_event, callId: number, share: number) => listener(callId, share));
    },
    saveFile: (file) => ipc.invoke(CHANNELS.saveFile, file) as Promise<boolean>,
    onMenu(listener) {
      const hear = (_event: unknown, command: MenuCommand) => listener(command);
      ipc.on(CHANNELS.menu, hear);
      return () => void ipc.removeListener(CHANNELS.menu, hear);
    },
  };
}
