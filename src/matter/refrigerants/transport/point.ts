// The state a transport model is asked at: numbers of one phase, and the equation that can be asked for more.

import type { HelmholtzEquation } from '../equation/equation.ts';
import type { Refrigerant, State } from '../types.ts';
import type { ConformalState } from './estimates/conformal-state.ts';

export interface TransportPoint {
  readonly equation: HelmholtzEquation;
  /** T [K]. */
  readonly temperature: number;
  /** ρ [kg/m³]. */
  readonly density: number;
  /** ρ/M [mol/m³]. */
  readonly molarDensity: number;
  /** c_p, c_v [J/(kg K)]; c_p NaN where it has no limit. */
  readonly cp: number;
  readonly cv: number;
  /** K = (∂p/∂ρ)_T/(R T) [-]; NaN where c_p has no limit. */
  readonly stiffness: number;
  /** K at the same density and the reference temperature of the fluid's critical part, once it was asked for. */
  referenceStiffness: number | undefined;
  /** The state of the reference fluid that this one corresponds to, once it was asked for. */
  conformal: ConformalState | undefined;
}

/** K follows from the speed of sound, w² = (c_p/c_v) R T K, which the state brings along: no further evaluation. */
export function pointOf(fluid: Refrigerant, state: State): TransportPoint {
  const { temperature, density, soundSpeed } = state;
  const cp = state.cp ?? Number.NaN;
  const cv = state.cv ?? Number.NaN;
  const w = soundSpeed ?? Number.NaN;
  return {
    equation: fluid.equation,
    temperature,
    density,
    molarDensity: density / fluid.molarMass,
    cp,
    cv,
    stiffness: (w * w * cv) / (cp * fluid.gasConstant * temperature),
    referenceStiffness: undefined,
    conformal: undefined,
  };
}

/** K at another temperature and the same density. A fluid has one such temperature, so one value is kept. */
export function stiffnessElsewhere(point: TransportPoint, temperature: number): number {
  point.referenceStiffness ??= point.equation.residualAt(temperature, point.density).stiffness;
  return point.referenceStiffness;
}
