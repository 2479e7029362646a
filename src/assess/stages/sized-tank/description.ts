// A tank that is known by its sizes as the tank model wants it told.

import type { PipeOf, SizedLoadOf } from '../../../design/index.ts';
import { layerConductivity, material } from '../../../matter/materials/index.ts';
import { type BuiltTank, type Pipe, pumpHeat } from '../../../tank/index.ts';
import { gainsOf, type TankSlice } from '../tank/tank.ts';
import type { TankFactors } from '../tank/tank-assumptions.ts';
import { vesselsOf } from './vessels.ts';

export function builtTank(
  { tank, factors, windSpeed, measuredOverModelled }: TankSlice,
  load: SizedLoadOf<number>,
): BuiltTank {
  const { waterChange } = load;
  return {
    kind: 'built',
    salinity: tank.salinity,
    vessels: vesselsOf(load, factors, windSpeed),
    pipes: load.pipes.map((pipe, index) => pipeOf(pipe, index, factors)),
    outerFilmFactor: factors.outerFilmFactor,
    ...(measuredOverModelled === undefined ? {} : { measuredOverModelled }),
    airFlow: { airStones: load.airStones, skimmer: load.skimmerAir },
    exchange: {
      makeUpFrom: load.makeUpFrom,
      changeFlow: waterChange === undefined ? 0 : waterChange.volume / waterChange.every,
    },
    ...gainsOf(load),
    ultravioletHeat: pumpHeat(load.ultravioletPower, load.ultravioletShareToWater),
  };
}

function pipeOf(pipe: PipeOf<number>, index: number, factors: TankFactors): Pipe {
  const { length, outerDiameter, wallThickness, insulation } = pipe;
  return {
    name: pipe.name ?? `pipe${index + 1}`,
    length,
    outerDiameter,
    wallThickness,
    wallConductivity: layerConductivity(pipe.material, wallThickness).likely,
    ...(insulation === undefined
      ? {}
      : {
          insulation: {
            thickness: insulation.thickness,
            conductivity:
              factors.insulationConductivityFactor *
              layerConductivity(insulation.material, insulation.thickness).likely,
          },
        }),
    emissivity: material(insulation?.material ?? pipe.material).emissivity.likely,
  };
}
