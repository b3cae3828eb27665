/**
 * Electron's program on this machine. Its npm package comes without it; this fetches it as the package's own installer
 * would, but shows how far it is and goes on where the last try was broken off.
 */
import { createHash } from 'node:crypto';
import {
  createReadStream,
  createWriteStream,
  existsSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { ReadableStream as WebStream } from 'node:stream/web';

type Env = Readonly<Record<string, string | undefined>>;

/** Path of the program, or null. The package writes its name to path.txt once it has fetched it. */
export function findElectron(root: string, env: Env = process.env): string | null {
  const folder = join(root, 'node_modules/electron');
  const named = join(folder, 'path.txt');
  if (!existsSync(named)) return null;
  const path = join(env.ELECTRON_OVERRIDE_DIST_PATH || join(folder, 'dist'), readFileSync(named, 'utf8').trim());
  return existsSync(path) ? path : null;
}

const PROGRAM_PATHS: { readonly [platform in NodeJS.Platform]?: string } = {
  darwin: 'Electron.app/Contents/MacOS/Electron',
  linux: 'electron',
  win32: 'electron.exe',
};

export interface FetchOptions {
  readonly env?: Env;
  /** Hears how many bytes of how many are here; the whole is 0 where the server does not say. */
  readonly onProgress?: (bytes: number, whole: number) => void;
  /** A line that brings nothing for so long is given up. */
  readonly silenceMs?: number;
}

/** Where the archive lies: Electron's releases, or a mirror by the variables that Electron's own installer knows. */
export function archiveUrl(version: string, name: string, env: Env): string {
  const mirror = env.ELECTRON_MIRROR || 'https://github.com/electron/electron/releases/download/';
  const folder = (env.ELECTRON_CUSTOM_DIR || 'v{{ version }}').replace(/\{\{ ?version ?\}\}/, version);
  return `${mirror}${mirror.endsWith('/') ? '' : '/'}${folder}/${name}`;
}

async function hashOf(path: string): Promise<string> {
  const hash = createHash('sha256');
  await pipeline(createReadStream(path), hash);
  return hash.digest('hex');
}

/** Fetches into `part`, from where it ends. Throws when the line breaks; what came stays for the next time. */
async function fetchRest(url: string, part: string, { onProgress, silenceMs = 30_000 }: FetchOptions): Promise<void> {
  const have = existsSync(part) ? statSync(part).size : 0;
  const silence = new AbortController();
  const giveUp = () => silence.abort(new Error(`nothing came for ${Math.round(silenceMs / 1000)} s`));
  let timer = setTimeout(giveUp, silenceMs);
  try {
    const headers = have > 0 ? { Range: `bytes=${have}-` } : undefined;
    const response = await fetch(url, { signal: silence.signal, ...(headers ? { headers } : {}) });
    // Nothing is left to fetch: the last try was broken off between the last byte and the check.
    if (response.status === 416) return;
    if (!response.ok || !response.body) throw new Error(`${new URL(url).host} answers ${response.status}`);
    const goesOn = response.status === 206;
    let bytes = goesOn ? have : 0;
    const whole = bytes + Number(response.headers.get('content-length') ?? -bytes);
    const counted = Readable.fromWeb(response.body as unknown as WebStream).on('data', (chunk: Buffer) => {
      clearTimeout(timer);
      timer = setTimeout(giveUp, silenceMs);
      bytes += chunk.length;
      onProgress?.(bytes, whole);
    });
    await pipeline(counted, createWriteStream(part, { flags: goesOn ? 'a' : 'w' }), { signal: silence.signal });
  } catch (error) {
    // The reason for giving up says more than that it was given up.
    throw silence.signal.aborted ? silence.signal.reason : error;
  } finally {
    clearTimeout(timer);
  }
}

const reasonOf = (error: unknown): string => {
  const { message, cause } = error as Error & { cause?: { code?: string } };
  return cause?.code === undefined ? message : `${message}, ${cause.code}`;
};

/** Fetches, checks and unpacks the program. Answers null when it worked, else the reason in a few words. */
export async function fetchElectron(root: string, options: FetchOptions = {}): Promise<string | null> {
  const folder = join(root, 'node_modules/electron');
  const program = PROGRAM_PATHS[process.platform];
  if (!existsSync(join(folder, 'package.json'))) return 'its package is not installed';
  if (program === undefined) return `there is none for ${process.platform}`;
  const read = (name: string) => JSON.parse(readFileSync(join(folder, name), 'utf8')) as Record<string, string>;
  const { version } = read('package.json');
  const name = `electron-v${version}-${process.platform}-${process.arch}.zip`;
  const expected = read('checksums.json')[name];
  if (version === undefined || expected === undefined) return `there is none for ${process.platform} ${process.arch}`;
  const cache = join(root, 'node_modules/.cache/plainwarmth-electron');
  const [part, archive] = [join(cache, `${name}.part`), join(cache, name)];
  try {
    mkdirSync(cache, { recursive: true });
    if (!existsSync(archive)) {
      await fetchRest(archiveUrl(version, name, options.env ?? process.env), part, options);
      const found = await hashOf(part);
      if (found !== expected) {
        rmSync(part);
        return 'what came is not the archive that its package expects, and was thrown away';
      }
      renameSync(part, archive);
    }
    // The package's own unpacker: it knows the links inside the archive for macOS.
    const { extract } = createRequire(join(folder, 'install.js'))('@electron-internal/extract-zip') as {
      extract: (archive: string, options: { dir: string }) => Promise<void>;
    };
    await extract(archive, { dir: join(folder, 'dist') });
    writeFileSync(join(folder, 'path.txt'), program);
    rmSync(archive);
    return null;
  } catch (error) {
    return reasonOf(error);
  }
}
