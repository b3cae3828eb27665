/** The key that locks the copies of the day: beside the data, for its owner alone, and in no copy. */
import { Buffer } from 'node:buffer';
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { type CopyKey, makeCopyKey } from '../store/locked-copy.ts';
import { say } from '../words/say.ts';
import { DeskError } from './desk-error.ts';

const Kept = z.object({ salt: z.base64(), key: z.base64() });
const pathIn = (dataFolder: string) => join(dataFolder, 'daily-copies.key');

/** Without a passphrase the key is taken away. */
export async function setDailyLock(dataFolder: string, passphrase: string | undefined): Promise<void> {
  rmSync(pathIn(dataFolder), { force: true });
  if (passphrase === undefined) return;
  const { salt, key } = await makeCopyKey(passphrase);
  const kept = { salt: salt.toString('base64'), key: key.toString('base64') };
  writeFileSync(pathIn(dataFolder), JSON.stringify(kept), { flag: 'wx', mode: 0o600 });
}

/** Throws DeskError where it is gone: a copy that was to be locked is not saved open. */
export function readDailyLock(dataFolder: string): CopyKey {
  try {
    const { salt, key } = Kept.parse(JSON.parse(readFileSync(pathIn(dataFolder), 'utf8')));
    return { salt: Buffer.from(salt, 'base64'), key: Buffer.from(key, 'base64') };
  } catch {
    throw new DeskError({
      code: 'daily-key-missing',
      message: say('The key of the locked daily copies is missing, so no copy was saved.'),
      where: pathIn(dataFolder),
      remedy: say('Switch the daily copy off and on again, with the passphrase.'),
    });
  }
}
