// Further properties of a state: Joule–Thomson coefficient, isentropic exponent, expansion, compressibility, and the
// partial derivatives that solvers need. All from the derivatives of the fluid's equation, none by differences; apart from
// State, so that whoever does not ask does not pay.

import { InputError, requirePositive } from '../../../numerics/index.ts';
import type { HelmholtzEquation } from '../equation/equation.ts';
import { SMALLEST_STIFFNESS } from '../flash/limits.ts';
import type { Refrigerant, Saturation, State } from '../types.ts';
import { clapeyronOf, compressibilityOf, expansionOf, isentropicExponentOf, jouleThomsonOf } from './relations.ts';

/** Partial derivatives at one state of one phase; what is held stands last in each name. */
export interface Derivatives {
  /** (∂p/∂ρ)_T [J/kg]. */
  readonly pressureByDensityAtTemperature: number;
  /** (∂p/∂T)_ρ [Pa/K]. */
  readonly pressureByTemperatureAtDensity: number;
  /** (∂ρ/∂T)_p [kg/(m³ K)]. */
  readonly densityByTemperatureAtPressure: number;
  /** (∂ρ/∂p)_h [kg/(m³ Pa)]. */
  readonly densityByPressureAtEnthalpy: number;
  /** (∂ρ/∂h)_p [kg²/(m³ J)]. */
  readonly densityByEnthalpyAtPressure: number;
  /** (∂T/∂p)_h [K/Pa], the Joule–Thomson coefficient. */
  readonly temperatureByPressureAtEnthalpy: number;
  /** (∂T/∂h)_p [K kg/J], 1/c_p. */
  readonly temperatureByEnthalpyAtPressure: number;
  /** (∂T/∂p)_s [K/Pa]. */
  readonly temperatureByPressureAtEntropy: number;
  /** (∂h/∂p)_T [J/(kg Pa)]. */
  readonly enthalpyByPressureAtTemperature: number;
  /** (∂h/∂T)_p [J/(kg K)], c_p. */
  readonly enthalpyByTemperatureAtPressure: number;
  /** (∂s/∂p)_T [J/(kg K Pa)]. */
  readonly entropyByPressureAtTemperature: number;
}

export interface Derived {
  /** μ [K/Pa]: see jouleThomsonOf. */
  readonly jouleThomsonCoefficient: number;
  /** κ [-]: see isentropicExponentOf. */
  readonly isentropicExponent: number;
  /** α [1/K]: see expansionOf. */
  readonly isobaricExpansion: number;
  /** κ_T [1/Pa]: see compressibilityOf. */
  readonly isothermalCompressibility: number;
  readonly derivatives: Derivatives;
}

/**
 * The partial derivatives that solvers need, at one state of one phase.
 * @param fluid        the fluid
 * @param temperature  T [K]
 * @param density      ρ [kg/m³]; with T a state of one phase, or one side of the dome: the caller knows that it is one
 * @returns            the derivatives, SI
 * Validity: limits of the equation. Accuracy: rounding.
 * @throws InputError: T or ρ not a finite number above 0; 'noDerivative' at the critical point and where no phase is stable
 * Source: R. Span (2000), Multiparameter Equations of State, chapter 3.
 * Worked value: R290, 300 K, 17.638 kg/m³ → (∂h/∂T)_p = 1944.7 J/(kg K).
 */
export function derivativesAt(fluid: Refrigerant, temperature: number, density: number): Derivatives {
  requirePositive('temperature', temperature);
  requirePositive('density', density);
  const equation = fluid.equation.at(temperature, density);
  if (!(equation.stiffness > SMALLEST_STIFFNESS)) {
    const received = `${temperature} K and ${density} kg/m³`;
    throw new InputError('point', received, 'a state of one phase apart from the critical point', 'noDerivative');
  }
  return derivativesOf(equation);
}

/**
 * Further properties of a state.
 * @param fluid  the fluid
 * @param state  from stateAt
 * @returns      SI; on one side of the dome the values of that side; null inside the dome and within rounding of the critical
 *               point, where they mean nothing
 * Validity, accuracy, source: as derivativesAt.
 * Worked value: R134a, 300 K, 0.1 MPa: μ = 2.116e-5 K/Pa, κ = 1.0961.
 */
export function derivedAt(fluid: Refrigerant, state: State): Derived | null {
  if (state.cp === null) return null;
  const { temperature, density, pressure } = state;
  const equation = fluid.equation.at(temperature, density);
  const { stiffness, thermalPush, gasConstant } = equation;
  return {
    jouleThomsonCoefficient: jouleThomson(equation),
    isentropicExponent: isentropicExponentOf(density, equation.soundSpeed, pressure),
    isobaricExpansion: expansionOf(temperature, thermalPush, stiffness),
    isothermalCompressibility: compressibilityOf(density, gasConstant, temperature, stiffness),
    derivatives: derivativesOf(equation),
  };
}

/**
 * Slope of the saturation pressure of a pure fluid over temperature, dp/dT [Pa/K].
 * @param saturation  both sides of the dome of a pure fluid, from saturationAtTemperature or saturationAtPressure
 * @returns           dp/dT [Pa/K]
 * Pitfall: the lines of a blend are curves of their own and do not obey Clapeyron.
 * @throws InputError 'noDerivative' if the two sides are not at one pressure and one temperature, as those of a blend
 * Worked value: water at 100 °C → 3619.3 Pa/K.
 */
export function saturationPressureSlope(saturation: Saturation): number {
  const { liquid, vapour } = saturation;
  if (liquid.pressure !== vapour.pressure || liquid.temperature !== vapour.temperature) {
    throw new InputError('saturation', 'both sides of a blend', 'those of a pure fluid', 'noDerivative');
  }
  return clapeyronOf(liquid.entropy, vapour.entropy, liquid.density, vapour.density);
}

function jouleThomson(equation: HelmholtzEquation): number {
  const { residual, density, cp, stiffness } = equation;
  return jouleThomsonOf(residual[1]!, residual[3]!, residual[4]!, density, cp, stiffness);
}

function derivativesOf(equation: HelmholtzEquation): Derivatives {
  const { temperature, density, cp, pressureByDensity, pressureByTemperature, enthalpyByDensity } = equation;
  const byTemperature = -pressureByTemperature / pressureByDensity;
  // (∂s/∂p)_T = (∂ρ/∂T)_p / ρ², a relation of Maxwell's; with it (∂T/∂p)_s = −(∂s/∂p)_T T / c_p.
  const entropyByPressure = byTemperature / (density * density);
  const throttling = jouleThomson(equation);
  return {
    pressureByDensityAtTemperature: pressureByDensity,
    pressureByTemperatureAtDensity: pressureByTemperature,
    densityByTemperatureAtPressure: byTemperature,
    densityByPressureAtEnthalpy: 1 / pressureByDensity + byTemperature * throttling,
    densityByEnthalpyAtPressure: byTemperature / cp,
    temperatureByPressureAtEnthalpy: throttling,
    temperatureByEnthalpyAtPressure: 1 / cp,
    temperatureByPressureAtEntropy: (-entropyByPressure * temperature) / cp,
    enthalpyByPressureAtTemperature: enthalpyByDensity / pressureByDensity,
    enthalpyByTemperatureAtPressure: cp,
    entropyByPressureAtTemperature: entropyByPressure,
  };
}
