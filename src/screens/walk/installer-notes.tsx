/** For the installer's eyes: shown only while N holds it open. */
export function InstallerNotes({ notes }: { readonly notes: readonly string[] }) {
  return (
    <aside className="walk-notes small" aria-label="Notes for the installer">
      {notes.length > 0 ? notes.join(' ') : 'No notes on this page.'} <span className="quiet">(N hides this)</span>
    </aside>
  );
}
