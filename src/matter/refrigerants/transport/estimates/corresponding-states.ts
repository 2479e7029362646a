// Extended corresponding states: viscosity and conductivity of a dense fluid estimated from those of a well-measured reference
// fluid at the state that corresponds to its own; only the dilute gas is the fluid's own.

import { DataError } from '../../../../numerics/index.ts';
import type { Refrigerant } from '../../types.ts';
import { olchowySengers } from '../critical-enhancement.ts';
import { lennardJonesViscosity } from '../low-density.ts';
import type { ConductivityModel, ViscosityModel } from '../models.ts';
import { polynomial } from '../power-sum.ts';
import type {
  ConductivityStatesData,
  DensityFactorData,
  LennardJonesData,
  ViscosityStatesData,
} from '../transport-data.ts';
import { type ConformalState, conformalState } from './conformal-state.ts';

/**
 * Factor F from the reference fluid's gain at higher density to the fluid's own.
 *     F = √f h^(−2/3) √(M/M0) for viscosity, √(M0/M) in place of the last root for conductivity
 * f = T/T0, h = ρ0/ρ (molar), massRatio M/M0 or M0/M.
 */
export function conformalFactorOf(temperatureScale: number, densityScale: number, massRatio: number): number {
  return Math.sqrt(temperatureScale * massRatio) / Math.cbrt(densityScale) ** 2;
}

/**
 * Conductivity λ₀ of a dilute gas of molecules that turn and swing.
 *     λ₀ = η₀ (15/4 R + 1000 f_int (c_p⁰ − 5/2 R))
 * η₀ [Pa s], R and c_p⁰ of the ideal gas [J/(kg K)], f_int as printed → [W/(m K)].
 */
export function diluteConductivityOf(
  viscosity: number,
  gasConstant: number,
  internalFactor: number,
  idealHeatCapacity: number,
): number {
  return viscosity * (3.75 * gasConstant + 1e3 * internalFactor * (idealHeatCapacity - 2.5 * gasConstant));
}

/**
 * Viscosity η [Pa s].
 *     η = η₀(T) + F Δη_0(T0, ρ0 ψ)
 * Source: S. A. Klein, M. O. McLinden, A. Laesecke (1997), Int. J. Refrigeration 20, 208; M. L. Huber, A. Laesecke,
 * R. A. Perkins (2003), Ind. Eng. Chem. Res. 42, 3163.
 */
export function viscosityByStates(
  data: ViscosityStatesData,
  molecules: LennardJonesData,
  molarMass: number,
): ViscosityModel {
  const dilute = lennardJonesViscosity(molecules, molarMass);
  return {
    data,
    at: (point, fluid, reference) => {
      const { fluid: own, models } = reference!;
      const state = conformalState(point, fluid, own);
      const { background } = models.viscosity;
      if (background === undefined) throw noCorrelation(fluid, 'viscosity');
      const density = state.molarDensity * densityFactor(data.densityFactor, point.molarDensity);
      return (
        dilute(point.temperature) + factor(state, molarMass / own.molarMass) * background(state.temperature, density)
      );
    },
  };
}

/**
 * Thermal conductivity λ [W/(m K)].
 *     λ = λ₀(T) + F Δλ_0(T0, ρ0 ψ) + Δλ_c(T, ρ)
 * Source: M. O. McLinden, S. A. Klein, R. A. Perkins (2000), Int. J. Refrigeration 23, 43; Huber and others (2003) as above.
 */
export function conductivityByStates(
  data: ConductivityStatesData,
  molecules: LennardJonesData,
  molarMass: number,
): ConductivityModel {
  const diluteViscosity = lennardJonesViscosity(molecules, molarMass);
  const { critical, internalFactor } = data;
  return {
    data,
    at: (point, viscosity, fluid, reference) => {
      const { fluid: own, models } = reference!;
      const state = conformalState(point, fluid, own);
      const { background } = models.conductivity;
      if (background === undefined) throw noCorrelation(fluid, 'conductivity');
      const { temperature } = point;
      const dilute = diluteConductivityOf(
        diluteViscosity(temperature),
        fluid.gasConstant,
        polynomial(internalFactor, temperature),
        state.idealHeatCapacity,
      );
      const density = state.molarDensity * densityFactor(data.densityFactor, point.molarDensity);
      const gain = background(state.temperature, density * own.molarMass);
      const near = critical.type === 'olchowySengers' ? olchowySengers(point, viscosity, critical) : 0;
      return dilute + factor(state, own.molarMass / molarMass) * gain + near;
    },
  };
}

/** ψ [-], by which the reference fluid's density is corrected. */
function densityFactor({ reducingMolarDensity, c }: DensityFactorData, molarDensity: number): number {
  return polynomial(c, molarDensity / reducingMolarDensity);
}

function factor({ temperatureScale, densityScale }: ConformalState, massRatio: number): number {
  return conformalFactorOf(temperatureScale, densityScale, massRatio);
}

function noCorrelation(fluid: Refrigerant, property: string): DataError {
  const path = `fluid.transport.${property}.referenceFluid`;
  return new DataError(
    `data/refrigerants/${fluid.name}.json`,
    path,
    'must name a fluid that has a correlation of its own',
  );
}
