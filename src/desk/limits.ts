/** How large a file may be, and the words for one that is larger: for window and host alike, without any schema. */
import { language, say } from '../words/say.ts';
import { DeskError } from './desk-error.ts';

/** Largest file that may be handed in, bytes: a household with all its raw files takes the most. */
export const LARGEST_FILE_BYTES = 64 * 1024 * 1024;

const megabytes = (bytes: number) => `${Math.ceil(bytes / 1024 / 1024).toLocaleString(language())} MB`;

/** The one refusal of a file that is too large, wherever its size comes to light. */
export const refuseLargeFile = (fileName: string, bytes: number, limit = LARGEST_FILE_BYTES): DeskError =>
  new DeskError({
    code: 'file-too-large',
    message: say('{fileName} has {size}; files up to {limit} are taken.', {
      fileName,
      size: megabytes(bytes),
      limit: megabytes(limit),
    }),
    where: fileName,
    remedy: /\.(pdf|jpe?g|png|hei[cf])$/i.test(fileName)
      ? say('Save the picture smaller, or print only the pages of the bill to a new PDF.')
      : say('Ten years of half-hours need 5 to 14 MB. Export a shorter span, or only the meter that is wanted.'),
  });

/** Letters of a passphrase, in the window and on the command line alike. */
export const PASSPHRASE_LETTERS = { least: 8, most: 200 } as const;

/** Largest logo, bytes: it goes into every document that is printed. */
export const LARGEST_LOGO_BYTES = 200_000;

export const refuseLargeLogo = (bytes: number): DeskError =>
  new DeskError({
    code: 'logo-too-large',
    message: say('This logo has {size} kB; up to {limit} kB are taken.', {
      size: Math.ceil(bytes / 1000).toLocaleString(language()),
      limit: LARGEST_LOGO_BYTES / 1000,
    }),
    where: 'logo',
    remedy: say('Save it smaller: 800 pixels across are plenty for paper.'),
  });
