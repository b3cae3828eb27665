/** The window's files under app://plainwarmth, with the same headers as the loopback host sends. */
import { readWebFile, SECURITY_HEADERS } from '../src/host/web-files.ts';
import type { Modules } from './modules.ts';

const SCHEME = 'app';
const HOST = 'plainwarmth';
export const START_PAGE = `${SCHEME}://${HOST}/index.html`;

/** Must be called before the app is ready. */
export function announceScheme(protocol: Pick<Modules['protocol'], 'registerSchemesAsPrivileged'>): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
}

async function answerPage(webFolder: string, address: string): Promise<Response> {
  const url = new URL(address);
  const file = url.host === HOST ? await readWebFile(webFolder, url.pathname) : undefined;
  if (!file) return new Response('There is nothing at this address.', { status: 404, headers: SECURITY_HEADERS });
  return new Response(file.bytes, { headers: file.headers });
}

export function serveWindow(protocol: Pick<Modules['protocol'], 'handle'>, webFolder: string): void {
  protocol.handle(SCHEME, (request) => answerPage(webFolder, request.url));
}

/** Whether an address is one of the window's own pages. */
export function isOwnPage(address: string): boolean {
  return URL.canParse(address) && new URL(address).protocol === `${SCHEME}:` && new URL(address).host === HOST;
}
