/** Gives a picture the width of its place, so that its letters keep their size when the window narrows. */
import { type ReactNode, useLayoutEffect, useRef, useState } from 'react';
import { measuresOf, type PictureSize } from './size.ts';

/** Where a picture stands, and how large. Without `width` it takes that of its place. */
export interface Standing {
  readonly size: PictureSize;
  readonly width?: number;
  readonly height?: number;
}
type Paint = (place: { readonly width: number; readonly height?: number }) => ReactNode;

/** Every picture is painted through this. `share` is the part of the usual width that it begins with. */
export function Measured({ size, width, height, share = 1, children }: Standing & { share?: number; children: Paint }) {
  const paint = (found: number) => children({ width: found, ...(height === undefined ? {} : { height }) });
  return width === undefined ? <Watched initial={measuresOf(size).width * share}>{paint}</Watched> : paint(width);
}

// On the server there is nothing to measure and React warns about layout effects.
const isMeasured = typeof window !== 'undefined';
const useMeasuring = isMeasured ? useLayoutEffect : () => {};

function Watched(props: { readonly initial: number; readonly children: (width: number) => ReactNode }) {
  const place = useRef<HTMLDivElement>(null);
  // Painted once: nobody sees a picture before its width is found.
  const [width, setWidth] = useState(isMeasured ? null : props.initial);
  useMeasuring(() => {
    const element = place.current;
    if (!element) return;
    const measure = () => {
      const found = Math.round(element.clientWidth);
      setWidth((before) => (found > 0 ? found : (before ?? props.initial)));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return (
    <div ref={place} className="measured">
      {width === null ? null : props.children(width)}
    </div>
  );
}
