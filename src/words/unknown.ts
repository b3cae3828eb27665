/** Codes that have no words here, since another version of the program kept them. */
import { say } from './say.ts';

export const unknownSentence = (code: string): string =>
  say('Another version of Plainwarmth noted this, which is not known here: {code}.', { code });
/** Where a name stands. */
export const unknownName = (code: string): string => say('something that another version noted ({code})', { code });
