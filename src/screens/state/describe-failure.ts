import { DeskError } from '../../desk/desk-error.ts';

/** A refusal of the desk as one or two sentences: the file where it is about one, what is wrong, what to do. */
export function describeFailure(reason: unknown): string {
  if (reason instanceof DeskError) {
    const file = /^[^,]+\.[a-z0-9]{2,5}(?=, )/i.exec(reason.where ?? '')?.[0];
    const message = file === undefined || reason.message.includes(file) ? reason.message : `${file}: ${reason.message}`;
    return [message, reason.remedy].filter((part) => part !== undefined && part !== '').join(' ');
  }
  if (reason instanceof Error) return reason.message;
  return String(reason);
}

export function isAbort(reason: unknown): boolean {
  return (
    (reason instanceof DOMException && reason.name === 'AbortError') ||
    (reason instanceof DeskError && reason.code === 'stopped')
  );
}
