/** What a person hands over without the file picker: dropped anywhere on the window, or pasted. */
import { useEffect, useRef } from 'react';
import { say } from '../../words/say.ts';

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof Element && target.closest('input, textarea, dialog') !== null;

/** A table as it is copied from a page or a sheet: rows with numbers. */
const isTable = (text: string): boolean => text.split('\n').filter((line) => /\d/.test(line)).length > 1;

/** Of copied cells a spreadsheet program lays a picture beside the text; the text holds the numbers. */
export function filesOf({ files, text }: { readonly files: readonly File[]; readonly text: string }): readonly File[] {
  const isCells = isTable(text) && text.includes('\t');
  if (files.length > 0 && !isCells) return files;
  return isTable(text) ? [new File([text], `${say('pasted table')}.txt`, { type: 'text/plain' })] : [];
}

/** Null where nothing is taken: then what is typed in stays as it is. */
export function useHandedOver(onFiles: ((files: readonly File[]) => void) | null): void {
  const latest = useRef(onFiles);
  latest.current = onFiles;
  useEffect(() => {
    const take = (files: readonly File[]) => files.length > 0 && latest.current?.(files);
    const paste = ({ clipboardData, target }: ClipboardEvent) => {
      const text = isTyping(target) ? '' : (clipboardData?.getData('text/plain') ?? '');
      take(filesOf({ files: [...(clipboardData?.files ?? [])], text }));
    };
    const over = (event: DragEvent) => {
      if (latest.current && event.dataTransfer?.types.includes('Files')) event.preventDefault();
    };
    const drop = (event: DragEvent) => {
      // A place of its own within the page has it already.
      if (event.defaultPrevented || !latest.current) return;
      const files = [...(event.dataTransfer?.files ?? [])];
      if (files.length > 0) event.preventDefault();
      take(files);
    };
    const heard = { paste, dragover: over, drop };
    for (const [name, hear] of Object.entries(heard)) document.addEventListener(name, hear as EventListener);
    return () => {
      for (const [name, hear] of Object.entries(heard)) document.removeEventListener(name, hear as EventListener);
    };
  }, []);
}
