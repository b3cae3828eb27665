/** Linux: a .deb that installs for everybody on the computer, and an archive that runs from any folder. */
import { cpSync, mkdirSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { ABOUT, root } from './about.ts';
import { filesBelow, PROGRAMS, settle } from './folder.ts';
import { icon } from './icon-files.ts';
import { run } from './run.ts';
import type { Target } from './runtimes.ts';

export function makeTar(folder: string, out: string): void {
  const tar = ['--sort=name', '--owner=0', '--group=0', '--numeric-owner', '--format=gnu', '-cJf'];
  run('tar', [...tar, out, '-C', dirname(folder), ABOUT.name]);
}

const DESKTOP_ENTRY = `[Desktop Entry]
Type=Application
Name=${ABOUT.name}
Comment=${ABOUT.summary}
Comment[de]=Zeigt einem Haushalt, was seine Heizung kosten wird
Exec=plainwarmth
Icon=plainwarmth
Terminal=false
StartupWMClass=plainwarmth
Categories=Office;
Actions=quit;

[Desktop Action quit]
Name=Quit
Name[de]=Beenden
Exec=plainwarmth quit
`;

const AFTER_REMOVING = `#!/bin/sh
set -e
if [ "$1" = remove ] || [ "$1" = purge ]; then
  echo "Plainwarmth has gone. What was kept was left where it is: in the folder .local/share/plainwarmth of each person who used it."
fi
`;

export function makeDeb(folder: string, { arch }: Target, out: string): void {
  const staging = join(root, 'packages/work', `deb-${arch}`);
  rmSync(staging, { recursive: true, force: true });
  const put = (path: string, text: string, mode?: number) => {
    mkdirSync(dirname(join(staging, path)), { recursive: true });
    writeFileSync(join(staging, path), text, { mode: mode ?? 0o644 });
  };
  const home = 'usr/lib/plainwarmth';
  cpSync(folder, join(staging, home), { recursive: true });
  put('usr/share/applications/plainwarmth.desktop', DESKTOP_ENTRY);
  put(
    'usr/share/doc/plainwarmth/copyright',
    'MIT licence, see /usr/lib/plainwarmth/LICENSE.txt; libraries: /usr/lib/plainwarmth/licences.\n',
  );
  const icons = join(staging, 'usr/share/icons/hicolor');
  for (const size of [16, 32, 48, 128, 256, 512]) {
    cpSync(icon(`${size}.png`), join(icons, `${size}x${size}/apps/plainwarmth.png`));
  }
  cpSync(icon('plainwarmth.svg'), join(icons, 'scalable/apps/plainwarmth.svg'));
  mkdirSync(join(staging, 'usr/bin'), { recursive: true });
  symlinkSync('../lib/plainwarmth/plainwarmth', join(staging, 'usr/bin/plainwarmth'));
  settle(staging, PROGRAMS);

  const kilobytes = filesBelow(staging).reduce((sum, name) => sum + statSync(join(staging, name)).size, 0) / 1024;
  put(
    'DEBIAN/control',
    [
      `Package: ${ABOUT.id}`,
      `Version: ${ABOUT.version}`,
      `Architecture: ${arch === 'x64' ? 'amd64' : 'arm64'}`,
      `Maintainer: ${ABOUT.publisher} <maintainers@plainwarmth.example>`,
      `Installed-Size: ${Math.ceil(kilobytes)}`,
      'Depends: libc6 (>= 2.28), libstdc++6, libgcc-s1',
      'Recommends: chromium | google-chrome-stable | microsoft-edge-stable, xdg-utils',
      'Section: misc',
      'Priority: optional',
      `Description: ${ABOUT.summary}`,
      ...ABOUT.description.split('\n').map((line) => ` ${line}`),
      '',
    ].join('\n'),
  );
  put('DEBIAN/postrm', AFTER_REMOVING, 0o755);
  settle(staging, new Set([...PROGRAMS, 'postrm']));
  run('dpkg-deb', ['--root-owner-group', '-Zxz', '--build', staging, out]);
}
