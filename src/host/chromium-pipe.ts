/** Speaks the DevTools protocol with a Chromium through its debugging pipe: messages of JSON, each ended by a zero byte. */
import { spawn } from 'node:child_process';
import type { Readable, Writable } from 'node:stream';

interface Message {
  readonly id?: number;
  readonly method?: string;
  readonly sessionId?: string;
  readonly result?: Record<string, unknown>;
  readonly error?: { readonly message: string };
}

export interface ChromiumPipe {
  send(method: string, params?: object, sessionId?: string): Promise<Record<string, unknown>>;
  /** Resolves when the event comes next. */
  next(method: string): Promise<void>;
  /** Ends the process and waits for its end. */
  close(): Promise<void>;
}

/** Starts the browser; every waiting call rejects when it ends or the time is over. */
export function openChromium(path: string, flags: readonly string[], timeOutMs: number): ChromiumPipe {
  const child = spawn(path, [...flags, '--remote-debugging-pipe'], {
    stdio: ['ignore', 'ignore', 'pipe', 'pipe', 'pipe'],
    // A group of its own, so that its helpers end with it.
    detached: process.platform !== 'win32',
  });
  const toBrowser = child.stdio[3] as Writable;
  const fromBrowser = child.stdio[4] as Readable;
  const waiting = new Map<number, PromiseWithResolvers<Record<string, unknown>>>();
  const events = new Map<string, PromiseWithResolvers<void>>();
  const ended = Promise.withResolvers<void>();
  let lastId = 0;
  let over: Error | undefined;
  let complaint = '';

  function fail(reason: string): void {
    over ??= new Error(`${path}: ${reason}${complaint === '' ? '' : `\n${complaint}`}`);
    for (const { reject } of [...waiting.values(), ...events.values()]) reject(over);
  }
  function kill(): void {
    if (child.pid === undefined || child.exitCode !== null) return;
    try {
      process.kill(process.platform === 'win32' ? child.pid : -child.pid, 'SIGKILL');
    } catch {
      // It ended in the meantime.
    }
  }
  const timer = setTimeout(() => {
    fail(`no document after ${timeOutMs / 1000} s`);
    kill();
  }, timeOutMs);

  child.on('error', (error) => {
    fail(error.message);
    ended.resolve();
  });
  child.on('exit', (code) => {
    clearTimeout(timer);
    fail(`ended with code ${code}`);
    ended.resolve();
  });
  child.stderr?.on('data', (chunk: Buffer) => {
    complaint = (complaint + chunk.toString()).slice(-2000);
  });
  toBrowser.on('error', () => undefined);
  fromBrowser.on('error', () => undefined);

  function hear({ id, method, result, error }: Message): void {
    if (id === undefined) {
      events.get(method ?? '')?.resolve();
      events.delete(method ?? '');
      return;
    }
    if (error) waiting.get(id)?.reject(new Error(error.message));
    else waiting.get(id)?.resolve(result ?? {});
    waiting.delete(id);
  }
  let chunks: Buffer[] = [];
  fromBrowser.on('data', (chunk: Buffer) => {
    let start = 0;
    for (let end = chunk.indexOf(0); end >= 0; end = chunk.indexOf(0, start)) {
      chunks.push(chunk.subarray(start, end));
      hear(JSON.parse(Buffer.concat(chunks).toString('utf8')) as Message);
      chunks = [];
      start = end + 1;
    }
    chunks.push(chunk.subarray(start));
  });

  return {
    send(method, params = {}, sessionId) {
      if (over) return Promise.reject(over);
      const id = ++lastId;
      const answer = Promise.withResolvers<Record<string, unknown>>();
      waiting.set(id, answer);
      toBrowser.write(`${JSON.stringify({ id, method, params, ...(sessionId ? { sessionId } : {}) })}\0`);
      return answer.promise;
    },
    next(method) {
      if (over) return Promise.reject(over);
      const event = Promise.withResolvers<void>();
      events.set(method, event);
      return event.promise;
    },
    async close() {
      kill();
      await ended.promise;
    },
  };
}
