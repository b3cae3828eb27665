/** Opens the default browser, where there is a display to open it on. */
import { spawn } from 'node:child_process';

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

/** Answers whether something took the address. */
export function openBrowser(address: string): Promise<boolean> {
  if (!hasDisplay()) return Promise.resolve(false);
  const { command, args } = openerOf(process.platform, address);
  return new Promise((resolve) => {
    const child = spawn(command, args, { stdio: 'ignore', detached: true });
    child.once('error', () => resolve(false));
    child.once('spawn', () => {
      child.unref();
      resolve(true);
    });
  });
}
