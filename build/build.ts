/**
 * Builds what the hosts need into build/out, when the sources are newer than the last build.
 * `node build/build.ts` says what it does; `buildIfNeeded()` is what the start scripts call.
 */
import { existsSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const stamp = join(root, 'build/out/built');

function newestChange(folder: string): number {
  let newest = 0;
  for (const entry of readdirSync(join(root, folder), { withFileTypes: true, recursive: true })) {
    if (!entry.isFile() || entry.parentPath.includes(join('build', 'out'))) continue;
    newest = Math.max(newest, statSync(join(entry.parentPath, entry.name)).mtimeMs);
  }
  return newest;
}

function isCurrent(): boolean {
  if (!existsSync(stamp)) return false;
  const built = statSync(stamp).mtimeMs;
  const sources = ['src', 'electron', 'build', 'tests/bench'].filter((folder) => existsSync(join(root, folder)));
  const lock = statSync(join(root, 'package-lock.json')).mtimeMs;
  return built > Math.max(lock, ...sources.map(newestChange));
}

/** Builds window, host, command line and preload unless they are up to date. Answers whether it built. */
export async function buildIfNeeded(): Promise<boolean> {
  if (isCurrent()) return false;
  // Vite is loaded only when something is to be built: a second start must be quick.
  const { build } = await import('vite');
  rmSync(join(root, 'build/out'), { recursive: true, force: true });
  for (const name of ['web', 'node', 'preload']) {
    await build({ configFile: join(root, `build/vite.${name}.config.ts`), logLevel: 'warn' });
  }
  writeFileSync(stamp, '');
  return true;
}

if (import.meta.main) {
  const begun = performance.now();
  const built = await buildIfNeeded();
  const seconds = ((performance.now() - begun) / 1000).toFixed(1);
  console.log(built ? `Built into build/out in ${seconds} s.` : 'build/out is up to date.');
}
