/** What goes between a host and the thread that the desk works in. */
import type { MessagePort, Worker } from 'node:worker_threads';
import type { DeskRefusal } from '../desk/desk-error.ts';

export interface DeskWorkerData {
  readonly host: 'electron' | 'loopback';
  readonly dataFolder: string;
  /** Folder of an invented household to put into a store that has just been made; null for none. */
  readonly sample: string | null;
  /** Carries the numbers of calls to stop; a port of its own, since it is looked at in the middle of long work. */
  readonly stops: MessagePort;
}

export type ToDesk =
  | { readonly kind: 'call'; readonly id: number; readonly name: string; readonly input: unknown }
  | { readonly kind: 'printed'; readonly id: number; readonly pdf: Uint8Array | null; readonly failure?: string }
  | { readonly kind: 'close' };

export type FromDesk =
  /** The store is ours; what lies in it is still looked through. */
  | { readonly kind: 'ready' }
  | { readonly kind: 'opened' }
  | { readonly kind: 'failed'; readonly refusal: DeskRefusal }
  | { readonly kind: 'progress'; readonly id: number; readonly share: number }
  | { readonly kind: 'result'; readonly id: number; readonly result: unknown }
  | { readonly kind: 'refusal'; readonly id: number; readonly refusal: DeskRefusal; readonly detail?: string }
  | { readonly kind: 'print'; readonly id: number; readonly html: string; readonly paper: 'A4' | 'Letter' }
  | { readonly kind: 'quit' }
  | { readonly kind: 'closed' };

/** Either end of the way between them: a worker, its parent's port, or one end of a channel. */
export type Port = MessagePort | Worker;
