// One vessel of a tank under one cover: panels that water touches, the open and the covered share of its surface, and the
// heat that leaves it by each path. Left out: the open freeboard of a vessel without a lid.

import type { BuiltTank, Cover, Panel, Vessel } from '../built-tank.ts';
import { type HoodState, hoodedSurface } from '../cover/hood.ts';
import { coveredSurface } from '../cover/lid.ts';
import type { TankConditions } from '../description.ts';
import { evaporationHeat } from '../exchange.ts';
import type { AirState, HeatPath, HeatSink, LidState, SurfaceState, VesselState } from '../load.ts';
import { WATER_FILM_COEFFICIENT } from '../stack/films.ts';
import { type PanelState, type Surroundings, settlePanel } from '../stack/panel.ts';
import { openSurface } from '../water-surface/open-surface.ts';
import { surfaceConvection, surfaceRadiation } from '../water-surface/surface.ts';

/** What all vessels of a tank have in common. */
export interface VesselPlace {
  readonly conditions: TankConditions;
  readonly air: AirState;
  readonly surroundings: Surroundings;
  readonly outerFilmFactor: number;
}

/** What all vessels of this tank have in common. */
export function vesselPlace(tank: BuiltTank, conditions: TankConditions, air: AirState): VesselPlace {
  const { outdoorTemperature, groundTemperature } = conditions;
  const surroundings = {
    room: conditions.roomTemperature,
    ...(outdoorTemperature === undefined ? {} : { outdoors: outdoorTemperature }),
    ...(groundTemperature === undefined ? {} : { ground: groundTemperature }),
  };
  return { conditions, air, surroundings, outerFilmFactor: tank.outerFilmFactor ?? 1 };
}

/** The vessel as it settles under a cover. */
export function settleVessel(vessel: Vessel, cover: Cover, place: VesselPlace): VesselState {
  const panels = vessel.panels.map((panel) => wetPanel(panel, place));
  const openShare = openShareOf(cover);
  const surface = openShare > 0 ? openSurface(vessel, openShare, place.air, place.conditions) : undefined;
  const hood = cover.kind === 'hood' ? hoodedSurface({ vessel, cover, ...place }) : undefined;
  const lid = cover.kind === 'lid' && openShare < 1 ? underLid(vessel, cover, 1 - openShare, place) : undefined;
  return {
    name: vessel.name,
    panels,
    surface,
    lid,
    hood,
    paths: [
      ...(surface === undefined ? [] : surfacePaths(vessel, surface, place)),
      ...(lid === undefined ? [] : lidPaths(vessel, lid)),
      ...(hood === undefined ? [] : hoodPaths(vessel, hood)),
      ...panels.map((state, index) => panelPath(vessel, vessel.panels[index]!, state)),
    ],
    evaporation: (surface?.evaporation ?? 0) + (hood?.carriedVapour ?? 0),
  };
}

/** Water that a vessel loses as vapour from its surface [kg/s]: what `settleVessel` finds, without its panels and lid. */
export function vesselEvaporation(vessel: Vessel, cover: Cover, place: VesselPlace): number {
  const openShare = openShareOf(cover);
  const surface = openShare > 0 ? openSurface(vessel, openShare, place.air, place.conditions).evaporation : 0;
  return surface + (cover.kind === 'hood' ? hoodedSurface({ vessel, cover, ...place }).carriedVapour : 0);
}

function openShareOf(cover: Cover): number {
  if (cover.kind === 'hood') return 0;
  return cover.kind === 'lid' ? cover.openShare : 1;
}

function wetPanel(panel: Panel, { conditions, surroundings, outerFilmFactor }: VesselPlace): PanelState {
  return settlePanel({
    name: panel.name,
    area: panel.wetArea,
    facing: panel.facing,
    inside: conditions.waterTemperature,
    waterFilmResistance: 1 / WATER_FILM_COEFFICIENT,
    stack: panel.stack,
    emissivity: panel.emissivity,
    exposure: panel.exposure,
    surroundings,
    outerFilmFactor,
  });
}

function underLid(
  vessel: Vessel,
  cover: Extract<Cover, { readonly kind: 'lid' }>,
  coveredShare: number,
  { conditions, surroundings, air, outerFilmFactor }: VesselPlace,
): LidState {
  const { waterTemperature, atmosphericPressure } = conditions;
  return coveredSurface({
    vessel,
    cover,
    coveredShare,
    waterTemperature,
    surroundings,
    atmosphericPressure,
    air,
    outerFilmFactor,
  });
}

function surfacePaths(vessel: Vessel, surface: SurfaceState, { conditions, air }: VesselPlace): readonly HeatPath[] {
  const { waterTemperature: water, roomTemperature: room } = conditions;
  const { area, convectionCoefficient } = surface;
  const name = (path: string) => pathName(vessel, path);
  const own = { vessel: vessel.name, to: 'room' as const };
  return [
    {
      path: name('evaporation'),
      heat: evaporationHeat(surface.evaporation, air.latentHeat),
      kind: 'latent',
      ...own,
    },
    {
      path: name('surfaceConvection'),
      heat: surfaceConvection(convectionCoefficient, area, water, room),
      kind: 'sensible',
      ...own,
    },
    { path: name('surfaceRadiation'), heat: surfaceRadiation(area, water, room), kind: 'sensible', ...own },
  ];
}

function lidPaths(vessel: Vessel, lid: LidState): readonly HeatPath[] {
  return [warmth(vessel, 'lid', lid.lid.heat), ...freeboardPaths(vessel, lid.freeboard)];
}

function hoodPaths(vessel: Vessel, hood: HoodState): readonly HeatPath[] {
  return [
    { ...warmth(vessel, 'hoodVapour', hood.vapourHeat), kind: 'latent' },
    warmth(vessel, 'hoodAir', hood.airHeat),
    warmth(vessel, 'hoodWalls', sumOfHeat(hood.walls)),
    ...freeboardPaths(vessel, hood.freeboard),
  ];
}

/** Through the panels above the water, together: what ends in the room, and apart from it what ends elsewhere. */
function freeboardPaths(vessel: Vessel, freeboard: readonly PanelState[]): readonly HeatPath[] {
  const sinkOf = new Map(vessel.panels.map(({ name, exposure }) => [name, sinks[exposure.kind]]));
  const ends = [
    ['freeboard', 'room'],
    ['freeboardOutdoors', 'outdoors'],
    ['freeboardGround', 'ground'],
  ] as const;
  return ends.flatMap(([path, to]) => {
    const panels = freeboard.filter(({ name }) => sinkOf.get(name) === to);
    return panels.length === 0 ? [] : [{ ...warmth(vessel, path, sumOfHeat(panels)), to }];
  });
}

function warmth(vessel: Vessel, path: string, heat: number): HeatPath {
  return { path: pathName(vessel, path), vessel: vessel.name, heat, kind: 'sensible', to: 'room' };
}

function sumOfHeat(panels: readonly PanelState[]): number {
  return panels.reduce((sum, { heat }) => sum + heat, 0);
}

const sinks: Readonly<Record<Panel['exposure']['kind'], HeatSink>> = {
  roomAir: 'room',
  againstWall: 'room',
  closedStand: 'room',
  slab: 'ground',
  outdoors: 'outdoors',
};

function panelPath(vessel: Vessel, { name, exposure }: Panel, { heat }: PanelState): HeatPath {
  const path = pathName(vessel, name);
  return { path, vessel: vessel.name, panel: name, heat, kind: 'sensible', to: sinks[exposure.kind] };
}

/** A path of the display tank by its bare name, that of another vessel with the vessel's before it. */
export function pathName({ name }: Pick<Vessel, 'name'>, path: string): string {
  return name === 'tank' ? path : `${name}.${path}`;
}
