/** Entry of the desk's thread: opens the store, puts an invented household into a new one, serves calls. */
import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { parentPort, workerData } from 'node:worker_threads';
import { createDesk } from '../desk/desk.ts';
import { loadSample } from '../desk/load-sample.ts';
import { toRefusal } from '../desk/refusal.ts';
import { readSettings, speakAsSet } from '../desk/settings.ts';
import { openSqliteStore, type SqliteStore } from '../store/sqlite-store.ts';
import { say } from '../words/say.ts';
import { DATABASE_NAME } from './data-folder.ts';
import type { DeskWorkerData, FromDesk } from './desk-messages.ts';
import { createGiveBack } from './give-back.ts';
import { localToday } from './local-today.ts';
import { describeOpening } from './opening-notice.ts';
import { printWithChromium } from './print-pdf.ts';
import { askToPrint, serveDesk } from './serve-desk.ts';

const port = parentPort!;
const { host, dataFolder, sample, stops } = workerData as DeskWorkerData;
const clock = { today: localToday, now: () => new Date().toISOString(), newId: () => randomUUID() };

/** The household is a kindness to a newcomer; where it cannot be read, the store opens empty and says why. */
function putSample(store: SqliteStore): string | undefined {
  if (sample === null || !store.opening.created || store.opening.setAside !== null) return undefined;
  try {
    loadSample(sample, { store, ...clock });
    return undefined;
  } catch (error) {
    return say('The invented household could not be put in: {reason}', { reason: toRefusal(error).message });
  }
}

try {
  const store = openSqliteStore(join(dataFolder, DATABASE_NAME));
  await speakAsSet(readSettings(store));
  const sampleNotice = putSample(store);
  const notice = [describeOpening(store.opening), sampleNotice].filter((part) => part !== undefined).join(' ');
  const printer = host === 'electron' ? askToPrint(port) : null;
  const desk = createDesk({
    store,
    ...clock,
    printPdf: printer?.printPdf ?? printWithChromium,
    host,
    dataFolder,
    notice: notice || undefined,
    // After the answer, so that the window hears that it will be done.
    quit: () => void setImmediate(() => port.postMessage({ kind: 'quit' } satisfies FromDesk)),
  });
  serveDesk({
    port,
    stops,
    desk,
    printer,
    giveBack: createGiveBack(),
    close() {
      store.close();
      port.close();
    },
  });
} catch (error) {
  port.postMessage({ kind: 'failed', refusal: toRefusal(error) } satisfies FromDesk);
  stops.close();
  port.close();
}
