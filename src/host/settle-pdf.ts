/** Takes the printing time and random numbers out of a PDF, so that the same written estimate gives the same bytes. */

/** Any fixed moment does: the date that counts is printed on the page, and comes from the written estimate. */
const FIXED_DATE = '20000101000000';

/** Puts something of the same length in the place of each match, so that no offset in the file moves. */
export function settlePdf(pdf: Uint8Array): Uint8Array {
  // Latin-1 keeps every byte as one character.
  const text = Buffer.from(pdf).toString('latin1');
  const settled = text
    .replace(/(\/(?:CreationDate|ModDate) ?\(D:)(\d{14})([^)]*)(\))/g, (_, head, date: string, zone: string, tail) => {
      return `${head}${FIXED_DATE.slice(0, date.length)}${zone.replace(/\d/g, '0')}${tail}`;
    })
    .replace(/(\/ID ?\[ ?<)([0-9A-Fa-f]+)(> ?<)([0-9A-Fa-f]+)(> ?\])/g, (_, a, first: string, b, second: string, c) => {
      return `${a}${'0'.repeat(first.length)}${b}${'0'.repeat(second.length)}${c}`;
    });
  return new Uint8Array(Buffer.from(renumberTags(settled), 'latin1'));
}

/**
 * A table's cells name their headings by the browser's own count of nodes, which begins elsewhere on a busy machine.
 * They are counted from 1 instead; their order stays, since the tree of names is searched by it.
 */
function renumberTags(text: string): string {
  const names = [...new Set(text.match(/(?<=\(node)\d{8}(?=\))/g))].sort();
  const ranks = new Map(names.map((name, index) => [name, String(index + 1).padStart(8, '0')]));
  return text.replace(/(?<=\(node)\d{8}(?=\))/g, (name) => ranks.get(name)!);
}
