// From a coefficient file to a fluid that can be asked for states: checks the file, builds the equation, finds the ends of
// the saturation line and the largest density, and sets the zero of enthalpy and entropy.

import { DataError } from '../../numerics/index.ts';
import { ancillaryGuess, tabulatedGuess } from './dome/first-guess.ts';
import { equilibriumAtTemperature } from './dome/saturation.ts';
import { HelmholtzEquation } from './equation/equation.ts';
import { checkedFluidData } from './equation/fluid-data.ts';
import type { Refrigerant } from './types.ts';

/** The zero inside the program: saturated liquid at 0 °C. */
const ZERO_TEMPERATURE = 273.15;
const ZERO_ENTHALPY = 200e3;
const ZERO_ENTROPY = 1e3;

/**
 * @param data  the parsed JSON of a coefficient file
 * @param file  its name, for errors
 * @throws DataError naming file, path and rule
 */
export function loadRefrigerant(data: unknown, file: string): Refrigerant {
  const checked = checkedFluidData(data, file);
  const { molarMass, critical, limits, triplePoint } = checked;
  const equation = new HelmholtzEquation(checked);
  const rough = ancillaryGuess(checked);
  const unfinished: Refrigerant = {
    name: checked.name,
    aliases: checked.aliases,
    citations: checked.citations,
    molarMass,
    gasConstant: equation.gasConstant,
    critical: { ...critical, density: critical.molarDensity * molarMass },
    triplePoint: { ...triplePoint, pressure: 0 },
    limits: { ...limits, densityMax: Number.POSITIVE_INFINITY },
    surfaceTension: checked.surfaceTension,
    equation,
    guess: rough,
  };
  checkCriticalPoint(unfinished, file);
  const zero = equilibriumAtTemperature(unfinished, ZERO_TEMPERATURE);
  equation.at(zero.temperature, zero.liquidDensity);
  equation.enthalpyZero = ZERO_ENTHALPY - equation.enthalpy;
  equation.entropyZero = ZERO_ENTROPY - equation.entropy;
  const solve = (temperature: number) => {
    const node = equilibriumAtTemperature(unfinished, temperature);
    equation.at(temperature, node.liquidDensity);
    return { ...node, liquidEnthalpy: equation.enthalpy, liquidEntropy: equation.entropy };
  };
  const warmestNode = critical.temperature * (1 - checked.firstGuess.nearCritical.distanceMax);
  const guess = tabulatedGuess(limits.temperatureMin, warmestNode, solve, rough);
  // With the guesses in use from now on, so that the end of the line is the same number at each later call.
  const coldest = equilibriumAtTemperature({ ...unfinished, guess }, limits.temperatureMin);
  const densityMax = largestDensity(unfinished, coldest.liquidDensity, file);
  return Object.freeze({
    ...unfinished,
    guess,
    triplePoint: { ...triplePoint, pressure: coldest.pressure },
    limits: { ...limits, densityMax },
  });
}

/** The critical point of the file must be that of its own equation: ∂p/∂ρ = 0 there, and the pressure as stated. */
function checkCriticalPoint({ equation, critical }: Refrigerant, file: string): void {
  equation.residualAt(critical.temperature, critical.density);
  if (!(Math.abs(equation.pressure / critical.pressure - 1) < 1e-9)) {
    throw new DataError(file, 'fluid.critical.pressure', 'must be the pressure of the equation at the critical point');
  }
  if (!(Math.abs(equation.stiffness) < 1e-6)) {
    throw new DataError(file, 'fluid.critical', 'must be where the equation has its critical point (∂p/∂ρ = 0)');
  }
}

/** Density at the lowest temperature and the largest pressure: no state of the range is denser. */
function largestDensity({ equation, limits }: Refrigerant, liquidDensity: number, file: string): number {
  let density = liquidDensity;
  for (let step = 0; step < 100; step++) {
    equation.residualAt(limits.temperatureMin, density);
    if (!(equation.stiffness > 0)) break;
    const change = (limits.pressureMax - equation.pressure) / equation.pressureByDensity;
    density += change;
    if (Math.abs(change) < 1e-12 * density) return density;
  }
  throw new DataError(file, 'fluid.limits.pressureMax', 'must be reached by the equation at the lowest temperature');
}
