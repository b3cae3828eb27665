/**
 * Entry of the desk's thread. The store is opened first and the host told, so that the window opens meanwhile; only
 * then is the rest of the desk loaded. Calls that come before wait in the port.
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
    return openSqliteStore(join(data.dataFolder, DATABASE_NAME));
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
  port.postMessage({ kind: 'ready' } satisfies FromDesk);
  const { serveStore } = await import('./serve-store.ts');
  await serveStore(store, port, data, join(import.meta.dirname, 'file-reader.js'));
}
