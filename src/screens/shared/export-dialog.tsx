import { useState } from 'react';
import { say } from '../../words/say.ts';
import { call, saveFile } from '../desk.ts';
import { TickField } from './choice-field.tsx';
import { Dialog } from './dialog.tsx';

/** Hands the file of a household to the person. Answers the sentence on a part that stayed out, or null. */
export async function exportHousehold(id: string, withFiles: boolean): Promise<string | null> {
  const file = await call('household.export', { id, withFiles });
  await saveFile(file);
  return file.remark === undefined ? null : say('Exported without a part. {remark}', { remark: file.remark });
}

/** An exported file goes to others, so it says first what is in it. */
export function ExportDialog(props: {
  /** Of the household. */
  readonly name: string;
  readonly onExport: (withFiles: boolean) => void;
  readonly onClose: () => void;
}) {
  const [withFiles, setWithFiles] = useState(false);
  return (
    <Dialog title={say('Export {name}?', { name: props.name })} onClose={props.onClose}>
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
              props.onExport(withFiles);
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
