import { createHash } from 'node:crypto';

/** SHA-256 in hexadecimal; names a file by what is in it. */
export const hashOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');
