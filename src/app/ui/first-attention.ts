// What nobody misses before somebody is at the page: it waits for the first sign of that, or until the page has been open for a
// while.

/** Rest after which it begins, whether anybody is there or not [ms]. */
export const restBefore = 3000;

const signs = ['pointermove', 'pointerdown', 'keydown', 'wheel', 'scroll'] as const;

/** Acts once: with the first pointer, key, touch or scrolling, or after the rest. */
export function atFirstAttention(act: () => void): void {
  const begin = () => {
    clearTimeout(timer);
    for (const sign of signs) removeEventListener(sign, begin, true);
    act();
  };
  const timer = setTimeout(begin, restBefore);
  for (const sign of signs) addEventListener(sign, begin, { capture: true, passive: true });
}
