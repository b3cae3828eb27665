/** Desk and link joined by a channel within this thread: the same messages as between threads, without a thread. */
import { MessageChannel } from 'node:worker_threads';
import type { Desk, PrintPdf } from '../../../src/desk/desk.ts';
import { type DeskLink, linkDesk } from '../../../src/host/desk-link.ts';
import type { FromDesk, Port } from '../../../src/host/desk-messages.ts';
import { type AskedPrinter, serveDesk } from '../../../src/host/serve-desk.ts';

interface LinkHere {
  readonly desk: Desk;
  readonly close: () => void;
  readonly printer?: (port: Port) => AskedPrinter;
  readonly printPdf?: PrintPdf;
  readonly onFailure?: (detail: string) => void;
}

export function linkHere({ desk, close, printer, printPdf, onFailure }: LinkHere): DeskLink {
  const calls = new MessageChannel();
  const stops = new MessageChannel();
  const link = linkDesk({
    port: calls.port1,
    stops: stops.port1,
    ...(printPdf ? { printPdf } : {}),
    ...(onFailure ? { onFailure } : {}),
  });
  serveDesk({
    port: calls.port2,
    stops: stops.port2,
    desk,
    printer: printer?.(calls.port2) ?? null,
    close: async () => close(),
  });
  for (const kind of ['ready', 'opened'] as const) calls.port2.postMessage({ kind } satisfies FromDesk);
  return link;
}
