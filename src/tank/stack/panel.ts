// One panel from the water, or the damp air above it, to what lies beyond: layer by layer, with the temperature at each face.
// Gap resistances and the outer surface follow from the temperatures, which follow from them: they settle by repetition. Heat
// grows with every difference it crosses, so there is one answer only.

import { ConvergenceError } from '../../numerics/index.ts';
import type { Exposure, Facing } from '../built-tank.ts';
import { airLayerResistance } from './air-gap.ts';
import { type HeatFlow, layerResistance, paneHeat, transmittance } from './films.ts';
import { jointedResistances, jointShare } from './joints.ts';
import type { SealedGap, Stack, StackLayer } from './layers.ts';
import {
  beyondResistance,
  type OuterSurface,
  outerConvection,
  outerFilm,
  outerResistance,
  type Surroundings,
  sinkTemperature,
} from './outer-surface.ts';
import { type WaterOfLayer, waterLayerNusselt, waterLayerResistance, waterOfLayer } from './water-gap.ts';

export type { OuterSurface, Surroundings } from './outer-surface.ts';

/** Long-wave emissivity of faces whose own is not given: glass, plastics, wood, paint (0.9, from memory of handbooks). */
export const FACE_EMISSIVITY = 0.9;

export interface PanelInput {
  readonly name: string;
  readonly area: number;
  readonly facing: Facing;
  /** T_i [K]: water, or the damp inner face above it. */
  readonly inside: number;
  /** [m² K/W]; 0 where no water touches the panel. */
  readonly waterFilmResistance: number;
  readonly stack: Stack;
  readonly emissivity: number;
  readonly exposure: Exposure;
  /** What lies beyond, as far as the exposure asks for it [K]. */
  readonly surroundings: Surroundings;
  /** On h_c + h_r of the outer surface; 1 is the standard. */
  readonly outerFilmFactor: number;
  /** Height [m] of an upright panel, for water standing in it; the side of a square of its area where absent. */
  readonly height?: number;
}

/** A layer as it settles: its resistance [m² K/W] and the temperatures [K] at its face towards and away from the water. */
export interface LayerState {
  readonly layer: StackLayer;
  /** Joints included; 0 from a gap that is open to the room outwards. */
  readonly resistance: number;
  readonly innerTemperature: number;
  readonly outerTemperature: number;
}

/** One panel as it settles. */
export interface PanelState {
  readonly name: string;
  readonly area: number;
  readonly facing: Facing;
  readonly exposure: Exposure;
  /** Which way heat flows through it. */
  readonly flow: HeatFlow;
  /** [m], where the caller named it. */
  readonly height?: number;
  readonly inside: number;
  readonly waterFilmResistance: number;
  readonly layers: readonly LayerState[];
  /** How many of the layers count, from the water: those before a gap that is open to the room. */
  readonly countedLayers: number;
  /** Film and all layers [m² K/W]. */
  readonly innerResistance: number;
  readonly outer: OuterSurface;
  /** Temperature of what lies beyond [K]. */
  readonly sink: number;
  /** U [W/(m² K)], from the inside to the sink. */
  readonly transmittance: number;
  /** [W], positive out of the water. */
  readonly heat: number;
}

/** Temperatures are repeated until none moves more than this, K. */
const TOLERANCE = 1e-10;
const ROUNDS = 200;
/** A round that leaves more than this share of the last change halves the step of the gaps, down to the smallest. */
const SLOW = 0.7;
const SMALLEST_STEP = 0.1;

/**
 * The panel with all its temperatures in agreement.
 * @throws ConvergenceError where they do not settle; InputError where the exposure needs a temperature that is not given
 */
export function settlePanel(input: PanelInput): PanelState {
  const { inside, stack, waterFilmResistance } = input;
  const sink = sinkTemperature(input.exposure, input.surroundings);
  const flow = flowOf(input.facing, inside, sink);
  const counted = countedLayers(stack);
  const emissivity = counted === stack.length ? input.emissivity : faceEmissivity(stack[counted - 1]);
  const convective = outerConvection(input.exposure, flow);
  const beyond = beyondResistance(input.exposure);
  const layers = counted === stack.length ? stack : stack.slice(0, counted);
  const hasJoints = layers.some((layer) => jointShare(layer) > 0);
  const gaps = gapsOf(input, layers, flow);
  // Away from joints; those of gaps follow in each round.
  const plain = layers.map((layer) => plainResistance(layer));
  const faces = new Array<number>(counted + 1).fill((inside + sink) / 2);
  faces[0] = inside;
  let wallTemperature = sink;
  let facing = sink;
  let lastChange = Number.POSITIVE_INFINITY;
  let step = 1;
  for (let round = 1; round <= ROUNDS; round++) {
    for (const gap of gaps) plain[gap.index] = gap.next(plain[gap.index]!, faces, step);
    const surface = faces[counted]!;
    const film = outerFilm(
      input.exposure,
      surface,
      facing,
      wallTemperature,
      convective,
      emissivity,
      input.outerFilmFactor,
    );
    const outward = outerResistance(film.resistance, beyond);
    const resistances = hasJoints ? jointedResistances(layers, plain, waterFilmResistance + outward) : plain;
    let inner = waterFilmResistance;
    for (let index = 0; index < counted; index++) inner += resistances[index]!;
    const flux = (inside - sink) / (inner + outward);
    let change = Math.abs(film.wallTemperature - wallTemperature);
    let at = inside - flux * waterFilmResistance;
    for (let index = 0; index <= counted; index++) {
      change = Math.max(change, Math.abs(at - faces[index]!));
      faces[index] = at;
      if (index < counted) at -= flux * resistances[index]!;
    }
    facing = sink + flux * beyond;
    wallTemperature = film.wallTemperature;
    if (!(change <= TOLERANCE)) {
      if (change > SLOW * lastChange) step = Math.max(SMALLEST_STEP, step / 2);
      lastChange = change;
      continue;
    }
    return {
      name: input.name,
      area: input.area,
      facing: input.facing,
      exposure: input.exposure,
      flow,
      ...(input.height === undefined ? {} : { height: input.height }),
      inside,
      waterFilmResistance,
      layers: layerStates(stack, counted, resistances, faces, sink),
      countedLayers: counted,
      innerResistance: inner,
      outer: {
        temperature: faces[counted]!,
        emissivity,
        convectiveCoefficient: convective,
        radiativeCoefficient: film.radiative,
        factor: input.outerFilmFactor,
        filmResistance: film.resistance,
        beyondResistance: beyond,
        resistance: outward,
        ...(input.exposure.kind === 'againstWall' ? { wallTemperature } : {}),
      },
      sink,
      transmittance: transmittance(inner, outward),
      heat: paneHeat(input.area, inside, sink, inner, outward),
    };
  }
  throw new ConvergenceError(`temperatures of panel ${input.name}`, ROUNDS, faces, lastChange);
}

/** Which way heat flows through a panel. */
export function flowOf(facing: Facing, inside: number, sink: number): HeatFlow {
  if (facing === 'side') return 'horizontal';
  return inside >= sink === (facing === 'top') ? 'up' : 'down';
}

/** Layers from the water up to a gap that is open to the room. */
function countedLayers(stack: Stack): number {
  const open = stack.findIndex(({ kind }) => kind === 'openGap');
  return open === -1 ? stack.length : open;
}

/** R [m² K/W] of a layer whose resistance does not depend on temperatures; 0 of a gap until it is settled. */
function plainResistance(layer: StackLayer): number {
  if (layer.kind === 'solid') return layerResistance(layer.thickness, layer.conductivity);
  return layer.kind === 'resistance' ? layer.resistance : 0;
}

/** A layer whose resistance follows from the temperatures at its faces. */
interface Gap {
  readonly index: number;
  /** Its resistance at these faces, a step on from the one before. */
  readonly next: (before: number, faces: readonly number[], step: number) => number;
}

function gapsOf(input: PanelInput, layers: Stack, flow: HeatFlow): readonly Gap[] {
  const gaps: Gap[] = [];
  let water: WaterOfLayer | undefined;
  layers.forEach((layer, index) => {
    if (layer.kind === 'sealedGap') {
      const [one, other] = gapEmissivities(layers, index, layer, input.emissivity);
      gaps.push({
        index,
        next: (before, faces, step) => {
          const inner = faces[index]!;
          const outer = faces[index + 1]!;
          const difference = Math.abs(inner - outer);
          const at = (inner + outer) / 2;
          return stepped(
            before,
            airLayerResistance(layer.thickness, flow, one, other, at, difference, layer.breadth),
            step,
          );
        },
      });
    }
    if (layer.kind === 'waterGap') {
      water ??= waterOfLayer(input.inside);
      const own = water;
      const height = gapHeight(input);
      gaps.push({
        index,
        next: (before, faces, step) => {
          const difference = Math.abs(faces[index]! - faces[index + 1]!);
          const nusselt = waterLayerNusselt(own, layer.thickness, height, flow, difference);
          return stepped(before, waterLayerResistance(layer.thickness, own.conductivity, nusselt), step);
        },
      });
    }
  });
  return gaps;
}

/** H [m] of water standing in a panel; nothing crosses a panel without area, so that any height does. */
export function gapHeight({ height, area }: Pick<PanelInput, 'height' | 'area'>): number {
  if (height !== undefined && height > 0) return height;
  return area > 0 ? squareSide(area) : 1;
}

/** Side [m] of a square of an area [m²]. Geometry. */
export function squareSide(area: number): number {
  return Math.sqrt(area);
}

/** Part of the way from one resistance to the next; all of it at first. */
function stepped(before: number, next: number, step: number): number {
  return step === 1 || before === 0 ? next : before + step * (next - before);
}

/** ε of the faces of a gap: its own, or those of the layers beside it; a gap at the end of a stack has the panel's outer face. */
export function gapEmissivities(
  layers: Stack,
  index: number,
  gap: SealedGap,
  outermost: number,
): readonly [inner: number, outer: number] {
  const beyond = layers[index + 1];
  return [
    gap.innerEmissivity ?? faceEmissivity(layers[index - 1]),
    gap.outerEmissivity ?? (beyond === undefined ? outermost : faceEmissivity(beyond)),
  ];
}

function faceEmissivity(layer: StackLayer | undefined): number {
  return layer !== undefined && 'emissivity' in layer ? (layer.emissivity ?? FACE_EMISSIVITY) : FACE_EMISSIVITY;
}

function layerStates(
  stack: Stack,
  counted: number,
  resistances: readonly number[],
  faces: readonly number[],
  sink: number,
): readonly LayerState[] {
  return stack.map((layer, index) =>
    index < counted
      ? {
          layer,
          resistance: resistances[index]!,
          innerTemperature: faces[index]!,
          outerTemperature: faces[index + 1]!,
        }
      : { layer, resistance: 0, innerTemperature: sink, outerTemperature: sink },
  );
}
