// The state of a reference fluid that a fluid's own state corresponds to: same residual Helmholtz energy and same
// compressibility factor. In a thin gas both conditions say nearly the same, and of some fluids' cold vapours there is no
// state that meets both; the state is then held near the one at equal distances from both critical points.

import type { Refrigerant } from '../../types.ts';
import type { TransportPoint } from '../point.ts';
import { ConformalSearch } from './conformal-search.ts';

export interface ConformalState {
  readonly reference: Refrigerant;
  /** T0 [K] and ρ0 [mol/m³] of the reference fluid; NaN where the search does not settle. */
  readonly temperature: number;
  readonly molarDensity: number;
  /** f = T/T0 and h = ρ0/ρ [-]. */
  readonly temperatureScale: number;
  readonly densityScale: number;
  /** c_p⁰ of the fluid itself as an ideal gas [J/(kg K)]. */
  readonly idealHeatCapacity: number;
}

/**
 * The conformal state of a fluid's state in a reference fluid.
 *     φʳ(T, ρ) = φʳ_0(T0, ρ0),  Z(T, ρ) = Z_0(T0, ρ0)
 * @param point      the state
 * @param fluid      the fluid it is a state of
 * @param reference  the reference fluid
 * Pitfall: published methods ask for both to be met exactly. Of cold thin vapours of R142b, R124, R227ea and R32 no state does,
 * and the reference library gives no answer. Here the mismatch and the distance from plain corresponding states, T0/T_c0 =
 * T/T_c and ρ0/ρ_c0 = ρ/ρ_c, are made small together: the same viscosity and conductivity to 5e-7 in dense states, to some
 * 1e-4 in most gases, and to 0.03 where the exact state is about to be lost.
 * Source: the exact shape factors as in M. L. Huber, A. Laesecke, R. A. Perkins (2003), Ind. Eng. Chem. Res. 42, 3163; the hold
 * is this project's.
 */
export function conformalState(point: TransportPoint, fluid: Refrigerant, reference: Refrigerant): ConformalState {
  if (point.conformal?.reference === reference) return point.conformal;
  const { temperature, density, molarDensity } = point;
  const { residual, ideal, gasConstant } = fluid.equation.at(temperature, density);
  const idealHeatCapacity = gasConstant * (1 - ideal[2]!);
  const temperatureRatio = reference.critical.temperature / fluid.critical.temperature;
  const densityRatio = reference.critical.density / fluid.critical.density;
  const search = new ConformalSearch(
    reference.equation,
    residual[0]!,
    residual[1]!,
    temperature * temperatureRatio,
    density * densityRatio,
  );
  const isSettled = search.settle();
  const temperature0 = isSettled ? search.temperature : Number.NaN;
  const molarDensity0 = search.density / reference.molarMass;
  point.conformal = {
    reference,
    temperature: temperature0,
    molarDensity: molarDensity0,
    temperatureScale: temperature / temperature0,
    densityScale: molarDensity0 / molarDensity,
    idealHeatCapacity,
  };
  return point.conformal;
}
