// Which faces of a panel lie below the dew point of the air that reaches them. Room air reaches the outer surface, unless it
// stands on a slab or outdoors, and the faces behind a gap that is open to it; it does not reach what lies behind a sealed gap
// or between two layers that touch. Vapour that creeps through boards and joints is left out.

import type { PanelState } from './panel.ts';

/** A face of a panel below the dew point of the air that touches it. */
export interface DampFace {
  /** 'inner': towards the water, above the water line; 'outer': the surface that the room's air, or outdoor air, reaches. */
  readonly face: 'inner' | 'outer';
  /** Index in the stack of the layer whose face it is; absent where the stack has no layer that counts. */
  readonly layer?: number;
  readonly temperature: number;
  /** T_dew − T [K], > 0. */
  readonly below: number;
}

/** Dew points T_dew [K] of the air on either side, as far as air touches there. */
export interface DewPoints {
  readonly room?: number;
  readonly outdoors?: number;
  /** Of the air inside above the water; absent where water touches the panel. */
  readonly inside?: number;
}

/**
 * Faces of a settled panel that lie below the dew point of the air that reaches them.
 * @param state      as settlePanel gives it
 * @param dewPoints  T_dew [K] of room, outdoors, and of the air inside
 * @returns          none, one or two faces; a face exactly at the dew point is dry
 */
export function dampFaces(state: PanelState, dewPoints: DewPoints): readonly DampFace[] {
  const { countedLayers, layers } = state;
  const outside = airOutside(state);
  return [
    ...below('inner', state.inside, dewPoints.inside, layers.length === 0 ? -1 : 0),
    ...below(
      'outer',
      state.outer.temperature,
      outside === undefined ? undefined : dewPoints[outside],
      countedLayers - 1,
    ),
  ];
}

function airOutside({ exposure }: PanelState): 'room' | 'outdoors' | undefined {
  if (exposure.kind === 'slab') return undefined;
  return exposure.kind === 'outdoors' ? 'outdoors' : 'room';
}

function below(
  face: DampFace['face'],
  temperature: number,
  dewPoint: number | undefined,
  layer: number,
): readonly DampFace[] {
  if (dewPoint === undefined || temperature >= dewPoint) return [];
  return [{ face, ...(layer < 0 ? {} : { layer }), temperature, below: dewPoint - temperature }];
}
