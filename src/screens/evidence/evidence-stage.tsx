/** What the case stands on: drop a file, or type a bill, and see what is kept. */

import { useState } from 'react';
import { LARGEST_EVIDENCE_BYTES } from '../../intake/intake.ts';
import { say } from '../../words/say.ts';
import { BillSums } from '../bill-sums/bill-sums.tsx';
import type { FiledBillOpened } from '../bill-sums/filed-bill.ts';
import { useHousehold } from '../household-context.tsx';
import { DropZone } from '../shared/drop-zone.tsx';
import { offerFile } from '../shared/offer-file.ts';
import { QuestionList } from '../shared/question-list.tsx';
import { Refused } from '../shared/refused.tsx';
import { StageHead } from '../shared/stage-head.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import { DamageList } from './damage-list.tsx';
import { evidenceVoice } from './evidence-voice.ts';
import { isPage, JoinPages, usePasted } from './join-pages.tsx';
import { KeptList } from './kept-list.tsx';
import { PreviewScreen } from './preview-screen.tsx';
import { RecordPicture } from './record-figure.tsx';
import { TypedEntry } from './typed-entry.tsx';

type Open =
  | { readonly kind: 'list' }
  | { readonly kind: 'typing' }
  | { readonly kind: 'pages'; readonly files: readonly File[]; readonly queue: Queue }
  | { readonly kind: 'sums'; readonly filed?: FiledBillOpened }
  | {
      readonly kind: 'preview';
      readonly fileId: string;
      readonly fileName: string;
      readonly size: number;
      /** Pages of a bill as they were handed over, so that another can come to them. */
      readonly pages: readonly File[];
      readonly queue: Queue;
    };
/** Files handed over together come one after another. */
interface Queue {
  readonly waiting: readonly File[];
  readonly count: number;
}
const ALONE: Queue = { waiting: [], count: 1 };

const ACCEPTED =
  '.pdf,.jpg,.jpeg,.png,.heic,.heif,.csv,.txt,.tsv,.json,.xml,.epw,.xlsx,text/csv,application/json,text/plain,image/*';

const byName = (files: readonly File[]): File[] =>
  files.toSorted((a, b) => a.name.localeCompare(b.name, undefined, { numeric: true }));

export function EvidenceStage() {
  const { evidence, series, reload, tell } = useHousehold();
  const [open, setOpen] = useState<Open>({ kind: 'list' });
  const [failure, setFailure] = useState<string | null>(null);
  const [offering, setOffering] = useState<string | null>(null);

  const offer = (files: readonly File[]) => {
    if (files.length === 0) return;
    setFailure(null);
    if (open.kind === 'preview') {
      const more = byName(files.filter(isPage));
      if (more.length > 0) setOpen({ kind: 'pages', files: [...open.pages, ...more], queue: open.queue });
    } else if (files.length > 1 && files.every(isPage)) {
      setOpen({ kind: 'pages', files: byName(files), queue: ALONE });
    } else void readNext({ waiting: byName(files), count: files.length });
  };

  /** What cannot be taken is said at the end, and the others come. */
  const readNext = async ({ waiting: [file, ...waiting], count }: Queue): Promise<void> => {
    setOpen({ kind: 'list' });
    if (!file) return;
    setOffering(file.name);
    try {
      const offered = await offerFile(file, LARGEST_EVIDENCE_BYTES);
      setOpen({ kind: 'preview', ...offered, pages: isPage(file) ? [file] : [], queue: { waiting, count } });
    } catch (reason) {
      setFailure((before) => [...(before === null ? [] : [before]), describeFailure(reason)].join(' '));
      await readNext({ waiting, count });
    } finally {
      setOffering(null);
    }
  };

  const takesPasted = open.kind === 'list' || (open.kind === 'preview' && open.pages.length > 0);
  usePasted(takesPasted ? offer : null);

  if (open.kind === 'pages') {
    return (
      <JoinPages
        files={open.files}
        onJoined={(offered, pages) => setOpen({ kind: 'preview', ...offered, pages, queue: open.queue })}
        onApart={(files) => {
          const waiting = [...files, ...open.queue.waiting];
          void readNext({ waiting, count: waiting.length });
        }}
        onLeave={() => setOpen({ kind: 'list' })}
      />
    );
  }
  if (open.kind === 'preview') {
    const { waiting, count } = open.queue;
    return (
      <PreviewScreen
        key={open.fileId}
        fileId={open.fileId}
        fileName={open.fileName}
        place={open.queue.count > 1 ? { number: count - waiting.length, count } : undefined}
        onPages={open.pages.length > 0 ? offer : undefined}
        onDone={async (message) => {
          await reload();
          tell(message);
          await readNext(open.queue);
        }}
        onNext={waiting.length > 0 ? () => void readNext(open.queue) : undefined}
        onLeave={() => setOpen({ kind: 'list' })}
      />
    );
  }
  if (open.kind === 'typing' || open.kind === 'sums') {
    const onDone = async (message: string) => {
      await reload();
      tell(message);
      setOpen({ kind: 'list' });
    };
    const onLeave = () => setOpen({ kind: 'list' });
    if (open.kind === 'typing') return <TypedEntry onDone={onDone} onLeave={onLeave} />;
    return <BillSums {...(open.filed ? { filed: open.filed } : {})} onDone={onDone} onLeave={onLeave} />;
  }
  const voice = evidenceVoice(series);
  return (
    <>
      <StageHead sentence={voice.sentence}>{voice.remainder}</StageHead>
      <DamageList />
      <RecordPicture />
      <DropZone label={say('Choose a file')} accept={ACCEPTED} onFiles={offer} main={evidence.length === 0} multiple>
        <p>
          {offering === null
            ? say(
                'Drop a file here: meter readings, bills, deliveries or weather. A photo of a bill works too, dropped or pasted. You see what we understood before it is saved.',
              )
            : say('Reading {offering} …', { offering })}
        </p>
      </DropZone>
      <Refused text={failure} />
      <div className="actions">
        <button type="button" onClick={() => setOpen({ kind: 'typing' })}>
          {say('Type bills or readings')}
        </button>
        <button type="button" onClick={() => setOpen({ kind: 'sums' })}>
          {say('Check a bill’s sums')}
        </button>
      </div>
      <KeptList onSums={(filed) => setOpen({ kind: 'sums', filed })} />
      <QuestionList stage="evidence" />
    </>
  );
}
