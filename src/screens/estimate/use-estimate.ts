import { useEffect, useState } from 'react';
import type { WrittenEstimate } from '../../model/shapes/written-estimate.ts';
import { call } from '../desk.ts';
import { describeFailure } from '../state/describe-failure.ts';

/** A written estimate never changes, so one reading serves for as long as the window is open. */
const kept = new Map<string, WrittenEstimate>();

export type ReadEstimate =
  | { readonly kind: 'reading' }
  | { readonly kind: 'read'; readonly estimate: WrittenEstimate }
  | { readonly kind: 'failed'; readonly sentence: string };

export function useEstimate(id: string | null): ReadEstimate {
  const [failure, setFailure] = useState<{ id: string; sentence: string } | null>(null);
  const [, setArrived] = useState(0);
  const drawn = id === null ? undefined : kept.get(id);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was drawn when the effect was set up is what matters.
  useEffect(() => {
    if (id === null) return;
    if (kept.has(id)) {
      // It may have arrived for an earlier row between this one's drawing and now.
      if (!drawn) setArrived((count) => count + 1);
      return;
    }
    let gone = false;
    call('estimate.read', { estimateId: id }).then(
      (estimate) => {
        kept.set(id, estimate);
        if (!gone) setArrived((count) => count + 1);
      },
      (reason) => gone || setFailure({ id, sentence: describeFailure(reason) }),
    );
    return () => {
      gone = true;
    };
  }, [id]);
  if (drawn) return { kind: 'read', estimate: drawn };
  return failure && failure.id === id ? { kind: 'failed', sentence: failure.sentence } : { kind: 'reading' };
}
