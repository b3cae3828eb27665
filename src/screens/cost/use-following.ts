import { startTransition, useEffect, useState } from 'react';

/** The same value a moment later: once what hangs on it at once is painted, and only while nothing more urgent waits. */
export function useFollowing<T>(value: T): T {
  const [followed, setFollowed] = useState(value);
  useEffect(() => startTransition(() => setFollowed(() => value)), [value]);
  return followed;
}
