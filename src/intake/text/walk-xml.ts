/** Walks XML, as of the parts of a workbook; prefixes are dropped, since writers differ in them. */
import { SaxesParser } from 'saxes';

export interface XmlWalker {
  open?(
    name: string,
    attribute: (name: string) => string | undefined,
    attributes: Readonly<Record<string, string>>,
  ): void;
  /** `words` is the text directly inside. */
  close?(name: string, words: string): void;
}

const CHUNK = 1 << 16;
const DEEPEST = 64;

/** What is wrong with the part; undefined where nothing is. */
export function walkXml(bytes: Uint8Array, walker: XmlWalker): string | undefined {
  const parser = new SaxesParser({ xmlns: false, position: false });
  let fault: string | undefined;
  let words = '';
  let depth = 0;
  parser.on('error', (error) => {
    fault ??= error.message.replace('undefined', 'unknown').slice(0, 80);
  });
  parser.on('doctype', () => {
    fault ??= 'a document type';
  });
  parser.on('text', (piece) => {
    words += piece;
  });
  parser.on('cdata', (piece) => {
    words += piece;
  });
  parser.on('opentag', (tag) => {
    words = '';
    if (++depth > DEEPEST) fault ??= 'too deep';
    walker.open?.(local(tag.name), (name) => tag.attributes[name], tag.attributes);
  });
  parser.on('closetag', (tag) => {
    depth--;
    walker.close?.(local(tag.name), words);
    words = '';
  });
  const decoder = new TextDecoder();
  for (let at = 0; at < bytes.length && fault === undefined; at += CHUNK)
    parser.write(decoder.decode(bytes.subarray(at, at + CHUNK), { stream: true }));
  if (fault === undefined) parser.close();
  return fault;
}

const local = (name: string): string => name.slice(name.indexOf(':') + 1);
