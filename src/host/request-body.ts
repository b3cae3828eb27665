/** The body of a call, up to its limit. */
import type { IncomingMessage } from 'node:http';
import { DeskError } from '../desk/desk-error.ts';
import { LARGEST_FILE_BYTES, refuseLargeFile } from '../desk/limits.ts';

/** Everything but a file: a household with 50 tariffs has some 100 kB. */
const LARGEST_JSON_BYTES = 2 * 1024 * 1024;

type TooLarge = (bytes: number) => DeskError;

const longRequest: TooLarge = () =>
  new DeskError({
    code: 'file-too-large',
    message: `This request has more than the ${LARGEST_JSON_BYTES / 1024 / 1024} MB that are taken at once.`,
  });

/** The size is known beforehand with every browser, so that the body is laid down once, where it stays. */
function readBytes(request: IncomingMessage, limit: number, tooLarge: TooLarge): Promise<Uint8Array<ArrayBuffer>> {
  const announced = Number(request.headers['content-length'] ?? Number.NaN);
  if (announced > limit) return Promise.reject(tooLarge(announced));
  return new Promise((resolve, reject) => {
    let bytes = new Uint8Array(Number.isNaN(announced) ? 64 * 1024 : announced);
    let size = 0;
    const take = (chunk: Buffer) => {
      if (size + chunk.length > limit) {
        // From here on nothing is kept; who refuses it lets the rest run out.
        request.off('data', take);
        reject(tooLarge(size + chunk.length));
        return;
      }
      if (size + chunk.length > bytes.length) {
        const larger = new Uint8Array(Math.min(limit, Math.max(bytes.length * 2, size + chunk.length)));
        larger.set(bytes.subarray(0, size));
        bytes = larger;
      }
      bytes.set(chunk, size);
      size += chunk.length;
    };
    request.on('data', take);
    request.on('end', () => resolve(size === bytes.length ? bytes : bytes.slice(0, size)));
    request.on('error', reject);
    request.on('close', () => reject(new Error('The request was broken off.')));
  });
}

/** Throws DeskError for what is too large or not readable. */
export async function readInput(request: IncomingMessage, name: string): Promise<unknown> {
  if (name === 'file.offer') {
    const fileName = decodeName(request.headers['x-file-name']);
    return { fileName, bytes: await readBytes(request, LARGEST_FILE_BYTES, (size) => refuseLargeFile(fileName, size)) };
  }
  const bytes = await readBytes(request, LARGEST_JSON_BYTES, longRequest);
  try {
    return JSON.parse(new TextDecoder().decode(bytes)) as unknown;
  } catch {
    throw new DeskError({ code: 'not-json', message: 'The body of this request is not JSON.' });
  }
}

/** How long a body that nobody wants may still come in, so that its sender reads the answer rather than a broken line. */
const DISCARD_MS = 2000;

/** Lets the rest of a refused body run out unread, and hangs up on one that goes on for too long. */
export function discardRest(request: IncomingMessage): void {
  if (request.complete) return;
  request.resume();
  const timer = setTimeout(() => request.socket.destroy(), DISCARD_MS);
  timer.unref();
  request.on('close', () => clearTimeout(timer));
}

function decodeName(header: string | string[] | undefined): string {
  try {
    return decodeURIComponent(String(header ?? ''));
  } catch {
    throw new DeskError({ code: 'bad-name', message: 'The name of the file cannot be read.' });
  }
}
