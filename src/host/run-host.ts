/** The loopback host from its start to its end: options, desk, server, window, and a clean close. */
import { enableCompileCache } from 'node:module';
import { join } from 'node:path';
import type { DeskRefusal } from '../desk/desk-error.ts';
import { cacheFolder, defaultDataFolder } from './data-folder.ts';
import { keepLog } from './keep-log.ts';
import { type HostOptions, readOptions, USAGE } from './options.ts';
import { STAY_MS, watchPresence } from './presence.ts';
import { refusalOf } from './refuse-later.ts';
import { forgetRunning, isOtherVersionRunning, noteRunning, pageOfRunning, quitRunning } from './running.ts';
import { startDesk } from './start-desk.ts';

/** Two starts at once: the second waits so long for the first to answer. */
const STARTING_MS = 10_000;

/** Only an address that is good for one page goes on a command line. */
async function show(address: string, { window, browser }: HostOptions): Promise<void> {
  const { openBrowser, openOwnWindow } = await import('./open-browser.ts');
  const shown =
    (window && !browser && (await openOwnWindow(address, cacheFolder('window')))) || (await openBrowser(address));
  if (!shown) console.error('No browser could be opened from here; open the address yourself.');
}

/** Shows a page of the host that has this data already. Answers whether there is one. */
async function joinRunning(dataFolder: string, options: HostOptions, patienceMs = 0): Promise<boolean> {
  const page = await pageOfRunning(dataFolder, patienceMs);
  if (page === undefined) return false;
  console.log(`Plainwarmth is running already on the data in ${dataFolder}.`);
  if (options.open) await show(page, options);
  else console.log(`This address opens one page of it within a minute: ${page}`);
  return true;
}

/** What Node makes of the program's code serves the next start too. Threads hear of the place by the environment. */
function keepCompiled(): void {
  process.env.NODE_COMPILE_CACHE ??= cacheFolder('compiled');
  enableCompileCache(process.env.NODE_COMPILE_CACHE);
}

async function run(options: HostOptions, dataFolder: string): Promise<void> {
  // After an update the old one may still be there, whose pages would be of the new one.
  if (isOtherVersionRunning(dataFolder)) await quitRunning(dataFolder);
  if (await joinRunning(dataFolder, options)) return;
  keepCompiled();
  let ending = false;
  // Whoever opens the address by hand also ends the host by hand.
  const presence = watchPresence(options.open ? STAY_MS : null, () => void end());
  const desk = startDesk({
    workerFile: join(import.meta.dirname, 'desk-worker.js'),
    host: 'loopback',
    dataFolder,
    sample: options.sample,
    onQuit: () => void end(),
  });
  // The thread opens the store meanwhile, and nobody hears of the address before it is ours.
  const { startLoopback } = await import('./server.ts');
  const listening = startLoopback({
    desk,
    webFolder: join(import.meta.dirname, '../web'),
    port: options.port,
    presence,
  });
  listening.catch(() => undefined);
  const failure = await desk.ready.then(() => undefined, refusalOf);
  if (failure?.code === 'store-in-use' && (await joinRunning(dataFolder, options, STARTING_MS))) process.exit(0);
  const tellFailure = ({ message, remedy, code }: DeskRefusal) => {
    console.error([message, remedy].filter(Boolean).join('\n'));
    // Without a terminal the window says it: every call of its page is answered with this refusal.
    if (!options.window) process.exit(code === 'own-failure' ? 1 : 2);
  };
  if (failure) tellFailure(failure);
  else void desk.opened.catch((error: unknown) => refusalOf(error).then(tellFailure));
  const host = await listening;
  if (!failure) noteRunning(dataFolder, host);

  async function end(): Promise<void> {
    if (ending) return;
    ending = true;
    await host.close();
    await desk.close();
    if (!failure) forgetRunning(dataFolder);
    process.exit(failure ? 2 : 0);
  }
  let signals = 0;
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
    process.on(signal, () => {
      signals += 1;
      // Ctrl-C a second time means at once.
      if (signals > 1) process.exit(130);
      void end();
    });
  }

  if (options.window) console.log(`Plainwarmth began on the data in ${dataFolder}, port ${host.port}.`);
  else {
    console.log(`Plainwarmth is at ${host.address}`);
    console.log(`Its data lies in ${dataFolder}. Ctrl-C ends it.`);
  }
  if (options.open) await show(host.makePageAddress(), options);
}

export async function runHost(args: readonly string[]): Promise<void> {
  try {
    const options = readOptions(args);
    if (options.help) {
      console.log(USAGE);
      return;
    }
    const dataFolder = options.dataFolder ?? defaultDataFolder();
    if (options.window) keepLog(dataFolder);
    await run(options, dataFolder);
  } catch (error) {
    const { message, remedy, code } = await refusalOf(error);
    console.error([message, remedy].filter(Boolean).join('\n'));
    process.exit(code === 'own-failure' ? 1 : 2);
  }
}
