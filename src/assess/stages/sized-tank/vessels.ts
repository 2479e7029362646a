// The vessels of the design as the tank model wants them told: shapes become panels, each panel gets its layers from the
// water outwards and what lies beyond.

import type { FacePartsOf, SideVesselOf, SizedLoadOf } from '../../../design/index.ts';
import {
  type Face,
  measuresOf,
  type Panel,
  type Shape,
  type ShapeMeasures,
  type Stack,
  type Vessel,
} from '../../../tank/index.ts';
import type { TankFactors } from '../tank/tank-assumptions.ts';
import {
  type Beyond,
  boardLayers,
  exposureOf,
  listedLayers,
  outermostEmissivity,
  type PlainExposure,
  type PlainSheet,
  sheetLayer,
} from '../tank/tank-stacks.ts';
import { displayCover, sideCover } from './cover.ts';

type PlainLoad = SizedLoadOf<number>;
type PlainFaceParts = FacePartsOf<number>;

const load = 'tank.load';

/** Usual height of a stand [m]: common practice, no source. */
const standHeight = 0.7;

const sideVesselNames = ['sump', 'refuge', 'overflow'] as const;

/** The shape of the display tank. */
export function shapeOf(tank: PlainLoad): Shape {
  if (tank.kind !== 'panels') return tank;
  const { waterSurface, waterVolume, freeboard } = tank;
  return { kind: 'panels', pieces: tank.panels, waterSurface, waterVolume, freeboard };
}

/** All vessels, the display tank first. */
export function vesselsOf(tank: PlainLoad, factors: TankFactors, windSpeed: number): readonly Vessel[] {
  const measures = measuresOf(shapeOf(tank));
  const others = sideVesselNames.flatMap((name) => {
    const vessel = tank[name];
    return vessel === undefined ? [] : [{ name, vessel, measures: measuresOf({ ...vessel }, `${load}.${name}`) }];
  });
  const inStand = (exposure: PlainExposure, faces: readonly Face[]) =>
    exposure.kind === 'closedStand' ? faces.reduce((sum, { wetArea, dryArea }) => sum + wetArea + dryArea, 0) : 0;
  const beyond: Beyond = {
    windSpeed,
    factors,
    areaInStand:
      measures.faces.reduce((sum, face, index) => sum + inStand(exposureOfFace(tank, face, index), [face]), 0) +
      others.reduce((sum, { vessel, measures: { faces } }) => sum + inStand(vessel.exposure, faces), 0),
    usualBoardArea: measures.perimeter * standHeight,
  };
  return [
    displayTank(tank, measures, beyond),
    ...others.map(({ name, vessel, measures: own }) => sideVessel(name, vessel, own, beyond)),
  ];
}

function displayTank(tank: PlainLoad, measures: ShapeMeasures, beyond: Beyond): Vessel {
  const { waterSurface, perimeter, waterVolume, freeboard } = measures;
  const { factors } = beyond;
  const panels = measures.faces.map((face, index) => {
    const parts = partsOfFace(tank, face, index);
    const inside = listedLayers(parts?.inside ?? [], factors, 'insideConductivityFactor', `${parts?.path}.inside`);
    const outside = listedLayers(
      parts?.outside ?? [],
      factors,
      'insulationConductivityFactor',
      `${parts?.path}.outside`,
    );
    const wall = wallLayer(parts?.wall ?? tank.wall, parts?.wall === undefined ? load : parts.path, factors);
    const stack = [...inside, wall, ...wrapOf(tank, face.name, factors), ...outside];
    return panelOf(face, stack, inside.length, exposureOf(exposureOfFace(tank, face, index), beyond));
  });
  return {
    name: 'tank',
    panels,
    waterSurface,
    perimeter,
    waterVolume,
    freeboard,
    surface: tank.surface,
    evaporationFactor: tank.evaporationFactor,
    ...(tank.airSpeed === undefined ? {} : { airSpeed: tank.airSpeed }),
    cover: displayCover(tank, measures, factors),
  };
}

function sideVessel(
  name: (typeof sideVesselNames)[number],
  vessel: SideVesselOf<number>,
  { faces, waterSurface, perimeter, waterVolume, freeboard }: ShapeMeasures,
  beyond: Beyond,
): Vessel {
  const path = `${load}.${name}`;
  const { factors } = beyond;
  const stack = [
    wallLayer(vessel.wall, path, factors),
    ...(vessel.insulation === undefined ? [] : boardLayers(vessel.insulation, factors, `${path}.insulation`)),
  ];
  const exposure = exposureOf(vessel.exposure, beyond);
  return {
    name,
    panels: faces.map((face) => panelOf(face, stack, 0, exposure)),
    waterSurface,
    perimeter,
    waterVolume,
    freeboard,
    surface: vessel.surface,
    evaporationFactor: vessel.evaporationFactor,
    cover: sideCover(vessel, path, factors),
  };
}

function panelOf(
  { name, facing, wetArea, dryArea }: Face,
  stack: Stack,
  layersInWater: number,
  exposure: Panel['exposure'],
): Panel {
  const emissivity = outermostEmissivity(stack);
  return { name, facing, wetArea, dryArea, stack, layersInWater, emissivity, exposure };
}

/** What a face has of its own, and where in the design that stands. */
function partsOfFace(tank: PlainLoad, face: Face, index: number): (PlainFaceParts & { path: string }) | undefined {
  if (tank.kind === 'panels') return { ...tank.panels[index]!, path: `${load}.panels.${index}` };
  const at = tank.faces.findIndex((own) => own.face === face.name);
  return at < 0 ? undefined : { ...tank.faces[at]!, path: `${load}.faces.${at}` };
}

function exposureOfFace(tank: PlainLoad, face: Face, index: number): PlainExposure {
  const own = partsOfFace(tank, face, index)?.exposure;
  return own ?? (face.facing === 'bottom' ? tank.stand : { kind: 'roomAir' });
}

function wallLayer(wall: PlainSheet, path: string, factors: TankFactors) {
  return sheetLayer(wall, factors, 'wallConductivityFactor', `${path}.wall`);
}

/** Which short form of insulation a face takes. */
const wrapPlaces: Readonly<Record<string, 'front' | 'sides' | 'back' | 'bottom'>> = {
  front: 'front',
  back: 'back',
  left: 'sides',
  right: 'sides',
  side: 'sides',
  bottom: 'bottom',
};

function wrapOf(tank: PlainLoad, face: string, factors: TankFactors): Stack {
  if (tank.kind === 'panels') return [];
  const place = wrapPlaces[face];
  const board = place === undefined ? undefined : tank.insulation[place];
  return board === undefined ? [] : boardLayers(board, factors, `${load}.insulation.${place}`);
}
