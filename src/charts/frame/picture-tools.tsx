/** What can be taken away of a picture: into the clipboard, as a drawing, as dots. */

import { say } from '../../words/say.ts';
import { ownFace } from './own-face.ts';
import { fileNameOf, pictureText, saveInBrowser } from './save.ts';

export function PictureTools(props: {
  readonly name: string;
  /** The drawing as it stands now; null while there is none. */
  readonly find: () => SVGElement | null;
  /** One line for the person, and for who listens. */
  readonly tell: (sentence: string) => void;
}) {
  const { name, find, tell } = props;
  const paint = async (work: (svg: SVGElement) => Promise<void>, done: string, refused: string) => {
    const svg = find();
    if (!svg) return;
    tell('');
    await work(svg).then(
      () => tell(done),
      () => tell(refused),
    );
  };
  const saveDrawing = () => {
    const svg = find();
    if (svg) saveInBrowser(new Blob([pictureText(svg)], { type: 'image/svg+xml' }), `${fileNameOf(name)}.svg`);
  };
  const saveDots = async (svg: SVGElement) => saveInBrowser(await picturePng(svg), `${fileNameOf(name)}.png`);
  const copy = () =>
    paint(
      copyPicture,
      say('The picture is in the clipboard.'),
      say('This browser does not let the picture be copied. Save it as PNG instead.'),
    );
  const saveAsPng = () =>
    paint(saveDots, '', say('This browser could not save the picture as PNG. Save the picture as it is instead.'));
  const of = <span className="unseen">: {name}</span>;
  return (
    <>
      <button type="button" className="plain" onClick={() => void copy()}>
        {say('Copy picture')}
        {of}
      </button>
      <button type="button" className="plain" onClick={saveDrawing}>
        {say('Save picture')}
        {of}
      </button>
      <button type="button" className="plain" onClick={() => void saveAsPng()}>
        {say('Save as PNG')}
        {of}
      </button>
    </>
  );
}

/** Dots for each pixel of the screen, so that letters stay sharp on paper. */
const DOTS_PER_PIXEL = 2;

/** Nothing is fetched but our own face: the picture goes into the canvas as its own text. */
async function picturePng(svg: SVGElement): Promise<Blob> {
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
async function copyPicture(svg: SVGElement): Promise<void> {
  // The promise goes in unawaited: some browsers let only the click itself write.
  await navigator.clipboard.write([new ClipboardItem({ 'image/png': picturePng(svg) })]);
}
