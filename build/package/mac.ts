/** macOS: an .app in a zip, made of the same folder. Built here, run nowhere yet; unsigned. */
import { cpSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ABOUT, root } from './about.ts';
import { PROGRAMS, settle } from './folder.ts';
import { icnsFile } from './icon-files.ts';
import type { Target } from './runtimes.ts';
import { zipFolder } from './zip.ts';

const START = `#!/bin/sh
here=$(cd "$(dirname "$0")/../Resources/Plainwarmth" && pwd)
exec "$here/runtime/node" "$here/program/node/plainwarmth.js" "$@"
`;

const property = (name: string, value: string) => `  <key>${name}</key>\n  <string>${value}</string>`;
const INFO = `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE plist PUBLIC "-//Apple//DTD PLIST 1.0//EN" "http://www.apple.com/DTDs/PropertyList-1.0.dtd">
<plist version="1.0">
<dict>
${[
  property('CFBundleName', ABOUT.name),
  property('CFBundleDisplayName', ABOUT.name),
  property('CFBundleIdentifier', 'example.plainwarmth'),
  property('CFBundleVersion', ABOUT.version),
  property('CFBundleShortVersionString', ABOUT.version),
  property('CFBundlePackageType', 'APPL'),
  property('CFBundleExecutable', 'plainwarmth'),
  property('CFBundleIconFile', 'plainwarmth.icns'),
  // Node 22's own lower bound.
  property('LSMinimumSystemVersion', '11.0'),
  '  <key>LSUIElement</key>\n  <true/>',
].join('\n')}
</dict>
</plist>
`;

export function makeApp(folder: string, { arch }: Target, out: string): void {
  const staging = join(root, 'packages/work', `app-${arch}`);
  rmSync(staging, { recursive: true, force: true });
  const contents = join(staging, 'Contents');
  mkdirSync(join(contents, 'MacOS'), { recursive: true });
  writeFileSync(join(contents, 'Info.plist'), INFO);
  writeFileSync(join(contents, 'PkgInfo'), 'APPL????');
  writeFileSync(join(contents, 'MacOS/plainwarmth'), START);
  cpSync(folder, join(contents, 'Resources', ABOUT.name), { recursive: true });
  writeFileSync(join(contents, 'Resources/plainwarmth.icns'), icnsFile());
  settle(staging, PROGRAMS);
  zipFolder(staging, `${ABOUT.name}.app`, out);
}
