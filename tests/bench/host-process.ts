/** The built loopback host as a process of its own, for what can only be measured from outside. */
import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Call } from '../../src/desk/contract.ts';
import { callOverHttp } from '../../src/screens/desk-http.ts';

export interface HostProcess {
  readonly call: Call;
  /** Memory held now and at most so far [MB]; undefined where the system does not say. */
  memory(): { readonly now: number; readonly most: number } | undefined;
  end(): Promise<void>;
}

/** Where the built host lies, seen from the built benchmark or from its source. */
function builtHost(): string | undefined {
  const places = ['main.js', '../../build/out/node/main.js'].map((place) => join(import.meta.dirname, place));
  return places.find((place) => existsSync(place));
}

/** Starts the host on a data folder; undefined when it has not been built. */
export async function startHost(dataFolder: string): Promise<HostProcess | undefined> {
  const script = builtHost();
  if (script === undefined) return undefined;
  const child = spawn(process.execPath, [script, '--no-open', '--data', dataFolder], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const address = await addressOf(child);
  const [base, token] = address.split('/#token=') as [string, string];
  return {
    call: callOverHttp({ base, token }),
    memory: () => memoryOf(child.pid!),
    end() {
      const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
      child.kill('SIGINT');
      return ended;
    },
  };
}

function addressOf(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    child.stdout!.on('data', (chunk: Buffer) => {
      said += chunk.toString();
      const found = /http:\S+/.exec(said)?.[0];
      if (found) resolve(found);
    });
    child.once('exit', (code) => reject(new Error(`the host ended with code ${code}`)));
  });
}

function memoryOf(pid: number): { now: number; most: number } | undefined {
  const path = `/proc/${pid}/status`;
  if (!existsSync(path)) return undefined;
  const status = readFileSync(path, 'utf8');
  const megabytes = (name: string) => Number(new RegExp(`${name}:\\s+(\\d+) kB`).exec(status)?.[1]) / 1024;
  return { now: megabytes('VmRSS'), most: megabytes('VmHWM') };
}
