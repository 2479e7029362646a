// What is said of the tank: the results of its stages and their bands, as people and programs read them.

import { dewPoint } from '../../matter/air/index.ts';
import { material } from '../../matter/materials/index.ts';
import type { Band } from '../../quantities/index.ts';
import {
  type BuiltIntermediates,
  type BuiltTank,
  dampFaces,
  fallTimeLinear,
  type LayerState,
  type Panel,
  type PanelState,
  type TankLoad,
  timesToFall,
  type VesselState,
} from '../../tank/index.ts';
import type { BandWithUnit } from '../assessment.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import { tankSlice } from '../stages/index.ts';
import { carriedBy } from '../stages/meter.ts';
import { tankConditions, tankDescription } from '../stages/tank.ts';
import type {
  FallAnswer,
  LayerAnswer,
  LossPath,
  MeterAnswer,
  PanelAnswer,
  TankAnswer,
  TankMonth,
  VesselAnswer,
} from '../tank-answer.ts';
import { panelLabel, pathLabel, vesselLabel } from '../wording/labels.ts';
import { type Bands, bandOf, bareBand } from './pieces.ts';
import { fallName, fallRate, monthPath, type TankResults, twinOf, usualFalls } from './tank-values.ts';
import { drawnVessel } from './vessel-shape.ts';

/** What is told beside the bands. */
export interface TankAnswerOptions {
  /** By how much the water is let fall without heat [K], in rising order. */
  readonly falls?: readonly number[];
  readonly meter?: MeterAnswer | null;
}

export function tankAnswer(
  design: StagedDesign,
  results: TankResults,
  bands: Bands,
  { falls = usualFalls, meter = null }: TankAnswerOptions = {},
): TankAnswer {
  const { tank, surroundings } = results;
  const { roomTemperature } = surroundings.spell;
  const dew = roomDewPoint(tank, roomTemperature);
  return {
    waterTemperature: design.tank.waterTemperature,
    roomTemperature,
    roomDewPoint: dew,
    paths: tank.paths.map(({ path, kind, to, vessel, panel }): LossPath => {
      const heat = bandOf(bands, `tank.paths.${path}`);
      return { path, label: pathLabel(path), kind, to, vessel: vessel ?? null, panel: panel ?? null, heat };
    }),
    ...builtAnswers(design, results, bands, dew),
    loss: bandOf(bands, 'tank.loss'),
    gains: tank.gains,
    gainRanges: {
      pump: bareBand(bands, 'tank.gains.pump'),
      light: bareBand(bands, 'tank.gains.light'),
      ultraviolet: bareBand(bands, 'tank.gains.ultraviolet'),
    },
    load: bandOf(bands, 'tank.load'),
    evaporation: bandOf(bands, 'tank.evaporation'),
    heatCapacity: tank.heatCapacity,
    timePerKelvin: tank.load > 0 ? tank.heatCapacity / tank.load : null,
    timePerKelvinRange: tank.load > 0 ? timeRange(tank.heatCapacity, bareBand(bands, 'tank.load')) : null,
    conductance: bandOf(bands, 'tank.conductance'),
    timeConstant: bandOf(bands, 'tank.timeConstant'),
    falls: fallAnswers(design, results, bands, falls),
    months: monthsOf(results, bands),
    yearHeatNeeded: needOf(bandOf(bands, 'year.energies.heatNeeded')),
    meter,
  };
}

/** Dew point of the room's air [K]; null without vapour in it. */
export function roomDewPoint({ intermediates }: TankLoad, roomTemperature: number): number | null {
  const { roomVapour } = intermediates.air;
  return roomVapour > 0 ? dewPoint(roomTemperature, roomVapour) : null;
}

/** The less heat is needed, the longer it takes; without an end where no heat at all might be needed. */
function timeRange(heatCapacity: number, load: Band): TankAnswer['timePerKelvinRange'] {
  return { low: heatCapacity / load.high, high: load.low > 0 ? heatCapacity / load.low : null };
}

/** Vessels and panels of a tank that was not only measured. */
function builtAnswers(
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

function fallAnswers(
  design: StagedDesign,
  { tank, surroundings, meter }: TankResults,
  bands: Bands,
  falls: readonly number[],
): readonly FallAnswer[] {
  const slice = carriedBy(tankSlice(design), meter);
  const { spell, atmosphericPressure } = surroundings;
  const described = tankDescription(slice);
  const times = timesToFall(described, tankConditions(slice, spell, atmosphericPressure), falls);
  return falls.map((by, index) => {
    const time = times[index]!;
    const linear = fallTimeLinear(tank.heatCapacity, tank.conductance, tank.loss, by);
    // The range is that of the closed form, moved onto the integrated time.
    const scale = time === null || linear === null ? 1 : time / linear;
    return { by, time, range: fallRange(bareBand(bands, fallRate(by)), scale), result: fallName(by) };
  });
}

function fallRange({ low, high }: Band, scale: number): FallAnswer['range'] {
  return high > 0 ? { low: scale / high, high: low > 0 ? scale / low : null } : null;
}

/** A need ends at 0, which the combination of ranges by their squares does not know. */
function needOf(band: BandWithUnit): BandWithUnit {
  return { ...band, low: Math.max(0, band.low) };
}

function monthsOf(results: TankResults, bands: Bands): readonly TankMonth[] {
  const { surroundings, monthLoads } = results;
  return surroundings.months.map(({ month, duration, roomTemperature }, index) => {
    const at = monthPath(month);
    return {
      month,
      duration,
      roomTemperature,
      loss: bandOf(bands, `${at}.tank.loss`),
      load: bandOf(bands, `${at}.tank.load`),
      paths: monthLoads[index]!.paths.map(({ path }) => {
        const twin = monthPath(surroundings.months[twinOf(results, index)]!.month);
        const heat = bandOf(bands, `${twin}.tank.paths.${path}`);
        return { path, label: pathLabel(path), heat: { ...heat, result: `${at}.tank.paths.${path}` } };
      }),
      evaporation: bandOf(bands, `${at}.tank.evaporation`),
      heatNeeded: needOf(bandOf(bands, `${at}.energies.heatNeeded`)),
    };
  });
}
