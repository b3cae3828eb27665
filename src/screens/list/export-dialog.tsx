import { useState } from 'react';
import type { HouseholdSummary } from '../../desk/contract.ts';
import { say } from '../../words/say.ts';
import { TickField } from '../shared/choice-field.tsx';
import { Dialog } from '../shared/dialog.tsx';

/** An exported file goes to others, so it says first what is in it. */
export function ExportDialog(props: {
  readonly row: HouseholdSummary;
  readonly onExport: (row: HouseholdSummary, withFiles: boolean) => void;
  readonly onClose: () => void;
}) {
  const [withFiles, setWithFiles] = useState(false);
  return (
    <Dialog title={say('Export {name}?', { name: props.row.name })} onClose={props.onClose}>
      <div className="stack">
        <p>
          {say(
            'All that you typed goes along, names too, with readings, estimates and bill checks. Names, addresses and long numbers that came from files are masked where they were recognised. Bills on paper stay here.',
          )}
        </p>
        <TickField
          label={say('Export the meter files too, as they were imported, with the names and numbers in them')}
          checked={withFiles}
          onChange={setWithFiles}
        />
        <div className="actions">
          <button
            type="button"
            className="main"
            onClick={() => {
              props.onExport(props.row, withFiles);
              props.onClose();
            }}
          >
            {say('Export')}
          </button>
          <button type="button" onClick={props.onClose}>
            {say('Cancel')}
          </button>
        </div>
      </div>
    </Dialog>
  );
}
