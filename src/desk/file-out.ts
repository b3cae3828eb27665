/** Files handed out to the window. */
import { Buffer } from 'node:buffer';
import type { FileOut } from './contract.ts';

/** A name that every file system takes. */
export function fileNameOf(title: string, ending: string): string {
  const safe = title
    .replace(/[\p{Cc}<>:"/\\|?*]+/gu, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[. ]+|[. ]+$/g, '');
  return `${safe.slice(0, 120) || 'household'}.${ending}`;
}

export function toFileOut(fileName: string, mediaType: string, content: string | Uint8Array): FileOut {
  const bytes = typeof content === 'string' ? Buffer.from(content, 'utf8') : Buffer.from(content);
  return { fileName, mediaType, base64: bytes.toString('base64') };
}
