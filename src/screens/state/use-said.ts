import { useCallback, useEffect, useRef, useState } from 'react';

const SHOWN_MS = 8000;

/** A message that stands for a while and then makes room. */
export function useSaid(): readonly [string, (message: string) => void] {
  const [said, setSaid] = useState('');
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  useEffect(() => () => clearTimeout(timer.current), []);
  const tell = useCallback((message: string) => {
    clearTimeout(timer.current);
    setSaid(message);
    timer.current = setTimeout(() => setSaid(''), SHOWN_MS);
  }, []);
  return [said, tell];
}
