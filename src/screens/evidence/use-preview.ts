import { useCallback, useEffect, useRef, useState } from 'react';
import type { IntakeChoices, IntakePreview } from '../../intake/intake.ts';
import { say } from '../../words/say.ts';
import { call } from '../desk.ts';
import { describeFailure, isAbort } from '../state/describe-failure.ts';

export interface PreviewState {
  readonly preview: IntakePreview | null;
  /** Whether the preview answers the present choices; after a stop it does not, and nothing may be kept by it. */
  readonly isCurrent: boolean;
  /** What the installer chose; absent choices are decided from the file. */
  readonly choices: IntakeChoices;
  readonly busy: boolean;
  readonly share: number | null;
  readonly failure: string | null;
  readonly choose: (part: IntakeChoices) => void;
  readonly cancel: () => void;
  readonly readAgain: () => void;
}

/** Asks the desk what it understands of a file, again after every choice; an older answer never overtakes a newer one. */
export function usePreview(fileId: string, householdId: string): PreviewState {
  const [choices, setChoices] = useState<IntakeChoices>({});
  const [answer, setAnswer] = useState<{ readonly preview: IntakePreview; readonly to: IntakeChoices } | null>(null);
  const [busy, setBusy] = useState(true);
  const [share, setShare] = useState<number | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const running = useRef<AbortController>(null);

  useEffect(() => {
    const stop = new AbortController();
    running.current = stop;
    setBusy(true);
    setShare(null);
    setFailure(null);
    call('evidence.preview', { fileId, householdId, choices }, { signal: stop.signal, onProgress: setShare })
      .then((next) => {
        if (!stop.signal.aborted) setAnswer({ preview: next, to: choices });
      })
      .catch((reason) => {
        if (running.current !== stop) return;
        setFailure(
          isAbort(reason) || stop.signal.aborted
            ? say('Reading was stopped. Nothing is kept.')
            : describeFailure(reason),
        );
      })
      .finally(() => {
        if (running.current === stop) setBusy(false);
      });
    return () => {
      running.current = null;
      stop.abort();
    };
  }, [fileId, householdId, choices]);

  const choose = useCallback(
    (part: IntakeChoices) =>
      setChoices((before) => ({
        ...before,
        ...part,
        ...(part.columns ? { columns: { ...before.columns, ...part.columns } } : {}),
      })),
    [],
  );
  const cancel = useCallback(() => running.current?.abort(), []);
  const readAgain = useCallback(() => setChoices((before) => ({ ...before })), []);
  const isCurrent = answer?.to === choices;
  return { preview: answer?.preview ?? null, isCurrent, choices, busy, share, failure, choose, cancel, readAgain };
}
