// The working of a state: each property from the others and from the derivatives of the fluid's equation at that state.
// States come out of iterations; at the state found these relations hold and can be shown with numbers put in. Which way
// round a relation is shown follows from what the state was found by, so that a chain leads back to what was given.

import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import { type Line, linePressureStep, lineTemperatureStep } from './dome/line-working.ts';
import type { Refrigerant, Saturation, State } from './types.ts';

/** Where a state came from: names of steps or design paths of the two properties it was found by. */
export type StateOrigins =
  | { readonly pressure: string; readonly temperature: string }
  | { readonly pressure: string; readonly enthalpy: string }
  | { readonly pressure: string; readonly entropy: string }
  | { readonly pressure: string; readonly quality: string };

/** Both sides of the dome at a state's pressure. */
export interface DomeOrigins {
  readonly saturation: Saturation;
  /** Prefix of their steps (see saturatedSidesWorking). */
  readonly prefix: string;
  /** Name of the step of the saturation temperature; of a blend, of its dew temperature. */
  readonly temperature: string;
  /** Of a blend: name of the step of its bubble temperature. */
  readonly bubbleTemperature?: string;
}

/** What is added to h and s where they count from another reference state (see referenceOffset). */
export interface CaloricShift {
  readonly enthalpy: number;
  readonly entropy: number;
}

const noShift: CaloricShift = { enthalpy: 0, entropy: 0 };

/**
 * Step of a saturation pressure at a known temperature: by Maxwell's conditions, of a blend by the curve of one of its lines.
 * @param fluid        the fluid
 * @param saturation   both sides of its dome
 * @param result       name of the pressure in the caller's result
 * @param temperature  where the temperature came from
 * @param line         of a blend: which line
 */
export function saturationPressureWorking(
  fluid: Refrigerant,
  saturation: Saturation,
  result: string,
  temperature: string,
  line: Line = 'dew',
): WorkingStep {
  const { bubbleAndDew } = fluid;
  if (bubbleAndDew !== undefined) return linePressureStep(bubbleAndDew, line, saturation, result, temperature);
  return workingStep(result, 'refrigerants.saturationPressure', saturation.vapour.pressure, {
    T: [saturation.vapour.temperature, temperature],
    ...bothPhases(fluid, saturation),
  });
}

/** Step of a saturation temperature at a known pressure; arguments as those of saturationPressureWorking. */
export function saturationTemperatureWorking(
  fluid: Refrigerant,
  saturation: Saturation,
  result: string,
  pressure: string,
  line: Line = 'dew',
): WorkingStep {
  const { bubbleAndDew } = fluid;
  if (bubbleAndDew !== undefined) return lineTemperatureStep(bubbleAndDew, line, saturation, result, pressure);
  return workingStep(result, 'refrigerants.saturationTemperature', saturation.vapour.temperature, {
    p: [saturation.vapour.pressure, pressure],
    ...bothPhases(fluid, saturation),
  });
}

/**
 * Steps `<prefix>.liquid.density`, `.enthalpy`, `.entropy` and the same of `<prefix>.vapour`.
 * @param fluid       the fluid
 * @param saturation  both sides of its dome
 * @param prefix      path of the saturation in the caller's result: 'cycle.evaporating'
 * @param origins     where its temperature and pressure came from
 * @param shift       where h and s count from another reference state
 */
export function saturatedSidesWorking(
  fluid: Refrigerant,
  saturation: Saturation,
  prefix: string,
  origins: { readonly temperature: string; readonly bubbleTemperature?: string; readonly pressure: string },
  shift: CaloricShift = noShift,
): readonly WorkingStep[] {
  return (['liquid', 'vapour'] as const).flatMap((side) => {
    const state = shifted(saturation[side], shift);
    const at = `${prefix}.${side}`;
    const known = equationAt(fluid, state, shift);
    const temperature = side === 'liquid' ? (origins.bubbleTemperature ?? origins.temperature) : origins.temperature;
    const from = { temperature, pressure: origins.pressure };
    return [densityStep(known, state, at, from), enthalpyStep(known, state, at, from), entropyStep(known, state, at)];
  });
}

/**
 * Steps `<prefix>.temperature`, `.density`, `.enthalpy`, `.entropy` and, on and inside the dome, `.quality`, in the order in
 * which one leads to the next; without those of the two properties the state was found by.
 * @param fluid    whose state
 * @param state    the state, its h and s on the reference state of `shift`
 * @param prefix   path of the state in the caller's result, as 'operating.points.compressorInlet'
 * @param origins  where the two properties came from that it was found by
 * @param dome     on and inside the dome; without it a mixture has no steps, and a side none of its quality
 * @param shift    where h and s count from another reference state
 */
export function stateWorking(
  fluid: Refrigerant,
  state: State,
  prefix: string,
  origins: StateOrigins,
  dome?: DomeOrigins,
  shift: CaloricShift = noShift,
): readonly WorkingStep[] {
  if (isMixture(state)) return dome === undefined ? [] : mixtureSteps(state, prefix, origins, dome, shift);
  const known = equationAt(fluid, state, shift);
  const { pressure } = origins;
  const temperature = 'temperature' in origins ? origins.temperature : `${prefix}.temperature`;
  const density = () => densityStep(known, state, prefix, { temperature, pressure });
  const quality = dome === undefined ? [] : sideQualityStep(state, prefix, dome, shift);
  if ('enthalpy' in origins) {
    return [
      temperatureStep(known, state, `${prefix}.temperature`, origins.enthalpy),
      density(),
      entropyStep(known, state, prefix),
      ...quality,
    ];
  }
  const enthalpy = enthalpyStep(known, state, prefix, { temperature, pressure });
  if ('entropy' in origins) {
    return [...stepsFromEntropy(known, state, prefix, pressure, origins.entropy), enthalpy, ...quality];
  }
  return [density(), enthalpy, entropyStep(known, state, prefix), ...quality];
}

/** Step `<prefix>.internalEnergy`, from steps of the same prefix and the origin of the pressure. */
export function internalEnergyWorking(state: State, prefix: string, pressure: string): WorkingStep {
  return workingStep(`${prefix}.internalEnergy`, 'refrigerants.internalEnergy', state.internalEnergy, {
    h: [state.enthalpy, `${prefix}.enthalpy`],
    p: [state.pressure, pressure],
    rho: [state.density, `${prefix}.density`],
  });
}

/** Steps of the heat capacities, the speed of sound and the surface tension of a state, where it has them. */
export function furtherPropertiesWorking(fluid: Refrigerant, state: State, prefix: string): readonly WorkingStep[] {
  const own = (name: string) => `${prefix}.${name}`;
  return [...onePhaseSteps(fluid, state, own), ...surfaceTensionSteps(fluid, state, own)];
}

/** What the equation gives at one temperature and density; plain numbers that outlive the next evaluation. */
interface KnownOfEquation {
  readonly R: number;
  readonly phi: number;
  /** φ without its logarithm of density. */
  readonly phi_s: number;
  readonly rho_c: number;
  readonly phi_d: number;
  readonly phi_t: number;
  readonly h_zero: number;
  readonly s_zero: number;
}

function equationAt(
  { equation, critical }: Refrigerant,
  { temperature, density }: State,
  shift: CaloricShift,
): KnownOfEquation {
  const { gasConstant, reducedEnergy, residual, tauSlope, enthalpyZero, entropyZero } = equation.at(
    temperature,
    density,
  );
  return {
    R: gasConstant,
    phi: reducedEnergy,
    phi_s: reducedEnergy - Math.log(density / critical.density),
    rho_c: critical.density,
    phi_d: residual[1]!,
    phi_t: tauSlope,
    h_zero: enthalpyZero + shift.enthalpy,
    s_zero: entropyZero + shift.entropy,
  };
}

function bothPhases(fluid: Refrigerant, { liquid, vapour }: Saturation): Readonly<Record<string, StepInput>> {
  const { phi: liquidEnergy, R } = equationAt(fluid, liquid, noShift);
  const { phi: vapourEnergy } = equationAt(fluid, vapour, noShift);
  return {
    R: [R],
    phi_liquid: [liquidEnergy],
    phi_vapour: [vapourEnergy],
    rho_liquid: [liquid.density],
    rho_vapour: [vapour.density],
  };
}

function densityStep(
  { R, phi_d }: KnownOfEquation,
  state: State,
  prefix: string,
  origins: { readonly temperature: string; readonly pressure: string },
): WorkingStep {
  return workingStep(`${prefix}.density`, 'refrigerants.density', state.density, {
    p: [state.pressure, origins.pressure],
    R: [R],
    T: [state.temperature, origins.temperature],
    phi_d: [phi_d],
  });
}

function enthalpyStep(
  { R, phi_t, h_zero }: KnownOfEquation,
  state: State,
  prefix: string,
  origins: { readonly temperature: string; readonly pressure: string },
): WorkingStep {
  return workingStep(`${prefix}.enthalpy`, 'refrigerants.enthalpy', state.enthalpy, {
    R: [R],
    T: [state.temperature, origins.temperature],
    phi_t: [phi_t],
    p: [state.pressure, origins.pressure],
    rho: [state.density, `${prefix}.density`],
    h_zero: [h_zero],
  });
}

function entropyStep({ R, phi_s, phi_t, rho_c, s_zero }: KnownOfEquation, state: State, prefix: string): WorkingStep {
  return workingStep(`${prefix}.entropy`, 'refrigerants.entropy', state.entropy, {
    R: [R],
    phi_t: [phi_t],
    phi_s: [phi_s],
    rho: [state.density, `${prefix}.density`],
    rho_c: [rho_c],
    s_zero: [s_zero],
  });
}

function temperatureStep(
  { R, phi_d, phi_t, h_zero }: KnownOfEquation,
  state: State,
  result: string,
  enthalpy: string,
): WorkingStep {
  return workingStep(result, 'refrigerants.temperature', state.temperature, {
    h: [state.enthalpy, enthalpy],
    h_zero: [h_zero],
    R: [R],
    phi_d: [phi_d],
    phi_t: [phi_t],
  });
}

/** The entropy gives the density, the pressure then the temperature. */
function stepsFromEntropy(
  { R, phi_s, phi_d, phi_t, rho_c, s_zero }: KnownOfEquation,
  state: State,
  prefix: string,
  pressure: string,
  entropy: string,
): readonly WorkingStep[] {
  return [
    workingStep(`${prefix}.density`, 'refrigerants.densityFromEntropy', state.density, {
      rho_c: [rho_c],
      phi_t: [phi_t],
      phi_s: [phi_s],
      s: [state.entropy, entropy],
      s_zero: [s_zero],
      R: [R],
    }),
    workingStep(`${prefix}.temperature`, 'refrigerants.temperatureFromPressure', state.temperature, {
      p: [state.pressure, pressure],
      rho: [state.density, `${prefix}.density`],
      R: [R],
      phi_d: [phi_d],
    }),
  ];
}

function mixtureSteps(
  state: State,
  prefix: string,
  origins: StateOrigins,
  { saturation, prefix: dome, temperature, bubbleTemperature = temperature }: DomeOrigins,
  shift: CaloricShift,
): readonly WorkingStep[] {
  const liquid = shifted(saturation.liquid, shift);
  const vapour = shifted(saturation.vapour, shift);
  const own = (name: string) => `${prefix}.${name}`;
  const x: StepInput = [state.quality!, 'quality' in origins ? origins.quality : own('quality')];
  const between = (name: 'temperature' | 'enthalpy' | 'entropy') =>
    workingStep(own(name), `refrigerants.mixture${name[0]!.toUpperCase()}${name.slice(1)}`, state[name], {
      x,
      y_liquid: [liquid[name], name === 'temperature' ? bubbleTemperature : `${dome}.liquid.${name}`],
      y_vapour: [vapour[name], name === 'temperature' ? temperature : `${dome}.vapour.${name}`],
    });
  return [
    ...('quality' in origins ? [] : [qualityStep(state, prefix, origins, dome, liquid, vapour)]),
    between('temperature'),
    workingStep(own('density'), 'refrigerants.mixtureDensity', state.density, {
      x,
      rho_liquid: [liquid.density, `${dome}.liquid.density`],
      rho_vapour: [vapour.density, `${dome}.vapour.density`],
    }),
    ...('enthalpy' in origins ? [] : [between('enthalpy')]),
    ...('entropy' in origins ? [] : [between('entropy')]),
  ];
}

/** Quality from what the state was found by; from its enthalpy unless that was its entropy. */
function qualityStep(
  state: State,
  prefix: string,
  origins: StateOrigins,
  dome: string,
  liquid: State,
  vapour: State,
): WorkingStep {
  if ('entropy' in origins) {
    return workingStep(`${prefix}.quality`, 'refrigerants.qualityFromEntropy', state.quality!, {
      s: [state.entropy, origins.entropy],
      s_liquid: [liquid.entropy, `${dome}.liquid.entropy`],
      s_vapour: [vapour.entropy, `${dome}.vapour.entropy`],
    });
  }
  return workingStep(`${prefix}.quality`, 'refrigerants.quality', state.quality!, {
    h: [state.enthalpy, 'enthalpy' in origins ? origins.enthalpy : `${prefix}.enthalpy`],
    h_liquid: [liquid.enthalpy, `${dome}.liquid.enthalpy`],
    h_vapour: [vapour.enthalpy, `${dome}.vapour.enthalpy`],
  });
}

/** Of a state on the line: 0 or 1, by its enthalpy. */
function sideQualityStep(
  state: State,
  prefix: string,
  { saturation, prefix: dome }: DomeOrigins,
  shift: CaloricShift,
): readonly WorkingStep[] {
  if (state.quality === null) return [];
  const own = { pressure: `${prefix}.pressure`, enthalpy: `${prefix}.enthalpy` };
  return [qualityStep(state, prefix, own, dome, shifted(saturation.liquid, shift), shifted(saturation.vapour, shift))];
}

function onePhaseSteps(fluid: Refrigerant, state: State, own: (name: string) => string): readonly WorkingStep[] {
  const { cp, cv, soundSpeed } = state;
  if (cv === null || soundSpeed === null) return [];
  const { gasConstant, residual, tauCurvature, stiffness, thermalPush } = fluid.equation.at(
    state.temperature,
    state.density,
  );
  const R: StepInput = [gasConstant];
  const phi_d: StepInput = [residual[1]!];
  const phi_tt: StepInput = [tauCurvature];
  const K: StepInput = [stiffness, own('stiffness')];
  const P: StepInput = [thermalPush, own('thermalPush')];
  const heatCapacity = 'refrigerants.heatCapacityAtConstantPressure';
  return [
    workingStep(own('stiffness'), 'refrigerants.stiffness', stiffness, { phi_d, phi_dd: [residual[3]!] }),
    workingStep(own('thermalPush'), 'refrigerants.thermalPush', thermalPush, { phi_d, phi_dt: [residual[4]!] }),
    ...(cp === null ? [] : [workingStep(own('cp'), heatCapacity, cp, { R, phi_tt, P, K })]),
    workingStep(own('cv'), 'refrigerants.heatCapacityAtConstantVolume', cv, { R, phi_tt }),
    workingStep(own('soundSpeed'), 'refrigerants.soundSpeed', soundSpeed, {
      R,
      T: [state.temperature, own('temperature')],
      K,
      P,
      phi_tt,
    }),
  ];
}

/** Where the fit has vanished, nothing is left to show. */
function surfaceTensionSteps(fluid: Refrigerant, state: State, own: (name: string) => string): readonly WorkingStep[] {
  if (state.surfaceTension === null || state.surfaceTension === 0) return [];
  const { criticalTemperature, a, n } = fluid.surfaceTension;
  return [
    workingStep(own('surfaceTension'), 'refrigerants.surfaceTension', state.surfaceTension, {
      T: [state.temperature, own('temperature')],
      Tc: [criticalTemperature],
      a1: [a[0]!],
      a2: [a[1] ?? 0],
      a3: [a[2] ?? 0],
      n1: [n[0]!],
      n2: [n[1] ?? 1],
      n3: [n[2] ?? 1],
    }),
  ];
}

function isMixture({ quality }: State): boolean {
  return quality !== null && quality > 0 && quality < 1;
}

function shifted(state: State, shift: CaloricShift): State {
  return { ...state, enthalpy: state.enthalpy + shift.enthalpy, entropy: state.entropy + shift.entropy };
}
