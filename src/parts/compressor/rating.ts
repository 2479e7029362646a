// A machine from one published rating: displacement and compression efficiency follow exactly from capacity and power at
// four stated temperatures, the other six numbers being assumed. A rating that no machine can meet is refused with the limit.

import type { Refrigerant, State } from '../../matter/refrigerants/index.ts';
import { saturationAtTemperature, stateInLoop } from '../../matter/refrigerants/index.ts';
import { InputError, NoSolutionError, OutOfModelError, requireFinite, requirePositive } from '../../numerics/index.ts';
import type { CompressorModel } from './model.ts';
import { requireCompressorModel } from './model.ts';
import type { CompressorPoint } from './point.ts';
import { compressorPoint, volumetricEfficiency } from './point.ts';
import type { RatingConditions } from './rating-points.ts';
import { ratingConditions } from './rating-points.ts';

/** Sizes [m³ per revolution] that one rating may identify: small hermetic machines. Outside, the sheet's unit is in doubt. */
export const identifiableDisplacement = { smallest: 5e-7, largest: 2e-4 } as const;

/** Overall efficiencies between which a single rating is unremarkable; outside, the result carries a warning. */
export const usualOverallEfficiency = { lowest: 0.25, highest: 0.75 } as const;

/** `efficiencyUnusuallyLow`, `efficiencyUnusuallyHigh`: check unit, mains, rating point and whether power is electric. */
export type RatingWarning = 'efficiencyUnusuallyLow' | 'efficiencyUnusuallyHigh';

export interface RatingRequest {
  readonly fluid: Refrigerant;
  /** Q_e, refrigerating capacity at the rating point [W]. */
  readonly capacity: number;
  /** W, electric power there [W]. */
  readonly power: number;
  /** Name of a confirmed rating point, or the four temperatures of the sheet. */
  readonly ratingPoint: string | RatingConditions;
  /** The six numbers that one rating cannot tell. */
  readonly assumed: Omit<CompressorModel, 'displacement' | 'compressionEfficiency'>;
}

export interface RatedMachine {
  readonly model: CompressorModel;
  readonly conditions: RatingConditions;
  /** The model run at the rating point: gives back capacity and power. */
  readonly point: CompressorPoint;
  /** q_e = h_1 − h_liquid [J/kg]. */
  readonly refrigeratingEffect: number;
  /** h of the liquid before the valve [J/kg]. */
  readonly liquidEnthalpy: number;
  /** ṁ [kg/s] that the capacity implies. */
  readonly massFlow: number;
  readonly warnings: readonly RatingWarning[];
}

/** ṁ [kg/s] = Q_e / (h_1 − h_l): the flow that a capacity [W] implies, from gas and liquid enthalpy [J/kg]. */
export function massFlowFromCapacity(capacity: number, gasEnthalpy: number, liquidEnthalpy: number): number {
  return capacity / (gasEnthalpy - liquidEnthalpy);
}

/** V_d [m³] = ṁ / (η_v · N · ρ_s): inverse of compressorMassFlow. */
export function displacementFromFlow(massFlow: number, efficiency: number, speed: number, density: number): number {
  return massFlow / (efficiency * speed * density);
}

/** η_c [-] = ṁ · Δh_s / (W − p_f · V_d · N): inverse of compressorPower. */
export function compressionEfficiencyFromPower(
  massFlow: number,
  isentropicWork: number,
  power: number,
  frictionPressure: number,
  displacement: number,
  speed: number,
): number {
  return (massFlow * isentropicWork) / (power - frictionPressure * displacement * speed);
}

/**
 * Displacement V_d and compression efficiency η_c of a machine from one rating.
 *     ṁ = Q_e / (h(p_e, T_gas) − h'(T_liquid));  V_d = ṁ / (η_v N ρ_s);  η_c = ṁ Δh_s / (W − p_f V_d N)
 * @returns       the full model, and its point at the rating conditions
 * @throws InputError for impossible numbers, an unconfirmed point, return gas below dew or liquid above condensing temperature;
 *         NoSolutionError 'ratingImpossible' where less than the isentropic power is stated, 'ratingBelowFriction' where
 *         the assumed constant losses leave too little, 'noFlow'; OutOfModelError where the size is not that of a small machine
 * Validity: exact at the rating point; away from it as good as the six assumed numbers.
 * Pitfalls: dew or mid-point, return gas and liquid temperature by convention; ratings at another mains frequency.
 * Source: algebra on compressorPoint.
 */
export function modelFromRating(request: RatingRequest): RatedMachine {
  const { fluid, capacity, power, assumed } = request;
  requirePositive('capacity', capacity);
  requirePositive('power', power);
  requireCompressorModel({ ...assumed, displacement: 1e-5, compressionEfficiency: 1 }, 'assumed');
  const conditions =
    typeof request.ratingPoint === 'string' ? ratingConditions(request.ratingPoint) : request.ratingPoint;
  const { suction, liquidEnthalpy, dischargePressure } = ratingStates(fluid, conditions);
  const massFlow = massFlowFromCapacity(capacity, suction.enthalpy, liquidEnthalpy);
  const isentropicWork =
    stateInLoop(fluid, { pressure: dischargePressure, entropy: suction.entropy }).enthalpy - suction.enthalpy;
  const pressureRatio = dischargePressure / suction.pressure;
  const { fillingFactor, clearanceRatio, reexpansionExponent, speed, frictionPressure } = assumed;
  const flowEfficiency = volumetricEfficiency(fillingFactor, clearanceRatio, reexpansionExponent, pressureRatio);
  const displacement = displacementFromFlow(massFlow, flowEfficiency, speed, suction.density);
  requirePossiblePower(power, massFlow * isentropicWork, capacity, frictionPressure * displacement * speed);
  requireIdentifiableSize(displacement);
  const compressionEfficiency = compressionEfficiencyFromPower(
    massFlow,
    isentropicWork,
    power,
    frictionPressure,
    displacement,
    speed,
  );
  const model: CompressorModel = { ...assumed, displacement, compressionEfficiency };
  const point = compressorPoint(model, fluid, { suction, dischargePressure });
  return {
    model,
    conditions,
    point,
    refrigeratingEffect: suction.enthalpy - liquidEnthalpy,
    liquidEnthalpy,
    massFlow,
    warnings: warningsOf(point.overallEfficiency),
  };
}

function ratingStates(fluid: Refrigerant, conditions: RatingConditions) {
  const { evaporating, condensing, returnGas, liquid } = conditions;
  for (const [name, value] of Object.entries({ evaporating, condensing, returnGas, liquid })) {
    requireFinite(`ratingPoint.${name}`, value);
  }
  if (!(evaporating < condensing)) {
    throw new InputError('ratingPoint.evaporating', evaporating, `below condensing, ${condensing} K`);
  }
  if (!(returnGas > evaporating)) {
    throw new InputError('ratingPoint.returnGas', returnGas, `above evaporating, ${evaporating} K`);
  }
  if (!(liquid <= condensing)) {
    throw new InputError('ratingPoint.liquid', liquid, `at most condensing, ${condensing} K`);
  }
  const evaporation = saturationAtTemperature(fluid, evaporating).vapour.pressure;
  return {
    suction: stateInLoop(fluid, { temperature: returnGas, pressure: evaporation }),
    liquidEnthalpy: saturationAtTemperature(fluid, liquid).liquid.enthalpy,
    dischargePressure: saturationAtTemperature(fluid, condensing).vapour.pressure,
  } satisfies { suction: State; liquidEnthalpy: number; dischargePressure: number };
}

function requirePossiblePower(power: number, isentropicPower: number, capacity: number, frictionPower: number): void {
  if (power < isentropicPower) {
    const most = (capacity * power) / isentropicPower;
    throw new NoSolutionError(
      `${capacity} W of capacity from ${power} W of power would need less than isentropic work.`,
      `at ${power} W no machine gives more than ${most.toPrecision(3)} W at this rating point; at ${capacity} W none takes less than ${isentropicPower.toPrecision(3)} W`,
      'ratingImpossible',
    );
  }
  if (power - frictionPower < isentropicPower) {
    const most = power - isentropicPower;
    throw new NoSolutionError(
      `The assumed constant losses of ${frictionPower.toPrecision(3)} W leave less than the isentropic power of ${isentropicPower.toPrecision(3)} W.`,
      `constant losses of at most ${most.toPrecision(3)} W fit this rating: assume a lower friction pressure`,
      'ratingBelowFriction',
    );
  }
}

function requireIdentifiableSize(displacement: number): void {
  const { smallest, largest } = identifiableDisplacement;
  if (displacement >= smallest && displacement <= largest) return;
  throw new OutOfModelError('displacement', displacement, 'm³', smallest, largest, 'ratingSizeOutOfModel');
}

function warningsOf(efficiency: number): readonly RatingWarning[] {
  if (efficiency < usualOverallEfficiency.lowest) return ['efficiencyUnusuallyLow'];
  if (efficiency > usualOverallEfficiency.highest) return ['efficiencyUnusuallyHigh'];
  return [];
}
