// One pass through the machine: from assumed flow, wall temperature and compressed gas to what follows of each. At the running
// point both are the same; settle.ts finds it.

import { type Refrigerant, type State, stateInLoop } from '../../../matter/refrigerants/index.ts';
import { OutOfModelError } from '../../../numerics/index.ts';
import {
  exchangedCapacity,
  fillingEnthalpy,
  heatAtWall,
  heatCapacityOf,
  leakageFlow,
  leakagePressureRatio,
  openingLoss,
  powerToGas,
  pressureInEmptying,
  pressureInFilling,
  pumpedFlow,
  transferUnits,
  wallEffectiveness,
} from './gas-path.ts';
import {
  electricPower,
  fluxRatio,
  motorBestPower,
  motorLoad,
  motorLosses,
  settledShaftPower,
  shaftSpeed,
  stallingPower,
  stallingSlip,
} from './motor.ts';
import type { HermeticCompressor, Supply } from './parameters.ts';
import { lossesToWall, wallTemperature } from './shell.ts';

/** Between what, in what, and on which mains the machine runs. */
export interface RunningConditions {
  /** Gas at the inlet of the shell; superheated or saturated vapour. */
  readonly suction: State;
  /** p_d [Pa], in the discharge line. */
  readonly dischargePressure: number;
  /** T_amb, of the air around the shell [K]. */
  readonly surroundings: number;
  readonly supply: Supply;
}

/** What stays the same from pass to pass. */
export interface Running {
  readonly compressor: HermeticCompressor;
  readonly fluid: Refrigerant;
  readonly at: RunningConditions;
  /** c_p of the suction gas [J/(kg K)]. */
  readonly heatCapacity: number;
  /** P_b [W]. */
  readonly bestPower: number;
  /** φ [-]. */
  readonly flux: number;
  /** Constant losses at the speed of the field [W]. */
  readonly friction: number;
  /** Slip for each watt at the shaft [1/W]. */
  readonly slipPerPower: number;
  /** Shaft power at which the motor stalls [W]. */
  readonly stallingPower: number;
}

/** What a pass starts from and returns changed. */
export interface Unknowns {
  /** T_w [K]. */
  readonly wallTemperature: number;
  /** ṁ [kg/s]. */
  readonly massFlow: number;
  /** h_e [J/kg]. */
  readonly compressedEnthalpy: number;
  /** ρ_e [kg/m³]. */
  readonly compressedDensity: number;
}

export interface Pass {
  readonly from: Unknowns;
  readonly image: Unknowns;
  readonly fillingPressure: number;
  readonly emptyingPressure: number;
  readonly suctionUnits: number;
  readonly dischargeUnits: number;
  readonly suctionCapacity: number;
  readonly dischargeCapacity: number;
  readonly suctionHeat: number;
  readonly leakage: number;
  readonly cylinderGas: State;
  readonly compressedGas: State;
  readonly internalPower: number;
  readonly shaftPower: number;
  readonly speed: number;
}

export function runningOf(compressor: HermeticCompressor, fluid: Refrigerant, at: RunningConditions): Running {
  const { displacement, ratedSupply, motorPressure, frictionPressure } = compressor;
  const { frequency, voltage } = at.supply;
  const stallsAt = stallingPower(compressor, at.supply);
  return {
    compressor,
    fluid,
    at,
    heatCapacity: heatCapacityOf(fluid, at.suction),
    bestPower: motorBestPower(motorPressure, displacement, ratedSupply.frequency),
    flux: fluxRatio(voltage, ratedSupply.voltage, frequency, ratedSupply.frequency),
    friction: frictionPressure * displacement * frequency,
    slipPerPower: stallingSlip / stallsAt,
    stallingPower: stallsAt,
  };
}

/**
 * @param running  what stays the same from pass to pass
 * @param from     what is assumed; the suction path must leave the gas some pressure
 * @throws what the refrigerant's equation throws where a gas leaves its limits
 */
export function passThrough(running: Running, from: Unknowns): Pass {
  const { compressor, fluid, at } = running;
  const { suction } = at;
  const { displacement, ratedSupply } = compressor;
  const { massFlow, compressedDensity } = from;
  const lossIn = (velocity: number, density: number) =>
    openingLoss(velocity, massFlow, density, displacement, ratedSupply.frequency);
  const unitsOf = (reference: number) => transferUnits(reference, massFlow, displacement, ratedSupply.frequency);

  const fillingPressure = pressureInFilling(suction.pressure, lossIn(compressor.suctionVelocity, suction.density));
  const dischargeLoss = lossIn(compressor.dischargeVelocity, compressedDensity);
  const emptyingPressure = pressureInEmptying(at.dischargePressure, dischargeLoss);
  const suctionUnits = unitsOf(compressor.suctionHeatingUnits);
  const suctionCapacity = exchangedCapacity(wallEffectiveness(suctionUnits), massFlow, running.heatCapacity);
  const suctionHeat = heatAtWall(suctionCapacity, from.wallTemperature, suction.temperature);
  const ratio = leakagePressureRatio(fillingPressure, emptyingPressure);
  const leakage = leakageFlow(compressor.leakageRatio, displacement, emptyingPressure, compressedDensity, ratio);
  const enthalpy = fillingEnthalpy(massFlow, suction.enthalpy, suctionHeat, leakage, from.compressedEnthalpy);
  const cylinderGas = stateInLoop(fluid, { pressure: fillingPressure, enthalpy });
  const compressedGas = compressedTo(fluid, cylinderGas, emptyingPressure);
  const internalPower = powerToGas(massFlow, leakage, compressedGas.enthalpy, cylinderGas.enthalpy);
  const dischargeUnits = unitsOf(compressor.dischargeCoolingUnits);
  const cooled = heatCapacityOf(fluid, compressedGas);
  const dischargeCapacity = exchangedCapacity(wallEffectiveness(dischargeUnits), massFlow, cooled);
  const { shaftPower, losses, speed } = driven(running, internalPower);
  const { density: fillingDensity } = cylinderGas;
  const { clearanceRatio } = compressor;
  return {
    from,
    image: {
      wallTemperature: wallTemperature(
        losses,
        compressor.shellConductance,
        at.surroundings,
        suctionCapacity,
        suction.temperature,
        dischargeCapacity,
        compressedGas.temperature,
      ),
      massFlow: pumpedFlow(fillingDensity, compressedGas.density, displacement, speed, clearanceRatio, leakage),
      compressedEnthalpy: compressedGas.enthalpy,
      compressedDensity: compressedGas.density,
    },
    fillingPressure,
    emptyingPressure,
    suctionUnits,
    dischargeUnits,
    suctionCapacity,
    dischargeCapacity,
    suctionHeat,
    leakage,
    cylinderGas,
    compressedGas,
    internalPower,
    shaftPower,
    speed,
  };
}

/**
 * Shaft power, losses to the wall and speed at an internal power. A motor that would stall is let run on as if it just did not,
 * so that a start which asks too much of it is no refusal; whether it stalls is told of the settled point.
 */
export function driven(
  { compressor, at, bestPower, flux, friction, slipPerPower, stallingPower: most }: Running,
  internalPower: number,
): { readonly shaftPower: number; readonly losses: number; readonly speed: number } {
  const { ratedSupply, motorEfficiency, proportionalLoss } = compressor;
  const { frequency } = at.supply;
  const shaftPower = settledShaftPower(internalPower * (1 + proportionalLoss), friction, slipPerPower);
  const held = Math.min(shaftPower, most);
  const load = motorLoad(held, bestPower, frequency, ratedSupply.frequency);
  const ofMotor = motorLosses(bestPower, motorEfficiency, flux, load, frequency, ratedSupply.frequency);
  return {
    shaftPower,
    losses: lossesToWall(electricPower(shaftPower, ofMotor), internalPower),
    speed: shaftSpeed(frequency, slipPerPower * held),
  };
}

/** Gas after isentropic compression; without lift the gas itself, where a flash would only add rounding. */
export function compressedTo(fluid: Refrigerant, gas: State, pressure: number): State {
  if (pressure === gas.pressure) return gas;
  try {
    return stateInLoop(fluid, { pressure, entropy: gas.entropy });
  } catch (error) {
    if (!(error instanceof OutOfModelError) || error.quantity !== 'entropy' || error.value < error.high) throw error;
    const { value, unit, low, high } = error;
    throw new OutOfModelError(
      'entropy of the compressed gas',
      value,
      unit,
      low,
      high,
      'dischargeTooHot',
      tooHot(fluid),
    );
  }
}

/** Why gas that hot has no answer: the end of a sentence. */
export function tooHot({ name, limits }: Refrigerant): string {
  return `gas hotter than the equation of ${name} reaches, ${limits.temperatureMax} K, with too little flow to carry the machine’s losses`;
}
