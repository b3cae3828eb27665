/** A sentence in which figures that have a working are underlined and open it. */
import type { Working } from '../../model/working.ts';
import { Glossed } from './glossary-page.tsx';
import { keepTogether, splitSpoken } from './split-spoken.ts';

export interface SpokenFigure {
  /** The figure as it stands in the sentence. */
  readonly text: string;
  readonly working: Working;
}

export function Spoken(props: {
  readonly sentence: string;
  readonly figures: readonly SpokenFigure[];
  readonly onOpen: (working: Working) => void;
}) {
  return (
    <>
      {splitSpoken(
        props.sentence,
        props.figures.map((figure) => figure.text),
      ).map((part) =>
        part.figure === null ? (
          <Glossed key={part.at} text={part.text} show={keepTogether} />
        ) : (
          <FigureButton
            key={part.at}
            text={keepTogether(part.text)}
            working={props.figures[part.figure]!.working}
            onOpen={props.onOpen}
          />
        ),
      )}
    </>
  );
}

export function FigureButton(props: {
  readonly text: string;
  readonly working: Working;
  readonly onOpen: (working: Working) => void;
}) {
  return (
    <button type="button" className="figure-link" onClick={() => props.onOpen(props.working)}>
      {props.text}
    </button>
  );
}
