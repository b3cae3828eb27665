/** The browser tests of the checkout, with the host on the Node that ships instead of the tests' own. */
import { spawnSync } from 'node:child_process';
import { root } from './about.ts';
import { run } from './run.ts';
import { fetchRuntime, TARGETS } from './runtimes.ts';

export async function tryNode(): Promise<void> {
  const target = TARGETS.find(({ system, arch }) => system === 'linux' && arch === process.arch)!;
  const { program } = fetchRuntime(target);
  console.log(`The host runs on Node ${run(program, ['--version']).trim()}.`);
  const { status } = spawnSync('npm', ['run', 'test:browser'], {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, PLAINWARMTH_NODE: program },
  });
  if (status !== 0) process.exit(1);
}
