// Partial derivatives between any three of temperature, pressure, density, enthalpy, entropy and internal energy, in one
// phase. Each property has its slopes over temperature and density from the equation; the rest is the chain rule.

import { InputError, requirePositive } from '../../../numerics/index.ts';
import type { HelmholtzEquation } from '../equation/equation.ts';
import type { Refrigerant } from '../types.ts';

export type StateVariable = 'temperature' | 'pressure' | 'density' | 'enthalpy' | 'entropy' | 'internalEnergy';

const variables: readonly StateVariable[] = [
  'temperature',
  'pressure',
  'density',
  'enthalpy',
  'entropy',
  'internalEnergy',
];

/** Slopes of a property X over temperature and over density, the other held: (∂X/∂T)_ρ and (∂X/∂ρ)_T. */
interface Slopes {
  readonly byTemperature: number;
  readonly byDensity: number;
}

/**
 * Partial derivative (∂a/∂b)_c of a fluid in one phase.
 *     (∂a/∂b)_c = (a_T c_ρ − a_ρ c_T) / (b_T c_ρ − b_ρ c_T), subscripts: slopes over T and ρ
 * @param fluid  the fluid
 * @param point  T [K] and ρ [kg/m³] of a state of one phase, or of one side of the dome; the caller knows that it is one
 * @param of     a: what changes
 * @param over   b: over what
 * @param held   c: what is held; none of the three twice
 * @returns      in SI units of a over those of b
 * Validity: limits of the equation. Accuracy: rounding; close to the critical point some derivatives grow without limit.
 * @throws InputError: an unknown property, one named twice, T or ρ not above 0; 'noDerivative' where it has no finite value:
 *         at the critical point, and between the spinodals, which are no states
 * Source: chain rule; slopes after R. Span (2000), Multiparameter Equations of State, chapter 3.
 * Worked value: R290, 300 K, 17.638 kg/m³ (0.4 mol/dm³): (∂h/∂T)_p = 1944.7 J/(kg K), which is c_p (Lemmon and others 2009).
 */
export function partialDerivative(
  fluid: Refrigerant,
  point: { readonly temperature: number; readonly density: number },
  of: StateVariable,
  over: StateVariable,
  held: StateVariable,
): number {
  const { temperature, density } = point;
  requirePositive('temperature', temperature);
  requirePositive('density', density);
  requireThree(of, over, held);
  const equation = fluid.equation.at(temperature, density);
  const a = slopesOf(equation, of);
  const b = slopesOf(equation, over);
  const c = slopesOf(equation, held);
  const result = derivative(a, b, c);
  if (!(equation.stiffness > 0 && Number.isFinite(result))) {
    const received = `${temperature} K and ${density} kg/m³`;
    throw new InputError('point', received, 'a state of one phase apart from the critical point', 'noDerivative');
  }
  return result;
}

function derivative(a: Slopes, b: Slopes, c: Slopes): number {
  const above = a.byTemperature * c.byDensity - a.byDensity * c.byTemperature;
  return above / (b.byTemperature * c.byDensity - b.byDensity * c.byTemperature);
}

/** The slopes of a property at the state the equation was evaluated at. */
function slopesOf(equation: HelmholtzEquation, variable: StateVariable): Slopes {
  const { temperature, density } = equation;
  switch (variable) {
    case 'temperature':
      return { byTemperature: 1, byDensity: 0 };
    case 'density':
      return { byTemperature: 0, byDensity: 1 };
    case 'pressure':
      return { byTemperature: equation.pressureByTemperature, byDensity: equation.pressureByDensity };
    case 'enthalpy':
      return { byTemperature: equation.enthalpyByTemperature, byDensity: equation.enthalpyByDensity };
    case 'entropy':
      return { byTemperature: equation.cv / temperature, byDensity: equation.entropyByDensity };
    case 'internalEnergy': {
      const { pressure, pressureByTemperature } = equation;
      return {
        byTemperature: equation.cv,
        byDensity: (pressure - temperature * pressureByTemperature) / (density * density),
      };
    }
    default:
      return variable satisfies never;
  }
}

function requireThree(of: StateVariable, over: StateVariable, held: StateVariable): void {
  for (const [path, name] of Object.entries({ of, over, held })) {
    if (!variables.includes(name)) throw new InputError(path, name, `one of ${variables.join(', ')}`);
  }
  if (of === over || of === held || over === held) {
    throw new InputError('held', `${of}, ${over}, ${held}`, 'three different properties');
  }
}
