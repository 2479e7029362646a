// The open design kept in the browser at every change, and what stands in the way of it.

import { useEffect, useState, useSyncExternalStore } from 'react';
import type { Start } from '../state/start.ts';
import { changedKey, type Keeper, type Refused } from '../state/storage.ts';
import { createDesignKeeping, type DesignKeeping } from './design-keeping.ts';

export interface Keeping {
  readonly keeping: DesignKeeping;
  /** The text another tab keeps, while the person has not chosen. */
  readonly theirs: string | undefined;
  readonly refused: Refused;
}

/** Follows the text of the open design. */
export function useKeeping(keeper: Keeper, { kept, holdsKept }: Start, text: string): Keeping {
  const [keeping] = useState(() => createDesignKeeping(keeper, kept, () => new Date().toISOString()));
  const [firstText] = useState(text);
  const [isHeld, setHeld] = useState(holdsKept);
  const theirs = useSyncExternalStore(keeping.subscribe, keeping.theirs);
  const refused = useSyncExternalStore(keeper.subscribe, keeper.refused);
  useEffect(() => {
    if (isHeld && text === firstText) return;
    setHeld(false);
    keeping.keep(text);
  }, [keeping, text, isHeld, firstText]);
  useEffect(() => {
    const follow = (event: StorageEvent) => {
      const [key, changed] = changedKey(event) ?? [];
      if (key === 'design') keeping.otherTabKept(changed);
    };
    addEventListener('storage', follow);
    return () => removeEventListener('storage', follow);
  }, [keeping]);
  return { keeping, theirs, refused };
}
