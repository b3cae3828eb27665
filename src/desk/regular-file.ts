/** Reads files that a person names: regular ones only, since a pipe or a device would keep the reader waiting for ever. */
import { existsSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { basename, join, sep } from 'node:path';
import { say } from '../words/say.ts';
import { DeskError } from './desk-error.ts';
import { LARGEST_FILE_BYTES, refuseLargeFile } from './limits.ts';

export const noRegularFile = (path: string, isFolder: boolean) =>
  new DeskError({
    code: 'no-regular-file',
    message: isFolder
      ? say('{path} is a folder, where a file is needed.', { path })
      : say('{path} is a pipe or a device, where a file is needed.', { path }),
    where: path,
    remedy: say('Name a file.'),
  });

/** The size is asked first: a file beyond the limit is refused before any of it is held. Throws DeskError. */
export function readRegularFile(path: string): Uint8Array {
  const facts = statSync(path, { throwIfNoEntry: false });
  if (!facts) {
    throw new DeskError({
      code: 'no-such-file',
      message: say('There is no file {path}.', { path }),
      where: path,
      remedy: say('Correct the path.'),
    });
  }
  if (!facts.isFile()) throw noRegularFile(path, facts.isDirectory());
  if (facts.size > LARGEST_FILE_BYTES) throw refuseLargeFile(basename(path), facts.size);
  return new Uint8Array(readFileSync(path));
}

/** Reads files of one folder by their names; one that is not there is undefined, one that leads out of it is refused. */
export function readFilesOf(folder: string): (name: string) => Uint8Array | undefined {
  return (name) => {
    const path = join(folder, name);
    if (!existsSync(path)) return undefined;
    if (!realpathSync(path).startsWith(`${realpathSync(folder)}${sep}`)) {
      throw new DeskError({
        code: 'file-elsewhere',
        message: say('{fileName} does not lie in the folder of the household file.', { fileName: name }),
        where: name,
        remedy: say('Put the file into the same folder, or correct its name.'),
      });
    }
    return readRegularFile(path);
  };
}
