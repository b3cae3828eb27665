/** Files that are not text are known by their first bytes, never by the ending of their name. */

export type ForeignKind =
  | 'spreadsheet'
  | 'old spreadsheet'
  | 'archive'
  | 'PDF'
  | 'picture'
  | 'web page'
  | 'XML'
  | 'database'
  | 'binary';

const startsWith = (bytes: Uint8Array, ...signature: number[]): boolean => signature.every((b, i) => bytes[i] === b);

/** First characters of a file read as plain ASCII, other bytes as dots. */
function firstWords(bytes: Uint8Array, length: number): string {
  let words = '';
  for (let i = 0; i < Math.min(length, bytes.length); i++) {
    const b = bytes[i]!;
    words += b >= 32 && b < 127 ? String.fromCharCode(b) : '.';
  }
  return words;
}

/** What kind of file this is, when it is none that is read as a table of text. */
export function recogniseForeign(bytes: Uint8Array): ForeignKind | undefined {
  if (startsWith(bytes, 0x50, 0x4b, 0x03, 0x04) || startsWith(bytes, 0x50, 0x4b, 0x05, 0x06)) {
    const words = firstWords(bytes, 8192);
    return /xl\/|\[Content_Types\]|opendocument\.spreadsheet/.test(words) ? 'spreadsheet' : 'archive';
  }
  if (startsWith(bytes, 0xd0, 0xcf, 0x11, 0xe0)) return 'old spreadsheet';
  if (
    startsWith(bytes, 0x1f, 0x8b) ||
    startsWith(bytes, 0x37, 0x7a, 0xbc, 0xaf) ||
    startsWith(bytes, 0x52, 0x61, 0x72, 0x21)
  )
    return 'archive';
  if (startsWith(bytes, 0x25, 0x50, 0x44, 0x46)) return 'PDF';
  if (
    startsWith(bytes, 0x89, 0x50, 0x4e, 0x47) ||
    startsWith(bytes, 0xff, 0xd8, 0xff) ||
    startsWith(bytes, 0x47, 0x49, 0x46, 0x38) ||
    firstWords(bytes, 12).endsWith('ftypheic')
  )
    return 'picture';
  const words = firstWords(bytes, 512).replace(/^\.{0,3}\s*/, '');
  if (words.startsWith('SQLite format')) return 'database';
  if (/^<!doctype html|^<html/i.test(words)) return 'web page';
  if (/^<\?xml|^<feed/i.test(words)) return /<html/i.test(words) ? 'web page' : 'XML';
  return undefined;
}
