/** Runs in the window's sandbox before the page and hands it the bridge: five functions, no Electron object. */
import { contextBridge, ipcRenderer } from 'electron';
import { makeBridge } from './bridge.ts';

contextBridge.exposeInMainWorld('plainwarmth', makeBridge(ipcRenderer));
