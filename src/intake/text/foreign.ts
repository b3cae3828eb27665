/** Files that are not text are known by their first bytes, never by the ending of their name. */

export type ForeignKind =
  | 'spreadsheet'
  | 'old spreadsheet'
  | 'open spreadsheet'
  | 'archive'
  | 'PDF'
  | 'picture'
  | 'document'
  | 'e-mail'
  | 'shortcut'
  | 'web page'
  | 'XML'
  | 'database'
  | 'binary';

const startsWith = (bytes: Uint8Array, ...signature: number[]): boolean => signature.every((b, i) => bytes[i] === b);

const latin = new TextDecoder('latin1');
/** Names of the parts stand before each, and together at the end. */
const ENDS = 16_384;
const endsOf = (bytes: Uint8Array): string =>
  latin.decode(bytes.subarray(0, ENDS)) + latin.decode(bytes.subarray(Math.max(ENDS, bytes.length - ENDS)));

/** What an archive by its parts is, where it is no plain one. */
function recogniseParts(bytes: Uint8Array): ForeignKind {
  const names = endsOf(bytes);
  if (names.includes('opendocument.spreadsheet')) return 'open spreadsheet';
  if (names.includes('xl/')) return 'spreadsheet';
  if (/word\/document|ppt\/presentation|opendocument\.(?:text|presentation)|Index\/Document\.iwa/.test(names))
    return 'document';
  return names.includes('[Content_Types]') ? 'spreadsheet' : 'archive';
}

/** An older office program packs letters, messages and tables alike; the parts have names in two bytes a letter. */
function recogniseOld(bytes: Uint8Array): ForeignKind {
  const names = latin.decode(bytes).replaceAll('\0', '');
  if (names.includes('__substg1.0_')) return 'e-mail';
  return names.includes('WordDocument') || names.includes('PowerPoint Document') ? 'document' : 'old spreadsheet';
}

/** Headers of a message (RFC 5322), one of which no table has; a page that was saved whole has them too. */
function recogniseMessage(bytes: Uint8Array): ForeignKind | undefined {
  const text = latin.decode(bytes.subarray(0, ENDS)).replace(/^ï»¿/, '');
  if (!/^(?:[A-Za-z][\w-]*:[ \t]|From )/.test(text)) return undefined;
  if (/^Snapshot-Content-Location:/im.test(text)) return 'web page';
  return /^(?:message-id|mime-version|received|return-path):[ \t]/im.test(text) ? 'e-mail' : undefined;
}

/** First characters of a file read as plain ASCII, other bytes as dots. */
function firstWords(bytes: Uint8Array, length: number): string {
  let words = '';
  for (let i = 0; i < Math.min(length, bytes.length); i++) {
    const b = bytes[i]!;
    words += b >= 32 && b < 127 ? String.fromCharCode(b) : '.';
  }
  return words;
}

/** SYLK and DIF, with a dot for the end of each line. */
const OLD_TABLE = /^ID;P\w+.*?\.{1,2}[BPCFO];[A-Z]|^TABLE\.{1,2}0,1\.{1,2}/;

/** What kind of file this is, when it is none that is read as a table of text. */
export function recogniseForeign(bytes: Uint8Array): ForeignKind | undefined {
  if (startsWith(bytes, 0x50, 0x4b, 0x03, 0x04) || startsWith(bytes, 0x50, 0x4b, 0x05, 0x06))
    return recogniseParts(bytes);
  if (startsWith(bytes, 0xd0, 0xcf, 0x11, 0xe0)) return recogniseOld(bytes);
  if (startsWith(bytes, 0x4c, 0, 0, 0, 1, 0x14, 2, 0)) return 'shortcut';
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
  if (words.startsWith('{\\rtf')) return 'document';
  if (/^\[(?:InternetShortcut|Desktop Entry)\]/i.test(words)) return 'shortcut';
  if (
    /^<!doctype html|^<(?:!--|(?:html|head|body|meta|style|title|script|table|div|center|h[1-6]|p|br)\b)/i.test(words)
  )
    return 'web page';
  if (/^<\?xml.*(?:office:document|opendocument)/i.test(words)) return 'open spreadsheet';
  if (/^<\?xml.*(?:Excel\.Sheet|office:spreadsheet)/i.test(words) || OLD_TABLE.test(words)) return 'old spreadsheet';
  if (/^<\?xml|^<feed/i.test(words)) return /<html/i.test(words) ? 'web page' : 'XML';
  return isTree(words, bytes) ? 'XML' : recogniseMessage(bytes);
}

/** XML without its first line: the element that opens the text closes it. */
function isTree(words: string, bytes: Uint8Array): boolean {
  const [, name] = /^<([a-z][\w:.-]*)[ >\r\n]/i.exec(words) ?? [];
  return (
    name !== undefined &&
    latin
      .decode(bytes.subarray(-name.length - 16))
      .trimEnd()
      .endsWith(`</${name}>`)
  );
}
