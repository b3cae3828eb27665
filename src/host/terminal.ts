/** What every command of the command line does alike: harmless text, refusals in words, the exit code. */
import type { DeskRefusal } from '../desk/desk-error.ts';
import { ManyRefusals } from '../desk/parse-household.ts';
import { toRefusal } from '../desk/refusal.ts';
import { localToday } from './local-today.ts';

export interface Terminal {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly today: string;
}

/** The terminal of this process. Whoever reads only the head of what is printed, as `| head` does, hangs up; that is no fault. */
export function ownTerminal(): Terminal {
  for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'EPIPE') throw error;
      process.exit();
    });
  }
  return {
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
    today: localToday(),
  };
}

/** Names come from other people's files; what would steer a terminal or turn its text around is shown as a sign. */
const harmless = (text: string): string => text.replace(/(?![\n\t])[\p{Cc}\u202A-\u202E\u2066-\u2069]/gu, '\uFFFD');

function refusalText({ message, where, remedy }: DeskRefusal): string {
  const place = where === undefined || message.includes(where) ? '' : `${where}: `;
  return [`${place}${message}`, ...(remedy === undefined ? [] : [`  ${remedy.replaceAll('\n', '\n  ')}`])].join('\n');
}

/** 0 done, 2 refused with the reasons, 1 a fault of ours. */
export async function runCommand(raw: Terminal, work: (terminal: Terminal) => Promise<0 | 2>): Promise<0 | 1 | 2> {
  const terminal: Terminal = {
    ...raw,
    out: (text) => raw.out(harmless(text)),
    err: (text) => raw.err(harmless(text)),
  };
  try {
    return await work(terminal);
  } catch (error) {
    const refusals = error instanceof ManyRefusals ? error.all : [toRefusal(error)];
    terminal.err(`${refusals.map(refusalText).join('\n')}\n`);
    if (refusals[0]?.code !== 'own-failure') return 2;
    if (error instanceof Error && error.stack) terminal.err(`${error.stack}\n`);
    return 1;
  }
}
