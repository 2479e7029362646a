// The faces that damp trapped air touches: a lid or the sides and top of a hood, and the panels above the water line. All have
// one temperature inside. Faces of like build are settled once and shared out by area, as only their areas differ.

import type { Exposure, Facing, Vessel } from '../built-tank.ts';
import type { Stack, StackLayer } from '../stack/layers.ts';
import { sinkTemperature } from '../stack/outer-surface.ts';
import { type PanelState, type Surroundings, settlePanel } from '../stack/panel.ts';

/** One face above the water. */
export interface InnerFace {
  readonly name: string;
  readonly area: number;
  readonly facing: Facing;
  readonly stack: Stack;
  readonly emissivity: number;
  readonly exposure: Exposure;
  /** [m], of an upright face. */
  readonly height?: number;
}

/** Where all of them stand. */
export interface FacePlace {
  readonly surroundings: Surroundings;
  readonly outerFilmFactor: number;
}

interface Group {
  readonly area: number;
  readonly faces: readonly InnerFace[];
}

/** Faces of one build together; made once, settled at each temperature that is tried. */
export type FaceGroups = readonly Group[];

/** The share of a vessel's panels above the water line, without what lies in the water. */
export function facesAboveWater(vessel: Pick<Vessel, 'panels' | 'freeboard'>, share: number): readonly InnerFace[] {
  return vessel.panels
    .filter(({ dryArea }) => share * dryArea > 0)
    .map(({ name, facing, dryArea, stack, layersInWater, emissivity, exposure }) => ({
      name,
      area: share * dryArea,
      facing,
      stack: layersInWater === 0 ? stack : stack.slice(layersInWater),
      emissivity,
      exposure,
      height: vessel.freeboard,
    }));
}

/** Puts faces of like build together. */
export function groupFaces(faces: readonly InnerFace[]): FaceGroups {
  const groups: Group[] = [];
  for (const face of faces) {
    const index = groups.findIndex(({ faces: [first] }) => isLike(first!, face));
    const like = groups[index];
    if (like === undefined) groups.push({ area: face.area, faces: [face] });
    else groups[index] = { area: like.area + face.area, faces: [...like.faces, face] };
  }
  return groups;
}

/** Coldest and warmest [K] of what lies beyond the faces. @throws InputError where an exposure lacks its temperature */
export function sinkRange(faces: readonly InnerFace[], surroundings: Surroundings): readonly [number, number] {
  const sinks = faces.map(({ exposure }) => sinkTemperature(exposure, surroundings));
  return [Math.min(...sinks), Math.max(...sinks)];
}

/** Heat Q [W] out through all faces, whose inside is at `inner` [K]. */
export function heatThroughFaces(groups: FaceGroups, inner: number, place: FacePlace): number {
  let heat = 0;
  for (const { area, faces } of groups) heat += settle(faces[0]!, area, inner, place).heat;
  return heat;
}

/** Each face as it settles with its inside at `inner` [K], in the order of the faces. */
export function settleFaces(
  faces: readonly InnerFace[],
  groups: FaceGroups,
  inner: number,
  place: FacePlace,
): readonly PanelState[] {
  const states = new Map<InnerFace, PanelState>();
  for (const group of groups) {
    const settled = settle(group.faces[0]!, group.area, inner, place);
    for (const face of group.faces) states.set(face, shareOf(settled, face));
  }
  return faces.map((face) => states.get(face)!);
}

function settle(face: InnerFace, area: number, inside: number, { surroundings, outerFilmFactor }: FacePlace) {
  const { name, facing, stack, emissivity, exposure, height } = face;
  return settlePanel({
    name,
    area,
    facing,
    inside,
    waterFilmResistance: 0,
    stack,
    emissivity,
    exposure,
    surroundings,
    outerFilmFactor,
    ...(height === undefined ? {} : { height }),
  });
}

/** A like face: the same fluxes and temperatures, its own name, area and layers. */
function shareOf(state: PanelState, { name, area, stack }: InnerFace): PanelState {
  const layers = state.layers.map((layer, index) => ({ ...layer, layer: stack[index]! }));
  return { ...state, name, area, layers, heat: (state.heat * area) / state.area };
}

function isLike(one: InnerFace, other: InnerFace): boolean {
  return (
    one.facing === other.facing &&
    one.height === other.height &&
    one.emissivity === other.emissivity &&
    isLikeRecord(one.exposure, other.exposure) &&
    one.stack.length === other.stack.length &&
    one.stack.every((layer, index) => isLikeRecord(layer, other.stack[index]!))
  );
}

/** Whether two records hold the same numbers and words (records within them: the very same); their origin does not matter. */
function isLikeRecord(one: Exposure | StackLayer, other: Exposure | StackLayer): boolean {
  if (one === other) return true;
  const names = Object.keys({ ...one, ...other }).filter((name) => name !== 'origin');
  return names.every((name) => entryOf(one, name) === entryOf(other, name));
}

function entryOf(record: Exposure | StackLayer, name: string): unknown {
  return (record as unknown as Readonly<Record<string, unknown>>)[name];
}
