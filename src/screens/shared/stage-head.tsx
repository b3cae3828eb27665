import type { ReactNode } from 'react';
import { useHousehold } from '../household-context.tsx';
import { Spoken, type SpokenFigure } from './spoken.tsx';

/** How every stage opens: its sentence in the voice, with underlined figures, and one quiet line. */
export function StageHead(props: {
  readonly sentence: string;
  readonly figures?: readonly SpokenFigure[];
  /** The quiet line below, with underlined figures of its own. */
  readonly remainder?: string;
  readonly remainderFigures?: readonly SpokenFigure[];
  readonly children?: ReactNode;
}) {
  const { openWorking } = useHousehold();
  return (
    <header className="stage-head">
      <h2 className="voice">
        <Spoken sentence={props.sentence} figures={props.figures ?? []} onOpen={openWorking} />
      </h2>
      {props.remainder ? (
        <p className="quiet">
          <Spoken sentence={props.remainder} figures={props.remainderFigures ?? []} onOpen={openWorking} />
        </p>
      ) : null}
      {props.children ? <p className="quiet">{props.children}</p> : null}
    </header>
  );
}
