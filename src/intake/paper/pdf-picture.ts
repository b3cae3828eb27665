/** The pictures of a PDF's page laid where they belong, in grey: what a scanner put there. */
import type { PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Grey } from '../terms/paper-reading.ts';
import { brightness } from './png.ts';

/** Long side of the page that is drawn, points of the picture: A4 at 200 dots an inch. */
const LONG_SIDE = 2340;
/** Pictures that cover less of the page are marks of the supplier. */
const LEAST_SHARE = 0.3;

/** How pdf.js lays out the points of a picture. */
interface Raster {
  readonly width: number;
  readonly height: number;
  /** One bit a point, three bytes, four bytes. */
  readonly kind?: 1 | 2 | 3;
  readonly data?: Uint8Array | Uint8ClampedArray;
}
type Matrix = readonly [number, number, number, number, number, number];

/** `packed` where a picture as large as a page is packed in a way that is not read here (JBIG2, CCITT, JPEG 2000). */
export async function pictureOfPage(page: PDFPageProxy): Promise<Grey | 'packed' | undefined> {
  const { OPS } = await import('pdfjs-dist/legacy/build/pdf.mjs');
  const { width, height, transform } = page.getViewport({ scale: 1 });
  const scale = LONG_SIDE / Math.max(width, height);
  const size = { width: Math.round(width * scale), height: Math.round(height * scale) };
  const { fnArray, argsArray } = await page.getOperatorList();
  let drawn: Uint8Array | undefined;
  let [covered, lost] = [0, 0];
  let place = transform.map((one) => one * scale) as unknown as Matrix;
  const kept: Matrix[] = [];
  for (let i = 0; i < fnArray.length; i++) {
    const args = argsArray[i] as unknown[] | null;
    if (fnArray[i] === OPS.save) kept.push(place);
    else if (fnArray[i] === OPS.restore) place = kept.pop() ?? place;
    else if (fnArray[i] === OPS.transform) place = times(place, args as unknown as Matrix);
    else if (fnArray[i] === OPS.paintFormXObjectBegin) {
      kept.push(place);
      if (args?.[0]) place = times(place, args[0] as Matrix);
    } else if (fnArray[i] === OPS.paintFormXObjectEnd) place = kept.pop() ?? place;
    else if (fnArray[i] === OPS.paintImageXObject || fnArray[i] === OPS.paintInlineImageXObject) {
      const raster = typeof args?.[0] === 'string' ? await fetched(page, args[0]) : (args?.[0] as Raster | undefined);
      const share = Math.abs(place[0] * place[3] - place[1] * place[2]) / (size.width * size.height);
      if (!raster?.data || !raster.kind) {
        lost += share;
        continue;
      }
      drawn ??= new Uint8Array(size.width * size.height).fill(255);
      covered += share;
      lay(raster, place, drawn, size);
    }
  }
  if (lost >= LEAST_SHARE) return 'packed';
  return drawn && covered >= LEAST_SHARE ? { ...size, points: drawn } : undefined;
}

const fetched = (page: PDFPageProxy, name: string): Promise<Raster | undefined> =>
  new Promise((resolve) => {
    const from = name.startsWith('g_') ? page.commonObjs : page.objs;
    from.get(name, (raster: Raster | null) => resolve(raster ?? undefined));
  });

const times = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [
  a * g + c * h,
  b * g + d * h,
  a * i + c * j,
  b * i + d * j,
  a * k + c * l + e,
  b * k + d * l + f,
];

/** A picture fills the square of one, standing on its foot; each point of the page takes the mean of what lies under it. */
function lay(raster: Raster, [a, b, c, d, e, f]: Matrix, into: Uint8Array, size: Omit<Grey, 'points'>): void {
  const under = a * d - b * c;
  if (under === 0) return;
  const { width, height } = raster;
  const reach = Math.max(1, Math.round(Math.sqrt((width * height) / Math.abs(under)) / 2));
  const [xs, ys] = [
    [e, e + a, e + c, e + a + c],
    [f, f + b, f + d, f + b + d],
  ];
  const [left, right] = [Math.max(0, Math.floor(Math.min(...xs))), Math.min(size.width, Math.ceil(Math.max(...xs)))];
  const [top, bottom] = [Math.max(0, Math.floor(Math.min(...ys))), Math.min(size.height, Math.ceil(Math.max(...ys)))];
  for (let y = top; y < bottom; y++) {
    for (let x = left; x < right; x++) {
      const [dx, dy] = [x + 0.5 - e, y + 0.5 - f];
      const u = Math.floor(((d * dx - c * dy) / under) * width);
      const v = Math.floor((1 - (a * dy - b * dx) / under) * height);
      if (u < 0 || v < 0 || u >= width || v >= height) continue;
      let [sum, count] = [0, 0];
      for (let row = v - reach + 1; row < v + reach; row++) {
        for (let column = u - reach + 1; column < u + reach; column++) {
          if (row < 0 || column < 0 || row >= height || column >= width) continue;
          sum += lightAt(raster, column, row);
          count++;
        }
      }
      into[y * size.width + x] = sum / count;
    }
  }
}

function lightAt({ width, kind, data }: Raster, x: number, y: number): number {
  if (kind === 1) return data![y * ((width + 7) >> 3) + (x >> 3)]! & (0x80 >> (x & 7)) ? 255 : 0;
  const at = (y * width + x) * (kind === 2 ? 3 : 4);
  return brightness(data![at]!, data![at + 1]!, data![at + 2]!);
}
