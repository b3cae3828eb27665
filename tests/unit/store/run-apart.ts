/** Runs lines in a process of their own, with the store and an invented household at hand, as a start or a kill does. */
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const source = (path: string) => JSON.stringify(join(import.meta.dirname, '../../../src', path));

function argsFor(lines: string): string[] {
  const script = `
    import { openSqliteStore } from ${source('store/sqlite-store.ts')};
    import { emptyHousehold } from ${source('model/shapes/household.ts')};
    const NOW = '2026-11-25T10:00:00.000Z';
    const die = () => process.kill(process.pid, 'SIGKILL');
    try { ${lines} } catch (error) { console.log(error.message) }`;
  return ['--input-type=module-typescript', '-e', script];
}

/** What Node made of the sources is kept for the next process, which begins in a third of the time. */
const env = { ...process.env, NODE_COMPILE_CACHE: join(tmpdir(), 'plainwarmth-tests-compiled') };

export function runApart(lines: string) {
  const { stdout, signal } = spawnSync(process.execPath, argsFor(lines), { encoding: 'utf8', env });
  return { said: stdout.trim(), signal };
}

/** Opens the store at the path in a process of its own and keeps it open until the work is done. */
export async function whileOpenApart(path: string, work: () => Promise<void>): Promise<void> {
  const lines = `const store = openSqliteStore(${JSON.stringify(path)}); console.log("open"); setInterval(() => store.listHouseholds, 1000)`;
  const child = spawn(process.execPath, argsFor(lines), { env, stdio: ['ignore', 'pipe', 'inherit'] });
  try {
    const [said] = (await once(child.stdout, 'data')) as [Buffer];
    if (said.toString() !== 'open\n') throw new Error(said.toString());
    await work();
  } finally {
    child.kill('SIGKILL');
    await once(child, 'exit');
  }
}
