/**
 * The page's first script, in a file of its own: it takes the token and asks for what every start asks, while all the
 * rest is fetched and compiled. So it imports next to nothing.
 */
import type { Bridge, Input, RequestName } from '../desk/contract.ts';
import { asJson, requestOf, takeTokenFor } from './door.ts';
import { parseRoute } from './routes.ts';

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

const base = window.location.origin;

/** Null under the desktop shell, which has its bridge. */
export const host = window.plainwarmth ? null : { base, token: takeToken(), fetch: fetchAsked };

/** What was asked for here and is not taken yet, by its address and content. */
const asked = new Map<string, Promise<Response>>();

/** Of two like requests the first is given what was asked for here, and the second asks anew. */
function fetchAsked(url: string, init: RequestInit): Promise<Response> {
  const key = `${url} ${init.body}`;
  const early = asked.get(key);
  asked.delete(key);
  return early ?? fetch(url, init);
}

function askFor<N extends RequestName>(name: N, input: Input<N>): void {
  if (host === null) return;
  const url = `${base}/call/${name}`;
  const content = asJson(input);
  const response = host.token.then((token) => fetch(url, requestOf(token, content)));
  // Whoever takes it hears of it.
  response.catch(() => undefined);
  asked.set(`${url} ${content.body}`, response);
}

/** The whole list, as the first screen shows it. */
export const WHOLE_LIST: Input<'household.list'> = { archived: false };
export const BEGINS_AT_LIST = parseRoute(window.location.hash).screen === 'list';

askFor('app.read', {});
askFor('settings.read', {});
if (BEGINS_AT_LIST) askFor('household.list', WHOLE_LIST);
