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
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major > 22 || (major === 22 && minor >= 15)) return;
  console.error(
    `This is Node ${process.versions.node}; Plainwarmth's scripts need 22.15 or newer, which npm ci brings.\n` +
      'Run npm ci, then npm start, so that npm takes the Node of the project.',
  );
  process.exit(2);
}

const TOLD_EVERY_MS = 500;
let toldAt = 0;

/** One line that is written over where there is a terminal; elsewhere a line every ten seconds. */
function showProgress(bytes: number, whole: number): void {
  const last = bytes === whole;
  const now = performance.now();
  if (!last && now - toldAt < (process.stdout.isTTY ? TOLD_EVERY_MS : 20 * TOLD_EVERY_MS)) return;
  toldAt = now;
  const [have, of] = [(bytes / 1e6).toFixed(1), (whole / 1e6).toFixed(1)];
  const line = whole > 0 ? `${have} of ${of} MB (${Math.floor((100 * bytes) / whole)} %)` : `${have} MB`;
  process.stdout.write(process.stdout.isTTY ? `\r${line}   ${last ? '\n' : ''}` : `${line}\n`);
}

/** Path of Electron's program, or null after a line that says why the browser is used. */
async function electronOrReason(args: readonly string[]): Promise<string | null> {
  if (args.includes('--browser') || args.includes('--no-open') || args.includes('--port')) return null;
  if (!hasDisplay()) return null;
  const known = findElectron(root);
  if (known) return known;
  console.log(
    "Fetching Electron's program for the desktop window, once. Ctrl-C stops it, and the next start goes on from there;\n" +
      'npm start -- --browser does without it.',
  );
  const reason = await fetchElectron(root, { onProgress: showProgress });
  if (reason === null) return findElectron(root);
  console.log(
    `Electron's program could not be fetched (${reason}). The browser is used this time; the next start tries again.`,
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
