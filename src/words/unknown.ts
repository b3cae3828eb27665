/** Codes that have no words here, since another version of the program kept them. */
import { say } from './say.ts';

/** What a table has for a kept code; undefined for one that is not known here. */
export const lookUp = <T>(table: Readonly<Record<string, T>>, code: string): T | undefined =>
  Object.hasOwn(table, code) ? table[code] : undefined;

export const unknownSentence = (code: string): string =>
  say('Another version of Plainwarmth noted this, which is not known here: {code}.', { code });
/** Where a name stands. */
export const unknownName = (code: string): string => say('something that another version noted ({code})', { code });
