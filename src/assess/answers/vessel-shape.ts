// The sizes of each vessel and what lies over its water, as they are drawn: likely values, nothing else of the design.

import type { SizedLoadOf } from '../../design/index.ts';
import type { Shape, VesselName } from '../../tank/index.ts';
import type { VesselAnswer } from '../assessment/tank-answer.ts';
import { shapeOf } from '../stages/sized-tank/vessels.ts';

export type DrawnVessel = Pick<VesselAnswer, 'shape' | 'cover'>;

/** @throws TypeError for a vessel that the design does not have */
export function drawnVessel(load: SizedLoadOf<number>, vessel: VesselName): DrawnVessel {
  if (vessel === 'tank') return { shape: barely(shapeOf(load)), cover: displayCover(load) };
  const side = load[vessel];
  if (side === undefined) throw new TypeError(`the design has no ${vessel}`);
  return { shape: barely(side), cover: { kind: side.lid === 'none' ? 'none' : 'lid' } };
}

function displayCover({ lid, hood }: SizedLoadOf<number>): VesselAnswer['cover'] {
  if (lid === 'hood') return { kind: 'hood', height: hood.height };
  return { kind: lid === 'none' ? 'none' : 'lid' };
}

/** The sizes alone: a load and a vessel of the design hold much more. */
function barely(shape: Shape): Shape {
  switch (shape.kind) {
    case 'rectangular': {
      const { kind, length, width, height, waterDepth } = shape;
      return { kind, length, width, height, waterDepth };
    }
    case 'cylinder': {
      const { kind, diameter, height, waterDepth } = shape;
      return { kind, diameter, height, waterDepth };
    }
    case 'lShape': {
      const { kind, length, width, height, recessLength, recessWidth, waterDepth } = shape;
      return { kind, length, width, height, recessLength, recessWidth, waterDepth };
    }
    case 'panels': {
      const { kind, pieces, waterSurface, waterVolume, freeboard } = shape;
      return {
        kind,
        pieces: pieces.map(({ name, facing, area, areaAboveWater }) => ({ name, facing, area, areaAboveWater })),
        waterSurface,
        waterVolume,
        freeboard,
      };
    }
  }
}
