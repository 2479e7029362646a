// The working of a state: enthalpy, entropy, pressure or temperature from the derivatives of the fluid's equation at that
// state. States come out of iterations; at the state found, these relations hold and can be shown with numbers put in.

import type { WorkingStep } from '../../quantities/index.ts';
import type { Refrigerant, State } from './types.ts';

/** What the equation gives at one temperature and density; plain numbers that outlive the next evaluation. */
interface Derivatives {
  readonly R: number;
  readonly phi: number;
  readonly phi_d: number;
  readonly phi_t: number;
  readonly h_zero: number;
  readonly s_zero: number;
}

/**
 * Steps `<prefix>.enthalpy` and `<prefix>.entropy` of a state in one phase, a saturated side included.
 * Empty inside the dome, where a state is a mixture of two.
 * @param fluid   whose state
 * @param state   the state
 * @param prefix  path of the state in the caller's result, as 'operating.points.compressorInlet'
 */
export function stateWorking(fluid: Refrigerant, state: State, prefix: string): readonly WorkingStep[] {
  if (isMixture(state)) return [];
  const { temperature: T } = state;
  const { R, phi, phi_d, phi_t, h_zero, s_zero } = derivativesAt(fluid, state);
  return [
    {
      result: `${prefix}.enthalpy`,
      formula: 'refrigerants.enthalpy',
      inputs: { R, T, phi_d, phi_t, h_zero },
      from: { T: `${prefix}.temperature` },
      value: state.enthalpy,
    },
    {
      result: `${prefix}.entropy`,
      formula: 'refrigerants.entropy',
      inputs: { R, phi_t, phi, s_zero },
      from: {},
      value: state.entropy,
    },
  ];
}

/**
 * Step of a saturation pressure, by the density of the saturated vapour that Maxwell's conditions give.
 * @param fluid        whose vapour
 * @param vapour       saturated
 * @param result       name of the pressure in the caller's result
 * @param temperature  where the temperature came from
 */
export function saturationPressureWorking(
  fluid: Refrigerant,
  vapour: State,
  result: string,
  temperature: string,
): WorkingStep {
  const { R, phi_d } = derivativesAt(fluid, vapour);
  return {
    result,
    formula: 'refrigerants.pressure',
    inputs: { rho: vapour.density, R, T: vapour.temperature, phi_d },
    from: { T: temperature },
    value: vapour.pressure,
  };
}

/**
 * Step of a temperature that was found from enthalpy and pressure: the relation of the enthalpy, solved for T at the state.
 * @param fluid     whose state
 * @param state     the state found
 * @param result    name of the temperature in the caller's result
 * @param enthalpy  name of the step that gives the enthalpy
 */
export function temperatureWorking(
  fluid: Refrigerant,
  state: State,
  result: string,
  enthalpy: string,
): readonly WorkingStep[] {
  if (isMixture(state)) return [];
  const { R, phi_d, phi_t, h_zero } = derivativesAt(fluid, state);
  return [
    {
      result,
      formula: 'refrigerants.temperature',
      inputs: { h: state.enthalpy, h_zero, R, phi_d, phi_t },
      from: { h: enthalpy },
      value: state.temperature,
    },
  ];
}

function isMixture({ quality }: State): boolean {
  return quality !== null && quality > 0 && quality < 1;
}

function derivativesAt({ equation }: Refrigerant, { temperature, density }: State): Derivatives {
  const { gasConstant, reducedEnergy, residual, tauSlope, enthalpyZero, entropyZero } = equation.at(
    temperature,
    density,
  );
  return {
    R: gasConstant,
    phi: reducedEnergy,
    phi_d: residual[1]!,
    phi_t: tauSlope,
    h_zero: enthalpyZero,
    s_zero: entropyZero,
  };
}
