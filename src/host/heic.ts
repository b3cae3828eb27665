/** Unpacks the pictures of telephones (HEIC) with libheif, compiled to WebAssembly; it lies in node_modules as its makers built it. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { UnpackHeic } from '../intake/intake.ts';

/** What of the compiled program is used here; what fails throws, or leaves out the channels. */
interface LibHeif {
  readonly heif_colorspace: { readonly heif_colorspace_YCbCr: object };
  readonly heif_chroma: { readonly heif_chroma_420: object };
  heif_context_alloc(): object;
  heif_context_free(context: object): void;
  heif_context_read_from_memory(context: object, bytes: Uint8Array): object;
  heif_js_context_get_primary_image_handle(context: object): object;
  heif_image_handle_get_width(handle: object): number;
  heif_image_handle_get_height(handle: object): number;
  heif_image_handle_release(handle: object): void;
  heif_js_decode_image2(
    handle: object,
    colours: object,
    chroma: object,
  ): { readonly image?: object; readonly channels?: readonly Channel[] };
  heif_image_release(image: object): void;
}
interface Channel {
  readonly width: number;
  readonly height: number;
  /** Bytes from one line to the next. */
  readonly stride: number;
  readonly data: Uint8Array;
}
type Load = (options: {
  readonly wasmBinary: Uint8Array;
  readonly print: (line: string) => void;
  readonly printErr: (line: string) => void;
}) => LibHeif;

const require = createRequire(import.meta.url);
const PROGRAM = 'libheif-js/libheif-wasm/libheif';

/** Loads the program when the first such picture comes. */
export function makeHeicUnpacker(): UnpackHeic {
  let library: LibHeif | undefined;
  const silent = () => undefined;
  return (bytes, mostPoints) => {
    library ??= (require(`${PROGRAM}.js`) as Load)({
      wasmBinary: readFileSync(require.resolve(`${PROGRAM}.wasm`)),
      print: silent,
      printErr: silent,
    });
    const context = library.heif_context_alloc();
    try {
      library.heif_context_read_from_memory(context, bytes);
      const handle = library.heif_js_context_get_primary_image_handle(context);
      const [wide, high] = [library.heif_image_handle_get_width(handle), library.heif_image_handle_get_height(handle)];
      if (wide * high > mostPoints) return 'large';
      // The first channel is brightness: colours are not asked for.
      const { heif_colorspace: colours, heif_chroma: chroma } = library;
      const { image, channels } = library.heif_js_decode_image2(
        handle,
        colours.heif_colorspace_YCbCr,
        chroma.heif_chroma_420,
      );
      library.heif_image_handle_release(handle);
      if (image) library.heif_image_release(image);
      const [light] = channels ?? [];
      return light && withoutMargin(light);
    } catch {
      return undefined;
    } finally {
      library.heif_context_free(context);
    }
  };
}

function withoutMargin({ width, height, stride, data }: Channel) {
  const points = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) points.set(data.subarray(y * stride, y * stride + width), y * width);
  return { width, height, points };
}
