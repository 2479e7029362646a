// What stands folded on the screen until somebody opens it, and open on paper, so that a page is printed whole.

import { type ReactNode, useLayoutEffect, useRef } from 'react';
import { usePaper } from './light.tsx';

export interface FoldProps {
  readonly className?: string;
  /** By which a link leads to it: to its summary, where the keyboard opens and closes it. */
  readonly id?: string;
  readonly summary: ReactNode;
  /** Whether it begins open. */
  readonly open?: boolean;
  readonly children: ReactNode;
}

export function Fold({ className, id, summary, open = false, children }: FoldProps): ReactNode {
  const host = useRef<HTMLDetailsElement>(null);
  const isPaper = usePaper();
  // Before paper is laid out, and back as the reader left it.
  useLayoutEffect(() => {
    const fold = host.current;
    if (!isPaper || fold === null || fold.open) return;
    fold.open = true;
    return () => {
      fold.open = false;
    };
  }, [isPaper]);
  return (
    <details className={className} open={open} ref={host}>
      <summary id={id}>{summary}</summary>
      {children}
    </details>
  );
}
