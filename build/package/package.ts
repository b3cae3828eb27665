/**
 * `npm run package -- [win|linux|mac] [--kind exe,msi,zip,deb,tar] [--arch x64|arm64]`: finished packages in packages/,
 * with their sizes and SHA256SUMS. What needs a packer that is not here is skipped, and said so.
 */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parseArgs } from 'node:util';
import { buildIfNeeded } from '../build.ts';
import { ABOUT, root } from './about.ts';
import { assemble } from './folder.ts';
import { makeDeb, makeTar } from './linux.ts';
import { makeApp } from './mac.ts';
import { makeMsi } from './msi.ts';
import { makeInstaller, makeStarter } from './nsis.ts';
import { isInstalled } from './run.ts';
import { TARGETS, type Target } from './runtimes.ts';
import { zipFolder } from './zip.ts';

interface Kind {
  readonly system: Target['system'];
  readonly kind: string;
  /** Commands without which it cannot be made, with the Debian package that has them. */
  readonly needs: Readonly<Record<string, string>>;
  readonly make: (folder: string, target: Target, out: string) => void;
}

const NSIS = { makensis: 'nsis' };
const KINDS: readonly Kind[] = [
  { system: 'win', kind: 'exe', needs: NSIS, make: (folder, _, out) => makeInstaller(folder, ABOUT, out) },
  // Installed and portable copies alike are started by the small program that NSIS makes.
  { system: 'win', kind: 'msi', needs: { ...NSIS, wixl: 'wixl' }, make: (folder, _, out) => makeMsi(folder, out) },
  { system: 'win', kind: 'zip', needs: NSIS, make: (folder, _, out) => zipFolder(folder, ABOUT.name, out) },
  { system: 'linux', kind: 'deb', needs: { 'dpkg-deb': 'dpkg' }, make: makeDeb },
  {
    system: 'linux',
    kind: 'tar.xz',
    needs: { tar: 'tar', xz: 'xz-utils' },
    make: (folder, _, out) => makeTar(folder, out),
  },
  { system: 'mac', kind: 'zip', needs: {}, make: makeApp },
];

export interface Wanted {
  readonly systems: readonly string[];
  readonly kinds: readonly string[];
  readonly arch?: string | undefined;
  /** Takes a package that is newer than the build as it is. */
  readonly reuse?: boolean;
}

const OUT = join(root, 'packages');
const pathOf = ({ system, arch }: Target, kind: string) =>
  join(OUT, `${ABOUT.id}-${ABOUT.version}-${system}-${arch}.${kind}`);

const isNewerThanBuild = (path: string) =>
  existsSync(path) && statSync(path).mtimeMs > statSync(join(root, 'build/out/built')).mtimeMs;

/** Makes what is wanted and answers the paths of the packages. The build is brought up to date first. */
export async function makePackages({ systems, kinds, arch, reuse = false }: Wanted): Promise<string[]> {
  await buildIfNeeded();
  mkdirSync(OUT, { recursive: true });
  const made: string[] = [];
  for (const target of TARGETS.filter((one) => systems.includes(one.system) && (arch ?? one.arch) === one.arch)) {
    const wanted = KINDS.filter(
      ({ system, kind }) => system === target.system && (kinds.length === 0 || kinds.includes(kind)),
    );
    const possible = wanted.filter(({ kind, needs }) => {
      const missing = Object.entries(needs).filter(([command]) => !isInstalled(command));
      for (const [command, debian] of missing) {
        console.log(
          `SKIPPED: ${basename(pathOf(target, kind))} needs ${command} (Debian package ${debian}), which is not here.`,
        );
      }
      return missing.length === 0;
    });
    const stale = possible.filter(({ kind }) => !reuse || !isNewerThanBuild(pathOf(target, kind)));
    made.push(...possible.filter((kind) => !stale.includes(kind)).map(({ kind }) => pathOf(target, kind)));
    if (stale.length === 0) continue;
    const folder = assemble(target, target.system === 'win' ? makeStarter() : undefined);
    for (const { kind, make } of stale) {
      const out = pathOf(target, kind);
      const begun = performance.now();
      make(folder, target, out);
      made.push(out);
      const seconds = ((performance.now() - begun) / 1000).toFixed(0);
      console.log(`${basename(out)}: ${(statSync(out).size / 1e6).toFixed(1)} MB, made in ${seconds} s`);
    }
  }
  return made;
}

const SYSTEMS = ['win', 'linux', 'mac'];
const USAGE = 'npm run package -- [win|linux|mac] [--kind exe,msi,zip,deb,tar.xz] [--arch x64|arm64]';

if (import.meta.main) {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { kind: { type: 'string' }, arch: { type: 'string' }, help: { type: 'boolean' } },
  });
  const kinds = values.kind?.split(',') ?? [];
  const unknown = [
    ...positionals.filter((system) => !SYSTEMS.includes(system)),
    ...kinds.filter((kind) => !KINDS.some((one) => one.kind === kind)),
    ...(values.arch === undefined || ['x64', 'arm64'].includes(values.arch) ? [] : [values.arch]),
  ];
  if (values.help || unknown.length > 0) {
    console.log(unknown.length > 0 ? `Not known: ${unknown.join(', ')}\n${USAGE}` : USAGE);
    process.exit(values.help ? 0 : 2);
  }
  const made = await makePackages({
    systems: positionals.length > 0 ? positionals : SYSTEMS,
    kinds,
    arch: values.arch,
  });
  const sums = made.map(
    (path) => `${createHash('sha256').update(readFileSync(path)).digest('hex')}  ${basename(path)}`,
  );
  writeFileSync(join(root, 'packages/SHA256SUMS'), `${sums.join('\n')}\n`);
  console.log(`\npackages/SHA256SUMS\n${sums.join('\n')}`);
  if (made.some((path) => path.includes('-mac-'))) console.log('\nThe packages for macOS were built and run nowhere.');
  if (made.length === 0) process.exitCode = 1;
}
