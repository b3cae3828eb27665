/** Where in a JSON text a value stands, so that a refusal can name the line. */

const BLANK = /[\s,:]*/y;
const PLAIN = /"(?:[^"\\]|\\.)*"|[^\s,:[\]{}]+/y;

/** Line [from 1] of the value at a path of valid JSON; of the innermost group there is where the path leads on. */
export function lineOfPath(text: string, path: readonly PropertyKey[]): number {
  let at = match(BLANK, text, 0);
  for (const key of path) {
    const found = valueIn(text, at, key);
    if (found === undefined) break;
    at = found;
  }
  return text.slice(0, at).split('\n').length;
}

/** End of what the pattern takes from a place on. */
function match(pattern: RegExp, text: string, at: number): number {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : at;
}

/** Place of one member of the group or list that opens at a place. */
function valueIn(text: string, opening: number, key: PropertyKey): number | undefined {
  const isList = text[opening] === '[';
  if (!isList && text[opening] !== '{') return undefined;
  let at = match(BLANK, text, opening + 1);
  for (let place = 0; text[at] !== ']' && text[at] !== '}'; place++) {
    let name: unknown = place;
    if (!isList) {
      const end = match(PLAIN, text, at);
      name = JSON.parse(text.slice(at, end));
      at = match(BLANK, text, end);
    }
    if (name === key) return at;
    at = match(BLANK, text, endOfValue(text, at));
  }
  return undefined;
}

function endOfValue(text: string, start: number): number {
  let depth = 0;
  let at = start;
  do {
    const sign = text[at];
    if (sign === '{' || sign === '[') depth++;
    if (sign === '}' || sign === ']') depth--;
    at = sign !== undefined && '{[]}'.includes(sign) ? at + 1 : match(PLAIN, text, at);
    if (depth > 0) at = match(BLANK, text, at);
  } while (depth > 0 && at < text.length);
  return at;
}
