import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DeskError } from '../../../src/desk/desk-error.ts';
import { LARGEST_LOGO_BYTES } from '../../../src/desk/limits.ts';
import { readLogo, settleLogo } from '../../../src/desk/logo.ts';
import { jpegHead, logoAddress, smallPng, wholeJpeg } from './logos.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);

describe('what a logo is, by its bytes', () => {
  test.each([
    ['a PNG', smallPng(60, 20), { mediaType: 'image/png', width: 60, height: 20 }],
    ['a JPEG', jpegHead(640, 200), { mediaType: 'image/jpeg', width: 640, height: 200 }],
    ['a progressive JPEG', jpegHead(300, 301, 0xc2), { mediaType: 'image/jpeg', width: 300, height: 301 }],
    ['a PNG that is cut off', smallPng().subarray(0, 20), null],
    ['a JPEG that is cut off', jpegHead(640, 200).subarray(0, 30), null],
    ['a GIF', bytesOf('GIF89a with something behind it, long enough'), null],
    ['nothing', new Uint8Array(), null],
  ])('%s', (_, bytes, facts) => expect(readLogo(bytes)).toEqual(facts));

  test('any bytes at all are read or not, and never break it', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), fc.boolean(), (bytes, asJpeg) => {
        const facts = readLogo(asJpeg ? Uint8Array.from([0xff, 0xd8, ...bytes]) : bytes);
        expect(facts === null || facts.width >= 0).toBe(true);
      }),
    );
  });
});

function refusalOf(address: string): DeskError {
  try {
    settleLogo(address);
  } catch (error) {
    expect(error).toBeInstanceOf(DeskError);
    return error as DeskError;
  }
  throw new Error('It was taken.');
}

describe('what is taken', () => {
  test('none is none', () => expect(settleLogo('')).toBe(''));
  test('a PNG as it is', () => expect(settleLogo(logoAddress(smallPng()))).toBe(logoAddress(smallPng())));
  test('a JPEG that calls itself a PNG, under its own type', () =>
    expect(settleLogo(logoAddress(wholeJpeg(9, 9)))).toBe(logoAddress(wholeJpeg(9, 9), 'image/jpeg')));
  test('a file of the largest size', () => {
    const bytes = new Uint8Array(LARGEST_LOGO_BYTES);
    bytes.set(smallPng());
    expect(settleLogo(logoAddress(bytes))).toContain('data:image/png;base64,');
  });
  test.each([
    [
      'one byte more',
      logoAddress(Uint8Array.from([...smallPng(), ...new Uint8Array(LARGEST_LOGO_BYTES)])),
      'logo-too-large',
      'up to 200 kB',
    ],
    [
      'a drawing',
      logoAddress(bytesOf('<?xml version="1.0"?><svg onload="alert(1)"/>'), 'image/svg+xml'),
      'logo-unknown',
      'SVG',
    ],
    ['a drawing that calls itself a PNG', logoAddress(bytesOf('<svg/>')), 'logo-unknown', 'SVG'],
    ['a text', logoAddress(bytesOf('hello')), 'logo-unknown', 'neither a PNG nor a JPEG'],
    ['an address elsewhere', 'https://example.invalid/logo.png', 'logo-unknown', 'neither'],
    ['an address that would leave its quotes', `data:image/png;base64,AAAA" onerror="x`, 'logo-unknown', 'neither'],
    ['the 33 bytes of a head', logoAddress(smallPng().subarray(0, 33)), 'logo-broken', 'incomplete'],
    ['a PNG without its end', logoAddress(smallPng().subarray(0, -12)), 'logo-broken', 'incomplete'],
    [
      'a PNG with a byte flipped',
      logoAddress(smallPng().map((b, at) => (at === 50 ? b ^ 1 : b))),
      'logo-broken',
      'incomplete',
    ],
    ['a head larger than its picture', logoAddress(smallPng(60, 300)), 'logo-broken', 'incomplete'],
    ['the head of a JPEG', logoAddress(jpegHead(9, 9)), 'logo-broken', 'incomplete'],
    ['too many pixels', logoAddress(smallPng(4001, 10)), 'logo-pixels', '4001 by 10'],
    ['no pixels', logoAddress(jpegHead(0, 10)), 'logo-pixels', '0 by 10'],
  ])('%s is refused in words', (_, address, code, words) => {
    const refusal = refusalOf(address);
    expect(refusal.code).toBe(code);
    expect(refusal.message).toContain(words);
    expect(refusal.remedy?.length).toBeGreaterThan(20);
  });
});
