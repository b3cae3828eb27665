import { useState } from 'react';
import { WorkingView } from '../../charts/working-view.tsx';
import { say } from '../../words/say.ts';
import type { ShownWorking } from '../../words/working.ts';
import { Dialog } from './dialog.tsx';

/** "How we know": the sums behind a picture, a section or a page, one under the other; sought only once they are asked for. */
export function HowWeKnow(props: {
  readonly find: () => readonly ShownWorking[];
  /** What it is about, for those who do not see where the button stands. */
  readonly about?: string;
  /** True beside a picture, where the button is one quiet tool among others. */
  readonly plain?: boolean;
}) {
  const [workings, setWorkings] = useState<readonly ShownWorking[] | null>(null);
  return (
    <>
      <button
        type="button"
        className={props.plain ? 'plain how-known' : 'how-known'}
        onClick={() => setWorkings(props.find())}
      >
        {say('How we know')}
        {props.about ? <span className="unseen">: {props.about}</span> : null}
      </button>
      {workings === null ? null : (
        <Dialog title={say('How we know')} side onClose={() => setWorkings(null)}>
          {workings.map((working) => (
            <WorkingView key={`${working.title}|${working.result.value}`} working={working} withTitle />
          ))}
        </Dialog>
      )}
    </>
  );
}
