/** A picture as dots: for letters, slides and messages that take no drawing. */
import { ownFace } from './own-face.ts';
import { pictureText } from './save.ts';

/** Dots for each pixel of the screen, so that letters stay sharp on paper. */
const DOTS_PER_PIXEL = 2;

/** Nothing is fetched but our own face: the picture goes into the canvas as its own text. */
export async function picturePng(svg: SVGElement): Promise<Blob> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(pictureText(svg, await ownFace()))}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = image.naturalWidth * DOTS_PER_PIXEL;
  canvas.height = image.naturalHeight * DOTS_PER_PIXEL;
  const brush = canvas.getContext('2d');
  if (!brush) throw new Error('This window paints no pictures.');
  brush.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) =>
    canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('The picture came out empty.'))), 'image/png'),
  );
}

/** Rejects where the browser has no clipboard for pictures, or does not let us write to it. */
export async function copyPicture(svg: SVGElement): Promise<void> {
  // The promise goes in unawaited: some browsers let only the click itself write.
  await navigator.clipboard.write([new ClipboardItem({ 'image/png': picturePng(svg) })]);
}
