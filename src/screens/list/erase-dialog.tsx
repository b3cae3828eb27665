import { type FormEvent, useState } from 'react';
import type { HouseholdSummary } from '../../desk/contract.ts';
import { say } from '../../words/say.ts';
import { Dialog } from '../shared/dialog.tsx';
import { TextField } from '../shared/text-field.tsx';
import { describeFailure } from '../state/describe-failure.ts';

/** Erasing cannot be taken back, so the name is typed out. */
export function EraseDialog(props: {
  readonly row: HouseholdSummary;
  readonly onErase: (row: HouseholdSummary, confirmName: string) => Promise<void>;
  readonly onClose: () => void;
}) {
  const [typed, setTyped] = useState('');
  const [refusal, setRefusal] = useState<string | null>(null);
  const erase = async (event: FormEvent) => {
    event.preventDefault();
    if (typed.trim() !== props.row.name) {
      return setRefusal(say('The name typed is not “{name}”. Nothing was erased.', { name: props.row.name }));
    }
    try {
      await props.onErase(props.row, typed.trim());
      props.onClose();
    } catch (reason) {
      setRefusal(describeFailure(reason));
    }
  };
  return (
    <Dialog title={say('Erase {name}?', { name: props.row.name })} onClose={props.onClose}>
      <form onSubmit={erase} className="stack">
        <p>
          {say(
            'This erases the household with all its bills, readings, estimates and bill checks. It cannot be undone. To keep a copy, export it first.',
          )}
        </p>
        <TextField
          label={say('Type the name “{name}” to erase it', { name: props.row.name })}
          value={typed}
          maxLength={120}
          refusal={refusal}
          onChange={(text) => {
            setTyped(text);
            setRefusal(null);
          }}
        />
        <div className="actions">
          <button type="submit" className="danger">
            {say('Erase for good')}
          </button>
          <button type="button" onClick={props.onClose}>
            {say('Cancel')}
          </button>
        </div>
      </form>
    </Dialog>
  );
}
