/** Entry of the loopback host: options, desk, server, browser, and a clean end. */
import { join } from 'node:path';
import { toRefusal } from '../desk/refusal.ts';
import { defaultDataFolder } from './data-folder.ts';
import { openBrowser } from './open-browser.ts';
import { readOptions, USAGE } from './options.ts';
import { startLoopback } from './server.ts';
import { startDesk } from './start-desk.ts';

async function main(args: readonly string[]): Promise<void> {
  const options = readOptions(args);
  if (options.help) {
    console.log(USAGE);
    return;
  }
  const dataFolder = options.dataFolder ?? defaultDataFolder();
  const desk = startDesk({
    workerFile: join(import.meta.dirname, 'desk-worker.js'),
    host: 'loopback',
    dataFolder,
    sample: options.sample,
  });
  await desk.ready;
  const host = await startLoopback({ desk, webFolder: join(import.meta.dirname, '../web'), port: options.port });
  console.log(`Plainwarmth is at ${host.address}`);
  console.log(`Its data lies in ${dataFolder}. Ctrl-C ends it.`);
  if (options.open && !(await openBrowser(host.address))) {
    console.log('No browser could be opened from here; open the address yourself.');
  }

  let ending = false;
  async function end(): Promise<void> {
    if (ending) return;
    ending = true;
    await host.close();
    await desk.close();
    process.exit(0);
  }
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => void end());
}

try {
  await main(process.argv.slice(2));
} catch (error) {
  const { message, remedy } = toRefusal(error);
  console.error([message, remedy].filter(Boolean).join('\n'));
  process.exit(toRefusal(error).code === 'own-failure' ? 1 : 2);
}
