import { useEffect } from 'react';
import type { MenuCommand } from '../desk/contract.ts';
import { call, onMenuCommand, saveFile } from './desk.ts';
import { parseRoute, type Route } from './routes.ts';
import { go } from './use-route.ts';

/** Where a command of the shell's menu leads from the present screen; null where it opens no other one. */
export function routeForCommand(command: MenuCommand, from: Route): Route | null {
  switch (command) {
    case 'list':
    case 'new-household':
      return { screen: 'list' };
    case 'settings':
      return { screen: 'settings' };
    case 'import':
      return from.screen === 'household' ? { ...from, stage: 'evidence' } : { screen: 'list' };
    case 'print':
      return from.screen === 'household' ? { ...from, stage: 'promise' } : null;
    case 'export':
      return null;
  }
}

/** Follows the menu of the desktop shell; in a browser there is none. */
export function useMenu(onNewHousehold: () => void): void {
  useEffect(
    () =>
      onMenuCommand((command) => {
        const from = parseRoute(window.location.hash);
        const to = routeForCommand(command, from);
        if (to) go(to);
        if (command === 'new-household') onNewHousehold();
        if (command === 'export' && from.screen === 'household') {
          call('household.export', { id: from.id }).then(saveFile, console.error);
        }
      }),
    [onNewHousehold],
  );
}
