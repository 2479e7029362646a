// Given points made ready: their states in the fluid, what they say on the scales of the identification, and the refusal of
// conditions and values that no machine can have.

import {
  type Refrigerant,
  type State,
  saturationAtBubbleTemperature,
  saturationAtDewTemperature,
  stateInLoop,
} from '../../../matter/refrigerants/index.ts';
import { InputError, OutOfModelError, requirePositive } from '../../../numerics/index.ts';
import { requireSupply } from '../hermetic/parameters.ts';
import type { RunningConditions } from '../hermetic/point.ts';
import { onScale, type Scale } from './coordinates.ts';
import { type EvidencePoint, type EvidenceQuantity, evidenceQuantities, type MachineDescription } from './evidence.ts';
import { spreadOf } from './priors.ts';

export interface PreparedPoint {
  readonly evidence: EvidencePoint;
  readonly conditions: RunningConditions;
  /** h(p_e, T_return) − h'(T_liquid) [J/kg]: capacity over flow. */
  readonly refrigeratingEffect: number;
  /** Isentropic work from the inlet to the discharge pressure [J/kg]. */
  readonly isentropicWork: number;
}

/** One given value on its scale: logarithms, and kelvins for a temperature. */
export interface Datum {
  /** 'machine.compressor.ratings.0.capacity' */
  readonly path: string;
  readonly label: string;
  readonly quantity: EvidenceQuantity;
  /** Which point it belongs to. */
  readonly point: number;
  /** As given [kg/s, W, A, K]. */
  readonly given: number;
  /** On its scale, times the likely factor of its series. */
  readonly observed: number;
  /** σ of its own doubt on its scale; 0 where it was given exactly. */
  readonly spread: number;
  /** Index of its series; undefined for a point that stands alone. */
  readonly series: number | undefined;
}

export function quantityScale(quantity: EvidenceQuantity): Scale {
  return quantity === 'dischargeTemperature' ? { kind: 'linear' } : { kind: 'logarithm' };
}

/** Quantities that the factor on the flow of a series moves, and those that the factor on its power moves. */
export function seriesFactorOf(quantity: EvidenceQuantity): 'flowFactor' | 'powerFactor' | undefined {
  if (quantity === 'massFlow' || quantity === 'capacity') return 'flowFactor';
  return quantity === 'dischargeTemperature' ? undefined : 'powerFactor';
}

/**
 * The states of a given point.
 * @throws InputError at the temperature that makes no sense beside the others ('returnGasBelowDew', 'liquidAboveBubble',
 *         'liquidBelowEvaporating', 'noLift'); OutOfModelError 'outsideFluid' at one the fluid has no such state at
 */
export function preparedPoint(fluid: Refrigerant, evidence: EvidencePoint): PreparedPoint {
  const { path, evaporating, condensing, returnGas, liquid, surroundings, supply } = evidence;
  for (const name of ['evaporating', 'condensing', 'returnGas', 'liquid', 'surroundings'] as const) {
    requirePositive(`${path}.${name}`, evidence[name]);
  }
  requireSupply(`${path}.supply`, supply);
  requireSaturation(fluid, `${path}.evaporating`, evaporating);
  requireSaturation(fluid, `${path}.condensing`, condensing);
  requireSaturation(fluid, `${path}.liquid`, liquid);
  if (!(evaporating < condensing)) {
    throw new InputError(
      `${path}.evaporating`,
      evaporating,
      `a temperature below condensing, ${condensing} K`,
      'noLift',
    );
  }
  if (!(returnGas >= evaporating)) {
    const expected = `gas at or above its dew temperature, ${evaporating} K`;
    throw new InputError(`${path}.returnGas`, `${returnGas} K`, expected, 'returnGasBelowDew');
  }
  if (returnGas > fluid.limits.temperatureMax) throw outsideFluid(fluid, `${path}.returnGas`, returnGas);
  const atDischarge = saturationAtDewTemperature(fluid, condensing);
  const atSuction = saturationAtDewTemperature(fluid, evaporating);
  const bubble = atDischarge.liquid.temperature;
  if (!(liquid <= bubble + rounding)) {
    const expected = `liquid at or below its bubble temperature at the discharge pressure, ${bubble} K`;
    throw new InputError(`${path}.liquid`, `${liquid} K`, expected, 'liquidAboveBubble');
  }
  if (!(liquid >= atSuction.liquid.temperature)) {
    const expected = `liquid warmer than what it is to cool, ${atSuction.liquid.temperature} K`;
    throw new InputError(`${path}.liquid`, `${liquid} K`, expected, 'liquidBelowEvaporating');
  }
  const suction = suctionGas(fluid, atSuction.vapour, returnGas);
  const dischargePressure = atDischarge.vapour.pressure;
  const isentropic = stateInLoop(fluid, { pressure: dischargePressure, entropy: suction.entropy });
  return {
    evidence,
    conditions: { suction, dischargePressure, surroundings, supply },
    refrigeratingEffect: suction.enthalpy - saturationAtBubbleTemperature(fluid, liquid).liquid.enthalpy,
    isentropicWork: isentropic.enthalpy - suction.enthalpy,
  };
}

/** Temperatures closer than this are one [K]: printed levels are rounded to a tenth. */
const rounding = 0.06;

/** On the dew line itself the saturated vapour, which no pair of temperature and pressure tells. */
function suctionGas(fluid: Refrigerant, dew: State, returnGas: number): State {
  if (returnGas - dew.temperature < 1e-6) return dew;
  return stateInLoop(fluid, { temperature: returnGas, pressure: dew.pressure });
}

function requireSaturation(fluid: Refrigerant, path: string, temperature: number): void {
  if (temperature > fluid.triplePoint.temperature && temperature < fluid.critical.temperature) return;
  throw outsideFluid(fluid, path, temperature);
}

function outsideFluid(fluid: Refrigerant, path: string, temperature: number): OutOfModelError {
  const isGas = path.endsWith('returnGas');
  const high = isGas ? fluid.limits.temperatureMax : fluid.critical.temperature;
  const reason = isGas ? `where ${fluid.name} is described` : `where ${fluid.name} has liquid and vapour side by side`;
  return new OutOfModelError(path, temperature, 'K', fluid.triplePoint.temperature, high, 'outsideFluid', reason);
}

/** Every given value, in the order of the points. @throws InputError at a value that is not one of its quantity. */
export function dataOf({ points, series }: MachineDescription): readonly Datum[] {
  return points.flatMap((point, index) => {
    const number = point.series === undefined ? undefined : series.findIndex(({ path }) => path === point.series);
    if (number === -1) {
      const known = series.map(({ path }) => path).join(', ');
      throw new InputError(`${point.path}.series`, point.series, `one of the series: ${known}`);
    }
    return evidenceQuantities.flatMap((quantity) => {
      const estimate = point.given[quantity];
      if (estimate === undefined) return [];
      const path = `${point.path}.${quantity}`;
      const { low, likely, high } = estimate;
      requirePositive(path, low);
      requirePositive(path, high);
      if (!(low <= likely && likely <= high)) throw new InputError(path, likely, `a value within ${low} and ${high}`);
      const scale = quantityScale(quantity);
      const factor = number === undefined ? undefined : seriesFactorOf(quantity);
      const moved = factor === undefined ? 1 : series[number!]![factor].likely;
      return [
        {
          path,
          label: point.label,
          quantity,
          point: index,
          given: likely,
          observed: onScale(scale, likely * moved, path),
          spread: spreadOf(estimate, scale, path),
          series: number,
        },
      ];
    });
  });
}
