/** Where the data lies unless --data says otherwise: the place that each system has for it. */
import { homedir } from 'node:os';
import { posix, resolve, win32 } from 'node:path';

export const DATABASE_NAME = 'plainwarmth.sqlite';

interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly home: string;
}

const here = (): Surroundings => ({ platform: process.platform, env: process.env, home: homedir() });

export function defaultDataFolder({ platform, env, home }: Surroundings = here()): string {
  if (platform === 'win32') return win32.join(env.APPDATA || win32.join(home, 'AppData', 'Roaming'), 'Plainwarmth');
  if (platform === 'darwin') return posix.join(home, 'Library', 'Application Support', 'Plainwarmth');
  // The XDG base directory specification: a relative path there counts as not set.
  const xdg = env.XDG_DATA_HOME;
  return posix.join(xdg && posix.isAbsolute(xdg) ? xdg : posix.join(home, '.local', 'share'), 'plainwarmth');
}

/** Where the browser of the window keeps its own things, Node the compiled program, and the log lies for want of a better place: no backup and no roaming profile carries it along. */
export function cacheFolder(
  what: 'window' | 'compiled' | 'log',
  { platform, env, home }: Surroundings = here(),
): string {
  if (platform === 'win32') {
    return win32.join(env.LOCALAPPDATA || win32.join(home, 'AppData', 'Local'), 'Plainwarmth', what);
  }
  if (platform === 'darwin') return posix.join(home, 'Library', 'Caches', 'Plainwarmth', what);
  const xdg = env.XDG_CACHE_HOME;
  return posix.join(xdg && posix.isAbsolute(xdg) ? xdg : posix.join(home, '.cache'), 'plainwarmth', what);
}

/** Where a path of the command line leads: npm starts scripts in the project's folder and says here where the person stood. */
export const fromHere = (path: string): string => resolve(process.env.INIT_CWD ?? '.', path);
