// Newton's method in temperature and density on pressure and enthalpy, or pressure and entropy.

import type { HelmholtzEquation } from '../equation/equation.ts';
import { BEFORE_FIRST_STEP, isLastStep } from '../flash/newton.ts';
import type { IsobarPoint } from './sheet.ts';

export type Caloric = 'enthalpy' | 'entropy';

const STEPS = 20;
/** Largest relative change in one step. */
const LARGEST_STEP = 0.25;

/** By name rather than by key: a computed key costs as much as the evaluation of a short equation. */
export function caloricOf(equation: HelmholtzEquation, kind: Caloric): number {
  return kind === 'enthalpy' ? equation.enthalpy : equation.entropy;
}

/**
 * The point with a pressure and an enthalpy or entropy near a start.
 * @param equation   the equation of the fluid
 * @param pressure   p [Pa]
 * @param kind       which of the two is given
 * @param value      h [J/kg] or s [J/(kg K)]
 * @param start      where to begin
 * @param tolerance  relative size of a step after which none is needed, besides the rule of newton.ts
 * @returns          T [K] and ρ [kg/m³], to rounding or to the square of the tolerance; undefined if it does not arrive
 * Pitfall: a solution of the two conditions only. Whether it is stable the caller finds out.
 */
export function newtonOnIsobar(
  equation: HelmholtzEquation,
  pressure: number,
  kind: Caloric,
  value: number,
  start: IsobarPoint,
  tolerance = 0,
): IsobarPoint | undefined {
  let { temperature, density } = start;
  let before = BEFORE_FIRST_STEP;
  for (let step = 0; step < STEPS; step++) {
    equation.at(temperature, density);
    const a = density * equation.pressureByDensity;
    const b = temperature * equation.pressureByTemperature;
    const c = density * (kind === 'enthalpy' ? equation.enthalpyByDensity : equation.entropyByDensity);
    const d = temperature * (kind === 'enthalpy' ? equation.enthalpyByTemperature : equation.cv / temperature);
    const pressureGap = pressure - equation.pressure;
    const valueGap = value - caloricOf(equation, kind);
    const determinant = a * d - b * c;
    const densityStep = (d * pressureGap - b * valueGap) / determinant;
    const temperatureStep = (a * valueGap - c * pressureGap) / determinant;
    const size = Math.max(Math.abs(densityStep), Math.abs(temperatureStep));
    if (!Number.isFinite(size)) return undefined;
    const share = size > LARGEST_STEP ? LARGEST_STEP / size : 1;
    temperature *= 1 + share * temperatureStep;
    density *= 1 + share * densityStep;
    if (size <= tolerance || isLastStep(size, before)) return { temperature, density };
    before = size;
  }
  return undefined;
}
