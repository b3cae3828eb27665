/** The body of a call, up to its limit. */
import type { IncomingMessage } from 'node:http';
import { DeskError, LARGEST_FILE_BYTES } from '../desk/contract.ts';

/** Everything but a file: a household with 50 tariffs has some 100 kB. */
const LARGEST_JSON_BYTES = 2 * 1024 * 1024;

function tooLarge(limit: number): DeskError {
  return new DeskError({
    code: 'file-too-large',
    message: `That is more than the ${limit / 1024 / 1024} MB that are taken at once.`,
    remedy: 'Ten years of half-hours need about 5 MB. Export a shorter span, or only the meter that is wanted.',
  });
}

async function readBytes(request: IncomingMessage, limit: number): Promise<Buffer<ArrayBuffer>> {
  if (Number(request.headers['content-length'] ?? 0) > limit) throw tooLarge(limit);
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    size += chunk.length;
    if (size > limit) throw tooLarge(limit);
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}

/** Throws DeskError for what is too large or not readable. */
export async function readInput(request: IncomingMessage, name: string): Promise<unknown> {
  if (name === 'file.offer') {
    const fileName = decodeName(request.headers['x-file-name']);
    const bytes = await readBytes(request, LARGEST_FILE_BYTES);
    return { fileName, bytes: new Uint8Array(bytes.buffer, bytes.byteOffset, bytes.length) };
  }
  const bytes = await readBytes(request, LARGEST_JSON_BYTES);
  try {
    return JSON.parse(bytes.toString('utf8')) as unknown;
  } catch {
    throw new DeskError({ code: 'not-json', message: 'The body of this request is not JSON.' });
  }
}

function decodeName(header: string | string[] | undefined): string {
  try {
    return decodeURIComponent(String(header ?? ''));
  } catch {
    throw new DeskError({ code: 'bad-name', message: 'The name of the file cannot be read.' });
  }
}
