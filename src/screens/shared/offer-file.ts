import type { Output } from '../../desk/contract.ts';
import { DeskError } from '../../desk/desk-error.ts';
import { LARGEST_FILE_BYTES, refuseLargeFile } from '../../desk/limits.ts';
import { say } from '../../words/say.ts';
import { call } from '../desk.ts';

/**
 * Hands a chosen file to the desk, which keeps it for this session only. A file that is too large is refused unread;
 * evidence may be smaller than a whole household.
 */
export async function offerFile(file: File, limitBytes = LARGEST_FILE_BYTES): Promise<Output<'file.offer'>> {
  if (file.size > limitBytes) throw refuseLargeFile(file.name, file.size, limitBytes);
  return call('file.offer', { fileName: file.name, bytes: await bytesOf(file) });
}

/** A folder that is dropped looks like a file until it is read. */
export const bytesOf = (file: File): Promise<Uint8Array<ArrayBuffer>> =>
  file.arrayBuffer().then(
    (buffer) => new Uint8Array(buffer),
    () => {
      throw new DeskError({
        code: 'file-unreadable',
        message: say('{fileName} could not be opened.', { fileName: file.name }),
        where: file.name,
        remedy: say('Of a folder choose the files in it. A file that was moved or changed has to be chosen again.'),
      });
    },
  );
