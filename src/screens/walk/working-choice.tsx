import { useState } from 'react';
import { WorkingView } from '../../charts/working-view.tsx';
import type { Working } from '../../model/working.ts';
import { say } from '../../words/say.ts';
import { Dialog } from '../shared/dialog.tsx';

/** "How we know": the sums behind a page, one under the other. */
export function WorkingChoice({ workings }: { readonly workings: readonly Working[] }) {
  const [open, setOpen] = useState(false);
  if (workings.length === 0) return null;
  return (
    <>
      <button type="button" onClick={() => setOpen(true)}>
        {say('How we know')}
      </button>
      {open ? (
        <Dialog title={say('How we know')} side onClose={() => setOpen(false)}>
          {workings.map((working) => (
            <WorkingView key={working.title} working={working} withTitle />
          ))}
        </Dialog>
      ) : null}
    </>
  );
}
