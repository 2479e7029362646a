// Layers bridged by another material over a share of the area, timber in a board or steel in a frame, by the two limits of
// ISO 6946: sections side by side with no heat between them (upper), and faces each at one temperature (lower). Where several
// layers have joints, these are taken to lie one behind the other, which lets the most heat through.

import type { StackLayer } from './layers.ts';

/** Conductivity from which a joint counts as metal, which the method does not cover, W/(m K): stainless steel has 14 to 17. */
export const METAL_CONDUCTIVITY = 10;
/** Upper over lower limit beyond which the standard does not let the method be used (from memory of the source). */
export const WIDEST_LIMITS = 1.5;

/** Both limits of a whole stack, films included [m² K/W]. */
export interface StackLimits {
  readonly upper: number;
  readonly lower: number;
}

/** Share of a layer's area that a joint bridges, 0 where it has none. */
export function jointShare(layer: StackLayer): number {
  return layer.kind === 'solid' && layer.bridge !== undefined ? layer.bridge.share : 0;
}

/** R [m² K/W] of the joint of a layer: that of the layer itself where it has none. */
function jointResistance(layer: StackLayer, resistance: number): number {
  return layer.kind === 'solid' && layer.bridge !== undefined
    ? layer.thickness / layer.bridge.conductivity
    : resistance;
}

/**
 * Resistance R of two materials side by side in one layer.
 *     R = 1 / ((1 − f)/R_main + f/R_joint)
 * @param main   R_main [m² K/W]
 * @param joint  R_joint [m² K/W]
 * @param share  f [-] of the area that the joint has
 * @returns      R [m² K/W]
 * Source: ISO 6946:2017, lower limit. Worked value: 50 mm of 0.029 with 10 % of 0.13 → 1.2788 m² K/W.
 */
export function besideResistance(main: number, joint: number, share: number): number {
  return 1 / ((1 - share) / main + share / joint);
}

/**
 * Resistance R_T of a whole stack with joints.
 *     R_T = (R_upper + R_lower) / 2
 * @param upper  R_upper [m² K/W]
 * @param lower  R_lower [m² K/W]
 * @returns      R_T [m² K/W]
 * Source: ISO 6946:2017, combined method. Worked value: 1.6428, 1.5388 → 1.5908 m² K/W.
 */
export function combinedResistance(upper: number, lower: number): number {
  return (upper + lower) / 2;
}

/**
 * Upper and lower limit of the resistance of a stack.
 *     1/R_upper = Σ f_j / R_Tj over sections;  R_lower = Σ 1/(Σ f_j/R_j) over layers
 * @param layers       from the water outwards
 * @param resistances  of each layer away from its joint [m² K/W]
 * @param rest         films and what lies beyond, the same for all sections [m² K/W]
 * @returns            both limits, `rest` included
 * Source: ISO 6946:2017, clause 6.7.2 (number from memory).
 * Worked value: 50 mm of 0.029 with 10 % timber 0.13, films 0.13 + 0.13 → 1.6428 and 1.5388 m² K/W.
 */
export function stackLimits(layers: readonly StackLayer[], resistances: readonly number[], rest: number): StackLimits {
  let lower = rest;
  let section = rest;
  const joints: { readonly share: number; readonly change: number }[] = [];
  layers.forEach((layer, index) => {
    const main = resistances[index]!;
    const share = jointShare(layer);
    const joint = jointResistance(layer, main);
    lower += besideResistance(main, joint, share);
    section += joint;
    joints.push({ share, change: main - joint });
  });
  // The section where all joints lie one behind the other first; each next one has the narrowest joint less.
  joints.sort((one, other) => one.share - other.share);
  let conductance = 0;
  let from = 0;
  for (const { share, change } of joints) {
    conductance += (share - from) / section;
    from = share;
    section += change;
  }
  conductance += (1 - from) / section;
  return { upper: 1 / conductance, lower };
}

/**
 * Resistance of each layer, joints included, such that they and `rest` in series are the mean of both limits. What the mean has
 * more than the lower limit goes to the layers by how much their joints take away.
 */
export function jointedResistances(
  layers: readonly StackLayer[],
  resistances: readonly number[],
  rest: number,
): readonly number[] {
  const { upper, lower } = stackLimits(layers, resistances, rest);
  const more = combinedResistance(upper, lower) - lower;
  const beside = layers.map((layer, index) => {
    const main = resistances[index]!;
    return besideResistance(main, jointResistance(layer, main), jointShare(layer));
  });
  const taken = beside.map((resistance, index) => jointTakes(resistances[index]!, resistance));
  const all = taken.reduce((sum, part) => sum + part, 0);
  return all === 0
    ? beside
    : beside.map((resistance, index) => jointedResistance(resistance, more, taken[index]!, all));
}

/**
 * Resistance of a layer with a joint, such that all layers and films add up to the mean of both limits.
 *     R = R_beside + dR ΔR / ΣΔR
 * @param beside  R_beside [m² K/W], as part of the lower limit
 * @param more    dR [m² K/W], mean of both limits less the lower one
 * @param taken   ΔR [m² K/W], what the joint takes from this layer
 * @param all     ΣΔR [m² K/W], what the joints take from all layers
 * @returns       R [m² K/W]
 * Source: own sharing of the standard's mean among the layers. Worked value: 1.279, 0.052, 0.445, 0.445 → 1.331.
 */
export function jointedResistance(beside: number, more: number, taken: number, all: number): number {
  return beside + (more * taken) / all;
}

/** What a joint takes from the resistance of a layer [m² K/W]: |R_main − R_beside|. Definition. */
export function jointTakes(main: number, beside: number): number {
  return Math.abs(main - beside);
}
