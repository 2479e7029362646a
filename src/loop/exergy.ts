// Second law of the loop, per kilogram: the work each part wastes (exergy destruction), the least work the same heats
// could be moved with, and how near the cycle comes to it. The dead state is the temperature heat is worthless at.
// Sums are exact: work − minimum work = compressor + condenser + expansion + evaporator (+ heat exchanger).

import { ConvergenceError, requireFinite, requirePositive } from '../numerics/index.ts';
import { exergyDestroyedBetweenStreams } from './liquid-suction-exchange.ts';

/** Exergy destroyed in each part [J/kg], and in all. */
export interface ExergyDestruction {
  readonly compressor: number;
  readonly condenser: number;
  readonly expansion: number;
  readonly evaporator: number;
  /** Of a liquid-to-suction heat exchanger, where there is one. */
  readonly heatExchanger?: number;
  readonly total: number;
}

/**
 * Exergy destroyed by a part without heat exchange (compressor, expansion valve), x.
 *     x = T0 (s_out − s_in)
 * @param deadState      T0 [K]
 * @param inletEntropy   s_in [J/(kg K)]
 * @param outletEntropy  s_out [J/(kg K)]
 * @returns              x [J/kg]
 * Source: Çengel & Boles, Thermodynamics, 8th ed., section 11-5; Moran & Shapiro, 7th ed., example 10.3 (from memory).
 * Worked value: 300, 1000, 1050 → 15 000 J/kg.
 */
export function exergyDestroyedAdiabatic(deadState: number, inletEntropy: number, outletEntropy: number): number {
  requirePositive('deadState', deadState);
  requireFinite('inletEntropy', inletEntropy);
  requireFinite('outletEntropy', outletEntropy);
  return deadState * (outletEntropy - inletEntropy);
}

/**
 * Exergy destroyed by a part that gives heat to a body of constant temperature (condenser) or takes it (evaporator,
 * with q negative), x.
 *     x = T0 [(s_out − s_in) + q / T_body]
 * @param deadState        T0 [K]
 * @param inletEntropy     s_in [J/(kg K)]
 * @param outletEntropy    s_out [J/(kg K)]
 * @param heatGiven        q [J/kg], from the refrigerant to the body; negative where the refrigerant takes heat
 * @param bodyTemperature  T_body [K], above 0
 * @returns                x [J/kg]; negative only where heat would have to flow from cold to warm
 * Source: Çengel & Boles, Thermodynamics, 8th ed., section 11-5 (from memory of the source).
 * Worked value: 300, 1700, 1100, 190 000, 310 → 3870.97 J/kg.
 */
export function exergyDestroyedWithHeat(
  deadState: number,
  inletEntropy: number,
  outletEntropy: number,
  heatGiven: number,
  bodyTemperature: number,
): number {
  requirePositive('deadState', deadState);
  requireFinite('inletEntropy', inletEntropy);
  requireFinite('outletEntropy', outletEntropy);
  requireFinite('heatGiven', heatGiven);
  requirePositive('bodyTemperature', bodyTemperature);
  return deadState * (outletEntropy - inletEntropy + heatGiven / bodyTemperature);
}

/**
 * Least work w_min that could take q_L from the source and give q_H to the sink, the rest exchanged at the dead state.
 *     w_min = q_H (1 − T0 / T_H) − q_L (1 − T0 / T_L)
 * @param heatDelivered      q_H [J/kg]
 * @param heatTaken          q_L [J/kg]
 * @param sinkTemperature    T_H [K]
 * @param sourceTemperature  T_L [K]
 * @param deadState          T0 [K]
 * @returns                  w_min [J/kg]: exergy gained by the sink and the source; may be 0 or negative
 * Source: Çengel & Boles, Thermodynamics, 8th ed., section 11-5 (from memory); exergy of heat at constant temperature.
 * Worked value: 190 000, 150 000, 320, 280, 300 → 22 589.29 J/kg.
 */
export function minimumWork(
  heatDelivered: number,
  heatTaken: number,
  sinkTemperature: number,
  sourceTemperature: number,
  deadState: number,
): number {
  requireFinite('heatDelivered', heatDelivered);
  requireFinite('heatTaken', heatTaken);
  requirePositive('sinkTemperature', sinkTemperature);
  requirePositive('sourceTemperature', sourceTemperature);
  requirePositive('deadState', deadState);
  return heatDelivered * (1 - deadState / sinkTemperature) - heatTaken * (1 - deadState / sourceTemperature);
}

/**
 * Second-law efficiency η_II of the cycle.
 *     η_II = w_min / w
 * @param leastWork  w_min [J/kg]
 * @param work       w [J/kg], above 0
 * @returns          η_II [-]
 * Source: Çengel & Boles, Thermodynamics, 8th ed., section 11-5 (from memory of the source).
 * Worked value: 1016, 2919 → 0.34806.
 */
export function secondLawEfficiency(leastWork: number, work: number): number {
  requireFinite('leastWork', leastWork);
  requirePositive('work', work);
  return leastWork / work;
}

/** What the exergy account of a cycle needs; enthalpies and entropies on one reference state. */
export interface ExergyAccountInput {
  /** s1, s2, s3, s4 [J/(kg K)]. */
  readonly entropies: readonly [number, number, number, number];
  /** With a liquid-to-suction heat exchanger: evaporator outlet and expansion inlet [J/(kg K)]. */
  readonly exchangerEntropies?: readonly [number, number] | undefined;
  /** q_H, q_L, w [J/kg]. */
  readonly heatDelivered: number;
  readonly heatTaken: number;
  readonly work: number;
  /** T0, T_H, T_L [K]. */
  readonly deadState: number;
  readonly sinkTemperature: number;
  readonly sourceTemperature: number;
}

/**
 * Exergy destroyed in each part of the cycle, checked against work minus minimum work.
 * @throws ConvergenceError if the sum misses work − minimum work by more than 1e-9 of the work.
 * Source: the functions above; the closure follows by adding them.
 */
export function exergyAccount(input: ExergyAccountInput): { destruction: ExergyDestruction; minimumWork: number } {
  const [s1, s2, s3, s4] = input.entropies;
  const [evaporatorOutlet, expansionInlet] = input.exchangerEntropies ?? [s1, s3];
  const { deadState, heatDelivered, heatTaken, sinkTemperature, sourceTemperature, work } = input;
  const compressor = exergyDestroyedAdiabatic(deadState, s1, s2);
  const condenser = exergyDestroyedWithHeat(deadState, s2, s3, heatDelivered, sinkTemperature);
  const expansion = exergyDestroyedAdiabatic(deadState, expansionInlet, s4);
  const evaporator = exergyDestroyedWithHeat(deadState, s4, evaporatorOutlet, -heatTaken, sourceTemperature);
  const heatExchanger =
    input.exchangerEntropies && exergyDestroyedBetweenStreams(deadState, [evaporatorOutlet, s1], [s3, expansionInlet]);
  const total = compressor + condenser + expansion + evaporator + (heatExchanger ?? 0);
  const leastWork = minimumWork(heatDelivered, heatTaken, sinkTemperature, sourceTemperature, deadState);
  const residual = (work - leastWork - total) / work;
  if (!(Math.abs(residual) <= 1e-9)) throw new ConvergenceError('exergy account of the cycle', 1, [total], residual);
  const destruction =
    heatExchanger === undefined
      ? { compressor, condenser, expansion, evaporator, total }
      : { compressor, condenser, expansion, evaporator, heatExchanger, total };
  return { destruction, minimumWork: leastWork };
}
