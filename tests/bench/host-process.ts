/** The built loopback host as a process of its own, for what can only be measured from outside. */
import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Call } from '../../src/desk/contract.ts';
import { callOverHttp } from '../../src/screens/desk-http.ts';

export interface HostProcess {
  /** What a browser opens. */
  readonly address: string;
  readonly call: Call;
  /** Memory held now and at most so far [MB]; undefined where the system does not say. */
  memory(): { readonly now: number; readonly most: number } | undefined;
  end(): Promise<void>;
}

/** `build/out`, seen from the built benchmark or from its source. */
export const BUILT = ['..', '../../build/out']
  .map((place) => join(import.meta.dirname, place))
  .find((place) => existsSync(join(place, 'node/main.js')));

/** The host that lies beside this benchmark, or that of another build. */
export interface HostStart {
  readonly builtIn?: string;
  /** Folder of an invented household for an empty data folder. */
  readonly sample?: string;
}

/** Starts the host on a data folder; undefined when it has not been built. */
export async function startHost(
  dataFolder: string,
  { builtIn = BUILT, sample }: HostStart = {},
): Promise<HostProcess | undefined> {
  if (builtIn === undefined) return undefined;
  const child = spawn(
    process.execPath,
    [
      join(builtIn, 'node/main.js'),
      '--no-open',
      '--data',
      dataFolder,
      ...(sample === undefined ? [] : ['--sample', sample]),
    ],
    { stdio: ['ignore', 'pipe', 'inherit'] },
  );
  const address = await addressOf(child);
  const [base, token] = address.split('/#token=') as [string, string];
  return {
    address,
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
