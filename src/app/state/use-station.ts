// Which station is open, kept in the page's address so that Back works and a station can be linked to.

import { useCallback, useEffect, useState } from 'react';
import { firstStation, type StationName, stationOfAddress, stationTitles } from '../stations/names.ts';

/** Opens a station at its heading, or at its list of what was found. */
export type OpenStation = (station: StationName, part?: 'findings') => void;

export function useStation(): readonly [StationName, OpenStation] {
  const [station, setStation] = useState<StationName>(() => stationOfAddress(location.hash) ?? firstStation);
  useEffect(() => {
    // An address of something else on the page, such as the skip link's, leaves the station as it is.
    const follow = () => setStation((before) => stationOfAddress(location.hash) ?? before);
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);
  const open = useCallback<OpenStation>((next, part) => {
    location.hash = next;
    setStation(next);
    focusTitle(stationTitles[next], part, 60);
  }, []);
  return [station, open];
}

/** The reader and the keyboard go on from the station's heading, once it is there: a station may have to be loaded first. */
function focusTitle(words: string, part: 'findings' | undefined, framesLeft: number): void {
  requestAnimationFrame(() => {
    const title = document.getElementById('station-title');
    if (title?.textContent !== words) {
      if (framesLeft > 0) focusTitle(words, part, framesLeft - 1);
      return;
    }
    const goal = (part && document.getElementById(`${part}-title`)) || title;
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
