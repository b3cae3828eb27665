/** Draws what hangs on a value after the value: at once where it is seen or nearly, and once the value rests elsewhere. */
import { type ReactNode, startTransition, useEffect, useMemo, useRef, useState } from 'react';

/** A slider that has not moved for so long rests. */
export const REST_MS = 250;
/** Drawn before it comes into the window, so that nobody scrolls to what is not drawn yet. */
const MARGIN = '50%';

export function Following<T>(props: { readonly value: T; readonly draw: (value: T) => ReactNode }) {
  const { value, draw } = props;
  const place = useRef<HTMLDivElement>(null);
  const [near, setNear] = useState(true);
  const [drawn, setDrawn] = useState(value);
  useEffect(() => {
    const observer = new IntersectionObserver((entries) => setNear(entries.at(-1)!.isIntersecting), {
      // The page scrolls by itself in a wide window, and with the window in a narrow one.
      scrollMargin: MARGIN,
      rootMargin: MARGIN,
    });
    observer.observe(place.current!);
    return () => observer.disconnect();
  }, []);
  useEffect(() => {
    if (drawn === value) return;
    const follow = () => startTransition(() => setDrawn(() => value));
    if (near) return follow();
    const timer = setTimeout(follow, REST_MS);
    return () => clearTimeout(timer);
  }, [value, drawn, near]);
  return (
    <div ref={place} className="following" aria-busy={drawn !== value}>
      {useMemo(() => draw(drawn), [draw, drawn])}
    </div>
  );
}
