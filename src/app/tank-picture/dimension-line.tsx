// A size with its line, ticks at both ends, a little off the drawing.

import type { ReactNode } from 'react';
import type { UnitView } from '../../quantities/index.ts';
import type { DrawnDimension } from './dimensions.ts';
import { onSheet } from './face-targets.ts';
import type { PlacedDrawing } from './layout.ts';
import type { Spot } from './projection.ts';
import { dimensionGap, dimensionText, dimensionWordGap, letter } from './words.ts';

export interface DimensionLineProps {
  readonly dimension: DrawnDimension;
  readonly placed: PlacedDrawing;
  /** [px/m]. */
  readonly scale: number;
  readonly view: UnitView;
}

const gap = dimensionGap;
const wordGap = dimensionWordGap;

export function DimensionLine({ dimension, placed, scale, view }: DimensionLineProps): ReactNode {
  const { off } = dimension;
  const moved = (spot: Spot, by: number): Spot => {
    const [x, y] = onSheet(spot, placed, scale);
    return [x + by * off[0], y + by * off[1]];
  };
  const [from, to] = [dimension.from, dimension.to];
  const ends = [moved(from, gap), moved(to, gap)] as const;
  const ticks = [from, to].map((spot) => [moved(spot, gap - 4), moved(spot, gap + 4)] as const);
  const middle: Spot = [(ends[0][0] + ends[1][0]) / 2, (ends[0][1] + ends[1][1]) / 2];
  return (
    <g className="tank-size">
      <Line from={ends[0]} to={ends[1]} />
      {ticks.map(([a, b]) => (
        <Line key={`${a}`} from={a} to={b} />
      ))}
      <text
        x={middle[0] + wordGap * off[0]}
        y={middle[1] + wordGap * off[1] + letter.height * (off[1] > 0.5 ? 0.8 : off[1] < -0.5 ? 0 : 0.35)}
        textAnchor={off[0] > 0.5 ? 'start' : off[0] < -0.5 ? 'end' : 'middle'}
      >
        {dimensionText(dimension, view)}
      </text>
    </g>
  );
}

function Line({ from, to }: { readonly from: Spot; readonly to: Spot }): ReactNode {
  return <line x1={from[0]} y1={from[1]} x2={to[0]} y2={to[1]} />;
}
