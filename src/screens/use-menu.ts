import { useEffect } from 'react';
import type { MenuCommand, Settings } from '../desk/contract.ts';
import { onMenuCommand } from './desk.ts';
import { parseRoute, type Route } from './routes.ts';
import { go } from './use-route.ts';

/** Where a command of the shell's menu leads from the present screen; null where it opens no other one. */
function routeForCommand(command: MenuCommand, from: Route): Route | null {
  switch (command) {
    case 'list':
    case 'new-household':
      return { screen: 'list' };
    case 'settings':
      return { screen: 'settings' };
    case 'import':
      return from.screen === 'household' ? { ...from, stage: 'evidence' } : { screen: 'list' };
    case 'print':
      return from.screen === 'household' ? { ...from, stage: 'estimate' } : null;
    // The open household asks first what goes along.
    case 'export':
    case 'theme-system':
    case 'theme-light':
    case 'theme-dark':
      return null;
  }
}

const THEMES: { readonly [command in MenuCommand]?: Settings['theme'] } = {
  'theme-system': 'as the system',
  'theme-light': 'light',
  'theme-dark': 'dark',
};

/** Follows the menu of the desktop shell; in a browser there is none. */
export function useMenu(onNewHousehold: () => void, onTheme: (theme: Settings['theme']) => void): void {
  useEffect(
    () =>
      onMenuCommand((command) => {
        const from = parseRoute(window.location.hash);
        const to = routeForCommand(command, from);
        if (to) go(to);
        if (command === 'new-household') onNewHousehold();
        const theme = THEMES[command];
        if (theme) onTheme(theme);
      }),
    [onNewHousehold, onTheme],
  );
}
