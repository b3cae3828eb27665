/** Pictures and PDFs that are pages of one bill: put in order, then read as one. */
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { Output } from '../../desk/contract.ts';
import { refuseLargeFile } from '../../desk/limits.ts';
import { bundle, isPageName } from '../../intake/intake.ts';
import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { FileButton } from '../shared/file-button.tsx';
import { bytesOf, offerFile } from '../shared/offer-file.ts';
import { Refused } from '../shared/refused.tsx';
import { StageHead } from '../shared/stage-head.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import { useHandedOver } from './handed-over.ts';
import { useEscape } from './use-escape.ts';
import './paper.css';

export const PAGES = '.pdf,.jpg,.jpeg,.png,.heic,.heif,image/*';
export const isPage = ({ name, type }: File): boolean =>
  type === 'application/pdf' || type.startsWith('image/') || isPageName(name);

/** The same picture may be there twice, so that each has a number of its own. */
interface Handed {
  readonly id: number;
  readonly file: File;
}
let count = 0;
const handed = (file: File): Handed => ({ id: ++count, file });

/** All pages together, as many as telephones send. */
const LARGEST_TOGETHER = 40 * 1024 * 1024;

export function JoinPages(props: {
  readonly files: readonly File[];
  readonly onJoined: (offered: Output<'file.offer'>, pages: readonly File[]) => void;
  /** They are bills of their own. */
  readonly onApart: (files: readonly File[]) => void;
  /** What is no page comes after the bill. */
  readonly onOthers: (files: readonly File[]) => void;
  readonly onLeave: () => void;
}) {
  const { tell } = useHousehold();
  const [pages, setPages] = useState<readonly Handed[]>(() => props.files.map(handed));
  const [joining, setJoining] = useState(false);
  const [failure, setFailure] = useState<string | null>(null);
  const files = pages.map(({ file }) => file);
  const add = (more: readonly File[]) => {
    setPages((before) => [...before, ...more.filter(isPage).map(handed)]);
    props.onOthers(more.filter((file) => !isPage(file)));
  };
  useHandedOver(add);
  useEscape(props.onLeave);
  const list = useRef<HTMLOListElement>(null);
  /** Where a page was moved to or left out. */
  const place = useRef<number | null>(null);
  useLayoutEffect(() => {
    // The button that was pressed is gone, or cannot be pressed there: on with what can.
    if (place.current === null || document.activeElement !== document.body) return;
    const row = list.current?.children[Math.min(place.current, pages.length - 1)];
    (row?.querySelector<HTMLElement>('button:enabled') ?? joinButton.current)?.focus();
  }, [pages]);
  const move = (from: number, to: number) => {
    place.current = to;
    setPages(pages.with(from, pages[to]!).with(to, pages[from]!));
    const { name } = pages[from]!.file;
    tell(say('{name} is page {number} of {count} now.', { name, number: to + 1, count: pages.length }));
  };
  const leaveOut = (at: number) => {
    place.current = at;
    setPages(pages.toSpliced(at, 1));
  };
  const joinButton = useRef<HTMLButtonElement>(null);
  const join = async () => {
    const [first] = files;
    if (!first) return;
    setJoining(true);
    setFailure(null);
    try {
      const size = files.reduce((sum, file) => sum + file.size, 0);
      if (size > LARGEST_TOGETHER) throw refuseLargeFile(first.name, size, LARGEST_TOGETHER);
      if (files.length === 1) return props.onJoined(await offerFile(first, LARGEST_TOGETHER), files);
      const { fileName, bytes } = await bundle(
        await Promise.all(files.map(async (file) => [file.name, await bytesOf(file)] as const)),
      );
      props.onJoined(await offerFile(new File([bytes as Uint8Array<ArrayBuffer>], fileName)), files);
    } catch (reason) {
      setFailure(describeFailure(reason));
      setJoining(false);
    }
  };
  return (
    <>
      <StageHead
        sentence={say(
          '{count, plural, one {One page of a bill.} other {Are these # files the pages of one bill, in this order?}}',
          {
            count: files.length,
          },
        )}
      >
        {say('Several bills are read one after another, each by itself.')}
      </StageHead>
      <ol ref={list} className="join-pages">
        {pages.map(({ id, file }, at) => (
          <li key={id}>
            <Thumbnail file={file} />
            <span>{file.name}</span>
            <button type="button" disabled={at === 0} onClick={() => move(at, at - 1)}>
              {say('Up')}
              <span className="unseen">, {file.name}</span>
            </button>
            <button type="button" disabled={at === pages.length - 1} onClick={() => move(at, at + 1)}>
              {say('Down')}
              <span className="unseen">, {file.name}</span>
            </button>
            <button type="button" disabled={pages.length < 2} onClick={() => leaveOut(at)}>
              {say('Leave this page out')}
              <span className="unseen">, {file.name}</span>
            </button>
          </li>
        ))}
      </ol>
      <Refused text={failure} />
      <div className="actions">
        <button ref={joinButton} type="button" className="main" disabled={joining} onClick={() => void join()}>
          {say('Read them as one bill')}
        </button>
        {files.length < 2 ? null : (
          <button type="button" onClick={() => props.onApart(files)}>
            {say('Read them one after another')}
          </button>
        )}
        <FileButton label={say('Add a page')} accept={PAGES} multiple onFile={(_, all) => add(all)} />
        <button type="button" onClick={props.onLeave}>
          {say('Cancel')}
        </button>
      </div>
    </>
  );
}

/** What is no picture the window can show is told by its kind, such as PDF. */
const nameEnd = ({ name }: File): string => (/\.([a-z]{2,5})$/i.exec(name)?.[1] ?? '').toUpperCase();

function Thumbnail({ file }: { readonly file: File }) {
  const address = useMemo(() => (file.type.startsWith('image/') ? URL.createObjectURL(file) : null), [file]);
  useEffect(() => () => (address === null ? undefined : URL.revokeObjectURL(address)), [address]);
  return address === null ? (
    <span className="thumbnail" data-kind={nameEnd(file)} />
  ) : (
    <img className="thumbnail" src={address} alt="" />
  );
}
