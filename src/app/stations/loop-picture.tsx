// The p-h picture of where a design settles, with what it is made of.

import { type ReactNode, useMemo } from 'react';
import type { OperatingAnswer } from '../../assess/index.ts';
import { pressureEnthalpyChart, settledLoop } from '../../charts/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import { Chart } from '../charts/chart.tsx';
import { PicturePlace } from '../charts/picture-place.tsx';
import { useDiagram } from '../state/use-diagram.ts';

export interface LoopPictureProps {
  readonly operating: OperatingAnswer;
  readonly view: UnitView;
  /** Of its place, while it is being made. */
  readonly title: string;
}

export function LoopPicture({ operating, view, title }: LoopPictureProps): ReactNode {
  const request = useMemo(() => settledLoop(operating, view), [operating, view]);
  const { diagram, problem } = useDiagram(request, view);
  const chart = useMemo(() => diagram && pressureEnthalpyChart(diagram, view), [diagram, view]);
  if (problem !== undefined) return <p className="quiet">The picture is missing: {problem}</p>;
  return chart === undefined ? <PicturePlace title={title} /> : <Chart chart={chart} />;
}
