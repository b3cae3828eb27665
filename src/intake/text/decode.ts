/** Bytes to text: byte-order marks, UTF-8, UTF-16 with or without mark, else Windows Latin-1. */

export type Encoding = 'UTF-8' | 'UTF-16' | 'Latin-1';
export type Decoded = { readonly text: string; readonly encoding: Encoding } | { readonly fault: 'empty' | 'binary' };

const SAMPLE_BYTES = 4096;

export function decodeText(bytes: Uint8Array): Decoded {
  const text = decodeAny(bytes);
  if (!text) return { fault: 'binary' };
  if (text.text.trim() === '') return { fault: 'empty' };
  return looksBinary(text.text) ? { fault: 'binary' } : text;
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
