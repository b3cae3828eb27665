import type { ReactNode } from 'react';
import { useHousehold } from '../household-context.tsx';
import { Spoken, type SpokenFigure } from './spoken.tsx';

/** How every stage opens: its sentence in the voice, with underlined figures, and one quiet line. */
export function StageHead(props: {
  readonly sentence: string;
  readonly figures?: readonly SpokenFigure[];
  readonly children?: ReactNode;
}) {
  const { openWorking } = useHousehold();
  return (
    <header className="stage-head">
      <h2 className="voice">
        <Spoken sentence={props.sentence} figures={props.figures ?? []} onOpen={openWorking} />
      </h2>
      {props.children ? <p className="quiet">{props.children}</p> : null}
    </header>
  );
}
