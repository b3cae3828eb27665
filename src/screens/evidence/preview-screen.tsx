/** What we understood of a file, before anything is kept. Every choice can be corrected; the preview is the import. */

import { type ReactNode, useEffect, useLayoutEffect, useRef, useState } from 'react';
import type { IntakeChoices } from '../../intake/intake.ts';
import { keepTogether } from '../../words/keep-together.ts';
import { say } from '../../words/say.ts';
import { call } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { FileButton } from '../shared/file-button.tsx';
import { Refused } from '../shared/refused.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import { ChoicesForm } from './choices-form.tsx';
import { ColumnTable } from './column-table.tsx';
import { FirstDaysFigure } from './first-days-figure.tsx';
import { PAGES } from './join-pages.tsx';
import { PaperTariffs } from './paper-tariffs.tsx';
import { PaperView } from './paper-view.tsx';
import { PreviewFacts } from './preview-facts.tsx';
import { PreviewFirst, PreviewNotes, PreviewQuestions } from './preview-remarks.tsx';
import { mayBeAnswered, previewVoice } from './preview-voice.ts';
import { useEscape } from './use-escape.ts';
import { usePreview } from './use-preview.ts';

interface PreviewProps {
  readonly fileId: string;
  readonly fileName: string;
  /** Further pages of the same bill; absent where the file is none. */
  readonly onPages?: ((files: readonly File[]) => void) | undefined;
  /** Which it is of files that were handed over together. */
  readonly place?: { readonly number: number; readonly count: number } | undefined;
  readonly onDone: (message: string) => Promise<void>;
  /** Goes on without this file; absent where none waits. */
  readonly onNext?: (() => void) | undefined;
  readonly onLeave: () => void;
}

type View = ReturnType<typeof usePreview>;

export function PreviewScreen(props: PreviewProps) {
  const { household } = useHousehold();
  const view = usePreview(props.fileId, household.id, /\.(pdf|jpe?g|png|hei[cf]|zip)$/i.test(props.fileName));
  const { preview } = view;
  const { fileName } = props;
  const { keeping, refusal, keep } = useKeeping(props, view);

  const canKeep =
    view.isCurrent && preview !== null && preview.shape !== null && preview.series.length > 0 && !isStopped(preview);
  const { keepButton, choose, undo } = useFocusOn(view, canKeep && preview.paper?.isWhole === true);
  useEscape(keeping === null ? props.onLeave : undefined);

  return (
    <>
      <PreviewHead fileName={fileName} place={props.place} view={view} />
      {view.busy ? (
        <Progress share={view.share} what={say('Reading {fileName}', { fileName })} onStop={view.cancel}>
          {say('Stop reading')}
        </Progress>
      ) : null}
      {view.busy && /\.(jpe?g|png|hei[cf])$/i.test(fileName) ? (
        <p className="quiet small">{say('We look at a picture in several ways, so this can take a minute or two.')}</p>
      ) : null}
      {keeping ? (
        <Progress
          share={keeping.share}
          what={say('Saving {fileName}', { fileName })}
          onStop={() => keeping.stop.abort()}
        >
          {say('Stop saving')}
        </Progress>
      ) : null}
      {view.failure === null ? null : (
        <div className="refusal stack" role="alert">
          <p>{view.failure}</p>
          <div className="actions">
            <button type="button" onClick={view.readAgain}>
              {say('Read it again')}
            </button>
          </div>
        </div>
      )}
      {preview === null ? null : <Understood preview={preview} choices={view.choices} onChoose={choose} />}
      <Refused text={refusal} />
      <div className="actions stand-low">
        <button
          ref={keepButton}
          type="button"
          className="main"
          disabled={!canKeep || keeping !== null || view.busy}
          onClick={keep}
        >
          {keeping ? say('Saving …') : say('Save')}
        </button>
        {canKeep && preview.paper ? <PaperTariffs tariffs={preview.paper.tariffs} /> : null}
        {props.onPages && !view.busy && keeping === null ? (
          <FileButton label={say('Add a page')} accept={PAGES} multiple onFile={(_, all) => props.onPages?.(all)} />
        ) : null}
        {view.undo === null ? null : (
          <button type="button" disabled={keeping !== null} onClick={undo}>
            {say('Undo')}
          </button>
        )}
        {props.onNext ? (
          <button type="button" disabled={keeping !== null} onClick={props.onNext}>
            {say('Leave this file out')}
          </button>
        ) : null}
        <button type="button" disabled={keeping !== null} onClick={props.onLeave}>
          {say('Cancel')}
        </button>
        {preview !== null && view.isCurrent && !canKeep ? <span className="quiet">{whyNot(preview)}</span> : null}
      </div>
    </>
  );
}

interface HeadProps extends Pick<PreviewProps, 'fileName' | 'place'> {
  readonly view: View;
}

function PreviewHead({ fileName, place, view: { preview, busy } }: HeadProps) {
  return (
    <header className="stage-head">
      <p className="quiet">
        {place
          ? say('Before anything is saved · file {number} of {count} · {fileName}', { ...place, fileName })
          : say('Before anything is saved · {fileName}', { fileName })}
      </p>
      <h2 className="voice">
        {preview !== null
          ? keepTogether(previewVoice(preview))
          : busy
            ? say('Reading {fileName} …', { fileName })
            : say('{fileName} was not read.', { fileName })}
      </h2>
    </header>
  );
}

interface ProgressProps {
  /** Null while nobody knows. */
  readonly share: number | null;
  readonly what: string;
  readonly onStop: () => void;
  readonly children: ReactNode;
}

function Progress({ share, what, onStop, children }: ProgressProps) {
  return (
    <div className="progress">
      <progress value={share ?? undefined} max={1} aria-label={what} />
      <button type="button" onClick={onStop}>
        {children}
      </button>
    </div>
  );
}

interface UnderstoodProps {
  readonly preview: Preview;
  readonly choices: IntakeChoices;
  readonly onChoose: (part: IntakeChoices) => void;
}

/** What was understood, from what stops it to its columns, with every choice. */
function Understood({ preview, choices, onChoose }: UnderstoodProps) {
  return (
    <>
      <PreviewFirst preview={preview} />
      {preview.paper ? (
        <PaperView paper={preview.paper} choices={choices} onChoose={onChoose}>
          <PreviewQuestions oneByOne preview={preview} onChoose={onChoose} />
        </PaperView>
      ) : (
        <>
          <PreviewQuestions preview={preview} onChoose={onChoose} />
          <FirstDaysFigure preview={preview} />
          <PreviewFacts preview={preview} />
        </>
      )}
      <PreviewNotes preview={preview} />
      {preview.columns.length > 0 ? <ChoicesForm preview={preview} onChoose={onChoose} /> : null}
      {preview.paper ? null : <ColumnTable preview={preview} onChoose={onChoose} />}
    </>
  );
}

/** Where the keyboard goes on: to the next question, else to saving. */
function useFocusOn(view: View, isWhole: boolean) {
  const { preview } = view;
  const keepButton = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    // Nothing is left to ask: one key keeps it.
    if (isWhole) keepButton.current?.focus({ preventScroll: true });
  }, [isWhole]);

  const isAnswered = useRef(false);
  const choose = (part: IntakeChoices) => {
    isAnswered.current = true;
    view.choose(part);
  };
  const undo = () => {
    isAnswered.current = true;
    view.undo?.();
  };
  useLayoutEffect(() => {
    // What was pressed is gone, and the focus with it: on with what is asked or refused now, else with saving.
    const { body, activeElement } = document;
    const isLost = activeElement === body || activeElement?.id === 'page';
    if (preview === null || !isAnswered.current || !isLost) return;
    (document.querySelector<HTMLElement>(':is(.ask, .refusal)[tabindex]') ?? keepButton.current)?.focus();
  }, [preview]);
  return { keepButton, choose, undo };
}

interface Keeping {
  readonly share: number | null;
  readonly stop: AbortController;
}

/** Saving as it is read now: how far it is, and why it could not be. */
function useKeeping({ fileId, fileName, onDone }: PreviewProps, { preview, choices }: View) {
  const { household } = useHousehold();
  const [keeping, setKeeping] = useState<Keeping | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);
  const keep = async () => {
    const stop = new AbortController();
    setKeeping({ share: null, stop });
    setRefusal(null);
    try {
      const { evidence, duplicateOf } = await call(
        'evidence.accept',
        { fileId, householdId: household.id, choices },
        { signal: stop.signal, onProgress: (share) => setKeeping({ share, stop }) },
      );
      await onDone(
        evidence === null && duplicateOf !== null
          ? [
              say('{fileName} is here already. It counts once.', { fileName }),
              ...((preview?.sheets?.length ?? 0) > 1
                ? [say('To save another of its sheets too, choose the file again, and then that sheet.')]
                : []),
            ].join(' ')
          : say('{fileName} is saved.', { fileName }),
      );
    } catch (reason) {
      setRefusal(stop.signal.aborted ? say('Saving was stopped. Nothing is saved.') : describeFailure(reason));
      setKeeping(null);
    }
  };
  return { keeping, refusal, keep };
}

type Preview = NonNullable<View['preview']>;
const has = ({ remarks }: Preview, weight: 'refusal' | 'question') => remarks.some((one) => one.weight === weight);
/** What is asked has to be answered first. */
const isStopped = (preview: Preview) => has(preview, 'refusal') || has(preview, 'question');

function whyNot(preview: Preview): string {
  if (preview.tariff && preview.series.length === 0) return say('This is a tariff. Open it under Prices.');
  if (has(preview, 'refusal') && !mayBeAnswered(preview)) return say('Nothing of it can be saved as it is.');
  const count = preview.remarks.filter(({ weight }) => weight === 'question').length;
  if (count > 0)
    return say(
      '{count, plural, one {It can be saved when the question above is answered.} other {It can be saved when the # questions above are answered.}}',
      { count },
    );
  return say('Choose what the columns are, or cancel.');
}
