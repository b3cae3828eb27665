/** Entry of `npm run backup`. */
import { backup } from './backup-command.ts';
import { localToday } from './local-today.ts';

process.exitCode = await backup(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  today: localToday(),
});
