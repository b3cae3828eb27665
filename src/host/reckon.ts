/** Entry of `npm run reckon`. */
import { join } from 'node:path';
import { reckon } from './reckon-command.ts';
import { startReader } from './start-reader.ts';
import { ownTerminal } from './terminal.ts';

const { readEvidence } = startReader(join(import.meta.dirname, 'file-reader.js'));
process.exitCode = await reckon(process.argv.slice(2), ownTerminal(), readEvidence);
