import { makeBridge } from '../../../electron/bridge.ts';
import { runShell } from '../../../electron/shell.ts';
import type { Bridge } from '../../../src/desk/contract.ts';
import { createDesk, type DeskPorts } from '../../../src/desk/desk.ts';
import type { DeskLink } from '../../../src/host/desk-link.ts';
import { type OpenedDesk, openDesk } from '../desk/open-desk.ts';
import { linkHere } from '../host/link-here.ts';
import { type FakeWindow, type StandIn, standInForElectron } from './stand-in.ts';

export interface OpenedShell extends OpenedDesk {
  readonly standIn: StandIn;
  readonly window: FakeWindow;
  readonly bridge: Bridge;
  readonly link: DeskLink;
}

/** The whole shell on the stand-in, with a desk in memory behind it. */
export async function openShell(patch: Partial<DeskPorts> = {}, webFolder = '/nowhere'): Promise<OpenedShell> {
  const standIn = standInForElectron();
  const opened = openDesk({ host: 'electron', ...patch });
  let link: DeskLink | undefined;
  await runShell({
    modules: standIn.modules,
    startDesk(printPdf) {
      const ports = patch.printPdf === undefined ? opened.ports : { ...opened.ports, printPdf };
      link = linkHere({ desk: createDesk(ports), close: () => opened.store.close() });
      return link;
    },
    dataFolder: opened.ports.dataFolder,
    preload: '/preload.cjs',
    webFolder,
    platform: 'linux',
  });
  const window = standIn.windows[0]!;
  return { ...opened, standIn, window, link: link!, bridge: makeBridge(standIn.ipcOf(window.webContents)) };
}
