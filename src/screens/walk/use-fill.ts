import { type RefObject, useLayoutEffect, useState } from 'react';

/** Below this a picture is not readable across a table; the page then scrolls. */
const LEAST_PIXELS = 220;
/** The line of the table's button under the picture. */
const TOOLS_PIXELS = 56;

/** Height that the page leaves to its picture. */
export function useFill(place: RefObject<HTMLElement | null>): number {
  const [height, setHeight] = useState(380);
  useLayoutEffect(() => {
    const element = place.current;
    if (!element) return;
    const measure = () => setHeight(Math.max(LEAST_PIXELS, Math.round(element.clientHeight) - TOOLS_PIXELS));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  });
  return height;
}
