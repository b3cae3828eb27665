/** Runs the packers that are no npm packages. */
import { spawnSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { PACKED_AT } from './about.ts';

export function isInstalled(command: string): boolean {
  return (process.env.PATH ?? '').split(delimiter).some((folder) => {
    try {
      accessSync(join(folder, command), constants.X_OK);
      return true;
    } catch {
      return false;
    }
  });
}

/** Runs to the end, quietly. Throws with all that it said when it fails. */
export function run(command: string, args: readonly string[], cwd?: string): string {
  const { status, stdout, stderr, error } = spawnSync(command, args, {
    cwd,
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
    // The conventional name by which a packer is told the time to write (reproducible-builds.org).
    env: { ...process.env, SOURCE_DATE_EPOCH: String(PACKED_AT.getTime() / 1000), TZ: 'UTC', LC_ALL: 'C.UTF-8' },
  });
  if (error) throw error;
  if (status !== 0) throw new Error(`${command} ${args.join(' ')} ended with ${status}:\n${stdout}\n${stderr}`);
  return stdout;
}
