/** A sentence in which figures that have a working are underlined and open it. */

import { keepTogether } from '../../words/keep-together.ts';
import type { ShownWorking } from '../../words/working.ts';
import { Closed, Glossed } from './glossary-page.tsx';
import { closingMarks, splitSpoken } from './split-spoken.ts';

export interface SpokenFigure {
  /** The figure as it stands in the sentence. */
  readonly text: string;
  readonly working: ShownWorking;
}

export function Spoken(props: {
  readonly sentence: string;
  readonly figures: readonly SpokenFigure[];
  readonly onOpen: (working: ShownWorking) => void;
}) {
  const parts = splitSpoken(
    props.sentence,
    props.figures.map((figure) => figure.text),
  );
  return parts.map((part, index) => {
    if (part.figure === null) {
      const text = index === 0 ? part.text : part.text.slice(closingMarks(part.text).length);
      return <Glossed key={part.at} text={text} show={keepTogether} />;
    }
    return (
      <Closed key={part.at} marks={closingMarks(parts[index + 1]?.text ?? '')}>
        <FigureButton
          text={keepTogether(part.text)}
          working={props.figures[part.figure]!.working}
          onOpen={props.onOpen}
        />
      </Closed>
    );
  });
}

export function FigureButton(props: {
  readonly text: string;
  readonly working: ShownWorking;
  readonly onOpen: (working: ShownWorking) => void;
}) {
  return (
    <button type="button" className="figure-link" onClick={() => props.onOpen(props.working)}>
      {props.text}
    </button>
  );
}
