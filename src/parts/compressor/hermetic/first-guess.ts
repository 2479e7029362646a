// Where the search for a running point starts: the machine with a perfect gas, no losses of pressure and no leakage, whose wall
// balance is linear and solved at once.

import type { State } from '../../../matter/refrigerants/index.ts';
import { clearanceVolumetricEfficiency, pressureRatioOf } from './efficiencies.ts';
import {
  exchangedCapacity,
  leakageFlow,
  leakagePressureRatio,
  leakingExponent,
  transferUnits,
  wallEffectiveness,
} from './gas-path.ts';
import { driven, type Running, type Unknowns } from './pass.ts';

/** Least volumetric efficiency that a guess is made with [-]; where the true one is smaller, the search finds down. */
const leastGuess = 0.1;
/** Of what is drawn in, the share that leakage is guessed to take at most [-]. */
const largestShare = 0.5;

/**
 * @param running     what stays the same from pass to pass
 * @param isentropic  state at discharge pressure and the entropy of the suction gas
 */
export function firstGuess(running: Running, isentropic: State): Unknowns {
  const { compressor, at, heatCapacity } = running;
  const { suction, surroundings } = at;
  const { displacement, shellConductance } = compressor;
  const ratio = pressureRatioOf(at.dischargePressure, suction.pressure);
  const filled = clearanceVolumetricEfficiency(compressor.clearanceRatio, leakingExponent, ratio);
  const coldFlow = suction.density * displacement * at.supply.frequency * Math.max(leastGuess, filled);
  const effectivenessOf = (units: number) =>
    wallEffectiveness(transferUnits(units, coldFlow, displacement, compressor.ratedSupply.frequency));
  const warming = effectivenessOf(compressor.suctionHeatingUnits);
  const suctionCapacity = exchangedCapacity(warming, coldFlow, heatCapacity);
  const cooling = effectivenessOf(compressor.dischargeCoolingUnits);
  const dischargeCapacity = exchangedCapacity(cooling, coldFlow, isentropic.cp ?? heatCapacity);
  const work = isentropic.enthalpy - suction.enthalpy;
  const { losses } = driven(running, coldFlow * work);
  // The compressed gas stands in proportion to the filling gas: T_e = T_2s T_f / T_1 with T_f = T_1 + ε (T_w − T_1).
  const passedOn = (warming * isentropic.temperature) / suction.temperature;
  const gains =
    losses +
    shellConductance * surroundings +
    suctionCapacity * suction.temperature +
    dischargeCapacity * (isentropic.temperature - passedOn * suction.temperature);
  const solved = gains / (shellConductance + suctionCapacity + dischargeCapacity * (1 - passedOn));
  const wallTemperature = solved > 0 ? solved : surroundings;
  const leaking = leakageFlow(
    compressor.leakageRatio,
    displacement,
    at.dischargePressure,
    isentropic.density,
    leakagePressureRatio(suction.pressure, at.dischargePressure),
  );
  // What leaks takes room in the stroke and brings the heat of compression back.
  const share = Math.min(leaking / coldFlow, largestShare);
  const brought = (share * (isentropic.temperature - suction.temperature)) / suction.temperature;
  const hotter = 1 + warming * (wallTemperature / suction.temperature - 1) + brought;
  return {
    wallTemperature,
    massFlow: (coldFlow / hotter) * (1 - share),
    compressedEnthalpy: suction.enthalpy + heatCapacity * suction.temperature * (hotter - 1) + work * hotter,
    compressedDensity: isentropic.density / hotter,
  };
}
