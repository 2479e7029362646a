// What is said of a tank that is known by its sizes: its vessels and its panels, layer by layer.

import { material } from '../../matter/materials/index.ts';
import {
  type BuiltIntermediates,
  type BuiltTank,
  dampFaces,
  type LayerState,
  type Panel,
  type PanelState,
  type VesselState,
} from '../../tank/index.ts';
import type { LayerAnswer, PanelAnswer, TankAnswer, VesselAnswer } from '../assessment/tank-answer.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import { tankSlice } from '../stages/index.ts';
import { carriedBy } from '../stages/tank/meter.ts';
import { tankDescription } from '../stages/tank/tank.ts';
import { panelLabel, vesselLabel } from '../wording/labels.ts';
import { type Bands, bandOf } from './pieces.ts';
import type { TankResults } from './tank-values.ts';
import { drawnVessel } from './vessel-shape.ts';

/** Vessels and panels of a tank that was not only measured. */
export function builtAnswers(
  design: StagedDesign,
  { tank, meter }: TankResults,
  bands: Bands,
  dew: number | null,
): Pick<TankAnswer, 'vessels' | 'panels'> {
  const described = tankDescription(carriedBy(tankSlice(design), meter));
  const known = tank.intermediates;
  const { load: sized } = design.tank;
  if (described.kind !== 'built' || known.kind !== 'built' || sized.kind === 'measured') {
    return { vessels: [], panels: [] };
  }
  return {
    vessels: described.vessels.map(({ name, waterSurface, waterVolume }): VesselAnswer => {
      const loss = bandOf(bands, `tank.vessels.${name}.loss`);
      const water = { waterSurface, waterVolume };
      return { vessel: name, label: vesselLabel(name), loss, ...water, ...drawnVessel(sized, name) };
    }),
    panels: panelAnswers(design, described, known, bands, dew),
  };
}

/** A panel as it settled, and what is told of it beside its state. */
interface ShownPanel extends Pick<PanelAnswer, 'panel' | 'facing' | 'area' | 'dryArea'>, Pick<Panel, 'exposure'> {
  readonly state: PanelState;
  /** Path that its heat leaves by. */
  readonly path: string;
}

function panelAnswers(
  design: StagedDesign,
  { vessels }: BuiltTank,
  known: BuiltIntermediates,
  bands: Bands,
  dew: number | null,
): readonly PanelAnswer[] {
  return known.vessels.flatMap((state) => {
    const vessel = vessels.find(({ name }) => name === state.name)!;
    const shell = state.panels.map((panel): ShownPanel => {
      const { facing, exposure, wetArea, dryArea } = vessel.panels.find(({ name }) => name === panel.name)!;
      return { panel: panel.name, path: panel.name, facing, exposure, area: wetArea, dryArea, state: panel };
    });
    return [...shell, ...coverOf(state)].map((shown): PanelAnswer => {
      const { panel, facing, exposure, area, dryArea, path } = shown;
      const { inside, waterFilmResistance, layers, outer, sink, transmittance } = shown.state;
      return {
        vessel: state.name,
        panel,
        label: panelLabel(state.name, panel),
        facing,
        exposure: exposure.kind,
        area,
        dryArea,
        heat: bandOf(bands, `tank.paths.${state.name === 'tank' ? path : `${state.name}.${path}`}`),
        transmittance,
        insideTemperature: inside,
        waterFilmResistance,
        layers: layers.map((layer) => layerAnswer(design, layer)),
        outerTemperature: outer.temperature,
        outerResistance: outer.resistance,
        sinkTemperature: sink,
        condenses: dew !== null && dampFaces(shown.state, { room: dew }).length > 0,
      };
    });
  });
}

/** The lid, or the hood as one piece whose layers are those of its largest wall. */
function coverOf({ lid, hood }: VesselState): readonly ShownPanel[] {
  const inRoom = { facing: 'top', exposure: { kind: 'roomAir' }, dryArea: 0 } as const;
  if (lid !== undefined) return [{ panel: 'lid', path: 'lid', ...inRoom, area: lid.area, state: lid.lid }];
  if (hood === undefined) return [];
  const largest = hood.walls.toSorted((left, right) => right.area - left.area)[0]!;
  const area = hood.walls.reduce((sum, wall) => sum + wall.area, 0);
  return [{ panel: 'hood', path: 'hoodWalls', ...inRoom, area, state: largest }];
}

function layerAnswer(design: StagedDesign, state: LayerState): LayerAnswer {
  const { layer, resistance, innerTemperature, outerTemperature } = state;
  return {
    kind: layer.kind,
    label: layerLabel(design, layer),
    thickness: layer.kind === 'resistance' ? null : layer.thickness,
    resistance,
    innerTemperature,
    outerTemperature,
    origin: layer.origin ?? null,
  };
}

const kindLabels: Readonly<Record<LayerState['layer']['kind'], string>> = {
  solid: 'own material',
  resistance: 'layer of a known resistance',
  sealedGap: 'sealed air',
  openGap: 'air open to the room',
  waterGap: 'standing water',
};

/** The name of its material where the design gives one at its origin. */
function layerLabel(design: StagedDesign, { kind, origin }: LayerState['layer']): string {
  const there = origin === undefined || kind !== 'solid' ? undefined : valueAt(design, origin);
  const named = typeof there === 'object' && there !== null && 'material' in there ? there.material : there;
  return typeof named === 'string' ? material(named).label : kindLabels[kind];
}

function valueAt(tree: unknown, path: string): unknown {
  return path
    .split('.')
    .reduce(
      (at, key) => (typeof at === 'object' && at !== null ? (at as Record<string, unknown>)[key] : undefined),
      tree,
    );
}
