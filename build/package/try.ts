/**
 * `npm run package:try -- win|linux|node`: the finished package, from its installation to its removal, driven through the job
 * by a browser (`node`: the browser tests on the Node that ships). What this computer cannot do is skipped, and said so. Ends with 1 when something does not hold.
 */
import { existsSync } from 'node:fs';
import { isInstalled } from './run.ts';
import { tryLinux } from './try-linux.ts';
import { tryNode } from './try-node.ts';
import { tryWindows } from './try-windows.ts';

const TRIES = {
  linux: { needs: ['mmdebstrap', 'chroot', 'Xvfb', 'dpkg-deb'], run: tryLinux },
  node: { needs: [], run: tryNode },
  win: { needs: ['Xvfb', 'makensis', 'wixl'], run: tryWindows },
} as const;

const wanted = process.argv.slice(2);
if (wanted.length === 0 || wanted.some((name) => !Object.hasOwn(TRIES, name))) {
  console.log('npm run package:try -- win|linux|node');
  process.exit(2);
}
for (const name of wanted as (keyof typeof TRIES)[]) {
  const { needs, run } = TRIES[name];
  const missing = [
    ...needs.filter((command) => !isInstalled(command)),
    ...(name === 'win' && !existsSync('/usr/lib/wine/wine64') ? ['wine64'] : []),
    ...(name === 'linux' && process.getuid?.() !== 0 ? ['the rights of the superuser'] : []),
  ];
  if (missing.length > 0)
    console.log(`SKIPPED: the package for ${name} was not tried; missing here: ${missing.join(', ')}.`);
  else await run();
}
process.exit();
