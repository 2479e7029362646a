// What people of the trade say, beside what comes out here. None of it has a source: it is reported and holds nothing.

import { material } from '../../../src/matter/materials/index.ts';
import { type RectangularTank, type TankConditions, tankLoad } from '../../../src/tank/index.ts';

/** Words on every row, and in place of a source. */
const common = 'common practice, no source';

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

function lidded(name: string): number {
  const lidLayer = { conductivity: material(name).conductivity.likely, thickness: 0.004 };
  return tankLoad({ ...openTank, lid: 'tight', lidLayer }, livingRoom).load;
}

function usResistanceOf(name: string, thickness: number): number {
  return (thickness / material(name).conductivity.likely) * usResistance;
}

/** Ours beside the claims; the tank is 1.2 m of open glass, 26 °C in a room of 20 °C and 50 %. */
export function commonPracticeRows(): readonly CommonPracticeRow[] {
  const { load: open } = tankLoad(openTank, livingRoom);
  return [
    {
      claim: 'a tight glass lid saves half to two thirds of an open glass tank’s heating (share saved)',
      ours: 1 - lidded('glass') / open,
      claimed: [0.5, 0.67],
      note: `${common}; bare panes and a bottom open to room air go on losing, the more the smaller the saving`,
    },
    {
      claim: 'a glass and an acrylic lid of the same thickness are nearly alike (acrylic over glass, 4 mm)',
      ours: lidded('acrylic') / lidded('glass'),
      claimed: [0.95, 1.05],
      note: `${common}; the films and the trapped air outweigh the sheet`,
    },
    {
      claim: 'a foot of dense concrete is about R-1 (US units)',
      ours: usResistanceOf('concrete', 0.3048),
      claimed: [0.8, 1.5],
      note: `${common}; concrete of 1.15 to 2.0 W/(m K) gives 1.5 to 0.87`,
    },
    {
      claim: 'an inch of plywood is about R-1 (US units)',
      ours: usResistanceOf('plywood', 0.0254),
      claimed: [0.8, 1.6],
      note: `${common}; plywood of 0.09 to 0.17 W/(m K) gives 1.6 to 0.85`,
    },
    {
      claim:
        'an immersed heater turns all but a fraction of a per cent of its electricity into heat of the water (share)',
      ours: immersedShare(),
      claimed: [0.995, 1],
      note: `${common}; the cord of a 200 W heater on 120 V takes the rest, which the model leaves out`,
    },
  ];
}

/** Share of the electricity that a 200 W heater on 120 V turns into heat under water: the rest warms its cord, 2 m of 0.75 mm². */
function immersedShare(): number {
  const power = 200;
  const current = power / 120;
  const copperResistivity = 1.724e-8;
  const cord = (copperResistivity * 2 * 2) / 0.75e-6;
  return 1 - (current ** 2 * cord) / power;
}
