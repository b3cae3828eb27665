/** Runs lines in a process of their own, with the store and an invented household at hand, as a start or a kill does. */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

const source = (path: string) => JSON.stringify(join(import.meta.dirname, '../../../src', path));

export function runApart(lines: string) {
  const script = `
    import { openSqliteStore } from ${source('store/sqlite-store.ts')};
    import { emptyHousehold } from ${source('model/shapes/household.ts')};
    const NOW = '2026-11-25T10:00:00.000Z';
    const die = () => process.kill(process.pid, 'SIGKILL');
    try { ${lines} } catch (error) { console.log(error.message) }`;
  const { stdout, signal } = spawnSync(process.execPath, ['--input-type=module-typescript', '-e', script], {
    encoding: 'utf8',
  });
  return { said: stdout.trim(), signal };
}
