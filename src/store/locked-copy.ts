/**
 * A copy under a passphrase: AES-256-GCM of Node's own cryptography (OpenSSL) over the whole file, its key made from the
 * passphrase by scrypt (RFC 7914). Mark, salt and number used once stand before it, the tag that proves it whole behind.
 */
import { Buffer } from 'node:buffer';
import { createCipheriv, createDecipheriv, createHash, randomBytes, scrypt } from 'node:crypto';
import {
  closeSync,
  createReadStream,
  createWriteStream,
  fsyncSync,
  openSync,
  readSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import { pipeline } from 'node:stream/promises';
import { promisify } from 'node:util';

const MARK = Buffer.from('PWLOCK1\n', 'latin1');
const SALT_BYTES = 16;
/** GCM's own length (NIST SP 800-38D, 8.2). */
const NONCE_BYTES = 12;
const TAG_BYTES = 16;
const HEAD_BYTES = MARK.length + SALT_BYTES + NONCE_BYTES;
/** 128 MB and some tenths of a second a guess; the OWASP cheat sheet on storing passwords names these three. */
const COST = { N: 2 ** 17, r: 8, p: 1, maxmem: 256 * 1024 * 1024 };

const derive = promisify<string, Buffer, number, typeof COST, Buffer>(scrypt);
/** What a passphrase was made into, to lock several copies without it. */
export interface CopyKey {
  readonly salt: Buffer;
  readonly key: Buffer;
}

/** The same letters typed on another keyboard come out the same (RFC 8265 asks for this form). */
export async function makeCopyKey(passphrase: string, salt: Buffer = randomBytes(SALT_BYTES)): Promise<CopyKey> {
  return { salt, key: await derive(passphrase.normalize('NFC'), salt, 32, COST) };
}

function readAt(path: string, length: number, at: number): Buffer {
  const bytes = Buffer.alloc(length);
  const file = openSync(path, 'r');
  try {
    return bytes.subarray(0, readSync(file, bytes, 0, length, at));
  } finally {
    closeSync(file);
  }
}

export const isLocked = (path: string): boolean => readAt(path, MARK.length, 0).equals(MARK);

/** `to` must not exist. */
export async function lockCopy(from: string, to: string, { salt, key }: CopyKey): Promise<void> {
  const nonce = randomBytes(NONCE_BYTES);
  const head = Buffer.concat([MARK, salt, nonce]);
  const cipher = createCipheriv('aes-256-gcm', key, nonce).setAAD(head);
  await pipeline(
    createReadStream(from),
    async function* (pieces) {
      yield head;
      for await (const piece of pieces) yield cipher.update(piece as Buffer);
      yield cipher.final();
      yield cipher.getAuthTag();
    },
    createWriteStream(to, { flags: 'wx', mode: 0o600 }),
  );
  const file = openSync(to, 'r+');
  fsyncSync(file);
  closeSync(file);
}

/** Answers the SHA-256 of what was locked; false when the passphrase is another, or the file is no longer whole. Where `to` is named, it is written there. */
export async function unlockCopy(from: string, lock: string | CopyKey, to?: string): Promise<string | false> {
  const size = statSync(from).size;
  if (size < HEAD_BYTES + TAG_BYTES) return false;
  const head = readAt(from, HEAD_BYTES, 0);
  const salt = head.subarray(MARK.length, MARK.length + SALT_BYTES);
  const { key } = typeof lock === 'string' ? await makeCopyKey(lock, salt) : lock;
  const decipher = createDecipheriv('aes-256-gcm', key, head.subarray(-NONCE_BYTES)).setAAD(head);
  decipher.setAuthTag(readAt(from, TAG_BYTES, size - TAG_BYTES));
  const sum = createHash('sha256');
  const target = to === undefined ? null : openSync(to, 'wx', 0o600);
  let isWhole = true;
  try {
    for await (const piece of createReadStream(from, { start: HEAD_BYTES, end: size - TAG_BYTES - 1 })) {
      const plain = decipher.update(piece as Buffer);
      sum.update(plain);
      if (target !== null) writeSync(target, plain);
    }
    decipher.final();
  } catch (error) {
    // What OpenSSL says when the tag does not fit; a stick that fails says something else.
    if ((error as { code?: unknown }).code !== undefined) throw error;
    isWhole = false;
  } finally {
    if (target !== null) closeSync(target);
  }
  // What could not be proved whole is not left lying about as if it were.
  if (!isWhole && to !== undefined) rmSync(to, { force: true });
  return isWhole && sum.digest('hex');
}
