/** What the packages say of the program, and the day that all files in them carry, so that the same source gives the same bytes. */
import { createHash } from 'node:crypto';
import { fileURLToPath } from 'node:url';
import { VERSION, VERSION_DATE } from '../../src/desk/version.ts';

export const root = fileURLToPath(new URL('../..', import.meta.url));

export const ABOUT = {
  id: 'plainwarmth',
  name: 'Plainwarmth',
  version: VERSION,
  publisher: 'Plainwarmth maintainers',
  summary: 'Shows a household what its heating will cost',
  description:
    'Shows a household, truthfully and in plain words, what its heating will cost to run with a heat pump, and later\nholds a bill against it. Uses no network; all data stay on this computer.',
} as const;
export type About = { readonly [key in keyof typeof ABOUT]: string };

/** Noon of the version's day, UTC. */
export const PACKED_AT = new Date(`${VERSION_DATE}T12:00:00Z`);

/** A name-based identifier (RFC 9562, version 5, in the URL name space) that stays the same from build to build. */
export function steadyId(name: string): string {
  const space = Buffer.from('6ba7b8119dad11d180b400c04fd430c8', 'hex');
  const hash = createHash('sha1').update(space).update(`https://plainwarmth.example/${name}`).digest().subarray(0, 16);
  hash[6] = (hash[6]! & 0x0f) | 0x50;
  hash[8] = (hash[8]! & 0x3f) | 0x80;
  return hash.toString('hex').replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}
