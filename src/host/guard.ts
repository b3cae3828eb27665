/** Who may speak to the loopback host: pages that it served itself, and they only with the token of this start. */
import { randomBytes, timingSafeEqual } from 'node:crypto';
import type { IncomingMessage } from 'node:http';
import type { DeskRefusal } from '../desk/desk-error.ts';

const makeToken = (): string => randomBytes(24).toString('base64url');

/** A browser that was told an address takes no longer to open it. */
const CODE_LASTS_MS = 60_000;

export interface Door {
  /** Of this start, for whoever reads the terminal or the note beside the data. */
  readonly token: string;
  /** A code for one page: what a command line shows of it is worth nothing once the page is there. */
  makeCode(): string;
  /** The token of the page that brings the code; undefined when the code is unknown, old or used. */
  takeCode(code: string): string | undefined;
  fits(token: string): boolean;
}

const same = (given: string, expected: string): boolean => {
  const [a, b] = [Buffer.from(given), Buffer.from(expected)];
  return a.length === b.length && timingSafeEqual(a, b);
};

export function makeDoor(now: () => number = Date.now): Door {
  const token = makeToken();
  const codes = new Map<string, { readonly until: number; pageToken: string | null }>();
  const pageTokens = new Set<string>();
  return {
    token,
    makeCode() {
      const code = makeToken();
      codes.set(code, { until: now() + CODE_LASTS_MS, pageToken: null });
      return code;
    },
    takeCode(code) {
      const known = codes.get(code);
      if (!known || known.until < now()) return undefined;
      if (known.pageToken !== null) {
        // Two came with one code, so one of them read it from the list of programs: neither is let in.
        pageTokens.delete(known.pageToken);
        return undefined;
      }
      known.pageToken = makeToken();
      pageTokens.add(known.pageToken);
      return known.pageToken;
    },
    fits: (given) => [token, ...pageTokens].some((expected) => same(given, expected)),
  };
}

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

export function refuseToken({ headers }: IncomingMessage, door: Door): DeskRefusal | undefined {
  if (door.fits(String(headers['x-plainwarmth-token'] ?? ''))) return undefined;
  return {
    code: 'no-token',
    message: 'This page does not belong to the Plainwarmth that is running now.',
    remedy: 'Close it and start Plainwarmth again: it opens a page of its own.',
  };
}
