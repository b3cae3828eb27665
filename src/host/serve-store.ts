/** The desk in its thread: puts an invented household into a new store, says what the store found, serves calls. */
import { randomUUID } from 'node:crypto';
import type { MessagePort } from 'node:worker_threads';
import { createDesk } from '../desk/desk.ts';
import { readSettings, speakAsSet } from '../desk/settings.ts';
import { VALUES_KEY } from '../desk/values-key.ts';
import type { SqliteStore } from '../store/sqlite-store.ts';
import { say } from '../words/say.ts';
import { cacheFolder } from './data-folder.ts';
import type { DeskWorkerData, FromDesk } from './desk-messages.ts';
import { createGiveBack } from './give-back.ts';
import { localToday } from './local-today.ts';
import { describeOpening } from './opening-notice.ts';
import { refusalOf } from './refuse-later.ts';
import { askToPrint, serveDesk } from './serve-desk.ts';
import type { FileReader } from './start-reader.ts';

const clock = { today: localToday, now: () => new Date().toISOString(), newId: () => randomUUID() };

/** The window comes first. */
const LOAD_REST_MS = 2000;
const FIRST_KEEP_UP_MS = 15_000;
const KEEP_UP_MS = 60 * 60_000;

/** The household is a kindness to a newcomer; where it cannot be read, the store opens empty and says why. */
async function putSample(store: SqliteStore, sample: string | null): Promise<string | undefined> {
  if (sample === null || !store.opening.created || store.opening.incident !== null) return undefined;
  try {
    const { loadSample } = await import('../desk/load-sample.ts');
    await loadSample(sample, { store, ...clock });
    return undefined;
  } catch (error) {
    return say('The invented household could not be put in: {reason}', { reason: (await refusalOf(error)).message });
  }
}

/** What reads files is loaded with the first file. */
function readerOf(readerFile: string): FileReader {
  let reader: Promise<FileReader> | null = null;
  const load = () => {
    reader ??= import('./start-reader.ts').then(({ startReader }) => startReader(readerFile));
    return reader;
  };
  return {
    readEvidence: async (...file) => (await load()).readEvidence(...file),
    readHousehold: async (...file) => (await load()).readHousehold(...file),
  };
}

export async function serveStore(
  store: SqliteStore,
  port: MessagePort,
  { host, dataFolder, sample, stops }: DeskWorkerData,
  readerFile: string,
): Promise<void> {
  await speakAsSet(readSettings(store));
  const sampleNotice = await putSample(store, sample);
  const notice = [describeOpening(store.opening), sampleNotice].filter((part) => part !== undefined).join(' ');
  const printer = host === 'electron' ? askToPrint(port) : null;
  const desk = createDesk({
    store,
    ...clock,
    printPdf: printer?.printPdf ?? (async (html) => (await import('./print-pdf.ts')).printWithChromium(html)),
    ...readerOf(readerFile),
    host,
    dataFolder,
    // Electron has a place of its own for its windows.
    windowFolder: host === 'loopback' ? cacheFolder('window') : undefined,
    valuesKey: VALUES_KEY,
    notice: notice || undefined,
    // After the answer, so that the window hears that it will be done.
    quit: () => void setImmediate(() => port.postMessage({ kind: 'quit' } satisfies FromDesk)),
  });
  let isEnding = false;
  let upkeep: Promise<void> = Promise.resolve();
  const keepUp = () => {
    upkeep = desk.keepUp(() => isEnding).catch((error: unknown) => console.error(error));
  };
  const timers = [
    setTimeout(() => void desk.loadRest(), LOAD_REST_MS),
    setTimeout(keepUp, FIRST_KEEP_UP_MS),
    setInterval(keepUp, KEEP_UP_MS),
  ];
  for (const timer of timers) timer.unref();
  serveDesk({
    port,
    stops,
    desk,
    printer,
    giveBack: createGiveBack(),
    // A copy of the day that is being saved comes to its end first.
    async close() {
      isEnding = true;
      for (const timer of timers) clearTimeout(timer);
      await upkeep;
      store.close();
    },
  });
}
