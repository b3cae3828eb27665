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

/** Whether the part is sound to its end; one of a document type or too deep counts as not. */
export function walkXml(bytes: Uint8Array, walker: XmlWalker): boolean {
  const parser = new SaxesParser({ xmlns: false, position: false });
  let isSound = true;
  let words = '';
  let depth = 0;
  const spoil = () => {
    isSound = false;
  };
  parser.on('error', spoil);
  parser.on('doctype', spoil);
  parser.on('text', (piece) => {
    words += piece;
  });
  parser.on('cdata', (piece) => {
    words += piece;
  });
  parser.on('opentag', (tag) => {
    words = '';
    if (++depth > DEEPEST) spoil();
    walker.open?.(local(tag.name), (name) => tag.attributes[name], tag.attributes);
  });
  parser.on('closetag', (tag) => {
    depth--;
    walker.close?.(local(tag.name), words);
    words = '';
  });
  const decoder = new TextDecoder();
  for (let at = 0; at < bytes.length && isSound; at += CHUNK)
    parser.write(decoder.decode(bytes.subarray(at, at + CHUNK), { stream: true }));
  if (isSound) parser.close();
  return isSound;
}

const local = (name: string): string => name.slice(name.indexOf(':') + 1);
