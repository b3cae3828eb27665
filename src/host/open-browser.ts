/** Opens the application in a window of its own or in the default browser, where there is a display for it. */
import { spawn } from 'node:child_process';
import { setTimeout as wait } from 'node:timers/promises';
import { findInstalled, QUIET_FLAGS } from './find-chromium.ts';

interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly env: Readonly<Record<string, string | undefined>>;
}

export function hasDisplay({ platform, env }: Surroundings = process): boolean {
  if (platform === 'win32') return true;
  if (platform === 'darwin') return env.SSH_CONNECTION === undefined;
  return Boolean(env.DISPLAY || env.WAYLAND_DISPLAY);
}

/** The system's own way to open an address. */
export function openerOf(platform: NodeJS.Platform, address: string): { command: string; args: string[] } {
  if (platform === 'win32') return { command: 'rundll32', args: ['url.dll,FileProtocolHandler', address] };
  return { command: platform === 'darwin' ? 'open' : 'xdg-open', args: [address] };
}

/** A browser that cannot start, such as one that may not write its profile, ends within this time. */
const ENDS_EARLY_MS = 3000;

/** Answers whether it started and did not end at once with a fault. */
async function start(command: string, args: readonly string[]): Promise<boolean> {
  const child = spawn(command, args, { stdio: 'ignore', detached: true });
  const ended = new Promise<boolean>((resolve) => {
    child.once('error', () => resolve(false));
    child.once('exit', (code) => resolve(code === 0));
  });
  child.unref();
  return Promise.race([ended, wait(ENDS_EARLY_MS, true, { ref: true })]);
}

/** What makes a Chromium show one page as a program: no tabs, no address, no extension, nothing fetched by itself. */
function windowFlags(address: string, profile: string): string[] {
  return [`--app=${address}`, `--user-data-dir=${profile}`, '--class=plainwarmth', ...QUIET_FLAGS];
}

/** The default browser. Answers whether something took the address. */
export async function openBrowser(address: string): Promise<boolean> {
  if (!hasDisplay()) return false;
  const { command, args } = openerOf(process.platform, address);
  return start(command, args);
}

/** A window of its own by an installed Edge, Chrome or Chromium. Answers whether one opened. */
export async function openOwnWindow(address: string, profile: string): Promise<boolean> {
  const chromium = hasDisplay() ? findInstalled() : null;
  return chromium !== null && start(chromium, windowFlags(address, profile));
}
