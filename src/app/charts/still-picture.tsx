// A chart on paper that the drawing library has not drawn: the still picture of the same, made without it and at once.

import { type ReactNode, useLayoutEffect, useRef } from 'react';
import { type ChartSpecification, chartSvg } from '../../charts/index.ts';
import { paperWidth } from '../ui/light.tsx';
import { usualProportion } from './picture-place.tsx';

/** Room for the words around the plot [px]. */
const wordsHeight = 90;

export function StillPicture({ chart }: { readonly chart: ChartSpecification }): ReactNode {
  const host = useRef<HTMLDivElement>(null);
  // Before paper is laid out, which is at once.
  useLayoutEffect(() => {
    const height = Math.round(0.8 * paperWidth * (chart.proportion ?? usualProportion)) + wordsHeight;
    const text = chartSvg(chart, { width: paperWidth, height, title: '' });
    const { documentElement } = new DOMParser().parseFromString(text, 'image/svg+xml');
    host.current?.replaceChildren(document.importNode(documentElement, true));
  }, [chart]);
  return <div className="chart-still" ref={host} aria-hidden="true" />;
}
