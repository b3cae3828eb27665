/** Entry of the installed program: the window, or with a word first what the command line does. */
import { join } from 'node:path';
import { defaultDataFolder } from './data-folder.ts';
import { readOptions } from './options.ts';
import { runHost } from './run-host.ts';
import { quitRunning } from './running.ts';

const [command, ...rest] = process.argv.slice(2);

if (command === 'reckon' || command === 'backup') {
  process.argv.splice(2, 1);
  await (command === 'reckon' ? import('./reckon.ts') : import('./backup.ts'));
} else if (command === 'quit') {
  const ended = await quitRunning(readOptions(rest).dataFolder ?? defaultDataFolder());
  console.log(ended ? 'Plainwarmth has ended.' : 'No Plainwarmth is running.');
} else {
  const sample = join(import.meta.dirname, '../sample-bills/larch-rise');
  await runHost(['--window', '--sample', sample, ...process.argv.slice(2)]);
}
