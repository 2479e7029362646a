// What a thermometer clamped on a pipe tells of the refrigerant inside, and what its error does to a measured running point.
// The amounts are our own judgement of an insulated sensor on clean copper; a bare one is worse.

import { type Refrigerant, saturationAtDewTemperature, stateInLoop } from '../../../matter/refrigerants/index.ts';

/** Half width of what a clamped sensor reads of evaporating and condensing fluid [K]; own judgement. */
export const clampError = 1.5;

/** The gas in the discharge line is hotter than the pipe shows, by this much at least, likely, at most [K]; own judgement. */
export const dischargeLag = { low: -1, likely: 2, high: 7 } as const;

/** Change per kelvin of evaporating and of condensing temperature: of ln(power) [1/K], of discharge temperature [K/K]. */
export interface Sensitivities {
  readonly power: { readonly evaporating: number; readonly condensing: number };
  readonly dischargeTemperature: { readonly evaporating: number; readonly condensing: number };
}

/** Step of the differences [K]. */
const step = 0.5;

/**
 * How a point moves with its two levels, of a machine that pumps a fixed volume isentropically: P ~ ρ_1 Δh_s, T_2s. A real
 * machine's power moves less, since part of its losses does not change: the doubt is not made too small.
 * @param fluid        refrigerant
 * @param evaporating  dew temperature [K]
 * @param condensing   dew temperature [K]
 * @param returnGas    gas at the inlet of the shell [K]
 * @throws errors of the refrigerant's equation
 */
export function clampSensitivities(
  fluid: Refrigerant,
  evaporating: number,
  condensing: number,
  returnGas: number,
): Sensitivities {
  const at = (evaporation: number, condensation: number) => idealPoint(fluid, evaporation, condensation, returnGas);
  const [colder, warmer] = [at(evaporating - step, condensing), at(evaporating + step, condensing)];
  const [lower, higher] = [at(evaporating, condensing - step), at(evaporating, condensing + step)];
  const slope = (from: number, to: number) => (to - from) / (2 * step);
  return {
    power: {
      evaporating: slope(Math.log(colder.work), Math.log(warmer.work)),
      condensing: slope(Math.log(lower.work), Math.log(higher.work)),
    },
    dischargeTemperature: {
      evaporating: slope(colder.temperature, warmer.temperature),
      condensing: slope(lower.temperature, higher.temperature),
    },
  };
}

/** Work per swept volume [J/m³] and isentropic discharge temperature [K]. */
function idealPoint(fluid: Refrigerant, evaporating: number, condensing: number, returnGas: number) {
  const dew = saturationAtDewTemperature(fluid, evaporating).vapour;
  const suction =
    returnGas > evaporating + step ? stateInLoop(fluid, { pressure: dew.pressure, temperature: returnGas }) : dew;
  const { pressure } = saturationAtDewTemperature(fluid, condensing).vapour;
  const discharge = stateInLoop(fluid, { pressure, entropy: suction.entropy });
  return { work: suction.density * (discharge.enthalpy - suction.enthalpy), temperature: discharge.temperature };
}
