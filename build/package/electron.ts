/**
 * `npm run package:electron -- win|linux|mac [--archives DIR] [--stand-in]`: the packages with Electron inside, made by
 * electron-builder. The archives come from DIR, else from Electron's releases or the mirror that ELECTRON_MIRROR names.
 * `--stand-in` goes the same way with an archive that holds no Electron: it proves the configuration and nothing more.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { zipSync } from 'fflate';
import { buildIfNeeded } from '../build.ts';
import { root } from './about.ts';
import { readFuses, SENTINEL } from './fuses.ts';

const BUILDER = 'electron-builder@26.17.0';
const WHERE = join(root, 'packages/electron');

/** As much of an archive as the packager looks at: a program with unset fuses, a licence, a version. */
function writeStandIn(folder: string): void {
  const version = JSON.parse(readFileSync(join(root, 'node_modules/electron/package.json'), 'utf8')).version as string;
  const program = Buffer.concat([
    Buffer.alloc(64),
    SENTINEL,
    Buffer.from([1, 9]),
    Buffer.from('000000000'),
    Buffer.alloc(64),
  ]);
  const files = {
    electron: program,
    'chrome-sandbox': Buffer.from('none'),
    LICENSE: Buffer.from('stand-in'),
    version: Buffer.from(version),
  };
  const entries = Object.entries(files).map(([name, bytes]) => [
    name,
    [new Uint8Array(bytes), { os: 3, attrs: (0o100755 << 16) >>> 0 }],
  ]);
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, `electron-v${version}-linux-x64.zip`), zipSync(Object.fromEntries(entries)));
}

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { archives: { type: 'string' }, 'stand-in': { type: 'boolean' } },
});
const [system] = positionals;
if (
  positionals.length !== 1 ||
  !['win', 'linux', 'mac'].includes(system!) ||
  (values['stand-in'] && system !== 'linux')
) {
  console.log('npm run package:electron -- win|linux|mac [--archives DIR]; --stand-in goes with linux');
  process.exit(2);
}
await buildIfNeeded();
rmSync(WHERE, { recursive: true, force: true });
const standIn = join(root, 'packages/work/electron-stand-in');
if (values['stand-in']) writeStandIn(standIn);
const archives = values['stand-in'] ? standIn : values.archives;
const { status } = spawnSync(
  'npx',
  [
    '--yes',
    BUILDER,
    `--${system}`,
    ...(values['stand-in'] ? ['dir'] : []),
    '--config',
    'build/package/electron-builder.yml',
    '--publish',
    'never',
    ...(archives ? [`-c.electronDist=${archives}`] : []),
  ],
  { cwd: root, stdio: 'inherit' },
);
if (status !== 0) process.exit(1);

/** What is in the program that was made, and not what was asked for. */
const unpacked = readdirSync(WHERE).find((name) => name.endsWith('-unpacked'));
if (unpacked && system !== 'mac') {
  const folder = join(WHERE, unpacked);
  const program = system === 'win' ? 'Plainwarmth.exe' : 'plainwarmth';
  for (const [name, state] of Object.entries(readFuses(readFileSync(join(folder, program)))))
    console.log(`${name}: ${state}`);
}
if (values['stand-in']) console.log('Made with a stand-in for Electron: nothing here can be started.');
