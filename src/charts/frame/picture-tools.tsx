/** What can be taken away of a picture: into the clipboard, as a drawing, as dots. */
import { copyPicture, picturePng } from './picture-png.ts';
import { fileNameOf, pictureText, saveFile } from './save.ts';

const COPIED = 'The picture is in the clipboard.';
const NOT_COPIED = 'This browser does not let the picture be copied. Save it as PNG instead.';
const NOT_PAINTED = 'This browser could not paint the picture as PNG. Save the picture as it is instead.';

export function PictureTools(props: {
  readonly name: string;
  /** The drawing as it stands now; null while there is none. */
  readonly find: () => SVGElement | null;
  /** One line for the person, and for who listens. */
  readonly say: (sentence: string) => void;
}) {
  const { name, find, say } = props;
  const paint = async (work: (svg: SVGElement) => Promise<void>, done: string, refused: string) => {
    const svg = find();
    if (!svg) return;
    say('');
    await work(svg).then(
      () => say(done),
      () => say(refused),
    );
  };
  const saveDrawing = () => {
    const svg = find();
    if (svg) saveFile(new Blob([pictureText(svg)], { type: 'image/svg+xml' }), `${fileNameOf(name)}.svg`);
  };
  const saveDots = async (svg: SVGElement) => saveFile(await picturePng(svg), `${fileNameOf(name)}.png`);
  const of = <span className="unseen">: {name}</span>;
  return (
    <>
      <button type="button" className="plain" onClick={() => void paint(copyPicture, COPIED, NOT_COPIED)}>
        Copy picture{of}
      </button>
      <button type="button" className="plain" onClick={saveDrawing}>
        Save picture{of}
      </button>
      <button type="button" className="plain" onClick={() => void paint(saveDots, '', NOT_PAINTED)}>
        Save as PNG{of}
      </button>
    </>
  );
}
