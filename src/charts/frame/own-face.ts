/** Our own face as text, since a picture painted as dots sees no file beside itself. */

import { readAsAddress } from './read-as-address.ts';

const FACE = 'Source Sans 3 Variable';
/** The part of the face that has the letters of English. */
const LATIN = /U\+0+-0*FF\b/i;

function findAddress(): string | null {
  for (const sheet of document.styleSheets) {
    for (const rule of sheet.cssRules) {
      if (!(rule instanceof CSSFontFaceRule)) continue;
      const { style } = rule;
      if (!style.getPropertyValue('font-family').includes(FACE)) continue;
      if (!LATIN.test(style.getPropertyValue('unicode-range'))) continue;
      const path = /url\("?([^")]+)"?\)/.exec(style.getPropertyValue('src'))?.[1];
      if (path) return new URL(path, sheet.href ?? document.baseURI).href;
    }
  }
  return null;
}

/** The rule to put into a picture, or nothing: it is then painted with a face of the machine. */
export async function ownFace(): Promise<string> {
  try {
    const address = findAddress();
    if (!address) return '';
    const face = await readAsAddress(await (await fetch(address)).blob());
    return `@font-face{font-family:'${FACE}';font-weight:200 900;src:url(${face}) format('woff2')}`;
  } catch {
    return '';
  }
}
