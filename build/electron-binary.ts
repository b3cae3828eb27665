/** Whether Electron's program is on this machine. Its npm package comes without it and fetches it when asked. */
import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

type Env = Readonly<Record<string, string | undefined>>;

/** Path of the program, or null. The package writes its name to path.txt once it has fetched it. */
export function findElectron(root: string, env: Env = process.env): string | null {
  const folder = join(root, 'node_modules/electron');
  const named = join(folder, 'path.txt');
  if (!existsSync(named)) return null;
  const path = join(env.ELECTRON_OVERRIDE_DIST_PATH || join(folder, 'dist'), readFileSync(named, 'utf8').trim());
  return existsSync(path) ? path : null;
}

/** Lets the package fetch its program, once and not for long. Answers null when it worked, else the reason in a few words. */
export function fetchElectron(root: string, timeOutMs = 60_000): Promise<string | null> {
  const script = join(root, 'node_modules/electron/install.js');
  if (!existsSync(script)) return Promise.resolve('its package is not installed');
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [script], { stdio: ['ignore', 'ignore', 'pipe'], timeout: timeOutMs });
    let complaint = '';
    child.stderr.on('data', (chunk: Buffer) => {
      complaint += chunk.toString();
    });
    child.once('error', (error) => resolve(error.message));
    child.once('close', (code, signal) => {
      if (code === 0 && findElectron(root)) return resolve(null);
      if (signal) return resolve(`no answer within ${Math.round(timeOutMs / 1000)} s`);
      const first = complaint.split('\n').find((line) => /error|fail/i.test(line)) ?? complaint.split('\n')[0];
      resolve(first?.trim().slice(0, 120) || `code ${code}`);
    });
  });
}
