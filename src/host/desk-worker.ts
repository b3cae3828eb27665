/**
 * Entry of the desk's thread. The host is told as soon as the store is ours, so that the window opens while it is looked
 * through and the rest of the desk is loaded. Calls that come before wait.
 */
import { join } from 'node:path';
import { parentPort, workerData } from 'node:worker_threads';
import { openSqliteStore, type SqliteStore } from '../store/sqlite-store.ts';
import { DATABASE_NAME } from './data-folder.ts';
import type { DeskWorkerData, FromDesk } from './desk-messages.ts';

const port = parentPort!;
const data = workerData as DeskWorkerData;

async function open(): Promise<SqliteStore | null> {
  try {
    return openSqliteStore(join(data.dataFolder, DATABASE_NAME), {
      onHeld: () => port.postMessage({ kind: 'ready' } satisfies FromDesk),
    });
  } catch (error) {
    const { toRefusal } = await import('../desk/refusal.ts');
    port.postMessage({ kind: 'failed', refusal: toRefusal(error) } satisfies FromDesk);
    data.stops.close();
    port.close();
    return null;
  }
}

const store = await open();
if (store) {
  port.postMessage({ kind: 'opened' } satisfies FromDesk);
  const { serveStore } = await import('./serve-store.ts');
  await serveStore(store, port, data, join(import.meta.dirname, 'file-reader.js'));
}
