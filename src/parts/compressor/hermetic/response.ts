// How the image of a pass answers to small changes of what it started from: derivatives for Newton's method, by the chain rule
// through the pass, the gas's own from what its state brings along (c_p, c_v, speed of sound). They shape the way to the
// running point and not the result: what is small is left out (heat capacities that change, the leak's pressure ratio).

import type { State } from '../../../matter/refrigerants/index.ts';
import type { Pass, Running } from './pass.ts';

/** Changes of ṁ [kg/s], h_e [J/kg], ρ_e [kg/m³], T_w [K]. */
export type Change = readonly [number, number, number, number];

/**
 * @param running  what stays the same from pass to pass
 * @param pass     the pass whose image is asked for
 * @param before   the pass before, if there was one: how the heat capacity of the compressed gas changes is seen from it
 */
export function responseOf(running: Running, pass: Pass, before: Pass | undefined): (change: Change) => Change {
  const { compressor, at, heatCapacity } = running;
  const { from, image, leakage, cylinderGas, compressedGas, suctionCapacity, dischargeCapacity, speed } = pass;
  const { massFlow } = from;
  const circulating = massFlow + leakage;
  const filling = slopesOf(cylinderGas);
  const emptying = slopesOf(compressedGas);
  const suctionLoss = at.suction.pressure - pass.fillingPressure;
  const dischargeLoss = pass.emptyingPressure - at.dischargePressure;
  const suctionPerFlow = capacityPerFlow(pass.suctionUnits, heatCapacity);
  const dischargePerFlow = capacityPerFlow(pass.dischargeUnits, compressedGas.cp ?? heatCapacity);
  const capacitySlope = before === undefined ? 0 : capacityPerEnthalpy(pass, before);
  const conductance = compressor.shellConductance + suctionCapacity + dischargeCapacity;
  const toShaft = (1 + compressor.proportionalLoss) / (1 + running.friction * running.slipPerPower);
  const isStalled = pass.shaftPower > running.stallingPower;
  const motorLosses = isStalled ? 0 : motorLossesPerPower(running, pass.shaftPower);
  const lossesPerPower = toShaft * (1 + motorLosses) - 1;
  const slower = isStalled ? 0 : at.supply.frequency * running.slipPerPower * toShaft;
  const swept = compressor.displacement * speed;
  const { clearanceRatio } = compressor;
  const perSpeed = (image.massFlow + leakage) / speed;

  return ([flow, enthalpy, density, wall]) => {
    const pressure = (-2 * suctionLoss * flow) / massFlow;
    const pressureOut = dischargeLoss * ((2 * flow) / massFlow - density / from.compressedDensity);
    const leaking = (leakage / 2) * (density / from.compressedDensity + pressureOut / pass.emptyingPressure);
    const warmer = suctionCapacity * wall + suctionPerFlow * (from.wallTemperature - at.suction.temperature) * flow;
    const filled =
      ((at.suction.enthalpy - cylinderGas.enthalpy) * flow +
        warmer +
        (from.compressedEnthalpy - cylinderGas.enthalpy) * leaking +
        leakage * enthalpy) /
      circulating;
    const fillingDensity = filling.densityPerPressure * pressure - filling.densityPerEnthalpy * filled;
    const entropy = (filled - pressure / cylinderGas.density) / cylinderGas.temperature;
    // Along the isobar dh = T ds; along the isentrope dh = dp/ρ and dρ = dp/w².
    const heated = compressedGas.temperature * entropy;
    const compressedEnthalpy = heated + pressureOut / compressedGas.density;
    const compressedDensity = pressureOut * emptying.densityPerCompression - emptying.densityPerEnthalpy * heated;
    const temperature = heated * emptying.temperaturePerEnthalpy + pressureOut * emptying.temperaturePerCompression;
    const work = compressedGas.enthalpy - cylinderGas.enthalpy;
    const power = work * (flow + leaking) + circulating * (compressedEnthalpy - filled);
    const suctionGain = suctionPerFlow * flow * (at.suction.temperature - image.wallTemperature);
    const dischargeGain =
      (dischargePerFlow * flow + capacitySlope * heated) * (compressedGas.temperature - image.wallTemperature);
    const drawn = swept * ((1 + clearanceRatio) * fillingDensity - clearanceRatio * compressedDensity);
    return [
      drawn - perSpeed * slower * power - leaking,
      compressedEnthalpy,
      compressedDensity,
      (lossesPerPower * power + suctionGain + dischargeGain + dischargeCapacity * temperature) / conductance,
    ];
  };
}

/** dC/dṁ of an exchanged capacity C = ε ṁ c_p whose transfer units go as ṁ^−0.2. */
function capacityPerFlow(units: number, heatCapacity: number): number {
  const passed = Math.exp(-units);
  return heatCapacity * (1 - passed * (1 + 0.2 * units));
}

/** dC_ex/dh_e between two passes. */
function capacityPerEnthalpy(pass: Pass, before: Pass): number {
  const apart = pass.compressedGas.enthalpy - before.compressedGas.enthalpy;
  const { cp } = pass.compressedGas;
  const { cp: cpBefore } = before.compressedGas;
  if (cp === null || cpBefore === null || apart === 0) return 0;
  return ((cp - cpBefore) / cp) * (pass.dischargeCapacity / apart);
}

/** dP_l/dW_sh of the motor's losses [-]. */
function motorLossesPerPower({ compressor, at, bestPower, flux }: Running, shaftPower: number): number {
  const field = (bestPower * at.supply.frequency) / compressor.ratedSupply.frequency;
  return (bestPower * (1 / compressor.motorEfficiency - 1) * shaftPower) / (field * flux) ** 2;
}

interface Slopes {
  /** −(∂ρ/∂h)_p = ρ β / c_p. */
  readonly densityPerEnthalpy: number;
  /** (∂ρ/∂p)_h. */
  readonly densityPerPressure: number;
  /** (∂ρ/∂p)_s = 1/w². */
  readonly densityPerCompression: number;
  /** (∂T/∂h)_p = 1/c_p. */
  readonly temperaturePerEnthalpy: number;
  /** (∂T/∂p)_s = T β / (ρ c_p). */
  readonly temperaturePerCompression: number;
}

/** Slopes of the gas; of wet gas, whose state brings none along, those of a heavy perfect gas near it. */
function slopesOf(gas: State): Slopes {
  const { temperature, pressure, density, cp, cv, soundSpeed } = gas;
  if (cp === null || cv === null || soundSpeed === null) {
    return {
      densityPerEnthalpy: (density * density) / (wetPressures * pressure),
      densityPerPressure: density / pressure,
      densityPerCompression: density / (wetExponent * pressure),
      temperaturePerEnthalpy: 0,
      temperaturePerCompression: 0,
    };
  }
  // β² = (c_p − c_v) κ_T ρ / T with κ_T = c_p / (c_v ρ w²).
  const expansion = Math.sqrt(((cp - cv) * cp) / (cv * temperature)) / soundSpeed;
  const densityPerEnthalpy = (density * expansion) / cp;
  const densityPerCompression = 1 / soundSpeed ** 2;
  return {
    densityPerEnthalpy,
    densityPerPressure: densityPerCompression + densityPerEnthalpy / density,
    densityPerCompression,
    temperaturePerEnthalpy: 1 / cp,
    temperaturePerCompression: (temperature * expansion) / (density * cp),
  };
}

/** Enthalpy over p/ρ that a gas takes to double its volume, and its exponent. */
const wetPressures = 10;
const wetExponent = 1.1;
