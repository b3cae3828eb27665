/** Entry of `npm run reckon`. */
import { join } from 'node:path';
import { localToday } from './local-today.ts';
import { reckon } from './reckon-command.ts';
import { startReader } from './start-reader.ts';

process.exitCode = await reckon(
  process.argv.slice(2),
  {
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
    today: localToday(),
  },
  startReader(join(import.meta.dirname, 'file-reader.js')),
);
