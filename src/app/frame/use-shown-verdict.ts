// A design just made by the seven questions: its verdict comes into sight, and takes the focus, as soon as it is there.

import { useLayoutEffect, useState } from 'react';
import type { DesignDocument } from '../../design/index.ts';

/**
 * @param answered  the design that the answer on the page belongs to
 * @returns what is called with the design whose verdict is waited for
 */
export function useShownVerdict(answered: DesignDocument | undefined): (made: DesignDocument) => void {
  const [awaited, setAwaited] = useState<DesignDocument | undefined>(undefined);
  useLayoutEffect(() => {
    if (awaited === undefined || answered !== awaited) return;
    setAwaited(undefined);
    const verdict = document.querySelector<HTMLElement>('#verdict');
    verdict?.focus({ preventScroll: true });
    // On a phone the heat path fills the screen above it.
    verdict?.querySelector('.verdict-words')?.scrollIntoView({ block: 'nearest' });
  }, [answered, awaited]);
  return setAwaited;
}
