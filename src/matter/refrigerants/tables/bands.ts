// The three bands of pressure of a table, each with its own coordinate, in which what happens along the pressure is smooth:
//     below:  θ = √ln(pc/p): densities on the saturation line part as the square root of the distance from pc
//     around: θ = ln(p/pc), without the surroundings of the critical point
//     above:  θ = √ln(p/pc)
// In each band the borders of its patches, and what is needed along the saturation line, are functions of θ alone (Pieces).

import { equilibriumAtPressure, equilibriumAtTemperature } from '../dome/dome.ts';
import type { Equilibrium } from '../dome/equilibrium.ts';
import type { HelmholtzEquation } from '../equation/equation.ts';
import { densityBesideDome, densityOnBranch } from '../flash/density.ts';
import type { Refrigerant } from '../types.ts';
import { Pieces } from './pieces.ts';
import { AROUND_CRITICAL, type TableRegion } from './region.ts';

/** Rows of the band below: both sides of the dome and both ends of the isobar. */
export const below = {
  bubbleTemperature: 0,
  dewTemperature: 1,
  liquidEnthalpy: 2,
  vapourEnthalpy: 3,
  liquidEntropy: 4,
  vapourEntropy: 5,
  liquidDensity: 6,
  /** p/ρ″ [J/kg]. */
  vapourVolume: 7,
  coldEnthalpy: 8,
  hotEnthalpy: 9,
} as const;

/** Rows of the bands around and above: the ends of the isobar, and the saturated liquid and vapour at the top of `below`. */
export const beyond = { coldEnthalpy: 0, hotEnthalpy: 1, liquidTop: 2, vapourTop: 3 } as const;

const PIECES = { below: 28, around: 2, above: 8 } as const;

export interface Bands {
  readonly below: Pieces;
  readonly around: Pieces;
  readonly above: Pieces;
}

/** The ends of the isobars of a region. */
export class Ends {
  private readonly fluid: Refrigerant;
  private readonly region: TableRegion;
  private readonly coldEquilibrium: Equilibrium;

  constructor(fluid: Refrigerant, region: TableRegion) {
    this.fluid = fluid;
    this.region = region;
    this.coldEquilibrium = equilibriumAtTemperature(fluid, region.temperatureMin);
  }

  /** The lowest pressure: where the liquid begins at the lowest temperature. */
  get pressureMin(): number {
    return this.coldEquilibrium.bubblePressure;
  }

  coldDensity(pressure: number): number {
    const { bubblePressure, liquidDensity } = this.coldEquilibrium;
    if (pressure <= bubblePressure) return liquidDensity;
    return densityBesideDome(this.fluid, this.coldEquilibrium, pressure);
  }

  hotDensity(pressure: number): number {
    const { fluid, region } = this;
    const start = pressure / (fluid.gasConstant * region.temperatureMax);
    return densityOnBranch(fluid, region.temperatureMax, pressure, 0, fluid.limits.densityMax, start);
  }

  coldEnthalpy(pressure: number): number {
    return enthalpy(this.fluid.equation, this.region.temperatureMin, this.coldDensity(pressure));
  }

  hotEnthalpy(pressure: number): number {
    return enthalpy(this.fluid.equation, this.region.temperatureMax, this.hotDensity(pressure));
  }
}

export function bandsOf(fluid: Refrigerant, region: TableRegion, ends: Ends): Bands {
  const { equation, critical } = fluid;
  const lowest = Math.sqrt(Math.log(critical.pressure / ends.pressureMin));
  const highest = Math.log(region.pressureMax / critical.pressure);
  const belowTop = Math.sqrt(-Math.log(AROUND_CRITICAL.below));
  const aroundTop = Math.log(AROUND_CRITICAL.above);
  const bandBelow = new Pieces(belowTop, lowest, PIECES.below, (theta) => {
    const pressure = Math.max(critical.pressure * Math.exp(-theta * theta), ends.pressureMin);
    const dome = equilibriumAtPressure(fluid, pressure);
    equation.at(dome.bubbleTemperature, dome.liquidDensity);
    const liquid = [equation.enthalpy, equation.entropy] as const;
    equation.at(dome.dewTemperature, dome.vapourDensity);
    return [
      dome.bubbleTemperature,
      dome.dewTemperature,
      liquid[0],
      equation.enthalpy,
      liquid[1],
      equation.entropy,
      dome.liquidDensity,
      pressure / dome.vapourDensity,
      ends.coldEnthalpy(pressure),
      ends.hotEnthalpy(pressure),
    ];
  });
  bandBelow.locate(belowTop);
  const top = [bandBelow.value(below.liquidEnthalpy), bandBelow.value(below.vapourEnthalpy)] as const;
  const isobarEnds = (pressure: number) => [ends.coldEnthalpy(pressure), ends.hotEnthalpy(pressure), ...top];
  const around = new Pieces(Math.log(AROUND_CRITICAL.below), aroundTop, PIECES.around, (theta) =>
    isobarEnds(critical.pressure * Math.exp(theta)),
  );
  const above = new Pieces(Math.sqrt(aroundTop), Math.sqrt(highest), PIECES.above, (theta) =>
    isobarEnds(critical.pressure * Math.exp(theta * theta)),
  );
  return { below: bandBelow, around, above };
}

function enthalpy(equation: HelmholtzEquation, temperature: number, density: number): number {
  return equation.at(temperature, density).enthalpy;
}
