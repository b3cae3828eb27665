/** Prices and reference values of a newer file: seen before they are used, and given back. */
import { useEffect, useState } from 'react';
import type { Output, ValuesState } from '../../desk/contract.ts';
import { longDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { valuePlace, valueShown } from '../../words/values.ts';
import { call } from '../desk.ts';
import { FileButton } from '../shared/file-button.tsx';
import { Refused } from '../shared/refused.tsx';
import { describeFailure } from '../state/describe-failure.ts';

interface Looked extends Output<'values.look'> {
  readonly fileId: string;
}

export function ValuesSection() {
  const [state, setState] = useState<ValuesState | null>(null);
  const [looked, setLooked] = useState<Looked | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const attempt = async (work: () => Promise<void>) => {
    setFailure(null);
    await work().catch((reason: unknown) => setFailure(describeFailure(reason)));
  };
  useEffect(() => {
    call('values.read', {}).then(setState, (reason) => setFailure(describeFailure(reason)));
  }, []);
  const look = (file: File) =>
    attempt(async () => {
      setLooked(null);
      const bytes = new Uint8Array(await file.arrayBuffer());
      const { fileId } = await call('file.offer', { fileName: file.name, bytes });
      setLooked({ ...(await call('values.look', { fileId })), fileId });
    });
  const use = (fileId: string | null) =>
    attempt(async () => {
      setState(await call('values.use', { fileId }));
      setLooked(null);
    });

  return (
    <section className="stack" aria-labelledby="values">
      <h2 id="values">{say('Prices and reference values')}</h2>
      {state === null ? null : (
        <p role="status">
          {state.laidOver === null
            ? say('This program’s own, of {date}.', { date: longDate(state.builtInEdition) })
            : say('From a file that you opened, of {date}. This program’s own are of {own}.', {
                date: longDate(state.edition),
                own: longDate(state.builtInEdition),
              })}
        </p>
      )}
      <p>
        {say(
          'Newer ones come as a small signed file. You see what it changes before you use it. Saved estimates keep the values of their day.',
        )}
      </p>
      <Refused text={failure} />
      {looked === null ? null : <Changes looked={looked} />}
      <div className="actions">
        {looked === null ? (
          <FileButton label={say('Choose a file of values …')} accept=".json" onFile={(file) => void look(file)} />
        ) : (
          <>
            <button type="button" className="main" onClick={() => void use(looked.fileId)}>
              {say('Use these values')}
            </button>
            <button type="button" onClick={() => setLooked(null)}>
              {say('Cancel')}
            </button>
          </>
        )}
        {looked === null && state !== null && state.laidOver !== null ? (
          <button type="button" onClick={() => void use(null)}>
            {say('Use this program’s own')}
          </button>
        ) : null}
      </div>
    </section>
  );
}

function Changes({ looked: { edition, changes } }: { readonly looked: Looked }) {
  return (
    <>
      <p>
        {say(
          'The file is signed by the makers and is of {date}. {count, plural, =0 {It changes nothing.} one {It changes one value:} other {It changes # values:}}',
          { date: longDate(edition), count: changes.length },
        )}
      </p>
      <div className="scroll-x">
        <table>
          <thead>
            <tr>
              <th scope="col">{say('Value')}</th>
              <th scope="col">{say('Now')}</th>
              <th scope="col">{say('In the file')}</th>
            </tr>
          </thead>
          <tbody>
            {changes.map(({ path, before, after }) => (
              <tr key={path.join()}>
                <th scope="row">{valuePlace(path)}</th>
                <td>{valueShown(before)}</td>
                <td>{valueShown(after)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}
