/** Entry of `npm run reckon`. */
import { localToday } from './local-today.ts';
import { reckon } from './reckon-command.ts';

process.exitCode = await reckon(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  today: localToday(),
});
