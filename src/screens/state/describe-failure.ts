import { DeskError } from '../../desk/contract.ts';

/** A refusal of the desk as one or two sentences: what, where, what to do. */
export function describeFailure(reason: unknown): string {
  if (reason instanceof DeskError) {
    return [reason.message, reason.remedy].filter((part) => part !== undefined && part !== '').join(' ');
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
