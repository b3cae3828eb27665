import { useCallback, useSyncExternalStore } from 'react';
import type { WrittenEstimate } from '../../model/shapes/written-estimate.ts';
import { call } from '../desk.ts';
import { describeFailure } from '../state/describe-failure.ts';

export type ReadEstimate =
  | { readonly kind: 'reading' }
  | { readonly kind: 'read'; readonly estimate: WrittenEstimate }
  | { readonly kind: 'failed'; readonly sentence: string };

const READING: ReadEstimate = { kind: 'reading' };
/** A written estimate never changes, so one reading serves for as long as the window is open. */
const known = new Map<string, ReadEstimate>();
const watchers = new Set<() => void>();

function note(id: string, read: ReadEstimate): void {
  known.set(id, read);
  for (const watcher of watchers) watcher();
}

/** One that failed is read again by whoever asks for it next. */
function read(id: string): void {
  const { kind } = known.get(id) ?? { kind: 'failed' };
  if (kind !== 'failed') return;
  note(id, READING);
  call('estimate.read', { estimateId: id }).then(
    (estimate) => note(id, { kind: 'read', estimate }),
    (reason) => note(id, { kind: 'failed', sentence: describeFailure(reason) }),
  );
}

export function useEstimate(id: string | null): ReadEstimate {
  const watch = useCallback(
    (onChange: () => void) => {
      watchers.add(onChange);
      if (id !== null) read(id);
      return () => watchers.delete(onChange);
    },
    [id],
  );
  return useSyncExternalStore(watch, () => (id === null ? READING : (known.get(id) ?? READING)));
}
