/** Entry of `npm run backup`. */
import { backup } from './backup-command.ts';
import { ownTerminal } from './terminal.ts';

process.exitCode = await backup(process.argv.slice(2), ownTerminal());
