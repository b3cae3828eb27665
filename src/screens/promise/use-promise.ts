import { useEffect, useState } from 'react';
import type { KeptPromise } from '../../model/shapes/promise.ts';
import { call } from '../desk.ts';
import { describeFailure } from '../state/describe-failure.ts';

/** A promise never changes, so one reading serves for as long as the window is open. */
const kept = new Map<string, KeptPromise>();

export type ReadPromise =
  | { readonly kind: 'reading' }
  | { readonly kind: 'read'; readonly promise: KeptPromise }
  | { readonly kind: 'failed'; readonly sentence: string };

export function usePromise(id: string | null): ReadPromise {
  const [failure, setFailure] = useState<{ id: string; sentence: string } | null>(null);
  const [, setArrived] = useState(0);
  useEffect(() => {
    if (id === null || kept.has(id)) return;
    let gone = false;
    call('promise.read', { promiseId: id }).then(
      (promise) => {
        kept.set(id, promise);
        if (!gone) setArrived((count) => count + 1);
      },
      (reason) => gone || setFailure({ id, sentence: describeFailure(reason) }),
    );
    return () => {
      gone = true;
    };
  }, [id]);
  const promise = id === null ? undefined : kept.get(id);
  if (promise) return { kind: 'read', promise };
  return failure && failure.id === id ? { kind: 'failed', sentence: failure.sentence } : { kind: 'reading' };
}
