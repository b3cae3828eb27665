/** Newer prices and reference values: only what is signed, fits and is newer; seen first, given back, never in an old estimate. */
import { generateKeyPairSync, sign } from 'node:crypto';
import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import type { Input, Output, RequestName } from '../../../src/desk/contract.ts';
import { readSignedValues } from '../../../src/desk/signed-values.ts';
import { changesBetween } from '../../../src/reference/fit-values.ts';
import { builtIn, layOver, reference } from '../../../src/reference/index.ts';
import { openDesk } from './open-desk.ts';

const pair = generateKeyPairSync('ed25519');
const KEY = pair.publicKey.export({ type: 'spki', format: 'der' }).toString('base64');
const signed = (values: unknown, privateKey = pair.privateKey): string => {
  const text = JSON.stringify(values);
  const signature = sign(null, Buffer.from(text), privateKey).toString('base64');
  return JSON.stringify({ format: 'plainwarmth.values', version: 1, values: text, signature });
};
const read = (values: unknown) => readSignedValues('new.json', signed(values), KEY);

const [quarter, ...others] = builtIn.quarters;
const DEARER = { ...quarter!, pencePerKWh: quarter!.pencePerKWh + 1 };
const NEWER = { edition: '2030-01-05', quarters: [DEARER, ...others] };

afterEach(() => layOver(null));

function openWithKey() {
  const { desk, store } = openDesk({ valuesKey: KEY });
  const call = <N extends RequestName>(name: N, input: Input<N>) => desk.handle(name, input, {}) as Promise<Output<N>>;
  const offer = async (text: string) =>
    (await call('file.offer', { fileName: 'new.json', bytes: new TextEncoder().encode(text) })).fileId;
  return { call, offer, store };
}

test('a file is looked at, used, outlives the program and is given back', async () => {
  const { call, offer, store } = openWithKey();
  const fileId = await offer(signed(NEWER));
  expect(await call('values.look', { fileId })).toEqual({
    edition: '2030-01-05',
    changes: [
      { path: ['edition'], before: builtIn.edition, after: '2030-01-05' },
      {
        path: ['quarters', `${quarter!.fuel} ${quarter!.from}`, 'pencePerKWh'],
        before: quarter!.pencePerKWh,
        after: quarter!.pencePerKWh + 1,
      },
    ],
  });
  expect(reference).toEqual(builtIn);
  expect(await call('values.use', { fileId })).toMatchObject({ edition: '2030-01-05', laidOver: NEWER });
  expect(reference).toEqual({ ...builtIn, ...NEWER });
  const older = await offer(signed({ ...NEWER, edition: '2030-01-04' }));
  for (const name of ['values.look', 'values.use'] as const)
    await expect(call(name, { fileId: older })).rejects.toMatchObject({ code: 'values-old' });
  // Another start: the kept file is verified again.
  layOver(null);
  expect(await call('values.read', {})).toMatchObject({ edition: '2030-01-05', builtInEdition: builtIn.edition });
  expect(reference.quarters[0]!.pencePerKWh).toBe(quarter!.pencePerKWh + 1);
  // What somebody changes in the data does not count.
  store.writeValues(signed(NEWER).replace('2030', '2031'));
  expect(await call('values.read', {})).toMatchObject({ edition: builtIn.edition, laidOver: null });
  store.writeValues(signed(NEWER));
  expect(await call('values.use', { fileId: null })).toMatchObject({ edition: builtIn.edition, laidOver: null });
  expect(reference).toEqual(builtIn);
});

test('the keys of others and changed bytes are refused, and nothing is used', async () => {
  const strange = signed(NEWER, generateKeyPairSync('ed25519').privateKey);
  const { call, offer } = openWithKey();
  await expect(offer(strange).then((fileId) => call('values.use', { fileId }))).rejects.toMatchObject({
    code: 'values-not-signed',
  });
  expect(reference).toEqual(builtIn);
  const text = signed(NEWER);
  fc.assert(
    fc.property(fc.nat(text.length - 1), fc.constantFrom('0', '7', 'a', ' '), (at, letter) => {
      const changed = text.slice(0, at) + letter + text.slice(at + 1);
      // A changed byte that leaves values and signature as they were changes nothing.
      const same = (() => {
        try {
          const { values, signature } = JSON.parse(changed) as Record<string, string>;
          const was = JSON.parse(text) as Record<string, string>;
          return (
            values === was.values && Buffer.from(signature!, 'base64').equals(Buffer.from(was.signature!, 'base64'))
          );
        } catch {
          return false;
        }
      })();
      if (same) return;
      expect(() => readSignedValues('new.json', changed, KEY)).toThrow(/no file of prices|not signed/);
    }),
  );
});

test.each([
  ['no day', { ...NEWER, edition: 'soon' }, 'edition'],
  ['a topic that is not known', { ...NEWER, weather: [] }, 'weather'],
  ['a topic of every object', { ...NEWER, toString: [] }, 'toString'],
  ['a list that is empty', { ...NEWER, quarters: [] }, 'quarters'],
  ['a price in words', { ...NEWER, quarters: [{ ...DEARER, pencePerKWh: '27' }] }, 'quarters.0.pencePerKWh'],
  ['a field that nobody knows', { ...NEWER, quarters: [{ ...DEARER, brand: 'x' }] }, 'quarters.0.brand'],
  ['a row without its source', { ...NEWER, quarters: [{ ...DEARER, source: undefined }] }, 'quarters.0.source'],
  ['a provenance of its own', { ...NEWER, quarters: [{ ...DEARER, provenance: 'heard' }] }, 'quarters.0.provenance'],
  ['a group with a gap', { ...NEWER, spread: { winter: builtIn.spread.winter } }, 'spread.'],
])('%s is refused by its place', (_, values, place) => {
  expect(() => read(values)).toThrow(place);
});

test('values as old as the program’s are refused, and those of a program that has grown newer fall away', () => {
  expect(() => read({ ...NEWER, edition: builtIn.edition })).toThrow('as new or newer');
  expect(read({ ...builtIn, edition: '2030-01-05' })).toEqual({ ...builtIn, edition: '2030-01-05' });
});

test('what is new and what goes are told beside what changes', () => {
  const { quarters } = builtIn;
  const later = { ...quarters.at(-1)!, from: '2031-01-01', to: '2031-03-31' };
  const changes = changesBetween({ quarters }, { quarters: [...quarters.slice(1), later] });
  const [gone, come] = [quarters[0]!, later].map(({ fuel, from }) => `${fuel} ${from}`);
  const told = (name: string) => changes.filter(({ path }) => path[1] === name);
  expect(told(gone!).map(({ path, after }) => [path[2], after])).toEqual(
    ['fuel', 'from', 'to', 'pencePerKWh', 'standingPencePerDay'].map((field) => [field, undefined]),
  );
  expect(told(come!).map(({ before, after }) => [before, after])).toEqual(
    [later.fuel, later.from, later.to, later.pencePerKWh, later.standingPencePerDay].map((value) => [undefined, value]),
  );
  expect(changes).toHaveLength(10);
  expect(changesBetween(builtIn, builtIn)).toEqual([]);
});
