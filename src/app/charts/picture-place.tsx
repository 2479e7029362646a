// The place of a picture whose parts have still to be fetched: they are when it comes near the view or is to be printed. It is as
// high as the picture with its words, so that nothing moves when they come.

import { type ReactNode, useEffect, useRef } from 'react';
import { usePaper } from '../ui/light.tsx';
import { useNear } from './use-near.ts';

/** Height over width. */
export const usualProportion = 0.62;

export interface PicturePlaceProps {
  readonly title: string;
  /** Told once, when the picture is wanted. */
  readonly whenNear?: () => void;
}

export function PicturePlace({ title, whenNear }: PicturePlaceProps): ReactNode {
  const host = useRef<HTMLDivElement>(null);
  const near = useNear(host, true);
  useEffect(() => {
    if (near) whenNear?.();
  }, [near, whenNear]);
  return (
    <figure className="chart">
      <figcaption>
        <h3>{title}</h3>
        <p className="words-to-come" />
      </figcaption>
      <div
        className="chart-picture"
        data-state="waiting"
        ref={host}
        style={{ aspectRatio: `1 / ${usualProportion}` }}
        aria-hidden="true"
      />
      <NotDrawnYet />
    </figure>
  );
}

export function NotDrawnYet(): ReactNode {
  const isPaper = usePaper();
  return (
    <p className="quiet">{isPaper ? 'Not drawn yet: it will be in a few seconds. Print again then.' : 'Drawing…'}</p>
  );
}
