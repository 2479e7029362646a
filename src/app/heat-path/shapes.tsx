// Drawn parts of the heat path: ribbons, the dome of the compressor, the tank with its surface.

import type { ReactNode } from 'react';
import type { InkRole } from '../../charts/index.ts';
import type { PlacedRibbon } from './layout.ts';

const fills: Partial<Record<InkRole, string>> = {
  intoWater: 'into-water',
  fromSource: 'from-source',
  electricity: 'electricity',
  leaving: 'leaving',
};

/** Two edges of equal distance across, so that the width stays the watts all along. */
export function Ribbon({ ribbon }: { ribbon: PlacedRibbon }): ReactNode {
  const { x0, y0, x1, y1 } = ribbon;
  const half = Math.max(0.75, ribbon.thickness / 2);
  const middle = (x0 + x1) / 2;
  const ink = fills[ribbon.ink] ?? 'leaving';
  const shape = [
    `M${x0} ${y0 - half}`,
    `C${middle} ${y0 - half} ${middle} ${y1 - half} ${x1} ${y1 - half}`,
    `V${y1 + half}`,
    `C${middle} ${y1 + half} ${middle} ${y0 + half} ${x0} ${y0 + half}`,
    'Z',
  ].join('');
  return <path d={shape} fill={ribbon.hatched ? `url(#hatch-${ink})` : `var(--${ink}-fill)`} className="ribbon" />;
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A hermetic shell seen from the side: a domed top, a seam, feet. */
export function DomeShape({ x, y, width, height }: Box): ReactNode {
  const tall = Math.max(26, height);
  const top = y - 3;
  const bottom = y + tall + 3;
  const round = Math.min(width / 2, tall * 0.6);
  const seam = top + round * 0.9 + (tall - round) * 0.15;
  return (
    <g className="drawn">
      <path
        d={`M${x} ${bottom}V${top + round}Q${x} ${top} ${x + round} ${top}H${x + width - round}Q${x + width} ${top} ${x + width} ${top + round}V${bottom}Z`}
        className="drawn-body"
      />
      <path d={`M${x} ${seam}H${x + width}`} className="drawn-line" />
      <path d={`M${x + width * 0.14} ${bottom}v6M${x + width * 0.86} ${bottom}v6`} className="drawn-foot" />
    </g>
  );
}

/** Glass open at the top, water with a moving surface. */
export function TankShape({ x, y, width, height }: Box): ReactNode {
  const tall = Math.max(26, height);
  const top = y - 6;
  const bottom = y + tall + 3;
  const wave = width / 4;
  const surface = y + 3;
  return (
    <g className="drawn">
      <path
        d={`M${x} ${surface}q${wave / 2} -5 ${wave} 0t${wave} 0t${wave} 0t${wave} 0V${bottom}H${x}Z`}
        className="drawn-water"
      />
      <path d={`M${x} ${top}V${bottom}H${x + width}V${top}`} className="drawn-glass" />
    </g>
  );
}
