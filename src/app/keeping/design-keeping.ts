// Keeps the open design in the browser without writing over what another tab keeps there. As soon as another tab has kept
// a different design, this one keeps nothing more until the person has chosen; whichever is not chosen is set aside.

import type { Keeper } from '../state/storage.ts';
import { allSetAside, setAside } from './set-aside.ts';

const key = 'design';

export interface DesignKeeping {
  /** Called with the open design's text at every change of it. */
  keep(text: string): void;
  /** Called when another tab has kept a text, or has removed it. */
  otherTabKept(text: string | undefined): void;
  /** The text that another tab keeps, while the person has not chosen between it and the open design. */
  theirs(): string | undefined;
  /** The open design is to become the other tab's. It is set aside; `keep` follows with the other text. */
  chooseTheirs(): void;
  /** False where the other tab's design could not be set aside: then nothing has changed. */
  chooseMine(): boolean;
  /** Tells when `theirs` has changed; answers how to be told no more. */
  subscribe(listener: () => void): () => void;
}

/**
 * @param keeper  what the browser keeps for all tabs
 * @param seen    the kept text that the page started from; undefined where nothing was kept
 * @param now     date and time, ISO 8601
 */
export function createDesignKeeping(keeper: Keeper, seen: string | undefined, now: () => string): DesignKeeping {
  let mine: string | undefined;
  /** What this tab has last read or written: anything else in its place comes from another tab. */
  let known = seen;
  let theirs: string | undefined;
  /** What this tab has set aside itself, and may replace as its design goes on. */
  let mineAside: string | undefined;
  const listeners = new Set<() => void>();

  const setTheirs = (text: string | undefined) => {
    if (theirs === text) return;
    theirs = text;
    for (const listener of listeners) listener();
  };
  const setMineAside = (text: string) => {
    // What is there already has been set aside for a reason of its own, or by another tab.
    if (allSetAside(keeper).some((one) => one.text === text)) return;
    if (setAside(keeper, { why: 'otherTab', at: now(), text }, mineAside)) mineAside = text;
  };
  const settle = (text: string | undefined) => {
    known = text;
    mineAside = undefined;
    setTheirs(undefined);
  };
  const write = (text: string) => {
    if (keeper.write(key, text)) known = text;
  };

  return {
    keep(text) {
      mine = text;
      const kept = keeper.read(key);
      if (kept === text && theirs !== undefined) return settle(text);
      if (theirs !== undefined) return setMineAside(text);
      if (kept === undefined || kept === known || kept === text) return write(text);
      setMineAside(text);
      setTheirs(kept);
    },
    otherTabKept(text) {
      if (text === undefined || text === mine) return settle(text);
      if (mine !== undefined) setMineAside(mine);
      setTheirs(text);
    },
    theirs: () => theirs,
    chooseTheirs() {
      settle(theirs);
    },
    chooseMine() {
      if (theirs === undefined || mine === undefined) return true;
      if (!setAside(keeper, { why: 'otherTab', at: now(), text: theirs }, mineAside)) return false;
      settle(theirs);
      write(mine);
      return true;
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
