/** A host's side of the desk's thread: calls with progress and stopping, as promises. */
import type { MessagePort } from 'node:worker_threads';
import type { PrintPdf } from '../desk/desk.ts';
import { DeskError } from '../desk/desk-error.ts';
import type { FromDesk, Port, ToDesk } from './desk-messages.ts';

export interface CallWork {
  readonly signal?: AbortSignal;
  readonly onProgress?: (share: number) => void;
}

export interface DeskLink {
  /** Resolves when the store is ours, so that the window may open; rejects with DeskError when it cannot be. */
  readonly ready: Promise<void>;
  /** Resolves when the store has been looked through and carried forward, which may still be refused. */
  readonly opened: Promise<void>;
  /** Rejects with DeskError, own failures included. */
  call(name: string, input: unknown, work?: CallWork): Promise<unknown>;
  /** Lets work under way come to its end, then closes the store; resolves when it is closed. */
  close(): Promise<void>;
  /** To be called when the thread ends by itself. */
  fail(reason: string): void;
}

interface Waiting extends CallWork {
  readonly resolve: (result: unknown) => void;
  readonly reject: (error: Error) => void;
}

export interface LinkOptions {
  readonly port: Port;
  readonly stops: MessagePort;
  readonly printPdf?: PrintPdf;
  /** The window asks that the program end. */
  readonly onQuit?: () => void;
  /** Hears the details of own failures, which no window needs. */
  readonly onFailure?: (detail: string) => void;
}

/** A file goes over as it is: a copy would hold its memory twice. Its sender has no more use for it. */
function bytesToHandOver(name: string, input: unknown): ArrayBuffer[] {
  if (name !== 'file.offer') return [];
  const bytes = (input as { bytes?: unknown } | null)?.bytes;
  if (!(bytes instanceof Uint8Array) || !(bytes.buffer instanceof ArrayBuffer)) return [];
  // A part of a larger buffer is not ours to give away.
  return bytes.byteLength === bytes.buffer.byteLength ? [bytes.buffer] : [];
}

export function linkDesk({ port, stops, printPdf, onQuit, onFailure }: LinkOptions): DeskLink {
  const waiting = new Map<number, Waiting>();
  const running = new Set<Promise<unknown>>();
  const ready = Promise.withResolvers<void>();
  const opened = Promise.withResolvers<void>();
  const closed = Promise.withResolvers<void>();
  // Whoever waits for it hears of it; nobody waiting is no fault.
  ready.promise.catch(() => undefined);
  opened.promise.catch(() => undefined);
  let lastId = 0;
  /** Once the thread is gone nobody would answer. */
  let gone: DeskError | undefined;

  function refuse(error: DeskError): void {
    ready.reject(error);
    opened.reject(error);
  }

  async function print({ id, html, paper }: Extract<FromDesk, { kind: 'print' }>): Promise<void> {
    const answer: ToDesk = await (printPdf?.(html, paper) ?? Promise.resolve(null)).then(
      (pdf) => ({ kind: 'printed', id, pdf }),
      (error: unknown) => ({ kind: 'printed', id, pdf: null, failure: String(error) }),
    );
    port.postMessage(answer);
  }

  port.on('message', (message: FromDesk) => {
    switch (message.kind) {
      case 'ready':
        return ready.resolve();
      case 'opened':
        return opened.resolve();
      case 'failed':
        return refuse(new DeskError(message.refusal));
      case 'closed':
        return closed.resolve();
      case 'quit':
        return onQuit?.();
      case 'print':
        return void print(message);
      case 'progress':
        return waiting.get(message.id)?.onProgress?.(message.share);
      case 'result':
        return waiting.get(message.id)?.resolve(message.result);
      case 'refusal':
        if (message.detail) onFailure?.(message.detail);
        return waiting.get(message.id)?.reject(new DeskError(message.refusal));
    }
  });

  async function ask(name: string, input: unknown, work: CallWork = {}): Promise<unknown> {
    work.signal?.throwIfAborted();
    await opened.promise;
    if (gone) throw gone;
    const id = ++lastId;
    const stop = () => stops.postMessage(id);
    work.signal?.addEventListener('abort', stop, { once: true });
    try {
      return await new Promise((resolve, reject) => {
        waiting.set(id, { ...work, resolve, reject });
        port.postMessage({ kind: 'call', id, name, input } satisfies ToDesk, bytesToHandOver(name, input));
      });
    } finally {
      waiting.delete(id);
      work.signal?.removeEventListener('abort', stop);
    }
  }

  return {
    ready: ready.promise,
    opened: opened.promise,
    call(name, input, work) {
      const answer = ask(name, input, work);
      running.add(answer);
      return answer.finally(() => running.delete(answer));
    },
    async close() {
      while (running.size > 0) await Promise.allSettled(running);
      port.postMessage({ kind: 'close' } satisfies ToDesk);
      return closed.promise;
    },
    fail(reason) {
      const error = new DeskError({
        code: 'desk-gone',
        message: `Plainwarmth's desk stopped working: ${reason}`,
        remedy: 'Start Plainwarmth again. What was saved before is safe.',
      });
      gone ??= error;
      refuse(error);
      closed.resolve();
      for (const { reject } of waiting.values()) reject(error);
    },
  };
}
