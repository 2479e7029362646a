// Which page is open and which part of it is meant, kept in the page's address so that Back works and both can be linked to.

import { useCallback, useEffect, useState } from 'react';
import { findField, findNamed } from '../fields/find-field.ts';
import { addressOf, firstPage, isStation, type PageName, type Place, pageTitles, placeOfAddress } from '../pages.ts';

/**
 * Opens a page at its heading, or at a part of it: the element whose id is the part (or the part and "-title"), such as
 * the list of findings, or the field of that path, with the focus in it. Papers may read the part themselves, such as the result whose working is wanted.
 */
export type OpenPage = (page: PageName, part?: string) => void;

export function usePage(): readonly [Place, OpenPage] {
  const [place, setPlace] = useState<Place>(
    () => placeOfAddress(location.hash) ?? { page: firstPage, part: undefined },
  );
  // A link from outside to a part of a station leads there too, once the station has been answered.
  // Only the place the page begins with.
  useEffect(() => {
    if (isStation(place.page) && place.part !== undefined) focusPart(place.page, place.part);
  }, []);
  useEffect(() => {
    // An address of something else on the page, such as the skip link's, leaves it as it is.
    const follow = () => setPlace((before) => placeOfAddress(location.hash) ?? before);
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);
  const open = useCallback<OpenPage>((page, part) => {
    location.hash = addressOf({ page, part });
    setPlace({ page, part });
    focusPart(page, part);
  }, []);
  return [place, open];
}

/** What is meant may have to be loaded first, at the start with the engine: some seconds. */
const framesForLoading = 900;

let lastMeant = 0;

/**
 * The reader and the keyboard go on from the page's heading or the part meant, once it is there, unless another has been
 * opened meanwhile.
 */
function focusPart(page: PageName, part: string | undefined): void {
  lastMeant += 1;
  const meant = lastMeant;
  const look = (framesLeft: number) =>
    requestAnimationFrame(() => {
      if (meant !== lastMeant) return;
      const title = document.getElementById('page-title');
      if (title?.textContent === pageTitles[page]) focusIn(page, part, title);
      else if (framesLeft > 0) look(framesLeft - 1);
    });
  look(framesForLoading);
}

function focusIn(page: PageName, part: string | undefined, title: HTMLElement): void {
  const goal = part === undefined ? undefined : findPart(part);
  focusOn(goal ?? { element: title, isField: false });
  if (goal === undefined && part !== undefined && isStation(page)) goOnTo(part, title, framesForLoading);
}

interface Goal {
  readonly element: HTMLElement;
  readonly isField: boolean;
}

function findPart(part: string): Goal | undefined {
  const named = findNamed(part) ?? findNamed(`${part}-title`);
  const element = named ?? findField(part);
  return element ? { element, isField: named === undefined } : undefined;
}

function focusOn({ element, isField }: Goal): void {
  element.focus({ preventScroll: true });
  // A field has its name above it, which has to be in sight too.
  if (!isWellInSight(element)) element.scrollIntoView({ block: isField ? 'center' : 'start' });
}

/** From the heading to the part, which comes a moment later where it is fetched, unless the reader has gone elsewhere meanwhile. */
function goOnTo(part: string, title: HTMLElement, framesLeft: number): void {
  requestAnimationFrame(() => {
    if (document.activeElement !== title || framesLeft === 0) return;
    const goal = findPart(part);
    if (goal === undefined) goOnTo(part, title, framesLeft - 1);
    else focusOn(goal);
  });
}

/** Under whatever stays at the top of the window, and high enough that what follows is seen too. */
function isWellInSight(title: Element): boolean {
  const { top } = title.getBoundingClientRect();
  const covered = Number.parseFloat(getComputedStyle(document.documentElement).scrollPaddingTop);
  return top >= (Number.isFinite(covered) ? covered : 0) && top <= innerHeight * 0.6;
}
