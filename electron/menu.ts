/** The menu: its own commands go to the window by name, everything else is a role that Electron knows. */
import type { MenuItemConstructorOptions } from 'electron';
import type { MenuCommand } from '../src/desk/contract.ts';

export interface MenuPorts {
  readonly platform: NodeJS.Platform;
  readonly send: (command: MenuCommand) => void;
  readonly about: () => void;
}

export function menuTemplate({ platform, send, about }: MenuPorts): MenuItemConstructorOptions[] {
  const command = (label: string, name: MenuCommand, accelerator?: string): MenuItemConstructorOptions => ({
    label,
    click: () => send(name),
    ...(accelerator === undefined ? {} : { accelerator }),
  });
  const isMac = platform === 'darwin';
  return [
    ...(isMac ? [{ role: 'appMenu' } as const] : []),
    {
      label: '&File',
      submenu: [
        command('&New household', 'new-household', 'CmdOrCtrl+N'),
        command('&All households', 'list', 'CmdOrCtrl+L'),
        { type: 'separator' },
        command('&Import…', 'import', 'CmdOrCtrl+I'),
        command('&Export household…', 'export', 'CmdOrCtrl+E'),
        command('&Print…', 'print', 'CmdOrCtrl+P'),
        { type: 'separator' },
        command('&Settings', 'settings', 'CmdOrCtrl+,'),
        { type: 'separator' },
        { role: isMac ? 'close' : 'quit' },
      ],
    },
    { role: 'editMenu' },
    {
      label: '&View',
      submenu: [
        { role: 'resetZoom' },
        { role: 'zoomIn' },
        { role: 'zoomOut' },
        { type: 'separator' },
        command('As the &system', 'theme-system'),
        command('&Light', 'theme-light'),
        command('&Dark', 'theme-dark'),
        { type: 'separator' },
        { role: 'togglefullscreen' },
      ],
    },
    { role: 'windowMenu' },
    { label: '&Help', role: 'help', submenu: [{ label: '&About Plainwarmth', click: about }] },
  ];
}
