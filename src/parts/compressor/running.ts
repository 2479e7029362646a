// A machine as it runs here: what it is, where its shell stands, which mains feed it, and how far the model is moved within its
// own doubt. The loop asks it for a running point and knows no more of it. What was measured of a machine moves the model's
// flow and power; the discharge state then follows from the energy balance, so that no correction makes or loses energy.

import { type Refrigerant, type State, stateInLoop } from '../../matter/refrigerants/index.ts';
import { NoSolutionError } from '../../numerics/index.ts';
import type { HermeticCompressor, Supply } from './hermetic/parameters.ts';
import { type HermeticPoint, hermeticPoint } from './hermetic/point.ts';
import type { IdentifiedMachine, ModelDoubt } from './identification/identified.ts';

export interface RunningMachine {
  readonly compressor: HermeticCompressor;
  /** T_amb, of the air around the shell [K]. */
  readonly surroundings: number;
  readonly supply: Supply;
  /** How the machine is known, and where within the model's doubt it is taken to stand: −1 to 1, 0 the likely; null for the bare model. */
  readonly known: { readonly identified: IdentifiedMachine; readonly flow: number; readonly power: number } | null;
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
}

export type RunningPointOf = (machine: RunningMachine, fluid: Refrigerant, at: BetweenPressures) => RunningPoint;

/**
 * The running point of a machine here.
 * @param machine  see RunningMachine
 * @param fluid    refrigerant in it
 * @param at       gas at the inlet of the shell, discharge pressure p_d [Pa]
 * @throws what hermeticPoint and movedPoint throw
 */
export function runningPoint(machine: RunningMachine, fluid: Refrigerant, at: BetweenPressures): RunningPoint {
  const { compressor, surroundings, supply } = machine;
  const modelled = hermeticPoint(compressor, fluid, { ...at, surroundings, supply });
  return movedPoint(modelled, fluid, machine, { flow: 1, power: 1 });
}

/** Factor on flow and on power: what is known of the machine, moved within its doubt. */
export function factorsWithin(
  doubt: ModelDoubt,
  { flow, power }: { readonly flow: number; readonly power: number },
): { readonly flow: number; readonly power: number } {
  return {
    flow: 1 + doubt.flow.correction + flow * doubt.flow.halfWidth,
    power: 1 + doubt.power.correction + power * doubt.power.halfWidth,
  };
}

/**
 * A point of the model with its flow and its power multiplied. Every power and heat follows the factor of the power, the wall
 * stands as far from its surroundings as the shell's heat then asks, and the gas takes what is left:
 *     ṁ' = k_m ṁ,  W' = k_W W,  Q_s' = k_W Q_s,  h_2' = h_1 + (W' − Q_s')/ṁ'
 * @param modelled  point of the model
 * @param fluid     its refrigerant
 * @param machine   conductance of its shell, its surroundings and its voltage
 * @param factors   k_m and k_W [-]
 * @throws NoSolutionError 'beyondKnowledge' unless both factors are above 0; 'belowIsentropic' and 'moreThanSwept' where an
 *         efficiency would pass 1; what the refrigerant's equation throws where the discharge leaves its limits
 * Pitfall: states inside the machine stay those of the model; they stand in `modelled`.
 */
export function movedPoint(
  modelled: HermeticPoint,
  fluid: Refrigerant,
  machine: Pick<RunningMachine, 'compressor' | 'surroundings' | 'supply'>,
  factors: { readonly flow: number; readonly power: number },
): RunningPoint {
  const { flow, power } = factors;
  const own = { modelled, flowFactor: flow, powerFactor: power };
  if (flow === 1 && power === 1) return { ...modelled, ...own };
  requirePossible(modelled, factors);
  const massFlow = flow * modelled.massFlow;
  const electric = power * modelled.power;
  const shellHeat = power * modelled.shellHeat;
  const dischargeEnthalpy = modelled.suction.enthalpy + (electric - shellHeat) / massFlow;
  const discharge = stateInLoop(fluid, { pressure: modelled.discharge.pressure, enthalpy: dischargeEnthalpy });
  const current = currentAt(modelled, electric, machine.supply);
  const { motor } = modelled;
  return {
    ...modelled,
    ...own,
    massFlow,
    power: electric,
    current,
    motor: { ...motor, load: power * motor.load, losses: power * motor.losses, power: electric, current },
    internalPower: power * modelled.internalPower,
    shaftPower: power * modelled.shaftPower,
    suctionHeat: power * modelled.suctionHeat,
    dischargeHeat: power * modelled.dischargeHeat,
    shellHeat,
    wallTemperature: machine.surroundings + shellHeat / machine.compressor.shellConductance,
    leakage: flow * modelled.leakage,
    volumetricEfficiency: flow * modelled.volumetricEfficiency,
    overallEfficiency: (flow / power) * modelled.overallEfficiency,
    dischargeEnthalpy,
    dischargeTemperature: discharge.temperature,
    discharge,
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
    const message = `The machine would need ${(1 / overall).toPrecision(3)} times the least power that physics allows.`;
    throw new NoSolutionError(message, 'overall efficiency below 1', 'belowIsentropic');
  }
  const swept = flow * volumetricEfficiency;
  if (!(swept <= 1)) {
    const message = `The machine would pump ${swept.toPrecision(3)} times the gas that it sweeps.`;
    throw new NoSolutionError(message, 'volumetric efficiency up to 1', 'moreThanSwept');
  }
}

/** I [A]: the active part follows the power, the magnetising part stays. */
function currentAt({ power, current }: HermeticPoint, electric: number, { voltage }: Supply): number {
  return Math.sqrt(current ** 2 + (electric ** 2 - power ** 2) / voltage ** 2);
}
