import { LARGEST_FILE_BYTES, type Output, refuseLargeFile } from '../../desk/contract.ts';
import { call } from '../desk.ts';

/** Hands a chosen file to the desk, which keeps it for this session only. A file that is too large is refused unread. */
export async function offerFile(file: File, signal?: AbortSignal): Promise<Output<'file.offer'>> {
  if (file.size > LARGEST_FILE_BYTES) {
    throw refuseLargeFile(file.name, file.size);
  }
  const bytes = new Uint8Array(await file.arrayBuffer());
  return call('file.offer', { fileName: file.name, bytes }, signal ? { signal } : {});
}
