// A part of a page that is fetched when it comes near the view, when the page is printed, or once the page has been open for a
// while, whichever comes first: the first answer never waits for it, and the browser's own printing has it.

import { type ReactNode, Suspense, useCallback, useEffect, useRef, useState } from 'react';
import { useNear } from '../charts/use-near.ts';
import { restBefore } from './first-attention.ts';

export interface LaterProps {
  /** What stands in its place until it is there; told whom to tell when it comes near. */
  readonly place?: (whenNear: () => void) => ReactNode;
  readonly children: ReactNode;
}

export function Later({ place = emptyPlace, children }: LaterProps): ReactNode {
  const [isWanted, setWanted] = useState(false);
  const want = useCallback(() => setWanted(true), []);
  useEffect(() => {
    const timer = setTimeout(want, restBefore);
    return () => clearTimeout(timer);
  }, [want]);
  const standing = place(want);
  return isWanted ? <Suspense fallback={standing}>{children}</Suspense> : standing;
}

function emptyPlace(whenNear: () => void): ReactNode {
  return <EmptyPlace whenNear={whenNear} />;
}

function EmptyPlace({ whenNear }: { readonly whenNear: () => void }): ReactNode {
  const host = useRef<HTMLParagraphElement>(null);
  const near = useNear(host, true);
  useEffect(() => {
    if (near) whenNear();
  }, [near, whenNear]);
  return <p className="quiet" ref={host} />;
}
