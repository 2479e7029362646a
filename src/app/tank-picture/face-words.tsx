// Name and heat of a panel, written on its face where there is room: both, the heat alone, or nothing; the table has them all.

import type { ReactNode } from 'react';
import { sentenceStart, type UnitView } from '../../quantities/index.ts';
import { sayParts } from '../ui/say.ts';
import type { PicturePanel } from './panels.ts';
import { placeInside } from './polygons.ts';
import type { Spot } from './projection.ts';
import { letter, widthOf } from './words.ts';

export interface FaceWordsProps {
  readonly panel: PicturePanel;
  /** [px]. */
  readonly shape: readonly Spot[];
  readonly tone: string;
  /** False where the name stands beside the face. */
  readonly isNamed: boolean;
  readonly view: UnitView;
}

export function FaceWords({ panel, shape, tone, isNamed, view }: FaceWordsProps): ReactNode {
  const written = wordsThatFit(panel, shape, isNamed, view);
  if (written === undefined) return null;
  const { lines, spot } = written;
  const top = spot[1] - ((lines.length - 1) * lineHeight) / 2;
  return (
    <g className={`tank-words on-${tone}`}>
      {lines.map((line, index) => (
        <text key={line} x={spot[0]} y={top + index * lineHeight + letter.height * 0.35} textAnchor="middle">
          {line}
        </text>
      ))}
    </g>
  );
}

const lineHeight = letter.height + 3;

interface FittedWords {
  readonly lines: readonly string[];
  readonly spot: Spot;
}

function wordsThatFit(
  { shortLabel, heat }: PicturePanel,
  shape: readonly Spot[],
  isNamed: boolean,
  view: UnitView,
): FittedWords | undefined {
  const name = sentenceStart(shortLabel);
  const watts = sayParts(heat, 'power', view).likely;
  for (const lines of isNamed ? [[name, watts], [`${name} ${watts}`], [watts]] : [[watts]]) {
    const width = Math.max(...lines.map(widthOf)) + 4;
    const spot = placeInside(shape, width, lines.length * lineHeight);
    if (spot !== undefined) return { lines, spot };
  }
  return undefined;
}
