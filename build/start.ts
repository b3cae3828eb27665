/**
 * `npm start`: builds when needed, then opens the desktop window, or the same application in the browser
 * where Electron's program is absent and cannot be fetched.
 */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { hasDisplay } from '../src/host/open-browser.ts';
import { fetchElectron, findElectron } from './electron-binary.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const SAMPLE = join(root, 'sample-bills/larch-rise');
/** A window that ends so soon with a fault never opened. */
const NEVER_OPENED_MS = 10_000;

function refuseOldNode(): void {
  if (Number(process.versions.node.split('.')[0]) >= 22) return;
  console.error(
    `This is Node ${process.versions.node}; Plainwarmth's scripts need 22 or newer, which npm ci brings.\n` +
      'Run npm ci, then npm start, so that npm takes the Node of the project.',
  );
  process.exit(2);
}

/** Path of Electron's program, or null after a line that says why the browser is used. */
async function electronOrReason(args: readonly string[]): Promise<string | null> {
  if (args.includes('--browser') || args.includes('--no-open') || args.includes('--port')) return null;
  if (!hasDisplay()) return null;
  const known = findElectron(root);
  if (known) return known;
  const reason = await fetchElectron(root);
  if (reason === null) return findElectron(root);
  console.log(
    `The desktop window needs Electron's program, which could not be fetched (${reason}); using the browser.`,
  );
  return null;
}

/** Answers whether the window opened; when it ends after a while, so does this process. */
function openWindow(electron: string, args: readonly string[]): Promise<boolean> {
  const begun = Date.now();
  const child = spawn(electron, [root, ...args], { stdio: 'inherit' });
  return new Promise((resolve) => {
    child.once('error', () => resolve(false));
    child.once('exit', (code) => {
      if (code !== 0 && Date.now() - begun < NEVER_OPENED_MS) return resolve(false);
      process.exit(code ?? 0);
    });
  });
}

refuseOldNode();
const args = process.argv.slice(2);
// Loaded only now, so that an old Node gets the sentence above and not a fault from deep inside.
const { buildIfNeeded } = await import('./build.ts');
const begun = performance.now();
if (await buildIfNeeded()) console.log(`Built in ${((performance.now() - begun) / 1000).toFixed(0)} s.`);
const withSample = args.includes('--sample') ? args : [...args, '--sample', SAMPLE];
const electron = args.includes('--help') ? null : await electronOrReason(args);
if (electron && !(await openWindow(electron, withSample))) {
  console.log("Electron's window could not be opened here; using the browser.");
}
process.argv = [process.argv[0]!, process.argv[1]!, ...withSample];
await import(pathToFileURL(join(root, 'build/out/node/main.js')).href);
