/** Finds a Chromium that can print: the one named, an installed one, or the headless one that npm brings. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';

export interface Chromium {
  readonly path: string;
  /** Unpacked by us from npm: it has no helper for the sandbox beside it. */
  readonly bundled: boolean;
}

const LINUX_NAMES = [
  'google-chrome-stable',
  'google-chrome',
  'chromium',
  'chromium-browser',
  'microsoft-edge-stable',
  'microsoft-edge',
  'brave-browser',
];
const MAC_APPS = ['Google Chrome', 'Chromium', 'Microsoft Edge', 'Brave Browser'];
const WINDOWS_PATHS = [
  'Google\\Chrome\\Application\\chrome.exe',
  'Microsoft\\Edge\\Application\\msedge.exe',
  'Chromium\\Application\\chrome.exe',
  'BraveSoftware\\Brave-Browser\\Application\\brave.exe',
];

/** Nothing asked, nothing fetched, nothing sent by the browser itself. */
export const QUIET_FLAGS = [
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-default-apps',
  '--disable-domain-reliability',
  '--disable-extensions',
  '--disable-sync',
  '--disable-breakpad',
  '--no-first-run',
  '--no-default-browser-check',
  '--no-pings',
];

type Env = Readonly<Record<string, string | undefined>>;

/** Places where a Chromium usually is, the likeliest first. */
export function usualPlaces(platform: NodeJS.Platform, env: Env): string[] {
  if (platform === 'darwin') {
    return MAC_APPS.flatMap((app) =>
      ['/Applications', join(env.HOME ?? '', 'Applications')].map(
        (folder) => `${folder}/${app}.app/Contents/MacOS/${app}`,
      ),
    );
  }
  if (platform === 'win32') {
    const roots = [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].filter((root) => root !== undefined);
    return WINDOWS_PATHS.flatMap((path) => roots.map((root) => `${root}\\${path}`));
  }
  const folders = (env.PATH ?? '').split(':').filter(Boolean);
  return [...LINUX_NAMES.flatMap((name) => folders.map((folder) => `${folder}/${name}`)), '/snap/bin/chromium'];
}

async function bundledPath(): Promise<string | null> {
  if (process.platform !== 'linux' || process.arch !== 'x64') return null;
  try {
    const { default: chromium } = await import('@sparticuz/chromium');
    return await chromium.executablePath();
  } catch {
    return null;
  }
}

/** The one that PLAINWARMTH_CHROMIUM names, or an installed one. */
export function findInstalled(env: Env = process.env): string | null {
  const named = env.PLAINWARMTH_CHROMIUM;
  if (named !== undefined && named !== '') return existsSync(named) ? named : null;
  return usualPlaces(process.platform, env).find((path) => existsSync(path)) ?? null;
}

export async function findChromium(env: Env = process.env): Promise<Chromium | null> {
  const installed = findInstalled(env);
  if (installed !== null) return { path: installed, bundled: false };
  if (env.PLAINWARMTH_CHROMIUM) return null;
  const bundled = await bundledPath();
  return bundled === null ? null : { path: bundled, bundled: true };
}
