// Which station is open, kept in the page's address so that Back works and a station can be linked to.

import { useCallback, useEffect, useState } from 'react';
import { firstStation, type StationName, stationOfAddress } from '../stations/names.ts';

export function useStation(): readonly [StationName, (station: StationName) => void] {
  const [station, setStation] = useState<StationName>(() => stationOfAddress(location.hash) ?? firstStation);
  useEffect(() => {
    // An address of something else on the page, such as the skip link's, leaves the station as it is.
    const follow = () => setStation((before) => stationOfAddress(location.hash) ?? before);
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);
  const open = useCallback((next: StationName) => {
    location.hash = next;
    setStation(next);
    // After the station is drawn: the reader and the keyboard go on from its heading.
    requestAnimationFrame(() => {
      const title = document.getElementById('station-title');
      title?.focus({ preventScroll: true });
      title?.scrollIntoView({ block: 'start' });
    });
  }, []);
  return [station, open];
}
