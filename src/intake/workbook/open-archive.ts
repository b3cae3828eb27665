/** A packed archive of data files: each of them by itself, as the sheets of a workbook are. */
import { unpack, unpackOne } from './unpack.ts';

export interface PackedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

const DATA = /\.(csv|tsv|txt|dat|json|xml|epw|xlsx)$/i;
/** Marks that one system of computers packs beside each file. */
const HIDDEN = /^__macosx\/|(^|\/)\./i;

/**
 * The files that may hold data, by the names that the archive gives them; undefined where it cannot be unpacked.
 * @param fileName names the one file of an archive that packs a single one without a name
 */
export function unpackFiles(fileName: string, bytes: Uint8Array): readonly PackedFile[] | undefined {
  if (bytes[0] === 0x1f) {
    const alone = unpackOne(bytes);
    return alone && [{ name: fileName.replace(/\.gz$/i, ''), bytes: alone }];
  }
  const unpacked = unpack(bytes, undefined, DATA);
  if ('fault' in unpacked) return undefined;
  return [...unpacked.parts].flatMap(([name, part]) => (HIDDEN.test(name) ? [] : [{ name, bytes: part }]));
}
