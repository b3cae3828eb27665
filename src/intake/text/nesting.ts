/** More than any file of ours has, a household with its estimates and their workings included. */
export const DEEPEST = 200;

const QUOTE = 34;
const BACKSLASH = 92;

/**
 * Whether lists and groups of a JSON text stand in more than `DEEPEST` others; looks no further than the first that do.
 * JSON.parse takes two seconds and a gigabyte for millions of open brackets before it finds that none is closed.
 */
export function nestsTooDeep(text: string): boolean {
  let depth = 0;
  for (let at = 0; at < text.length; at++) {
    const sign = text.charCodeAt(at);
    if (sign === QUOTE) {
      at = endOfString(text, at);
      if (at < 0) return false;
    } else if (sign === 0x5b || sign === 0x7b) {
      if (++depth > DEEPEST) return true;
    } else if (sign === 0x5d || sign === 0x7d) depth--;
  }
  return false;
}

/** Where the string that begins at `start` has its last quote; -1 where it has none. */
function endOfString(text: string, start: number): number {
  for (let end = text.indexOf('"', start + 1); end >= 0; end = text.indexOf('"', end + 1)) {
    let before = end;
    while (text.charCodeAt(before - 1) === BACKSLASH) before--;
    if ((end - before) % 2 === 0) return end;
  }
  return -1;
}
