/** Both faces, inside the document itself: it must look the same on a machine that has neither, and fetch nothing. */
import sans from '@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2?inline';
import serif from '@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-normal.woff2?inline';

const face = (family: string, source: string) =>
  `@font-face{font-family:"${family}";font-weight:200 900;font-style:normal;src:url("${source}") format("woff2")}`;

export const FONT_FACES = [face('Source Serif 4 Variable', serif), face('Source Sans 3 Variable', sans)].join('\n');
