/** The folder that every package of a target carries: runtime, program, samples, licences. */
import { chmodSync, cpSync, mkdirSync, readdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { basename, join, relative } from 'node:path';
import { ABOUT, PACKED_AT, root } from './about.ts';
import { run } from './run.ts';
import { fetchRuntime, NODE_VERSION, type Target } from './runtimes.ts';

/** Entries of the build that only the checkout uses. */
const NOT_SHIPPED = new Set(['main.js', 'bench.js']);

/** Name and text of the licence of each npm package whose code is in the build, and of Node's. */
function writeLicences(folder: string, nodeLicence: string): void {
  const packages = run('npm', ['ls', '--omit=dev', '--omit=optional', '--all', '--parseable'], root)
    .split('\n')
    .filter((path) => path.includes('node_modules'))
    .map((path) => ({ path, name: path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length) }))
    .toSorted((a, b) => (a.name < b.name ? -1 : 1));
  const parts = packages.map(({ path, name }) => {
    const about = JSON.parse(readFileSync(join(path, 'package.json'), 'utf8')) as { version: string; license?: string };
    const file = readdirSync(path).find((entry) => /^(licen[cs]e|copying)(\.|$)/i.test(entry));
    const text = file === undefined ? `Licence: ${about.license}` : readFileSync(join(path, file), 'utf8');
    return `${'='.repeat(80)}\n${name} ${about.version}\n\n${text.trim()}\n`;
  });
  mkdirSync(folder);
  writeFileSync(join(folder, 'libraries.txt'), parts.join('\n'));
  cpSync(nodeLicence, join(folder, 'node.txt'));
}

function copyDriver(into: string, driver: string): void {
  const from = join(root, 'node_modules/better-sqlite3');
  for (const name of ['package.json', 'LICENSE', 'lib', `prebuilds/${driver}.node`]) {
    cpSync(join(from, name), join(into, name), { recursive: true });
  }
}

/** What unpacks pictures of telephones and finds the words of all: one program of four, and the smaller of two tables a language. */
const RECOGNISER = [
  'tesseract.js-core/package.json',
  'tesseract.js-core/LICENSE',
  'tesseract.js-core/tesseract-core-simd-lstm.js',
  'tesseract.js-core/tesseract-core-simd-lstm.wasm',
  'libheif-js/package.json',
  'libheif-js/LICENSE',
  ...['LICENSE', 'libheif.js', 'libheif.wasm'].map((name) => `libheif-js/libheif-wasm/${name}`),
  ...['eng', 'deu'].flatMap((language) => [
    `@tesseract.js-data/${language}/package.json`,
    `@tesseract.js-data/${language}/4.0.0_best_int/${language}.traineddata.gz`,
  ]),
];

const readMe = (target: Target): string =>
  [
    `${ABOUT.name} ${ABOUT.version}`,
    '',
    ABOUT.description,
    '',
    target.system === 'win'
      ? 'Start: Plainwarmth.exe. From a command line: bin\\plainwarmth.cmd'
      : 'Start: ./plainwarmth. From a command line: ./plainwarmth reckon FILE',
    'To remove a portable copy delete this folder. What was kept lies elsewhere; Help in the program says where.',
    `It runs on Node ${NODE_VERSION}, which lies in runtime/. Licences lie in licences/.`,
    '',
  ].join(target.system === 'win' ? '\r\n' : '\n');

const COMMAND_CMD = '@"%~dp0..\\runtime\\node.exe" "%~dp0..\\program\\node\\plainwarmth.js" %*\r\n';
const COMMAND_LINE_CMD =
  '@set "PATH=%~dp0;%PATH%"\r\n@cd /d "%USERPROFILE%"\r\n@echo Type: plainwarmth.cmd --help   or   plainwarmth.cmd reckon FILE\r\n';
/** Follows links, so that it may stand in /usr/bin or in a folder of one's own. */
const SHELL_START = `#!/bin/sh
self=$(readlink -f "$0" 2>/dev/null || echo "$0")
here=$(dirname "$self")
exec "$here/runtime/node" "$here/program/node/plainwarmth.js" "$@"
`;

/** All files below a folder, sorted, with paths relative to it and forward slashes. */
export function filesBelow(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
    .toSorted();
}

/** Gives every file and folder the same time and a plain mode, whatever the checkout's are. */
export function settle(folder: string, programs: ReadonlySet<string>): void {
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name);
    if (entry.isSymbolicLink()) continue;
    chmodSync(path, entry.isDirectory() || programs.has(entry.name) ? 0o755 : 0o644);
    utimesSync(path, PACKED_AT, PACKED_AT);
  }
  chmodSync(folder, 0o755);
  utimesSync(folder, PACKED_AT, PACKED_AT);
}

/** File names that are programs, in any package. */
export const PROGRAMS: ReadonlySet<string> = new Set(['node', 'plainwarmth']);

/** Assembles the folder anew and answers its path. The build must be current. */
export function assemble(target: Target, launcher?: string): string {
  const folder = join(root, 'packages/work', `${target.system}-${target.arch}`, ABOUT.name);
  rmSync(folder, { recursive: true, force: true });
  const program = join(folder, 'program');
  mkdirSync(join(folder, 'runtime'), { recursive: true });
  const runtime = fetchRuntime(target);
  cpSync(runtime.program, join(folder, 'runtime', basename(runtime.program)));

  const keep = (path: string) => !path.endsWith('.map') && !NOT_SHIPPED.has(basename(path));
  cpSync(join(root, 'build/out/node'), join(program, 'node'), { recursive: true, filter: keep });
  cpSync(join(root, 'build/out/web'), join(program, 'web'), { recursive: true, filter: keep });
  cpSync(join(root, 'sample-bills'), join(program, 'sample-bills'), {
    recursive: true,
    filter: (path) => !path.endsWith('.ts'),
  });
  copyDriver(join(program, 'node_modules/better-sqlite3'), target.driver);
  for (const path of RECOGNISER) cpSync(join(root, 'node_modules', path), join(program, 'node_modules', path));
  writeFileSync(join(program, 'package.json'), `${JSON.stringify({ name: ABOUT.id, type: 'module' })}\n`);

  writeLicences(join(folder, 'licences'), runtime.licence);
  cpSync(join(root, 'LICENSE'), join(folder, 'LICENSE.txt'));
  writeFileSync(join(folder, 'Read me first.txt'), readMe(target));
  if (target.system === 'win') {
    mkdirSync(join(folder, 'bin'));
    writeFileSync(join(folder, 'bin/plainwarmth.cmd'), COMMAND_CMD);
    writeFileSync(join(folder, 'bin/command-line.cmd'), COMMAND_LINE_CMD);
    cpSync(launcher!, join(folder, 'Plainwarmth.exe'));
  } else {
    writeFileSync(join(folder, 'plainwarmth'), SHELL_START);
  }
  settle(folder, PROGRAMS);
  return folder;
}
