import type { ReactNode } from 'react';
import { say } from '../../words/say.ts';

/** For the installer's eyes: hidden until N is pressed, and again by N. */
export function InstallerNotes(props: { readonly notes: readonly string[]; readonly children?: ReactNode }) {
  const { notes, children } = props;
  return (
    <aside className="walk-notes small" aria-label={say('Notes for the installer')}>
      {notes.length > 0 ? notes.join(' ') : say('No notes on this page.')}{' '}
      <span className="quiet">{say('(N hides this)')}</span>
      {children}
    </aside>
  );
}
