/** What the case stands on: drop a file, or type a bill, and see what is kept. */

import { useEffect, useState } from 'react';
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
import { useHandedOver } from './handed-over.ts';
import { isPage, JoinPages } from './join-pages.tsx';
import { KeptList } from './kept-list.tsx';
import { PreviewScreen } from './preview-screen.tsx';
import { RecordPicture } from './record-figure.tsx';
import { TypedEntry } from './typed-entry.tsx';

type Open =
  | { readonly kind: 'list' }
  | { readonly kind: 'typing' }
  /** On its way to the desk. */
  | { readonly kind: 'offering'; readonly file: File; readonly queue: Queue }
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
const NONE: Queue = { waiting: [], count: 0 };
const ALONE: Queue = { waiting: [], count: 1 };

const ACCEPTED =
  '.pdf,.jpg,.jpeg,.png,.heic,.heif,.csv,.txt,.tsv,.json,.xml,.epw,.xlsx,.xls,.html,.htm,text/csv,application/json,text/plain,image/*';

const byName = (files: readonly File[]): File[] =>
  files.toSorted((a, b) => a.name.localeCompare(b.name, undefined, { numeric: true }));

const next = ({ waiting: [file, ...waiting], count }: Queue): Open =>
  file ? { kind: 'offering', file, queue: { waiting, count } } : { kind: 'list' };
const later = ({ waiting, count }: Queue, files: readonly File[]): Queue => ({
  waiting: [...waiting, ...byName(files)],
  count: count + files.length,
});

/** Pages come to the bill that is open; whatever else is handed over comes after it. */
function handOver(open: Open, files: readonly File[]): Open {
  if (open.kind === 'list') {
    const isOneBill = files.length > 1 && files.every(isPage);
    return isOneBill ? { kind: 'pages', files: byName(files), queue: ALONE } : next(later(NONE, files));
  }
  if (open.kind !== 'offering' && open.kind !== 'preview') return open;
  const pages = open.kind === 'preview' ? open.pages : [open.file].filter(isPage);
  const more = pages.length > 0 ? byName(files.filter(isPage)) : [];
  const queue = later(
    open.queue,
    files.filter((file) => !more.includes(file)),
  );
  return more.length > 0 ? { kind: 'pages', files: [...pages, ...more], queue } : { ...open, queue };
}

export function EvidenceStage() {
  const { evidence, series, reload, tell } = useHousehold();
  const [open, setOpen] = useState<Open>({ kind: 'list' });
  const [failure, setFailure] = useState<string | null>(null);

  const offer = (files: readonly File[]) => {
    if (files.length === 0) return;
    if (open.kind === 'list') setFailure(null);
    setOpen((now) => handOver(now, files));
  };
  const goOn = (fileId: string) =>
    setOpen((now) => (now.kind === 'preview' && now.fileId === fileId ? next(now.queue) : now));
  const leave = () => {
    const left = 'queue' in open ? open.queue.waiting.length : 0;
    if (left > 0)
      tell(say('{count, plural, one {One more file was} other {# more files were}} not read.', { count: left }));
    setOpen({ kind: 'list' });
  };

  const offering = open.kind === 'offering' ? open.file : null;
  useEffect(() => {
    if (offering === null) return;
    const then = (to: (queue: Queue) => Open) =>
      setOpen((now) => (now.kind === 'offering' && now.file === offering ? to(now.queue) : now));
    offerFile(offering, LARGEST_EVIDENCE_BYTES).then(
      (offered) => then((queue) => ({ kind: 'preview', ...offered, pages: isPage(offering) ? [offering] : [], queue })),
      // What cannot be taken is said at the end, and the others come.
      (reason) => {
        setFailure((before) => [...(before === null ? [] : [before]), describeFailure(reason)].join(' '));
        then(next);
      },
    );
  }, [offering]);

  useHandedOver(open.kind === 'list' || open.kind === 'offering' || open.kind === 'preview' ? offer : null);

  if (open.kind === 'pages') {
    return (
      <JoinPages
        files={open.files}
        onJoined={(offered, pages) => setOpen({ kind: 'preview', ...offered, pages, queue: open.queue })}
        onApart={(files) => {
          const waiting = [...files, ...open.queue.waiting];
          setOpen(next({ waiting, count: waiting.length }));
        }}
        onOthers={(files) => setOpen({ ...open, queue: later(open.queue, files) })}
        onLeave={leave}
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
          goOn(open.fileId);
        }}
        onNext={waiting.length > 0 ? () => goOn(open.fileId) : undefined}
        onLeave={leave}
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
                'Drop or paste a file here: meter readings, bills, deliveries or weather. A photo of a bill or a copied table works too. You see what we understood before it is saved.',
              )
            : say('Reading {offering} …', { offering: offering.name })}
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
