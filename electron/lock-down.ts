/** What no page in the shell may do: go elsewhere, open windows, embed pages, or be granted a permission but one. */
import type { Session, WebContents } from 'electron';
import type { Modules } from './modules.ts';
import { isOwnPage } from './web-protocol.ts';

/** What a press of "Copy picture" needs; it lets the page write to the clipboard and never read it. */
const GRANTED = 'clipboard-sanitized-write';

export function lockSession(session: Pick<Session, 'setPermissionRequestHandler' | 'setPermissionCheckHandler'>): void {
  session.setPermissionRequestHandler((_contents, permission, answer) => answer(permission === GRANTED));
  session.setPermissionCheckHandler((_contents, permission) => permission === GRANTED);
}

function lockContents(contents: Pick<WebContents, 'on' | 'setWindowOpenHandler'>): void {
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
  contents.on('will-navigate', (event) => {
    if (!isOwnPage(event.url)) event.preventDefault();
  });
  contents.on('will-redirect', (event) => {
    if (!isOwnPage(event.url)) event.preventDefault();
  });
  contents.on('will-attach-webview', (event) => event.preventDefault());
}

export function lockEverything({ app, session }: Pick<Modules, 'app' | 'session'>): void {
  lockSession(session.defaultSession);
  app.on('web-contents-created', (_event, contents) => lockContents(contents));
}
