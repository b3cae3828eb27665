/** Bytes to text: byte-order marks, UTF-8, UTF-16 with or without mark, else Windows Latin-1. */

export type Encoding = 'UTF-8' | 'UTF-16' | 'Latin-1';
export type Decoded = { readonly text: string; readonly encoding: Encoding } | { readonly fault: 'empty' | 'binary' };

const SAMPLE_BYTES = 4096;

export function decodeText(bytes: Uint8Array): Decoded {
  const text = decodeAny(bytes);
  if (!text) return { fault: 'binary' };
  if (text.text.trim() === '') return { fault: 'empty' };
  if (looksBinary(text.text)) return { fault: 'binary' };
  // A letter for each byte is plain ASCII, which has no odd signs.
  const isAscii = text.encoding === 'UTF-8' && text.text.length === bytes.length;
  return isAscii ? text : { ...text, text: plainSigns(text.text) };
}

/** Signs that only look like others, as word processors and web pages put them, and marks without a width, as of the way of writing. */
const ODD = /[\u00a0\u00ad\u2000-\u200f\u2010-\u2012\u202a-\u202f\u205f-\u2069\u2212\u3000\ufeff\uff01-\uff5e]/;
const THOUSANDS_BLANK = '\u202f';

/** Blanks, hyphens, minus signs and letters of full width as a keyboard writes them; marks without a width left out. */
export function plainSigns(text: string): string {
  if (!ODD.test(text)) return text;
  return (
    text
      .replaceAll(/[\u00ad\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/g, '')
      .replaceAll(/[\u2010-\u2012\u2212]/g, '-')
      .replaceAll(/[\uff01-\uff5e]/g, (sign) => String.fromCharCode(sign.charCodeAt(0) - 0xfee0))
      // Between thousands it stays one that parts no cells.
      .replaceAll(/(?<=\d)[\u00a0\u2000-\u200a\u205f\u3000](?=\d{3}(?!\d))/g, THOUSANDS_BLANK)
      .replaceAll(/[\u00a0\u2000-\u200a\u205f\u3000]|(?<!\d)\u202f|\u202f(?!\d{3}(?!\d))/g, ' ')
  );
}

function decodeAny(bytes: Uint8Array): { text: string; encoding: Encoding } | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return utf16(bytes.subarray(2), 'utf-16le');
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return utf16(bytes.subarray(2), 'utf-16be');
  const order = unmarkedUtf16(bytes);
  if (order) return utf16(bytes, order);
  const utf8 = decodeUtf8(bytes);
  if (utf8 !== undefined) return { text: utf8, encoding: 'UTF-8' };
  return { text: new TextDecoder('windows-1252').decode(bytes), encoding: 'Latin-1' };
}

const utf16 = (bytes: Uint8Array, label: 'utf-16le' | 'utf-16be') => ({
  text: new TextDecoder(label).decode(bytes),
  encoding: 'UTF-16' as const,
});

/** A file cut in the middle may end within a character, so up to three last bytes may go. */
function decodeUtf8(bytes: Uint8Array): string | undefined {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  for (let cut = 0; cut <= 3 && cut <= bytes.length; cut++) {
    if (cut > 0 && bytes[bytes.length - cut]! < 0x80) return undefined;
    try {
      return decoder.decode(bytes.subarray(0, bytes.length - cut));
    } catch {
      // Not UTF-8 up to here; a shorter piece may be.
    }
  }
  return undefined;
}

/** Plain text in UTF-16 has a zero in nearly every other byte. */
function unmarkedUtf16(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  const length = Math.min(bytes.length & ~1, SAMPLE_BYTES);
  if (length < 8) return undefined;
  let even = 0;
  let odd = 0;
  for (let i = 0; i < length; i += 2) {
    if (bytes[i] === 0) even++;
    if (bytes[i + 1] === 0) odd++;
  }
  const half = length / 2;
  if (odd > half * 0.9 && even < half * 0.1) return 'utf-16le';
  if (even > half * 0.9 && odd < half * 0.1) return 'utf-16be';
  return undefined;
}

/** Text has next to no control characters. */
function looksBinary(text: string): boolean {
  const length = Math.min(text.length, SAMPLE_BYTES);
  let control = 0;
  for (let i = 0; i < length; i++) {
    const code = text.charCodeAt(i);
    if ((code < 32 && code !== 9 && code !== 10 && code !== 13 && code !== 12) || code === 0xfffd) control++;
  }
  return control > 2 && control > length * 0.02;
}
