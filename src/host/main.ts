/** Entry of the loopback host for `npm start`. */
import { runHost } from './run-host.ts';

await runHost(process.argv.slice(2));
