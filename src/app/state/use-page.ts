// Which page is open and which part of it is meant, kept in the page's address so that Back works and both can be linked to.

import { useCallback, useEffect, useState } from 'react';
import { addressOf, firstPage, type PageName, type Place, pageTitles, placeOfAddress } from '../pages.ts';

/**
 * Opens a page at its heading, or at a part of it: the element whose id is the part (or the part and "-title"), such as
 * the list of findings. Papers may read the part themselves, such as the result whose working is wanted.
 */
export type OpenPage = (page: PageName, part?: string) => void;

export function usePage(): readonly [Place, OpenPage] {
  const [place, setPlace] = useState<Place>(
    () => placeOfAddress(location.hash) ?? { page: firstPage, part: undefined },
  );
  useEffect(() => {
    // An address of something else on the page, such as the skip link's, leaves it as it is.
    const follow = () => setPlace((before) => placeOfAddress(location.hash) ?? before);
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);
  const open = useCallback<OpenPage>((page, part) => {
    location.hash = addressOf({ page, part });
    setPlace({ page, part });
    focusTitle(pageTitles[page], part, 60);
  }, []);
  return [place, open];
}

/** The reader and the keyboard go on from the page's heading, once it is there: a page may have to be loaded first. */
function focusTitle(words: string, part: string | undefined, framesLeft: number): void {
  requestAnimationFrame(() => {
    const title = document.getElementById('page-title');
    if (title?.textContent !== words) {
      if (framesLeft > 0) focusTitle(words, part, framesLeft - 1);
      return;
    }
    const goal = (part && (document.getElementById(part) ?? document.getElementById(`${part}-title`))) || title;
    goal.focus({ preventScroll: true });
    if (!isWellInSight(goal)) goal.scrollIntoView({ block: 'start' });
  });
}

/** Under whatever stays at the top of the window, and high enough that what follows is seen too. */
function isWellInSight(title: Element): boolean {
  const { top } = title.getBoundingClientRect();
  const covered = Number.parseFloat(getComputedStyle(document.documentElement).scrollPaddingTop);
  return top >= (Number.isFinite(covered) ? covered : 0) && top <= innerHeight * 0.6;
}
