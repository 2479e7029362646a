// Viscosity of a dilute gas from kinetic theory, and how it begins to change with density. Both reckon with the pair
// potential of Lennard and Jones: molecules of diameter σ, held together by an energy ε.

import { polynomial } from './power-sum.ts';
import type { DiluteViscosityData, InitialDensityData, LennardJonesData } from './transport-data.ts';

/** Avogadro's constant of CODATA 2010 [1/mol], with which the second viscosity virial coefficients were made. */
const AVOGADRO = 6.02214129e23;

/** Function of the temperature [K] alone. */
export type OfTemperature = (temperature: number) => number;

/**
 * Collision integral Ω [-] of a Lennard-Jones gas for viscosity.
 *     Ω = 1.16145 T*^(−0.14874) + 0.52487 exp(−0.77320 T*) + 2.16178 exp(−2.43787 T*)
 * @param reducedTemperature  T* = T/(ε/k) [-]
 * Validity: T* 0.3 to 100 (from memory). Accuracy: about 0.1 % (from memory).
 * Source: P. D. Neufeld, A. R. Janzen, R. A. Aziz (1972), J. Chem. Phys. 57, 1100, without its sine term.
 * Worked value: T* = 1 → 1.5925.
 */
export function collisionIntegralNeufeld1972(reducedTemperature: number): number {
  return (
    1.16145 * reducedTemperature ** -0.14874 +
    0.52487 * Math.exp(-0.7732 * reducedTemperature) +
    2.16178 * Math.exp(-2.43787 * reducedTemperature)
  );
}

/**
 * Viscosity η₀ of a dilute gas.
 *     η₀ = f √(M T) / (σ² Ω)
 * @param factor             f; 26.692e-9 where Ω is the collision integral of viscosity; other forms bring their own
 * @param molarMass          M [g/mol]
 * @param temperature        T [K]
 * @param diameter           σ [nm]
 * @param collisionIntegral  Ω [-]
 * @returns                  η₀ [Pa s]
 * Validity: as of the parameters. Source: S. Chapman, D. Enskog, as in R. C. Reid, J. M. Prausnitz, B. E. Poling (1987), The
 * Properties of Gases and Liquids, chapter 9 (from memory).
 * Worked value: R125 at 300 K (M 120.0214, σ 0.5235, Ω 1.4177) → 13.04e-6 Pa s.
 */
export function diluteGasViscosity(
  factor: number,
  molarMass: number,
  temperature: number,
  diameter: number,
  collisionIntegral: number,
): number {
  return (factor * Math.sqrt(molarMass * temperature)) / (diameter * diameter * collisionIntegral);
}

/** η₀ [Pa s] of a Lennard-Jones gas of the molar mass M [kg/mol]. */
export function lennardJonesViscosity({ diameter, depth }: LennardJonesData, molarMass: number): OfTemperature {
  return (temperature) =>
    diluteGasViscosity(
      26.692e-9,
      1e3 * molarMass,
      temperature,
      1e9 * diameter,
      collisionIntegralNeufeld1972(temperature / depth),
    );
}

/** η₀ [Pa s] of a correlation that is given by numbers, of a fluid of the molar mass M [kg/mol]. */
export function diluteViscosity(
  data: Exclude<DiluteViscosityData, { type: 'carbonDioxide' }>,
  molecules: LennardJonesData | undefined,
  molarMass: number,
): OfTemperature {
  if (data.type === 'polynomial') return (temperature) => polynomial(data.c, temperature);
  // The check of the file has seen to it that a model which reckons with molecules has them.
  if (data.type === 'lennardJones') return lennardJonesViscosity(molecules!, molarMass);
  const { diameter, depth } = molecules!;
  const { factor, c } = data;
  return (temperature) =>
    diluteGasViscosity(
      factor,
      1e3 * data.molarMass,
      temperature,
      1e9 * diameter,
      Math.exp(polynomial(c, Math.log(temperature / depth))),
    );
}

/**
 * Second viscosity virial coefficient B [m³/mol]: η = η₀ (1 + B ρ) with the molar density ρ.
 *     B = N_A σ³ Σ b (T*)^(−q/4)
 * Source: J. C. Rainwater, D. G. Friend (1987), Phys. Rev. A 36, 4062; the form as in E. Vogel and others (1998), J. Phys. Chem.
 * Ref. Data 27, 947; ammonia's as in A. Fenghour and others (1995).
 * Worked value: R290 at 300 K → −2.84e-5 m³/mol.
 */
export function secondViscosityVirial(data: InitialDensityData, molecules: LennardJonesData): OfTemperature {
  const volume = AVOGADRO * molecules.diameter ** 3;
  const c = new Array<number>(Math.max(...data.quarters) + 1).fill(0);
  data.quarters.forEach((quarter, k) => {
    c[quarter]! += data.b[k]!;
  });
  return (temperature) => volume * polynomial(c, 1 / Math.sqrt(Math.sqrt(temperature / molecules.depth)));
}
