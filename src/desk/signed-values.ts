/**
 * Newer prices and reference values as a small signed file: `{ format, version, values, signature }`, where `values` is
 * JSON as text and `signature` its Ed25519 signature (RFC 8032) in base64. Nothing of it counts before the signature does.
 */
import { createPublicKey, verify } from 'node:crypto';
import { z } from 'zod';
import { nestsTooDeep } from '../intake/text/nesting.ts';
import { CivilDate } from '../model/shapes/dates.ts';
import type { Reference } from '../model/shapes/reference.ts';
import { misfit } from '../reference/fit-values.ts';
import { builtIn, layOver } from '../reference/index.ts';
import type { Store } from '../store/store.ts';
import { longDate } from '../words/numbers.ts';
import { say } from '../words/say.ts';
import { DeskError } from './desk-error.ts';

export const VALUES_FORMAT = 'plainwarmth.values';

const SignedFile = z.object({
  format: z.literal(VALUES_FORMAT),
  version: z.literal(1),
  values: z.string().max(4_000_000),
  signature: z.string(),
});

export type Values = Partial<Reference> & Pick<Reference, 'edition'>;

function parse(text: string): unknown {
  try {
    return nestsTooDeep(text) ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}

const refuse = (code: string, message: string, where: string, remedy: string) =>
  new DeskError({ code, message, where, remedy });

/**
 * The values of a file that `publicKey` (SPKI, base64) vouches for, newer than the program's own and not older than those
 * in use, of the day `inUse`. Throws DeskError: no such file, another signer or a changed byte, a value without its form,
 * older values.
 */
export function readSignedValues(fileName: string, text: string, publicKey: string, inUse = builtIn.edition): Values {
  const { success, data: file } = SignedFile.safeParse(parse(text));
  const again = say('Get the file again from where you got Plainwarmth.');
  if (!success) {
    throw refuse(
      'no-values-file',
      say('{fileName} is no file of prices and reference values.', { fileName }),
      fileName,
      again,
    );
  }
  const key = createPublicKey({ key: Buffer.from(publicKey, 'base64'), format: 'der', type: 'spki' });
  if (!verify(null, Buffer.from(file.values), key, Buffer.from(file.signature, 'base64'))) {
    throw refuse(
      'values-not-signed',
      say('{fileName} is not signed by the makers of this program, or was changed since.', { fileName }),
      fileName,
      again,
    );
  }
  const values = parse(file.values) as Values;
  const place = strangePlace(values);
  if (place !== null) {
    throw refuse(
      'values-misfit',
      say('This program cannot take the values of {fileName}: “{place}” is not in the form that it knows.', {
        fileName,
        place,
      }),
      fileName,
      say('Install the newest Plainwarmth, which brings its own values.'),
    );
  }
  if (values.edition <= builtIn.edition || values.edition < inUse) {
    throw refuse(
      'values-old',
      say('The values of {fileName} are of {edition}; those in use, of {own}, are as new or newer.', {
        fileName,
        edition: longDate(values.edition),
        own: longDate(inUse),
      }),
      fileName,
      say('Nothing has to be done.'),
    );
  }
  return values;
}

/** The first place that does not have the form of the program's own values; null where all fits. */
function strangePlace(values: Partial<Reference> | undefined): string | null {
  if (!CivilDate.safeParse(values?.edition).success) return 'edition';
  const topics = Object.keys(values!) as (keyof Reference)[];
  const places = topics.map((topic) =>
    Object.hasOwn(builtIn, topic) ? misfit(builtIn[topic], values![topic], topic) : topic,
  );
  return places.find((place) => place !== null) ?? null;
}

let last: { readonly text: string; readonly key: string; readonly values: Values | null } | undefined;

/** The stored file, verified again; null where there is none, or where the program has grown newer than it. */
export function broughtInValues(store: Store, key: string): Values | null {
  const text = store.readValues();
  if (typeof text !== 'string') return null;
  if (last?.text !== text || last.key !== key) {
    let values: Values | null = null;
    try {
      values = readSignedValues('', text, key);
    } catch (error) {
      if (!(error instanceof DeskError)) throw error;
    }
    last = { text, key, values };
  }
  return last.values;
}

export const reckonWithValues = (store: Store, key: string): void => layOver(broughtInValues(store, key));
