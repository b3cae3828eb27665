/** Temporary files of a run lie in one folder, which goes with its end: a process that is killed takes none of its own away. */
import { existsSync, mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Answers what takes the folder away. */
export default function setUp(): () => void {
  const shared = tmpdir();
  const own = mkdtempSync(join(shared, 'plainwarmth-'));
  // The browser that npm brings is unpacked once on a computer, not for each run.
  if (existsSync(join(shared, 'chromium'))) symlinkSync(join(shared, 'chromium'), join(own, 'chromium'));
  for (const name of ['TMPDIR', 'TMP', 'TEMP']) process.env[name] = own;
  return () => rmSync(own, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
}
