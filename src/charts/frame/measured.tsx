/** Gives a picture the width of its place, so that its letters keep their size when the window narrows. */
import { type ReactNode, useLayoutEffect, useRef, useState } from 'react';

// On the server there is nothing to measure and React warns about layout effects.
const useMeasuring = typeof window === 'undefined' ? () => {} : useLayoutEffect;

export function Measured(props: { readonly initial: number; readonly children: (width: number) => ReactNode }) {
  const place = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(props.initial);
  useMeasuring(() => {
    const element = place.current;
    if (!element) return;
    const measure = () => {
      const found = Math.round(element.clientWidth);
      if (found > 0) setWidth(found);
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return (
    <div ref={place} className="measured">
      {props.children(width)}
    </div>
  );
}
