/** A part of the window that is fetched only once it is wanted: what a start does not show must not hold it up. */
import { startTransition, useEffect, useState } from 'react';

export interface Later<T> {
  /** Null until it is there. */
  readonly part: () => T | null;
  /** Fetches it, once. */
  readonly fetch: () => Promise<T>;
}

export function later<T>(load: () => Promise<T>): Later<T> {
  let part: T | null = null;
  let coming: Promise<T> | null = null;
  return {
    part: () => part,
    fetch() {
      coming ??= load().then((there) => {
        part = there;
        return there;
      });
      return coming;
    },
  };
}

/** The part, or null until it is there; it is fetched once what is drawn without it is painted. */
export function useLater<T>(wanted: Later<T>): T | null {
  const [part, setPart] = useState(wanted.part);
  useEffect(() => {
    if (part !== null) return;
    let fetching: ReturnType<typeof setTimeout> | undefined;
    // An effect may run before the paint, and a task behind the next frame does not.
    const frame = requestAnimationFrame(() => {
      fetching = setTimeout(() => void wanted.fetch().then((there) => startTransition(() => setPart(() => there))));
    });
    return () => {
      cancelAnimationFrame(frame);
      clearTimeout(fetching);
    };
  }, [wanted, part]);
  return part;
}
