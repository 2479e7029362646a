// One panel from the water, or the damp air above it, to what lies beyond: layer by layer, with the temperature at each face.
// Gap resistances and the outer surface follow from the temperatures, which follow from them: they settle by repetition.

import { ConvergenceError } from '../../numerics/index.ts';
import type { Exposure, Facing } from '../built-tank.ts';
import {
  airLayerResistance,
  type HeatFlow,
  type OuterSurface,
  outerSurface,
  paneHeat,
  transmittance,
} from './films.ts';
import type { Stack, StackLayer } from './layers.ts';

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
}

export interface Surroundings {
  readonly room: number;
  readonly outdoors?: number;
  readonly ground?: number;
}

/** A layer as it settles: its resistance [m² K/W] and the temperatures [K] at its face towards and away from the water. */
export interface LayerState {
  readonly layer: StackLayer;
  readonly resistance: number;
  readonly innerTemperature: number;
  readonly outerTemperature: number;
}

/** One panel as it settles. */
export interface PanelState {
  readonly name: string;
  readonly area: number;
  readonly inside: number;
  readonly waterFilmResistance: number;
  readonly layers: readonly LayerState[];
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

const TOLERANCE = 1e-10;
const ROUNDS = 200;

/**
 * The panel with all its temperatures in agreement.
 * @throws ConvergenceError where they do not settle; InputError where the exposure needs a temperature that is not given
 */
export function settlePanel(input: PanelInput): PanelState {
  const { inside, surroundings, emissivity, outerFilmFactor, stack, waterFilmResistance } = input;
  const sink = surroundings.room;
  const flow = flowOf(input.facing, inside, sink);
  let temperatures = stack.map(() => [inside, sink] as const);
  let outer = outerSurface(inside, sink, waterFilmResistance, flow, emissivity, outerFilmFactor);
  for (let round = 1; round <= ROUNDS; round++) {
    const resistances = stack.map((layer, index) => resistanceOf(layer, flow, stack, index, temperatures[index]!));
    const inner = resistances.reduce((sum, resistance) => sum + resistance, waterFilmResistance);
    outer = outerSurface(inside, sink, inner, flow, emissivity, outerFilmFactor);
    const flux = (inside - sink) / (inner + outer.resistance);
    let at = inside - flux * waterFilmResistance;
    const next = resistances.map((resistance) => {
      const from = at;
      at = from - flux * resistance;
      return [from, at] as const;
    });
    const change = Math.max(0, ...next.map(([, to], index) => Math.abs(to - temperatures[index]![1])));
    temperatures = next;
    if (change > TOLERANCE) continue;
    return {
      name: input.name,
      area: input.area,
      inside,
      waterFilmResistance,
      layers: stack.map((layer, index) => ({
        layer,
        resistance: resistances[index]!,
        innerTemperature: next[index]![0],
        outerTemperature: next[index]![1],
      })),
      innerResistance: inner,
      outer,
      sink,
      transmittance: transmittance(inner, outer.resistance),
      heat: paneHeat(input.area, inside, sink, inner, outer.resistance),
    };
  }
  throw new ConvergenceError('temperatures of a panel', ROUNDS, [outer.temperature], TOLERANCE);
}

/** Which way heat flows through a panel. */
export function flowOf(facing: Facing, inside: number, sink: number): HeatFlow {
  if (facing === 'side') return 'horizontal';
  return inside >= sink === (facing === 'top') ? 'up' : 'down';
}

function resistanceOf(
  layer: StackLayer,
  flow: HeatFlow,
  stack: Stack,
  index: number,
  [inner, outer]: readonly [number, number],
): number {
  switch (layer.kind) {
    case 'solid':
      return layer.thickness / layer.conductivity;
    case 'resistance':
      return layer.resistance;
    case 'waterGap':
      return layer.thickness / 0.6;
    case 'sealedGap':
      return airLayerResistance(
        layer.thickness,
        flow,
        layer.innerEmissivity ?? faceEmissivity(stack[index - 1]),
        layer.outerEmissivity ?? faceEmissivity(stack[index + 1]),
        (inner + outer) / 2,
      );
  }
}

function faceEmissivity(layer: StackLayer | undefined): number {
  return layer !== undefined && 'emissivity' in layer ? (layer.emissivity ?? 0.9) : 0.9;
}
