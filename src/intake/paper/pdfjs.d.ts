/** The half that takes a PDF apart, which comes without types. */
declare module 'pdfjs-dist/legacy/build/pdf.worker.mjs' {
  export const WorkerMessageHandler: { initializeFromPort(port: object): void };
}
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
