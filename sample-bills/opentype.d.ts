/** The letters' outlines of a font; the package comes without types. */
declare module 'opentype.js/dist/opentype.mjs' {
  type Command =
    | { readonly type: 'M' | 'L'; readonly x: number; readonly y: number }
    | { readonly type: 'Q'; readonly x1: number; readonly y1: number; readonly x: number; readonly y: number }
    | { readonly type: 'Z' };
  export interface Font {
    getAdvanceWidth(text: string, size: number): number;
    getPath(text: string, x: number, y: number, size: number): { readonly commands: readonly Command[] };
  }
  export function parse(bytes: ArrayBuffer): Font;
}
