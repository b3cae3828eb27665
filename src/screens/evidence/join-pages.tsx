/** Pictures and PDFs that are pages of one bill: put in order, then read as one. */
import { useEffect, useMemo, useRef, useState } from 'react';
import type { Output } from '../../desk/contract.ts';
import { refuseLargeFile } from '../../desk/limits.ts';
import { bundle, isPageName } from '../../intake/intake.ts';
import { say } from '../../words/say.ts';
import { FileButton } from '../shared/file-button.tsx';
import { offerFile } from '../shared/offer-file.ts';
import { StageHead } from '../shared/stage-head.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import './paper.css';
import { Refused } from '../shared/refused.tsx';

export const PAGES = '.pdf,.jpg,.jpeg,.png,.heic,.heif,image/*';
export const isPage = ({ name, type }: File): boolean =>
  type === 'application/pdf' || type.startsWith('image/') || isPageName(name);

/** Files from the clipboard: a picture there is a page like any other. Null where none is taken. */
export function usePasted(onFiles: ((files: readonly File[]) => void) | null): void {
  const latest = useRef(onFiles);
  latest.current = onFiles;
  useEffect(() => {
    const paste = ({ clipboardData }: ClipboardEvent) => {
      const files = [...(clipboardData?.files ?? [])];
      if (files.length > 0) latest.current?.(files);
    };
    document.addEventListener('paste', paste);
    return () => document.removeEventListener('paste', paste);
  }, []);
}

/** All pages together, as many as telephones send. */
const LARGEST_TOGETHER = 40 * 1024 * 1024;

export function JoinPages(props: {
  readonly files: readonly File[];
  readonly onJoined: (offered: Output<'file.offer'>, pages: readonly File[]) => void;
  /** They are bills of their own. */
  readonly onApart: (files: readonly File[]) => void;
  readonly onLeave: () => void;
}) {
  const [files, setFiles] = useState<readonly File[]>(props.files);
  const [failure, setFailure] = useState<string | null>(null);
  const add = (more: readonly File[]) => setFiles((before) => [...before, ...more.filter(isPage)]);
  usePasted(add);
  const swap = (at: number) => setFiles(files.with(at, files[at + 1]!).with(at + 1, files[at]!));
  const join = async () => {
    const [first] = files;
    if (!first) return;
    try {
      const size = files.reduce((sum, file) => sum + file.size, 0);
      if (size > LARGEST_TOGETHER) throw refuseLargeFile(first.name, size, LARGEST_TOGETHER);
      const pages = await Promise.all(
        files.map(async (file) => [file.name, new Uint8Array(await file.arrayBuffer())] as const),
      );
      if (files.length === 1) return props.onJoined(await offerFile(first, LARGEST_TOGETHER), files);
      const { fileName, bytes } = await bundle(pages);
      props.onJoined(await offerFile(new File([bytes as Uint8Array<ArrayBuffer>], fileName)), files);
    } catch (reason) {
      setFailure(describeFailure(reason));
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
      <ol className="join-pages">
        {files.map((file, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the same page may be there twice, and is its place
          <li key={`${at} ${file.name} ${file.size} ${file.lastModified}`}>
            <Thumbnail file={file} />
            <span>{file.name}</span>
            <button type="button" disabled={at === 0} onClick={() => swap(at - 1)}>
              {say('Up')}
            </button>
            <button type="button" disabled={at === files.length - 1} onClick={() => swap(at)}>
              {say('Down')}
            </button>
            <button type="button" disabled={files.length < 2} onClick={() => setFiles(files.toSpliced(at, 1))}>
              {say('Leave this page out')}
            </button>
          </li>
        ))}
      </ol>
      <Refused text={failure} />
      <div className="actions">
        <button type="button" className="main" onClick={() => void join()}>
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
