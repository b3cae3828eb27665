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
  /** Takes the last choice back; null before the first one. */
  readonly undo: (() => void) | null;
  readonly cancel: () => void;
  readonly readAgain: () => void;
}

/** Asks the desk what it understands of a file, again after every choice; an older answer never overtakes a newer one. */
/** @param isPaper whether it may be a picture of a bill, which is looked at more than once */
export function usePreview(fileId: string, householdId: string, isPaper: boolean): PreviewState {
  const [said, setSaid] = useState<readonly IntakeChoices[]>([{}]);
  const choices = said.at(-1)!;
  const [answer, setAnswer] = useState<{ readonly preview: IntakePreview; readonly to: IntakeChoices | null } | null>(
    null,
  );
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
    const ask = (asked: IntakeChoices) =>
      call('evidence.preview', { fileId, householdId, choices: asked }, { signal: stop.signal, onProgress: setShare });
    const look = async () => {
      // Of a picture what the first look shows comes at once; it is not yet the answer.
      const first = await ask(isPaper ? { ...choices, paper: { ...choices.paper, glance: true } } : choices);
      if (stop.signal.aborted) return;
      const isGlance = first.paper?.isGlance === true;
      setAnswer({ preview: first, to: isGlance ? null : choices });
      if (!isGlance) return;
      const next = await ask(choices);
      if (!stop.signal.aborted) setAnswer({ preview: next, to: choices });
    };
    look()
      .catch((reason) => {
        if (running.current !== stop) return;
        setFailure(
          isAbort(reason) || stop.signal.aborted
            ? say('Reading was stopped. Nothing is saved.')
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
  }, [fileId, householdId, choices, isPaper]);

  const choose = useCallback(
    (part: IntakeChoices) =>
      setSaid((all) => {
        const before = all.at(-1)!;
        const columns = part.columns ? { columns: { ...before.columns, ...part.columns } } : {};
        return [...all, { ...before, ...part, ...columns }];
      }),
    [],
  );
  const cancel = useCallback(() => running.current?.abort(), []);
  const readAgain = useCallback(() => setSaid((all) => all.with(-1, { ...all.at(-1) })), []);
  const undo = useCallback(() => setSaid((all) => all.slice(0, -1)), []);
  const isCurrent = answer?.to === choices;
  return {
    preview: answer?.preview ?? null,
    isCurrent,
    choices,
    busy,
    share,
    failure,
    choose,
    undo: said.length > 1 ? undo : null,
    cancel,
    readAgain,
  };
}
