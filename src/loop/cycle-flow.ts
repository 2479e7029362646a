// The textbook cycle per second: its mass flow from a heat, a power or a displacement, and everything per kilogram times
// that flow. One of them is given; the compressor, its speed and its losses are not described.

import { requireFinite, requirePositive, requireWithin } from '../numerics/index.ts';
import type { CheckedCycleRequest } from './cycle-request.ts';
import type { CyclePerSecond } from './cycle-result.ts';
import type { ExergyDestruction } from './exergy.ts';

/** Volumetric efficiency where a displacement is given alone [-]: all that is swept is drawn in. */
const idealVolumetricEfficiency = 1;

/**
 * Mass flow from a heat or a power and the same per kilogram, ṁ.
 *     ṁ = P / q
 * @param power    P [W]: heat taken, heat delivered or power of the shaft into the gas, > 0
 * @param perMass  q [J/kg]: the same per kilogram, > 0
 * @returns        ṁ [kg/s]
 * @throws InputError outside these ranges
 * Source: steady-flow energy equation.
 * Worked value: 7180, 143 600 → 0.05 kg/s.
 */
export function massFlowFromPower(power: number, perMass: number): number {
  requirePositive('power', power);
  requirePositive('perMass', perMass);
  return power / perMass;
}

/**
 * Mass flow that a displacement draws in, ṁ.
 *     ṁ = V η_v ρ1
 * @param sweptVolumeRate       V [m³/s]: volume swept per turn times turns per second, > 0
 * @param volumetricEfficiency  η_v [-]: volume drawn in, at the state of the inlet, by volume swept; above 0, at most 1
 * @param inletDensity          ρ1 [kg/m³], > 0
 * @returns                     ṁ [kg/s]
 * @throws InputError outside these ranges
 * Source: definition of volumetric efficiency.
 * Worked value: 0.005, 0.8, 7 → 0.028 kg/s.
 */
export function massFlowFromDisplacement(
  sweptVolumeRate: number,
  volumetricEfficiency: number,
  inletDensity: number,
): number {
  requirePositive('sweptVolumeRate', sweptVolumeRate);
  requirePositive('volumetricEfficiency', volumetricEfficiency);
  requireWithin('volumetricEfficiency', volumetricEfficiency, 0, 1);
  requirePositive('inletDensity', inletDensity);
  return sweptVolumeRate * volumetricEfficiency * inletDensity;
}

/**
 * Heat, work or exergy per second from that per kilogram, P.
 *     P = ṁ q
 * @param massFlow  ṁ [kg/s], > 0
 * @param perMass   q [J/kg], finite; negative where it goes the other way
 * @returns         P [W]
 * @throws InputError outside these ranges
 * Source: steady-flow energy equation.
 * Worked value: 0.05, 36 230 → 1811.5 W.
 */
export function ratePerSecond(massFlow: number, perMass: number): number {
  requirePositive('massFlow', massFlow);
  requireFinite('perMass', perMass);
  return massFlow * perMass;
}

/**
 * Volume of gas that enters the compressor per second, V1.
 *     V1 = ṁ / ρ1
 * @param massFlow      ṁ [kg/s], > 0
 * @param inletDensity  ρ1 [kg/m³], > 0
 * @returns             V1 [m³/s]
 * @throws InputError outside these ranges
 * Source: definition of density.
 * Worked value: 0.05, 7 → 0.00714286 m³/s.
 */
export function inletVolumeFlow(massFlow: number, inletDensity: number): number {
  requirePositive('massFlow', massFlow);
  requirePositive('inletDensity', inletDensity);
  return massFlow / inletDensity;
}

/** What of a cycle per kilogram its answer per second needs [J/kg], and the density at the compressor inlet [kg/m³]. */
export interface PerKilogram {
  readonly heatDelivered: number;
  readonly heatTaken: number;
  readonly specificWork: number;
  readonly exchangedHeat: number | undefined;
  readonly exergyDestruction: ExergyDestruction;
  readonly inletDensity: number;
}

/** The answer per second; undefined where no flow was asked for. What was given stands in the answer as it was given. */
export function perSecond(
  { flow, volumetricEfficiency }: Pick<CheckedCycleRequest, 'flow' | 'volumetricEfficiency'>,
  cycle: PerKilogram,
): CyclePerSecond | undefined {
  if (flow === undefined) return undefined;
  const efficiency = volumetricEfficiency ?? idealVolumetricEfficiency;
  const massFlow = massFlowOf(flow, efficiency, cycle);
  const rate = (perMass: number) => ratePerSecond(massFlow, perMass);
  const { compressor, condenser, expansion, evaporator, heatExchanger, total } = cycle.exergyDestruction;
  const heats = {
    heatingCapacity: rate(cycle.heatDelivered),
    coolingCapacity: rate(cycle.heatTaken),
    compressorPower: rate(cycle.specificWork),
  };
  return {
    given: flow.key,
    massFlow,
    ...heats,
    ...(flow.key in heats ? { [flow.key]: flow.value } : {}),
    ...(cycle.exchangedHeat === undefined ? {} : { heatExchangerHeat: rate(cycle.exchangedHeat) }),
    exergyDestructionRate: {
      compressor: rate(compressor),
      condenser: rate(condenser),
      expansion: rate(expansion),
      evaporator: rate(evaporator),
      ...(heatExchanger === undefined ? {} : { heatExchanger: rate(heatExchanger) }),
      total: rate(total),
    },
    inletVolumeFlow: inletVolumeFlow(massFlow, cycle.inletDensity),
    ...(flow.key === 'displacement'
      ? {
          displacement: flow.value,
          volumetricEfficiency: efficiency,
          volumetricEfficiencyAssumed: volumetricEfficiency === undefined,
        }
      : {}),
  };
}

function massFlowOf(flow: NonNullable<CheckedCycleRequest['flow']>, efficiency: number, cycle: PerKilogram): number {
  switch (flow.key) {
    case 'massFlow':
      return flow.value;
    case 'coolingCapacity':
      return massFlowFromPower(flow.value, cycle.heatTaken);
    case 'heatingCapacity':
      return massFlowFromPower(flow.value, cycle.heatDelivered);
    case 'compressorPower':
      return massFlowFromPower(flow.value, cycle.specificWork);
    case 'displacement':
      return massFlowFromDisplacement(flow.value, efficiency, cycle.inletDensity);
  }
}
