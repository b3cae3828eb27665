/** Options of the loopback host on the command line. */
import { parseArgs } from 'node:util';
import { DeskError } from '../desk/desk-error.ts';
import { fromHere } from './data-folder.ts';

export interface HostOptions {
  /** 0 takes any free port. */
  readonly port: number;
  readonly open: boolean;
  /** null takes the system's usual place. */
  readonly dataFolder: string | null;
  readonly browser: boolean;
  /** As an installed program: a window of its own, messages in it and in a log. */
  readonly window: boolean;
  readonly sample: string | null;
  readonly help: boolean;
}

export const USAGE = `plainwarmth [options]       (in the project's folder: npm start -- [options])
  --browser     use the default browser instead of a window of its own
  --port N      port of the loopback host, from 1024 to 65535 (default: any free one)
  --no-open     print the address and open no browser
  --data DIR    folder of the data (default: the system's usual place)
  --help        this text
The installed program also knows:
  plainwarmth reckon FILE …   reckon without a window; plainwarmth reckon --help says more
  plainwarmth backup TASK …   save, look into or restore a copy, or check what is kept
  plainwarmth quit            end the running Plainwarmth once its work is done`;

const refuse = (message: string, remedy: string) =>
  new DeskError({ code: 'bad-option', message, where: 'the command line', remedy });

function parse(args: readonly string[]) {
  return parseArgs({
    args: [...args],
    options: {
      port: { type: 'string' },
      'no-open': { type: 'boolean' },
      data: { type: 'string' },
      browser: { type: 'boolean' },
      window: { type: 'boolean' },
      sample: { type: 'string' },
      help: { type: 'boolean' },
    },
  }).values;
}

export function readOptions(args: readonly string[]): HostOptions {
  let values: ReturnType<typeof parse>;
  try {
    values = parse(args);
  } catch (error) {
    throw refuse(`${(error as Error).message}`, USAGE);
  }
  const port = values.port === undefined ? 0 : Number(values.port);
  if (!Number.isInteger(port) || (port !== 0 && port < 1024) || port > 65_535) {
    throw refuse(`--port ${values.port} is not a port from 1024 to 65535.`, 'Leave it out for any free port.');
  }
  return {
    port,
    open: !values['no-open'],
    dataFolder: values.data === undefined ? null : fromHere(values.data),
    browser: values.browser ?? false,
    window: values.window ?? false,
    sample: values.sample === undefined ? null : fromHere(values.sample),
    help: values.help ?? false,
  };
}
