/** Pieces of this household that are no longer what was kept, each with its way back. */
import { useState } from 'react';
import type { DamageNote } from '../../desk/contract.ts';
import { say } from '../../words/say.ts';
import { call } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { FileButton } from '../shared/file-button.tsx';
import { offerFile } from '../shared/offer-file.ts';
import { Refused } from '../shared/refused.tsx';
import { describeFailure } from '../state/describe-failure.ts';

export function DamageList() {
  const { damage, reload, tell } = useHousehold();
  const [failure, setFailure] = useState<string | null>(null);
  const [working, setWorking] = useState(false);
  if (damage.length === 0) return null;

  const mend = async (evidenceId: string, file?: File) => {
    setWorking(true);
    setFailure(null);
    try {
      const offered = file && (await offerFile(file));
      await call('evidence.mend', { evidenceId, ...(offered ? { fileId: offered.fileId } : {}) });
      await reload();
      tell(say('It is undamaged again.'));
    } catch (reason) {
      setFailure(describeFailure(reason));
    } finally {
      setWorking(false);
    }
  };
  const wayBack = ({ kind, evidenceId }: DamageNote) => {
    if (kind === 'readings' && evidenceId !== undefined) {
      return (
        <button type="button" disabled={working} onClick={() => void mend(evidenceId)}>
          {say('Rebuild them from the saved file')}
        </button>
      );
    }
    if (kind === 'raw-file' && evidenceId !== undefined) {
      return (
        <FileButton
          label={say('Choose the same file once more …')}
          accept="*"
          onFile={(file) => void mend(evidenceId, file)}
        />
      );
    }
    return <a href="#/copies">{say('Copies of your data')}</a>;
  };
  return (
    <section className="stack" aria-label={say('Damaged')}>
      {damage.map((one) => (
        <div key={`${one.kind} ${one.message}`} className="refusal">
          <p>
            {one.message} {one.remedy}
          </p>
          <div className="actions">{wayBack(one)}</div>
        </div>
      ))}
      <Refused text={failure} />
    </section>
  );
}
