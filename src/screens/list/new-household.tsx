import { type FormEvent, useLayoutEffect, useRef, useState } from 'react';
import { say } from '../../words/say.ts';
import { call } from '../desk.ts';
import { describeFailure } from '../state/describe-failure.ts';
import { go } from '../use-route.ts';

/** One field and one button: everything else can be told later. */
export function NewHousehold(props: { readonly onDone: () => void }) {
  const [name, setName] = useState('');
  const [refusal, setRefusal] = useState<string | null>(null);
  const field = useRef<HTMLInputElement>(null);
  useLayoutEffect(() => {
    const opener = document.activeElement;
    field.current?.focus();
    // Whoever thinks better of it stands where they were.
    return () => {
      if (opener instanceof HTMLElement && opener.isConnected) opener.focus();
    };
  }, []);

  const make = async (event: FormEvent) => {
    event.preventDefault();
    if (name.trim() === '') return setRefusal(say('Give the home a name, such as the house or the family.'));
    try {
      const open = await call('household.create', { name: name.trim() });
      props.onDone();
      go({ screen: 'household', id: open.household.id, stage: 'evidence' });
    } catch (reason) {
      setRefusal(describeFailure(reason));
    }
  };
  return (
    <form className="new-household" onSubmit={make}>
      <label className="field-label" htmlFor="new-name">
        {say('Name of the home')}
      </label>
      <div className="field-entry">
        <input
          id="new-name"
          ref={field}
          type="text"
          maxLength={120}
          value={name}
          aria-invalid={refusal !== null || undefined}
          aria-describedby={refusal === null ? undefined : 'new-name-refusal'}
          onChange={(event) => setName(event.target.value)}
          onKeyDown={(event) => {
            if (event.key === 'Escape') props.onDone();
          }}
        />
        <button type="submit" className="main">
          {say('Create')}
        </button>
        <button type="button" onClick={props.onDone}>
          {say('Cancel')}
        </button>
      </div>
      {refusal === null ? null : (
        <p className="field-refusal" id="new-name-refusal" role="alert">
          {refusal}
        </p>
      )}
    </form>
  );
}
