/** The half that takes a PDF apart; it comes without types, and puts itself where the other half looks for it. */
declare module 'pdfjs-dist/legacy/build/pdf.worker.mjs';
/** The part that unpacks pictures, which comes without types. */
declare module 'pdfjs-dist/legacy/image_decoders/pdf.image_decoders.mjs' {
  export const VerbosityLevel: { readonly ERRORS: number };
  export function setVerbosityLevel(level: number): void;
  export class JpegImage {
    constructor(options: object);
    numComponents: number;
    readonly components: unknown[];
    /** Whether its colours are brightness and two differences from it. */
    readonly _isColorConversionNeeded: boolean;
    parse(bytes: Uint8Array): void;
    getData(how: { width: number; height: number; forceRGB: boolean }): Uint8Array;
  }
}
