/**
 * One instance: the running host leaves a note beside the data, readable by its owner only, and a second start asks the
 * host named there for a page instead of starting another. The lock on the database decides; the note only says where.
 */
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { VERSION } from '../desk/version.ts';

interface Note {
  readonly port: number;
  readonly token: string;
  readonly version: unknown;
}

const notePath = (dataFolder: string) => join(dataFolder, 'running.json');
const ANSWER_MS = 3000;
/** Whoever is to end may have a slow and busy machine; one that has ended refuses at once. */
const ENDING_MS = 60_000;
const STEP_MS = 250;

export function noteRunning(dataFolder: string, { port, token }: Pick<Note, 'port' | 'token'>): void {
  try {
    // Made anew: the mode of a file that is there already would stay.
    forgetRunning(dataFolder);
    writeFileSync(notePath(dataFolder), JSON.stringify({ port, token, version: VERSION }), { mode: 0o600 });
  } catch (error) {
    // On a full disk the households come before a second start that finds this one.
    console.error(error);
  }
}

export function forgetRunning(dataFolder: string): void {
  rmSync(notePath(dataFolder), { force: true });
}

function readNote(dataFolder: string): Note | undefined {
  try {
    // By hand and not by a schema: every start comes by here before it does anything else.
    const { port, token, version } = JSON.parse(readFileSync(notePath(dataFolder), 'utf8')) as Record<string, unknown>;
    return Number.isInteger(port) && typeof token === 'string' ? { port: port as number, token, version } : undefined;
  } catch {
    return undefined;
  }
}

/** What the running host answers to a request at `path`, or undefined where none runs. */
async function ask(
  dataFolder: string,
  path: string,
  answerMs = ANSWER_MS,
): Promise<{ base: string; result: unknown } | undefined> {
  const note = readNote(dataFolder);
  if (!note) return undefined;
  const base = `http://127.0.0.1:${note.port}`;
  try {
    const response = await fetch(`${base}${path}`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', 'X-Plainwarmth-Token': note.token },
      body: '{}',
      signal: AbortSignal.timeout(answerMs),
    });
    const { result } = JSON.parse(await response.text()) as { result?: unknown };
    return result === undefined ? undefined : { base, result };
  } catch {
    // Nobody there, or another program has the port by now.
    return undefined;
  }
}

/** An address that opens one page of the host running on this folder; waits up to `patienceMs` for one that is just starting. */
export async function pageOfRunning(dataFolder: string, patienceMs = 0): Promise<string | undefined> {
  const until = Date.now() + patienceMs;
  for (;;) {
    const answer = await ask(dataFolder, '/door');
    const code = (answer?.result as { code?: unknown } | null | undefined)?.code;
    if (answer && typeof code === 'string') return `${answer.base}/#code=${code}`;
    if (Date.now() >= until) return undefined;
    await wait(STEP_MS);
  }
}

/** Whether the host that runs on this folder is of another version than this program: it began before an update. */
export function isOtherVersionRunning(dataFolder: string): boolean {
  const note = readNote(dataFolder);
  return note !== undefined && note.version !== VERSION;
}

/** Ends the host running on this folder once its work is done. False where none runs. */
export async function quitRunning(dataFolder: string): Promise<boolean> {
  if (!(await ask(dataFolder, '/call/app.quit', ENDING_MS))) return false;
  // The note goes last of all, so that whoever waits for it finds the data closed.
  // It no longer listens a moment before: only one that was killed on the way leaves its note behind.
  let until = Date.now() + ENDING_MS;
  while (readNote(dataFolder) && Date.now() < until) {
    if (await ask(dataFolder, '/door', ENDING_MS)) until = Date.now() + ENDING_MS;
    await wait(STEP_MS);
  }
  return true;
}
