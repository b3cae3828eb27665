/** The desk's side of its thread: takes calls from the port, answers them, looks for stops while it works. */
import { type MessagePort, receiveMessageOnPort } from 'node:worker_threads';
import type { Desk, PrintPdf } from '../desk/desk.ts';
import type { FromDesk, Port, ToDesk } from './desk-messages.ts';
import { refusalOf } from './refuse-later.ts';

/** Asks the other side to print, for a host that brings its own Chromium. */
export interface AskedPrinter {
  readonly printPdf: PrintPdf;
  readonly take: (answer: Extract<ToDesk, { kind: 'printed' }>) => void;
}

export function askToPrint(port: Port): AskedPrinter {
  const waiting = new Map<number, PromiseWithResolvers<Uint8Array | null>>();
  let lastId = 0;
  return {
    printPdf(html, paper) {
      const id = ++lastId;
      const answer = Promise.withResolvers<Uint8Array | null>();
      waiting.set(id, answer);
      port.postMessage({ kind: 'print', id, html, paper } satisfies FromDesk);
      return answer.promise;
    },
    take({ id, pdf, failure }) {
      if (failure === undefined) waiting.get(id)?.resolve(pdf);
      else waiting.get(id)?.reject(new Error(failure));
      waiting.delete(id);
    },
  };
}

export interface ServedDesk {
  readonly port: MessagePort;
  readonly stops: MessagePort;
  readonly desk: Desk;
  readonly printer: AskedPrinter | null;
  /** Resolves when the data is closed. */
  readonly close: () => Promise<void>;
  /** Called after each answer. */
  readonly giveBack?: () => void;
}

/** Share of the work that a bar on the screen shows. */
const LEAST_STEP = 0.005;

export function serveDesk({ port, stops, desk, printer, close, giveBack }: ServedDesk): void {
  const running = new Map<number, AbortController>();
  const send = (message: FromDesk) => port.postMessage(message);
  const stop = (id: number) => running.get(id)?.abort();
  stops.on('message', stop);

  /** Reading a file keeps the thread busy, so that no event comes in; this looks into the port by hand. */
  function lookForStops(): void {
    for (let next = receiveMessageOnPort(stops); next; next = receiveMessageOnPort(stops)) stop(next.message as number);
  }

  async function answer(id: number, name: string, input: unknown): Promise<void> {
    const controller = new AbortController();
    running.set(id, controller);
    lookForStops();
    let told = -1;
    try {
      const result = await desk.handle(name, input, {
        signal: controller.signal,
        onProgress(share) {
          // Work says how far it is far more often than a bar can show; stops are looked for each time.
          if (share >= told + LEAST_STEP || share === 1) {
            told = share;
            send({ kind: 'progress', id, share });
          }
          lookForStops();
        },
      });
      send({ kind: 'result', id, result });
    } catch (error) {
      const refusal = await refusalOf(error);
      const detail = refusal.code === 'own-failure' && error instanceof Error ? error.stack : undefined;
      send({ kind: 'refusal', id, refusal, ...(detail === undefined ? {} : { detail }) });
    } finally {
      running.delete(id);
      giveBack?.();
    }
  }

  port.on('message', (message: ToDesk) => {
    if (message.kind === 'call') void answer(message.id, message.name, message.input);
    else if (message.kind === 'printed') printer?.take(message);
    else {
      void close().finally(() => {
        send({ kind: 'closed' });
        stops.close();
        port.close();
      });
    }
  });
}
