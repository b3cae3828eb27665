/** Starts the desk in a thread of its own, so that imports and heavy sums hold up neither window nor host. */
import { MessageChannel, Worker } from 'node:worker_threads';
import type { PrintPdf } from '../desk/desk.ts';
import { type DeskLink, linkDesk } from './desk-link.ts';
import type { DeskWorkerData } from './desk-messages.ts';

export interface DeskStart {
  /** The built desk-worker.js. */
  readonly workerFile: string;
  readonly host: 'electron' | 'loopback';
  readonly dataFolder: string;
  readonly sample: string | null;
  /** The host's own printer; without it the thread looks for a Chromium itself. */
  readonly printPdf?: PrintPdf;
  /** The window asks that the program end. */
  readonly onQuit: () => void;
}

/** Room for short-lived rows of a file; with V8's own choice an import of 16 MB takes 100 MB more, and no less time. */
const YOUNG_MEMORY_MB = 48;

export function startDesk({ workerFile, printPdf, onQuit, ...start }: DeskStart): DeskLink {
  const { port1: stops, port2 } = new MessageChannel();
  const workerData: DeskWorkerData = { ...start, stops: port2 };
  const worker = new Worker(workerFile, {
    workerData,
    transferList: [port2],
    resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MEMORY_MB },
  });
  const link = linkDesk({
    port: worker,
    stops,
    onQuit,
    ...(printPdf ? { printPdf } : {}),
    onFailure: (detail) => console.error(detail),
  });
  worker.on('error', (error: unknown) => link.fail(error instanceof Error ? error.message : String(error)));
  worker.on('exit', () => {
    stops.close();
    link.fail('its thread ended');
  });
  return link;
}
