/**
 * `npm test`: two roads beside each other, since a browser test waits more than it reckons. The browser tests are the
 * longer road: they go first and are seen as they go. The others take what they leave of the processors, and their words
 * come once they have ended.
 */
import { spawn } from 'node:child_process';
import { getPriority, setPriority } from 'node:os';

/** Runs npm scripts one after the other until one fails; answers whether all went through. */
async function go(scripts: readonly string[], isSeen: boolean): Promise<boolean> {
  for (const script of scripts) {
    const begun = performance.now();
    // Through a shell: on Windows npm is a batch file.
    const child = spawn(`npm run --silent ${script}`, { shell: true, stdio: ['ignore', 'pipe', 'pipe'] });
    const said: Buffer[] = [];
    for (const stream of [child.stdout, child.stderr]) {
      stream.on('data', (piece: Buffer) => (isSeen ? process.stdout.write(piece) : said.push(piece)));
    }
    const code = await new Promise((done) => child.once('close', done));
    process.stdout.write(Buffer.concat(said));
    const seconds = Math.round((performance.now() - begun) / 1000);
    console.log(`\n${script}: ${code === 0 ? 'passed' : 'FAILED'} in ${seconds} s\n`);
    if (code !== 0) return false;
  }
  return true;
}

// Both roads start it; half unpacked by one, it would not start for the other.
if (process.platform === 'linux' && process.arch === 'x64') {
  await (await import('@sparticuz/chromium')).default.executablePath();
}
const browser = go(['test:browser'], true);
// Whatever begins from here on comes a little after it; far after it, a busy machine would leave it nothing.
setPriority(Math.min(getPriority() + 3, 19));
const others = go(['check', 'test:unit'], false);
if ((await Promise.all([browser, others])).includes(false)) process.exitCode = 1;
