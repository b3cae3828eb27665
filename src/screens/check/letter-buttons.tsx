/** The letter of a check, as PDF or as a page. */

import { useState } from 'react';
import { say } from '../../words/say.ts';
import { call, saveFile } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { describeFailure } from '../state/describe-failure.ts';

type Format = 'pdf' | 'html';

export function LetterButtons({ checkId }: { readonly checkId: string }) {
  const { tell } = useHousehold();
  const [busy, setBusy] = useState<Format | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const write = async (format: Format) => {
    setBusy(format);
    setFailure(null);
    try {
      const file = await call('check.print', { checkId, format });
      if (await saveFile(file)) tell(say('{fileName} is saved.', { fileName: file.fileName }));
    } catch (reason) {
      setFailure(describeFailure(reason));
    } finally {
      setBusy(null);
    }
  };
  return (
    <>
      <button type="button" className="main" disabled={busy !== null} onClick={() => write('pdf')}>
        {busy === 'pdf' ? say('Writing …') : say('Write the letter')}
      </button>
      <button type="button" disabled={busy !== null} onClick={() => write('html')}>
        {busy === 'html' ? say('Writing …') : say('as HTML')}
        <span className="unseen">{say(', the letter')}</span>
      </button>
      {failure === null ? null : (
        <p className="refusal" role="alert">
          {failure}
        </p>
      )}
    </>
  );
}
