// Which of two covers keeps the water better: the one that leaves less of it open; of two that leave as much, the one with the
// higher resistance. Evaporation through a gap outweighs what a sheet conducts, so the open share comes first. A total order,
// so that several lids on a list give the same tank in any order.

import { waterConductivity } from '../../matter/water/index.ts';
import type { Cover } from '../built-tank.ts';
import { airLayerResistance } from '../stack/air-gap.ts';
import { layerResistance } from '../stack/films.ts';
import type { Stack } from '../stack/layers.ts';
import { gapEmissivities } from '../stack/panel.ts';
import type { LidSheet } from './measure.ts';

/** Temperature at which gaps of two lids are compared [K]; the order hardly depends on it. */
const comparedAt = 295;

/** Above 0 where the first cover keeps better, 0 where both do as well. A hood with its fan counts as open. */
export function compareCovers(first: Cover, second: Cover): number {
  const [mine, other] = [openShareOf(first), openShareOf(second)];
  if (mine !== other) return other - mine;
  return resistanceOf(first) - resistanceOf(second);
}

export function lidOf({ stack, emissivity, openShare }: LidSheet): Cover {
  return { kind: 'lid', stack, emissivity, openShare };
}

function openShareOf(cover: Cover): number {
  return cover.kind === 'lid' ? cover.openShare : 1;
}

function resistanceOf(cover: Cover): number {
  return cover.kind === 'none' ? 0 : nominalResistance(cover.stack, cover.emissivity);
}

/** Resistance of a stack with its gaps at one temperature [m² K/W]. */
function nominalResistance(stack: Stack, emissivity: number): number {
  return stack.reduce((sum, _, index) => sum + ofLayer(stack, index, emissivity), 0);
}

function ofLayer(stack: Stack, index: number, emissivity: number): number {
  const layer = stack[index]!;
  switch (layer.kind) {
    case 'solid':
      return layerResistance(layer.thickness, layer.conductivity);
    case 'resistance':
      return layer.resistance;
    case 'waterGap':
      return layerResistance(layer.thickness, waterConductivity(comparedAt, 0));
    case 'sealedGap': {
      const [inner, outer] = gapEmissivities(stack, index, layer, emissivity);
      return airLayerResistance(layer.thickness, 'up', inner, outer, comparedAt);
    }
    case 'openGap':
      return 0;
  }
}
