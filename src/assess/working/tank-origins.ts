// Where in the design the parts of a tank stand: sizes of its vessels, parts of its layers, what lies beyond its panels.

import type { ConditionOrigins, LayerPart, VesselName } from '../../tank/index.ts';
import { vesselNames } from '../../tank/index.ts';
import { drawnVessel } from '../answers/vessel-shape.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';

type Places = Required<Pick<ConditionOrigins, 'layerPart' | 'exposure' | 'shapes'>>;

export function placesInDesign(design: StagedDesign): Places {
  return { layerPart: layerPartIn(design), exposure: exposureIn(design), shapes: shapesIn(design) };
}

function shapesIn({ tank: { load } }: StagedDesign): Places['shapes'] {
  if (load.kind === 'measured') return {};
  const names = vesselNames.filter((name) => name === 'tank' || load[name] !== undefined);
  return Object.fromEntries(names.map((name) => [name, drawnVessel(load, name).shape]));
}

/** A layer stands in the design as a whole, as the choice of its material, or as a bare thickness. */
function layerPartIn(design: StagedDesign): Places['layerPart'] {
  return (layer, part) => {
    const there = valueAt(design, layer);
    if (typeof there === 'string') return part === 'thickness' ? layer.replace(/Material$/, 'Thickness') : layer;
    if (typeof there === 'number') return layer;
    if (typeof there === 'object' && there !== null && 'material' in there) return ofMaterial(layer, part);
    return `${layer}.${part}`;
  };
}

function ofMaterial(layer: string, part: LayerPart): string {
  if (part === 'thickness') return `${layer}.thickness`;
  return part === 'joint' ? `${layer}.joint.material` : `${layer}.material`;
}

/** What one face has of its own, else what the whole tank stands on. */
function exposureIn({ tank: { load } }: StagedDesign): Places['exposure'] {
  return (vessel: VesselName, panel: string) => {
    if (vessel !== 'tank') return `tank.load.${vessel}.exposure`;
    if (load.kind === 'measured') return 'tank.load.stand';
    if (load.kind === 'panels') {
      const index = load.panels.findIndex(({ name, exposure }) => name === panel && exposure !== undefined);
      return index < 0 ? 'tank.load.stand' : `tank.load.panels.${index}.exposure`;
    }
    const index = load.faces.findIndex(({ face, exposure }) => face === panel && exposure !== undefined);
    return index < 0 ? 'tank.load.stand' : `tank.load.faces.${index}.exposure`;
  };
}

function valueAt(tree: unknown, path: string): unknown {
  return path
    .split('.')
    .reduce(
      (at, key) => (typeof at === 'object' && at !== null ? (at as Record<string, unknown>)[key] : undefined),
      tree,
    );
}
