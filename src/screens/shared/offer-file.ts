import type { Output } from '../../desk/contract.ts';
import { LARGEST_FILE_BYTES, refuseLargeFile } from '../../desk/limits.ts';
import { call } from '../desk.ts';

/**
 * Hands a chosen file to the desk, which keeps it for this session only. A file that is too large is refused unread;
 * evidence may be smaller than a whole household.
 */
export async function offerFile(file: File, limitBytes = LARGEST_FILE_BYTES): Promise<Output<'file.offer'>> {
  if (file.size > limitBytes) throw refuseLargeFile(file.name, file.size, limitBytes);
  const bytes = new Uint8Array(await file.arrayBuffer());
  return call('file.offer', { fileName: file.name, bytes });
}
