// What people of the trade say, beside what comes out here. None of it has a source: it is reported and holds nothing.

import { material, materialLayer } from '../../../src/matter/materials/index.ts';
import { type RectangularTank, rectangularTank, type TankConditions, tankLoad } from '../../../src/tank/index.ts';
import { airLayerResistance } from '../../../src/tank/stack/air-gap.ts';
import { layerResistance, transmittance, WATER_FILM_COEFFICIENT } from '../../../src/tank/stack/films.ts';
import { conventionalSurfaceResistance } from './published.ts';

export interface CommonPracticeRow {
  readonly claim: string;
  readonly ours: number;
  /** What the claim comes to in numbers, the ends included. */
  readonly claimed: readonly [low: number, high: number];
  readonly note: string;
}

const openTank: RectangularTank = {
  kind: 'rectangular',
  length: 1.2,
  width: 0.5,
  height: 0.5,
  waterDepth: 0.46,
  salinity: 0,
  wall: { conductivity: material('glass').conductivity.likely, thickness: 0.01, emissivity: 0.87 },
  insulation: {},
  surface: 'rippled',
  lid: 'none',
  pumpHeat: 0,
  lightHeat: 0,
};

const livingRoom: TankConditions = {
  waterTemperature: 299.15,
  roomTemperature: 293.15,
  roomRelativeHumidity: 0.5,
  atmosphericPressure: 101325,
};

/** R in h ft² °F/BTU of one m² K/W. */
const usResistance = 1 / 0.17611;
const inch = 0.0254;

/** Ours beside the claims; the tank is 1.2 m of open glass, 26 °C in a room of 20 °C and 50 %. */
export function commonPracticeRows(): readonly CommonPracticeRow[] {
  const open = loadOf(openTank);
  const glassLid = loadOf({ ...openTank, ...lidOf('glass', 0.004) });
  return [
    {
      claim: 'a tight glass lid saves about 60 % of an open glass tank’s heating (share saved)',
      ours: 1 - glassLid / open,
      claimed: [0.5, 0.67],
      note: 'bare panes and a bottom open to room air go on losing, the more the smaller the saving',
    },
    {
      claim: 'a glass and an acrylic lid of the same thickness are nearly alike (acrylic over glass, 4 mm)',
      ours: loadOf({ ...openTank, ...lidOf('acrylic', 0.004) }) / glassLid,
      claimed: [0.95, 1.05],
      note: 'the films and the trapped air outweigh the sheet',
    },
    {
      claim: 'bare walls lose about the same per area wherever they are (bottom over front)',
      ours: fluxThrough('bottom') / fluxThrough('front'),
      claimed: [0.95, 1.05],
      note: 'ISO 6946 has 0.17 m² K/W for heat that flows down and 0.13 for heat that flows sideways',
    },
    {
      claim: 'bare walls lose about the same per area wherever they are (a glass top over the front, by the standard)',
      ours: glassTopOverFront(),
      claimed: [0.95, 1.05],
      note: 'ISO 6946 has 0.10 m² K/W for heat that flows up and 0.13 for heat that flows sideways',
    },
    ...foilFacedRows(),
    ...wrappedRows(open),
    {
      claim: 'a foot of dense concrete is about R-1 (US units)',
      ours: usResistanceOf('concrete', 12 * inch),
      claimed: [0.8, 1.5],
      note: 'concrete of 1.15 to 2.0 W/(m K) gives 1.5 to 0.87',
    },
    {
      claim: 'an inch of plywood is about R-1 (US units)',
      ours: usResistanceOf('plywood', inch),
      claimed: [0.8, 1.6],
      note: 'plywood of 0.09 to 0.17 W/(m K) gives 1.6 to 0.85',
    },
    {
      claim:
        'an immersed heater turns all but a fraction of a per cent of its electricity into heat of the water (share)',
      ours: immersedShare(),
      claimed: [0.995, 1],
      note: 'the cord of a 200 W heater on 120 V takes the rest, which the model leaves out',
    },
  ];
}

/** The open tank under a lid and with foam on ends, back and bottom, lightly and well: the front stays bare. */
function wrappedRows(open: number): CommonPracticeRow[] {
  const wraps = [
    { thickness: 0.025, lid: lidOf('glass', 0.004), words: 'tight glass lid, 25 mm of polystyrene' },
    { thickness: 0.05, lid: lidOf('polycarbonateTwinWall', 0.01), words: 'tight twin-wall lid, 50 mm of polystyrene' },
  ];
  return wraps.map(({ thickness, lid, words }) => {
    const foam = { conductivity: material('extrudedPolystyrene').conductivity.likely, thickness };
    const insulation = { sides: foam, back: foam, bottom: foam };
    return {
      claim: `lids and foam on hidden sides together cut the heating of a bare glass tank by around 80 % (share saved; ${words})`,
      ours: 1 - loadOf({ ...openTank, insulation, ...lid }) / open,
      claimed: [0.75, 0.85],
      note: 'ends, back and bottom are wrapped, the front stays bare',
    };
  });
}

/** Foil-faced board over a sealed gap whose foil faces the gap, by the standard; one inch, and what two come to. */
function foilFacedRows(): CommonPracticeRow[] {
  const gap = airLayerResistance(0.025, 'horizontal', 0.05, 0.9, 283.15) * usResistance;
  const shared = 'board of 0.022 W/(m K) and a gap of 25 mm by ISO 6946, foil of 0.05';
  return [1, 2].map((inches) => ({
    claim: `foil-faced closed-cell board over a sealed space is spoken of as about R-13 (US units; ${inches} in of board)`,
    ours: usResistanceOf('polyisocyanurateFoil', inches * inch) + gap,
    claimed: [12, 14],
    note: shared,
  }));
}

function loadOf(tank: RectangularTank): number {
  return tankLoad(rectangularTank(tank), livingRoom).load;
}

function lidOf(name: string, thickness: number): Pick<RectangularTank, 'lid' | 'lidLayer'> {
  const { conductivity, emissivity } = materialLayer(name, thickness);
  return { lid: 'tight', lidLayer: { conductivity: conductivity.likely, thickness, emissivity: emissivity.likely } };
}

/** Heat per area [W/m²] through a bare face of the open tank. */
function fluxThrough(face: string): number {
  const built = rectangularTank(openTank);
  const { wetArea } = built.vessels[0]!.panels.find(({ name }) => name === face)!;
  const { heat } = tankLoad(built, livingRoom).paths.find(({ path }) => path === face)!;
  return heat / wetArea;
}

/** Transmittance of 10 mm of glass behind water that faces up, over that of one that stands. */
function glassTopOverFront(): number {
  const inner = 1 / WATER_FILM_COEFFICIENT + layerResistance(0.01, material('glass').conductivity.likely);
  const { up, horizontal } = conventionalSurfaceResistance;
  return transmittance(inner, up) / transmittance(inner, horizontal);
}

function usResistanceOf(name: string, thickness: number): number {
  return (thickness / material(name).conductivity.likely) * usResistance;
}

/** Share of the electricity that a 200 W heater on 120 V turns into heat under water: the rest warms its cord, 2 m of 0.75 mm². */
function immersedShare(): number {
  const power = 200;
  const current = power / 120;
  const copperResistivity = 1.724e-8;
  const cord = (copperResistivity * 2 * 2) / 0.75e-6;
  return 1 - (current ** 2 * cord) / power;
}
