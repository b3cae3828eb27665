/**
 * Newer prices and reference values for programs already installed: `npm run values -- key PRIVATE.pem` makes a pair of
 * keys and puts the public one into the source; `npm run values -- sign VALUES.json PRIVATE.pem OUT.json` signs.
 * VALUES.json holds `edition` (a day) and whole topics of `src/reference/index.ts` in the same form.
 */
import { createPrivateKey, createPublicKey, generateKeyPairSync, type KeyObject, sign } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { readSignedValues, VALUES_FORMAT } from '../src/desk/signed-values.ts';

const spki = (key: KeyObject) => key.export({ type: 'spki', format: 'der' }).toString('base64');
const KEY_SOURCE = new URL('../src/desk/values-key.ts', import.meta.url);
const [task, first, privateKey, out] = process.argv.slice(2);

if (task === 'key' && first !== undefined) {
  const pair = generateKeyPairSync('ed25519');
  writeFileSync(first, pair.privateKey.export({ type: 'pkcs8', format: 'pem' }), { mode: 0o600, flag: 'wx' });
  const source = readFileSync(KEY_SOURCE, 'utf8');
  writeFileSync(KEY_SOURCE, source.replace(/'[\w+/=]+'/, `'${spki(pair.publicKey)}'`));
  console.log(
    `Wrote ${first}: keep it in a safe place and in no repository. The public key is in src/desk/values-key.ts.`,
  );
} else if (task === 'sign' && first !== undefined && privateKey !== undefined && out !== undefined) {
  const key = createPrivateKey(readFileSync(privateKey));
  const values = JSON.stringify(JSON.parse(readFileSync(first, 'utf8')));
  const signature = sign(null, Buffer.from(values), key).toString('base64');
  const text = JSON.stringify({ format: VALUES_FORMAT, version: 1, values, signature });
  readSignedValues(first, text, spki(createPublicKey(key)));
  writeFileSync(out, text);
  console.log(`Wrote ${out}.`);
} else {
  console.error('npm run values -- key PRIVATE.pem | sign VALUES.json PRIVATE.pem OUT.json');
  process.exitCode = 2;
}
