// What is left out or doubted in the layers of panels and in what lies beyond them: each named once, with the panels it concerns.

import type { Finding } from '../../quantities/index.ts';
import type { VesselState } from '../load.ts';
import { THICKEST_AIR_LAYER } from '../stack/air-gap.ts';
import { METAL_CONDUCTIVITY, stackLimits, WIDEST_LIMITS } from '../stack/joints.ts';
import type { StackLayer } from '../stack/layers.ts';
import type { PanelState } from '../stack/panel.ts';
import { look, note, value, word } from './codes.ts';

interface NamedPanel {
  readonly name: string;
  readonly state: PanelState;
}

/** Findings of all panels that settled: those that water touches, lids and what stands above the water. */
export function stackFindings(vessels: readonly VesselState[]): readonly Finding[] {
  const panels = vessels.flatMap(panelsOf);
  const having = (isIt: (state: PanelState) => boolean) => panels.filter(({ state }) => isIt(state));
  return [...exposureFindings(having), ...gapFindings(having), ...jointFindings(having)];
}

type Having = (isIt: (state: PanelState) => boolean) => readonly NamedPanel[];

function exposureFindings(having: Having): readonly Finding[] {
  const found: Finding[] = [];
  const walls = having(({ exposure }) => exposure.kind === 'againstWall');
  if (walls.length > 0) {
    const remedy =
      'The gap is taken as room air that radiation crosses to a wall as warm as it gets; a closed gap would lose less.';
    found.push(note('wallCloseBy', facts(walls), 'own simplification, ISO 6946 films', remedy));
  }
  const stands = having(({ exposure }) => exposure.kind === 'closedStand');
  if (stands.length > 0) {
    const remedy =
      'One temperature for its air, heat through its boards only: no floor, no openings, no devices that warm it.';
    found.push(note('closedStandStill', facts(stands), 'ISO 6946, unheated space; own simplification', remedy));
  }
  const slabs = having(({ exposure }) => exposure.kind === 'slab');
  if (slabs.length > 0) {
    const remedy = 'Heat goes straight down to the ground; what the slab passes sideways to the room is left out.';
    found.push(note('slabToGround', facts(slabs), 'after ISO 13370; own simplification', remedy));
  }
  return found;
}

function gapFindings(having: Having): readonly Finding[] {
  const found: Finding[] = [];
  const water = having(({ layers }) => layers.some(({ layer }) => layer.kind === 'waterGap'));
  if (water.length > 0) {
    const remedy =
      'Taken as closed at its edges and as tall as a square of the panel; a background with holes keeps less warmth.';
    found.push(note('waterGapClosed', facts(water), 'VDI Heat Atlas 2010; Hollands 1984', remedy));
  }
  const thick = having(({ layers }) => layers.some(({ layer }) => isThick(layer)));
  if (thick.length > 0) {
    const thickness = Math.max(...thick.flatMap(({ state }) => state.layers.map(({ layer }) => gapThickness(layer))));
    const own = { ...facts(thick), thickness: value(thickness, 'length') };
    found.push(look('sealedGapThick', own, 'ISO 6946:2017, Annex D', 'Divide the gap, or fill it with a board.'));
  }
  return found;
}

function jointFindings(having: Having): readonly Finding[] {
  const found: Finding[] = [];
  const metal = having(({ layers }) => layers.some(({ layer }) => hasMetal(layer)));
  if (metal.length > 0) {
    const remedy =
      'Metal carries more than this method says; keep it out of the insulation, or give a measured resistance.';
    found.push(look('jointOfMetal', facts(metal), 'ISO 6946:2017, combined method', remedy));
  }
  const apart = having((state) => limitsRatio(state) > WIDEST_LIMITS);
  if (apart.length > 0) {
    const ratio = Math.max(...apart.map(({ state }) => limitsRatio(state)));
    const own = { ...facts(apart), ratio: value(ratio, 'ratio') };
    found.push(
      look('jointLimitsApart', own, 'ISO 6946:2017, combined method', 'Give a measured resistance of that layer.'),
    );
  }
  return found;
}

function panelsOf({ name, panels, lid, hood }: VesselState): readonly NamedPanel[] {
  const underLid = lid === undefined ? [] : [lid.lid, ...lid.freeboard];
  const underHood = hood === undefined ? [] : [...hood.walls, ...hood.freeboard];
  const states = [...panels, ...underLid, ...underHood];
  return states.map((state) => ({ name: name === 'tank' ? state.name : `${name} ${state.name}`, state }));
}

function facts(panels: readonly NamedPanel[]) {
  return { panels: word([...new Set(panels.map(({ name }) => name))].join(', ')) };
}

function isThick(layer: StackLayer): boolean {
  return gapThickness(layer) > THICKEST_AIR_LAYER;
}

/** [m]; 0 of what is no sealed gap. */
function gapThickness(layer: StackLayer): number {
  return layer.kind === 'sealedGap' ? layer.thickness : 0;
}

function hasMetal(layer: StackLayer): boolean {
  return layer.kind === 'solid' && (layer.bridge?.share ?? 0) > 0 && layer.bridge!.conductivity >= METAL_CONDUCTIVITY;
}

/** Upper over lower limit of the resistance of a panel; 1 without joints. */
function limitsRatio({ layers, countedLayers, waterFilmResistance, outer }: PanelState): number {
  const counted = layers.slice(0, countedLayers);
  const plain = counted.map(({ layer, resistance }) =>
    layer.kind === 'solid' ? layer.thickness / layer.conductivity : resistance,
  );
  const stack = counted.map(({ layer }) => layer);
  const { upper, lower } = stackLimits(stack, plain, waterFilmResistance + outer.resistance);
  return upper / lower;
}
