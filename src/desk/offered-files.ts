/** Files handed in by the window, kept in memory for the session until they are taken or grow old. */
import { say } from '../words/say.ts';
import { DeskError } from './desk-error.ts';
import { LARGEST_FILE_BYTES, refuseLargeFile } from './limits.ts';

export interface OfferedFile {
  readonly fileName: string;
  readonly bytes: Uint8Array;
}

export interface OfferedFiles {
  offer(id: string, file: OfferedFile): void;
  take(id: string): OfferedFile;
  drop(id: string): void;
}

/** Room for the largest household and two of the largest files of evidence. */
export const MOST_BYTES_TOGETHER = 96 * 1024 * 1024;
const KEPT_MS = 2 * 60 * 60 * 1000;

/** `now` answers an ISO instant. The oldest files go first when room runs out. */
export function keepOfferedFiles(now: () => string): OfferedFiles {
  const files = new Map<string, OfferedFile & { readonly at: number }>();

  function makeRoom(needed: number): void {
    const oldest = Date.parse(now()) - KEPT_MS;
    for (const [id, { at }] of files) if (at < oldest) files.delete(id);
    let held = [...files.values()].reduce((sum, { bytes }) => sum + bytes.byteLength, 0);
    for (const [id, { bytes }] of files) {
      if (held + needed <= MOST_BYTES_TOGETHER) return;
      files.delete(id);
      held -= bytes.byteLength;
    }
  }

  return {
    offer(id, { fileName, bytes }) {
      if (bytes.byteLength > LARGEST_FILE_BYTES) {
        throw refuseLargeFile(fileName, bytes.byteLength);
      }
      makeRoom(bytes.byteLength);
      files.set(id, { fileName, bytes, at: Date.parse(now()) });
    },
    take(id) {
      const file = files.get(id);
      if (!file) {
        throw new DeskError({
          code: 'file-gone',
          message: say('This file is no longer here; files wait for two hours only.'),
          remedy: say('Choose the file again.'),
        });
      }
      return file;
    },
    drop(id) {
      files.delete(id);
    },
  };
}
