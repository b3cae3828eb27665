/** The built window as files, with the headers that both hosts send: nothing inline, nothing from elsewhere. */
import { readFile } from 'node:fs/promises';
import { extname, join, normalize, sep } from 'node:path';

const MEDIA_TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.txt': 'text/plain; charset=utf-8',
};

const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

export const SECURITY_HEADERS: Readonly<Record<string, string>> = {
  'Content-Security-Policy': CONTENT_SECURITY_POLICY,
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(), microphone=(), geolocation=(), usb=(), serial=()',
};

export interface WebFile {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly headers: Readonly<Record<string, string>>;
}

/** The file behind a path of the address, or undefined: only what lies in the folder is given out. */
export async function readWebFile(folder: string, urlPath: string): Promise<WebFile | undefined> {
  let wanted: string;
  try {
    wanted = decodeURIComponent(urlPath === '/' ? '/index.html' : urlPath);
  } catch {
    return undefined;
  }
  const mediaType = MEDIA_TYPES[extname(wanted).toLowerCase()];
  const path = normalize(join(folder, wanted));
  if (!mediaType || wanted.includes('\0') || !path.startsWith(normalize(folder + sep))) return undefined;
  try {
    const bytes = new Uint8Array(await readFile(path));
    // Names under assets/ carry a hash of their content; the page itself must be asked for anew.
    const cache = wanted.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache';
    return { bytes, headers: { ...SECURITY_HEADERS, 'Content-Type': mediaType, 'Cache-Control': cache } };
  } catch {
    return undefined;
  }
}
