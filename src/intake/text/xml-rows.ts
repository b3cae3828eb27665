/** Readings in XML of no standard that we know: elements that repeat are records, their attributes and inner texts its values. */
import { type Listed, linesOfTree } from './json-rows.ts';
import { walkXml } from './walk-xml.ts';

/** A tree of names takes some thirty times the text. */
const MOST_BYTES = 6 * 1024 * 1024;

interface Node {
  readonly name: string;
  readonly values: Record<string, unknown>;
}

/** Undefined where it is too long, broken, or holds no list of records. */
export function linesOfXml(bytes: Uint8Array): Listed | undefined {
  if (bytes.length > MOST_BYTES) return undefined;
  const root: Node = { name: '', values: {} };
  const open: Node[] = [root];
  const isSound = walkXml(bytes, {
    open: (name, _, attributes) => {
      open.push({ name, values: { ...attributes } });
    },
    close: (name, words) => {
      const { values } = open.pop()!;
      const text = words.trim();
      const hasOwn = Object.keys(values).length > 0;
      const value = !hasOwn ? text : text === '' ? values : { ...values, value: text };
      put(open.at(-1)!.values, name, value);
    },
  });
  return isSound ? linesOfTree(root.values) : undefined;
}

/** A name that comes again becomes a list. */
function put(values: Record<string, unknown>, name: string, value: unknown): void {
  const known = values[name];
  if (known === undefined) values[name] = value;
  else if (Array.isArray(known)) known.push(value);
  else values[name] = [known, value];
}
