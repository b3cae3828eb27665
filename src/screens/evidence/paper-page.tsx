import type { PaperReading } from '../../intake/intake.ts';
import { say } from '../../words/say.ts';

export interface PlaceOnPage {
  readonly page: number;
  /** Which word of it. */
  readonly at: number;
  readonly text: string;
}

/** The words of a page at their places, or its picture. Always light, as paper is. What a word with a number says can be put right. */
export function PaperPage(props: {
  readonly paper: PaperReading;
  readonly page: number;
  /** The value that is pointed at. */
  readonly shown: string | null;
  readonly corrected: readonly PlaceOnPage[];
  readonly onPick: (place: PlaceOnPage) => void;
}) {
  const { paper, page } = props;
  const whole = paper.pages[page];
  if (!whole) return null;
  const sheet = { ...whole, ...written(whole.words) };
  const percent = (part: number, whole: number) => `${((part / whole) * 100).toFixed(3)}%`;
  const marks = paper.values.flatMap(({ key, state, boxes }) =>
    boxes.filter((box) => box.page === page).map((box, i) => ({ ...box, state, key, id: `${key} ${i}` })),
  );
  // What was typed and became no value is marked too.
  const typed = props.corrected.flatMap((one) => {
    const word = one.page === page ? whole.words[one.at] : undefined;
    const isMarked =
      word &&
      marks.some(({ x, y, width }) => x <= word.x + 1 && word.x < x + width && Math.abs(y - word.y) < word.height);
    return word && !isMarked ? [{ ...word, state: 'typed', key: '', id: `${one.at}` }] : [];
  });
  const textOf = (at: number, printed: string) =>
    props.corrected.find((one) => one.page === page && one.at === at)?.text ?? printed;
  return (
    <div className="paper-sheet" style={{ aspectRatio: `${sheet.width} / ${sheet.height}` }}>
      <svg
        viewBox={`${sheet.x} ${sheet.y} ${sheet.width} ${sheet.height}`}
        role="img"
        aria-label={say('The words of the page')}
      >
        {whole.picture ? <image href={whole.picture} width={whole.width} height={whole.height} /> : null}
        {[...marks, ...typed].map(({ id, key, x, y, width, height, state }) => (
          <rect
            key={id}
            className={`mark-${state} ${key === props.shown ? 'is-shown' : ''}`}
            x={x - 2}
            y={y - 1}
            width={width + 4}
            height={height + 3}
          />
        ))}
        {(whole.picture ? [] : sheet.words).map((word, at) => (
          <text
            // biome-ignore lint/suspicious/noArrayIndexKey: a word is its place on the page
            key={at}
            x={word.x}
            y={word.y + word.height * 0.8}
            fontSize={word.height}
            textLength={Math.max(1, word.width)}
            lengthAdjust="spacingAndGlyphs"
          >
            {textOf(at, word.text)}
          </text>
        ))}
      </svg>
      {sheet.words.map((word, at) =>
        /\d/.test(word.text) ? (
          <button
            // biome-ignore lint/suspicious/noArrayIndexKey: a word is its place on the page
            key={at}
            type="button"
            // By keyboard a value in the table leads to the same place.
            tabIndex={-1}
            aria-label={say('Correct {text}', { text: textOf(at, word.text) })}
            style={{
              left: percent(word.x - sheet.x, sheet.width),
              top: percent(word.y - sheet.y, sheet.height),
              width: percent(word.width, sheet.width),
              height: percent(word.height, sheet.height),
            }}
            onClick={() => props.onPick({ page, at, text: textOf(at, word.text) })}
          />
        ) : null,
      )}
    </div>
  );
}

const MARGIN = 24;
/** The part of a page that is written on, so that its words are as large as can be. */
function written(words: PaperReading['pages'][number]['words']) {
  const x = Math.min(...words.map((word) => word.x)) - MARGIN;
  const y = Math.min(...words.map((word) => word.y)) - MARGIN;
  const right = Math.max(...words.map((word) => word.x + word.width)) + MARGIN;
  const bottom = Math.max(...words.map((word) => word.y + word.height)) + MARGIN;
  return words.length === 0 ? { x: 0, y: 0 } : { x, y, width: right - x, height: bottom - y };
}
