/** Calls to the desk over the loopback host: one POST a request, answered line by line. */

import type { Call } from '../desk/contract.ts';
import { DeskError, type DeskRefusal } from '../desk/desk-error.ts';
import { LARGEST_FILE_BYTES, refuseLargeFile } from '../desk/limits.ts';
import { say } from '../words/say.ts';
import { asJson, type Content, type Line, requestOf } from './door.ts';

export interface HttpDesk {
  /** "http://127.0.0.1:4180", without a slash at the end. */
  readonly base: string;
  /** A promise of it where a page is still asking for its own; where that is refused, so is each call. */
  readonly token: string | Promise<string>;
  readonly fetch?: (url: string, init: RequestInit) => Promise<Response>;
}

const gone = (): DeskRefusal => ({
  code: 'host-gone',
  message: say('Plainwarmth does not answer any more; it was probably closed.'),
  remedy: say('Start Plainwarmth again. What was saved before is safe.'),
});

/** The answer's lines as they come in. */
async function* linesOf(body: ReadableStream<Uint8Array>): AsyncGenerator<Line> {
  const decoder = new TextDecoder();
  const reader = body.getReader();
  let waiting = '';
  for (;;) {
    const { done, value } = await reader.read();
    waiting += decoder.decode(value, { stream: !done });
    const lines = waiting.split('\n');
    waiting = lines.pop()!;
    for (const line of lines) if (line !== '') yield JSON.parse(line) as Line;
    if (done) break;
  }
  if (waiting !== '') yield JSON.parse(waiting) as Line;
}

/** Bytes go as they are, everything else as JSON. */
function contentOf(name: string, input: unknown): Content {
  if (name !== 'file.offer') return asJson(input);
  const { fileName, bytes } = input as { fileName: string; bytes: Uint8Array<ArrayBuffer> };
  if (bytes.byteLength > LARGEST_FILE_BYTES) {
    throw refuseLargeFile(fileName, bytes.byteLength);
  }
  return {
    body: bytes,
    headers: { 'Content-Type': 'application/octet-stream', 'X-File-Name': encodeURIComponent(fileName) },
  };
}

const isAbort = (error: unknown) => error instanceof DOMException && error.name === 'AbortError';

export function callOverHttp(desk: HttpDesk): Call {
  const send = desk.fetch ?? fetch;

  async function call(name: string, input: unknown, options: Parameters<Call>[2] = {}): Promise<unknown> {
    const content = contentOf(name, input);
    try {
      const response = await send(`${desk.base}/call/${name}`, {
        ...requestOf(await desk.token, content),
        ...(options.signal ? { signal: options.signal } : {}),
      });
      for await (const line of linesOf(response.body!)) {
        if (line.progress !== undefined) options.onProgress?.(line.progress);
        else if (line.refusal) throw new DeskError(line.refusal);
        else return line.result;
      }
    } catch (error) {
      if (error instanceof DeskError || isAbort(error)) throw error;
      throw new DeskError(gone());
    }
    throw new DeskError(gone());
  }
  return call as Call;
}

const AGAIN_MS = 5000;
const TRIES = 6;

/**
 * Keeps a line to the host while the page is open, by which the host knows that somebody is still there.
 * The sleep of a computer breaks the line, so it is tried again; not for ever, since the host may have ended.
 */
export function holdLine(token: string, tries = TRIES): void {
  const line = new WebSocket(`${window.location.origin.replace(/^http/, 'ws')}/`, [token]);
  let left = tries - 1;
  line.addEventListener('open', () => {
    left = TRIES;
  });
  line.addEventListener('close', () => {
    if (left > 0) setTimeout(() => holdLine(token, left), AGAIN_MS);
  });
}
