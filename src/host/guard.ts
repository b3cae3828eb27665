/** Who may speak to the loopback host: pages that it served itself, and they only with the token of this start. */
import { randomBytes, timingSafeEqual } from 'node:crypto';
import type { IncomingMessage } from 'node:http';
import type { DeskRefusal } from '../desk/contract.ts';

export const makeToken = (): string => randomBytes(24).toString('base64url');

/** Against a page elsewhere that points its own name at 127.0.0.1, and against requests from other origins. */
export function refuseStranger({ headers }: IncomingMessage, port: number): DeskRefusal | undefined {
  const own = [`127.0.0.1:${port}`, `localhost:${port}`];
  if (!own.includes(headers.host ?? '')) return stranger('Host', headers.host);
  const { origin } = headers;
  if (origin !== undefined && !own.some((host) => origin === `http://${host}`)) return stranger('Origin', origin);
  const site = headers['sec-fetch-site'];
  // "none" is an address typed by hand; "cross-site" on the page itself is a link followed, which reads nothing.
  if (
    site !== undefined &&
    !['same-origin', 'none'].includes(String(site)) &&
    headers['sec-fetch-mode'] !== 'navigate'
  ) {
    return stranger('Sec-Fetch-Site', String(site));
  }
  return undefined;
}

const stranger = (header: string, found: string | undefined): DeskRefusal => ({
  code: 'stranger',
  message: `This request does not come from Plainwarmth's own page (${header}: ${found ?? 'missing'}).`,
  remedy: 'Open the address that Plainwarmth printed when it started.',
});

export function refuseToken({ headers }: IncomingMessage, token: string): DeskRefusal | undefined {
  const given = Buffer.from(String(headers['x-plainwarmth-token'] ?? ''));
  const expected = Buffer.from(token);
  if (given.length === expected.length && timingSafeEqual(given, expected)) return undefined;
  return {
    code: 'no-token',
    message: 'This page does not belong to the Plainwarmth that is running now.',
    remedy: 'Close it and open the address that Plainwarmth printed when it was started.',
  };
}
