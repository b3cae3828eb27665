import { DeskError, LARGEST_FILE_BYTES, type Output } from '../../desk/contract.ts';
import { call } from '../desk.ts';

const BYTES_PER_MB = 1024 * 1024;

/** Hands a chosen file to the desk, which keeps it for this session only. A file that is too large is refused unread. */
export async function offerFile(file: File, signal?: AbortSignal): Promise<Output<'file.offer'>> {
  if (file.size > LARGEST_FILE_BYTES) {
    throw new DeskError({
      code: 'file-too-large',
      message: `${file.name} has ${Math.round(file.size / BYTES_PER_MB)} MB; at most ${LARGEST_FILE_BYTES / BYTES_PER_MB} MB are taken in.`,
      where: file.name,
      remedy: 'Cut it into years and bring them in one after the other.',
    });
  }
  const bytes = new Uint8Array(await file.arrayBuffer());
  return call('file.offer', { fileName: file.name, bytes }, signal ? { signal } : {});
}
