/** What the computer itself refuses (a full disk, a folder that is a file, no memory), in words with their remedy. */
import { say } from '../words/say.ts';
import type { DeskRefusal } from './desk-error.ts';

interface SystemError {
  readonly code?: unknown;
  readonly path?: unknown;
}

/** The refusal for an error of the system's; undefined for any other. */
export function explainSystemFault(error: unknown): DeskRefusal | undefined {
  const { code, path: given } = (error ?? {}) as SystemError;
  const path = typeof given === 'string' ? given : say('what was to be written');
  const refuse = (name: string, message: string, remedy: string): DeskRefusal => ({
    code: name,
    message,
    ...(typeof given === 'string' ? { where: given } : {}),
    remedy,
  });
  switch (code) {
    case 'ENOSPC':
    case 'EDQUOT':
    case 'SQLITE_FULL':
      return diskFull(path);
    case 'EROFS':
      return refuse(
        'read-only',
        say('{path} lies on a disk that can only be read.', { path }),
        say('Choose a place that can be written to, or take the write protection off.'),
      );
    case 'EACCES':
    case 'EPERM':
      return refuse(
        'not-allowed',
        say('{path} may not be opened or written by you.', { path }),
        say('Choose another place, or ask for the right to write there.'),
      );
    case 'ENOTDIR':
    case 'EEXIST':
      return refuse(
        'not-a-folder',
        say('{path} is a file, or leads through one, where a folder is needed.', { path }),
        say('Name a folder, or another place.'),
      );
    case 'EISDIR':
      return refuse(
        'is-a-folder',
        say('{path} is a folder, where a file is needed.', { path }),
        say('Name a file in it.'),
      );
    case 'ENOENT':
      return refuse(
        'no-such-file',
        say('{path} is not there.', { path }),
        say('Correct the path. If it lies on a stick, put the stick in again.'),
      );
    case 'ENODEV':
    case 'ENXIO':
    case 'EIO':
      return refuse(
        'disk-failed',
        say('The disk under {path} does not answer.', { path }),
        say('If it is a stick, put it in again. If it is the computer’s own disk, save a copy elsewhere at once.'),
      );
    case 'ENAMETOOLONG':
      return refuse('long-name', say('The name {path} is too long.', { path }), say('Choose a shorter one.'));
    case 'EMFILE':
    case 'ENFILE':
      return refuse(
        'too-many-files',
        say('This computer has too many files open.'),
        say('Close other programs and try again.'),
      );
    case 'ENOMEM':
    case 'SQLITE_NOMEM':
    case 'ERR_WORKER_OUT_OF_MEMORY':
    case 'ERR_MEMORY_ALLOCATION_FAILED':
      return memoryShort();
    default:
      return error instanceof RangeError && /allocation failed|invalid (array|string) length/i.test(error.message)
        ? memoryShort()
        : undefined;
  }
}

export const diskFull = (path: string): DeskRefusal => ({
  code: 'disk-full',
  message: say('There is no room left on the disk of {path}, so this was not saved.', { path }),
  where: path,
  remedy: say('Make room, then try again. What was saved before is safe.'),
});

const memoryShort = (): DeskRefusal => ({
  code: 'memory-short',
  message: say('This computer has too little free memory for this.'),
  remedy: say('Close other programs and try again, or take a file of a shorter span. What was saved before is safe.'),
});
