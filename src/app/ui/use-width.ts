// How wide the page lets an element be, followed as the window changes.

import { type RefObject, useLayoutEffect, useState } from 'react';

/** Inner width [px], at least 300. */
export function useWidth(host: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(960);
  useLayoutEffect(() => {
    const element = host.current;
    if (element === null) return;
    const measure = () => setWidth(Math.max(300, Math.round(element.clientWidth)));
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, [host]);
  return width;
}
