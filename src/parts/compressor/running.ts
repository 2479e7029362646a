// A machine as it runs here: what it is, where its shell stands, which mains feed it, and how far the model is moved within its
// own doubt. The loop asks it for a running point and knows no more of it. What was measured of a machine moves the model's
// flow and power; the discharge state then follows from the energy balance, so that no correction makes or loses energy.

import { type Refrigerant, type State, saturationAtPressure } from '../../matter/refrigerants/index.ts';
import { NoSolutionError } from '../../numerics/index.ts';
import type { HermeticCompressor, Supply } from './hermetic/parameters.ts';
import { belowIsentropic, dischargeState, type HermeticPoint, hermeticPoint, warningsOf } from './hermetic/point.ts';
import { dischargeEnthalpyOf } from './hermetic/shell.ts';
import { modelDoubt } from './identification/deviation/doubt.ts';
import type { IdentifiedMachine, ModelDoubt } from './identification/identified.ts';

export interface RunningMachine {
  readonly compressor: HermeticCompressor;
  /** T_amb, of the air around the shell [K]. */
  readonly surroundings: number;
  readonly supply: Supply;
  /** How the machine is known, and where within the model's doubt it is taken to stand: −1 to 1, 0 the likely; null for the bare model. */
  readonly known: KnownMachine | null;
}

export interface KnownMachine {
  readonly identified: IdentifiedMachine;
  readonly flow: number;
  readonly power: number;
  /** The machine that its points are of, where `compressor` is one alike of another size. */
  readonly measured?: HermeticCompressor;
}

/** Gas at the inlet of the shell, and p_d [Pa]. */
export interface BetweenPressures {
  readonly suction: State;
  readonly dischargePressure: number;
}

/** A point of the model, moved by factors on its flow and on its power. */
export interface RunningPoint extends HermeticPoint {
  /** The model alone; the factors stand between it and the point. */
  readonly modelled: HermeticPoint;
  readonly flowFactor: number;
  readonly powerFactor: number;
  /** What the factors were made of; null for the bare model. */
  readonly doubt: ModelDoubt | null;
}

/**
 * The running point of a machine here: the model's, corrected by what is known of the machine and moved within its doubt.
 *     k = 1 + correction + z · half width, of flow and of power
 * @param machine  see RunningMachine
 * @param fluid    refrigerant in it
 * @param at       gas at the inlet of the shell, discharge pressure p_d [Pa]
 * @throws what hermeticPoint and movedPoint throw; of a machine with something known of it, OutOfModelError 'noSaturation' where
 *         the discharge pressure has no saturation temperature
 */
export function runningPoint(machine: RunningMachine, fluid: Refrigerant, at: BetweenPressures): RunningPoint {
  const { compressor, surroundings, supply, known } = machine;
  const { suction, dischargePressure } = at;
  const modelled = hermeticPoint(compressor, fluid, { suction, dischargePressure, surroundings, supply });
  if (known === null) return movedPoint(modelled, fluid, machine, { flow: 1, power: 1 }, null);
  const doubt = modelDoubt(known.identified, known.measured ?? compressor, {
    fluid: fluid.name,
    evaporating: dewTemperature(fluid, suction.pressure),
    condensing: dewTemperature(fluid, dischargePressure),
    supply,
  });
  const flow = factorWithin(doubt.flow.correction, doubt.flow.halfWidth, known.flow);
  const power = factorWithin(doubt.power.correction, doubt.power.halfWidth, known.power);
  return movedPoint(modelled, fluid, machine, { flow, power }, doubt);
}

function dewTemperature(fluid: Refrigerant, pressure: number): number {
  return saturationAtPressure(fluid, pressure).vapour.temperature;
}

/** Factor k [-] = 1 + c + z H: correction c [-], half width H [-] of its range, and where within it z [-] the machine is taken to stand. Source: definition. */
export function factorWithin(correction: number, halfWidth: number, place: number): number {
  return 1 + correction + place * halfWidth;
}

/** What the model gives, times its factor k [-]: flow [kg/s], power or heat [W]. Source: definition of the factor. */
export function movedBy(factor: number, modelled: number): number {
  return factor * modelled;
}

/**
 * A point of the model with its flow and its power multiplied. Every power and heat follows the factor of the power, the wall
 * stands as far from its surroundings as the shell's heat then asks, and the gas takes what is left:
 *     ṁ' = k_m ṁ,  W' = k_W W,  Q_s' = k_W Q_s,  h_2' = h_1 + (W' − Q_s')/ṁ'
 * @param modelled  point of the model
 * @param fluid     its refrigerant
 * @param machine   conductance of its shell, its surroundings and its voltage
 * @param factors   k_m and k_W [-]
 * @param doubt     what the factors were made of
 * @throws NoSolutionError 'beyondKnowledge' unless both factors are above 0; 'belowIsentropic' and 'moreThanSwept' where an
 *         efficiency would pass 1; what the refrigerant's equation throws where the discharge leaves its limits
 * Pitfall: states inside the machine stay those of the model; they stand in `modelled`.
 */
export function movedPoint(
  modelled: HermeticPoint,
  fluid: Refrigerant,
  machine: Pick<RunningMachine, 'compressor' | 'surroundings' | 'supply'>,
  factors: { readonly flow: number; readonly power: number },
  doubt: ModelDoubt | null,
): RunningPoint {
  const { flow, power: factor } = factors;
  requirePossible(modelled, factors);
  const { suction, isentropic, motor } = modelled;
  const massFlow = movedBy(flow, modelled.massFlow);
  const power = movedBy(factor, modelled.power);
  const shellHeat = movedBy(factor, modelled.shellHeat);
  const volumetricEfficiency = movedBy(flow, modelled.volumetricEfficiency);
  const dischargeEnthalpy = dischargeEnthalpyOf(suction.enthalpy, power, shellHeat, massFlow);
  const isMoved = flow !== 1 || factor !== 1;
  const discharge = isMoved
    ? dischargeState(fluid, modelled.discharge.pressure, dischargeEnthalpy)
    : modelled.discharge;
  const current = movedCurrent(modelled.current, modelled.power, power, machine.supply.voltage);
  // Each field by itself: spreading the whole point would take a fifth of the time of an operating point.
  return {
    modelled,
    flowFactor: flow,
    powerFactor: factor,
    doubt,
    massFlow,
    power,
    current,
    speed: modelled.speed,
    motor: { load: factor * motor.load, losses: factor * motor.losses, speed: motor.speed, power, current },
    internalPower: factor * modelled.internalPower,
    shaftPower: factor * modelled.shaftPower,
    wallTemperature: wallAtShellHeat(machine.surroundings, shellHeat, machine.compressor.shellConductance),
    suctionHeat: factor * modelled.suctionHeat,
    dischargeHeat: factor * modelled.dischargeHeat,
    shellHeat,
    fillingPressure: modelled.fillingPressure,
    emptyingPressure: modelled.emptyingPressure,
    cylinderGas: modelled.cylinderGas,
    compressedGas: modelled.compressedGas,
    leakage: flow * modelled.leakage,
    volumetricEfficiency,
    overallEfficiency: (flow / factor) * modelled.overallEfficiency,
    dischargeEnthalpy,
    dischargeTemperature: discharge.temperature,
    pressureRatio: modelled.pressureRatio,
    suction,
    isentropic,
    discharge,
    warnings: warningsOf(volumetricEfficiency, discharge),
    iterations: modelled.iterations,
  };
}

function requirePossible(
  { overallEfficiency, volumetricEfficiency }: HermeticPoint,
  { flow, power }: { readonly flow: number; readonly power: number },
): void {
  if (!(flow > 0 && power > 0)) {
    const message = `What is known of the machine leaves factors of ${flow} on flow and ${power} on power: nothing is known here.`;
    throw new NoSolutionError(message, 'conditions nearer to its points', 'beyondKnowledge');
  }
  const overall = (flow / power) * overallEfficiency;
  if (!(overall < 1)) {
    throw belowIsentropic(overall);
  }
  const swept = flow * volumetricEfficiency;
  // A shell colder than the gas may draw in more than it sweeps; the factor alone may not.
  if (!(swept <= Math.max(1, volumetricEfficiency))) {
    const message = `The machine would pump ${swept.toPrecision(3)} times the gas that it sweeps.`;
    throw new NoSolutionError(message, 'volumetric efficiency up to 1', 'moreThanSwept');
  }
}

/** Wall temperature T_w [K] = T_amb + Q_s/UA, from surroundings [K], heat of the shell [W] and its conductance [W/K]. Source: definition of UA. */
export function wallAtShellHeat(surroundings: number, shellHeat: number, shellConductance: number): number {
  return surroundings + shellHeat / shellConductance;
}

/**
 * Current I' [A] at a changed power: the active part follows the power, the magnetising part stays.
 *     I' = √(I² + (W'² − W²)/V²)
 * @param current   I [A]
 * @param power     W [W]
 * @param electric  W' [W]
 * @param voltage   V [V]
 * Source: as motorCurrent. Worked value: 1.087 A, 200 W, 220 W, 230 V → 1.158 A.
 */
export function movedCurrent(current: number, power: number, electric: number, voltage: number): number {
  return Math.sqrt(current ** 2 + (electric ** 2 - power ** 2) / voltage ** 2);
}
