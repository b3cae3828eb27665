import type { Output } from '../../desk/contract.ts';
import { call } from '../desk.ts';

/** Hands a chosen file to the desk, which keeps it for this session only. */
export async function offerFile(file: File, signal?: AbortSignal): Promise<Output<'file.offer'>> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  return call('file.offer', { fileName: file.name, bytes }, signal ? { signal } : {});
}
