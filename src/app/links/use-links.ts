// Opens the designs that links carry, while the page is open: one pasted into the address, or into the field for it.

import { type Dispatch, useEffect, useRef } from 'react';
import type { DesignDocument } from '../../design/index.ts';
import { addressOf, isDesignLink, type Place } from '../pages.ts';
import { noticeOfLinked } from '../state/start.ts';
import type { Keeper } from '../state/storage.ts';
import type { WorkbenchAction } from '../state/workbench.ts';

/** @returns opens the design of a link: the whole address, or what follows from its '#' */
export function useLinks(
  keeper: Keeper,
  document: DesignDocument,
  place: Place,
  dispatch: Dispatch<WorkbenchAction>,
): (link: string) => void {
  const open = async (link: string) => {
    const { openLink } = await import('./open-link.ts');
    const opened = await openLink(link);
    if (!opened.ok) return dispatch({ type: 'noticed', notice: opened.notice });
    const notice = noticeOfLinked(keeper, document, opened, new Date().toISOString());
    dispatch({ type: 'opened', document: opened.document });
    dispatch({ type: 'noticed', notice });
  };
  const follow = () => {
    const { hash } = location;
    if (!isDesignLink(hash)) return;
    history.replaceState(null, '', addressOf(place));
    void open(hash);
  };
  // The listener stays, and does what the last render would do.
  const latest = useRef(follow);
  latest.current = follow;
  useEffect(() => {
    const listen = () => latest.current();
    addEventListener('hashchange', listen);
    return () => removeEventListener('hashchange', listen);
  }, []);
  return (link) => void open(link);
}
