// Whether a place of the page has come near the view, or is to be printed: what is costly to draw waits for it.

import { type RefObject, useEffect, useState } from 'react';
import { drawBeforePrinting } from '../ui/print-page.ts';

/**
 * True from when the place first comes near.
 * @param host       the place
 * @param isWaiting  while it is, printing asks for it and waits
 */
export function useNear(host: RefObject<HTMLElement | null>, isWaiting: boolean): boolean {
  const [near, setNear] = useState(false);
  useEffect(() => {
    const element = host.current;
    if (element === null) return;
    const watch = new IntersectionObserver(
      (entries) => entries.some((entry) => entry.isIntersecting) && setNear(true),
      {
        rootMargin: '400px',
      },
    );
    watch.observe(element);
    return () => watch.disconnect();
  }, [host]);
  useEffect(() => (isWaiting ? drawBeforePrinting(() => setNear(true)) : undefined), [isWaiting]);
  return near;
}
