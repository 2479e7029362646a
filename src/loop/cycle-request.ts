// What a textbook cycle may be asked with, and the checks at the door: each fact is given by exactly one of its partner
// keys, every number is finite and inside its range, and a key that is not known is refused by name. Answers a request in
// which the choice between partners is data. Checks that need the fluid (critical point, dew line) are the cycle's own.

import { type ReferenceStateName, referenceStates } from '../matter/refrigerants/index.ts';
import { InputError } from '../numerics/index.ts';
import { nearestWord } from '../quantities/index.ts';
import type { MassFlowKey } from './cycle-result.ts';

/** All temperatures in K, pressures in Pa absolute, differences in K. Where keys are partners, exactly one of them. */
export interface TextbookCycleRequest {
  readonly refrigerant: string;
  /** Dew temperature of evaporation, or its pressure, at the evaporator inlet. */
  readonly evaporating?: number;
  readonly evaporatingPressure?: number;
  /** Dew temperature of condensation, or its pressure, at the compressor outlet. */
  readonly condensing?: number;
  readonly condensingPressure?: number;
  /** Pressure at the compressor inlet, at most that of the evaporator; the same where absent. */
  readonly suctionPressure?: number;
  /** Pressure at the condenser outlet, at most that of the condenser; the same where absent. */
  readonly liquidPressure?: number;
  /**
   * Compressor inlet: above the dew temperature at its pressure, or its temperature, or its share of vapour where it is wet.
   * With a heat exchanger the evaporator outlet instead: above the dew temperature, or its temperature.
   */
  readonly superheat?: number;
  readonly suctionTemperature?: number;
  readonly suctionQuality?: number;
  readonly evaporatorOutletTemperature?: number;
  /** Condenser outlet below the bubble temperature at its pressure, or its temperature. */
  readonly subcooling?: number;
  readonly liquidTemperature?: number;
  /** (h2s − h1)/(h2 − h1), or the temperature of the gas that leaves the compressor. */
  readonly isentropicEfficiency?: number;
  readonly dischargeTemperature?: number;
  /**
   * Liquid-to-suction heat exchanger, none where both are absent: ε on enthalpy, q = ε (h(p_e, T_liquid) − h(evaporator
   * outlet)), or the temperature of the gas that leaves it for the compressor.
   */
  readonly heatExchangerEffectiveness?: number;
  readonly suctionTemperatureAfterExchanger?: number;
  /** At most one, for the answer per second: ṁ [kg/s]; Q_L, Q_H, or the power of the shaft into the gas [W]; swept volume rate [m³/s]. */
  readonly massFlow?: number;
  readonly coolingCapacity?: number;
  readonly heatingCapacity?: number;
  readonly compressorPower?: number;
  readonly displacement?: number;
  /** Volume drawn in by volume swept, with a displacement; 1 where absent, and the answer says so. */
  readonly volumetricEfficiency?: number;
  /** Temperature at which heat is worthless, for the exergy account; 298.15 K where absent. */
  readonly deadState?: number;
  /** Temperatures of the body heated and of the body cooled, for the exergy account; the dead state where absent. */
  readonly sinkTemperature?: number;
  readonly sourceTemperature?: number;
  /** Zero of enthalpy and entropy of the points; 'iir' where absent. */
  readonly referenceState?: ReferenceStateName;
}

/** One of several partner keys: which was given, and its value. */
export interface Given<Key extends string> {
  readonly key: Key;
  readonly value: number;
}

export type GasKey = 'superheat' | 'suctionTemperature' | 'suctionQuality' | 'evaporatorOutletTemperature';

export type ExchangerKey = 'heatExchangerEffectiveness' | 'suctionTemperatureAfterExchanger';

/** A request that passed the door. */
export interface CheckedCycleRequest {
  readonly refrigerant: string;
  readonly evaporating: Given<'evaporating' | 'evaporatingPressure'>;
  readonly condensing: Given<'condensing' | 'condensingPressure'>;
  readonly suctionPressure: number | undefined;
  readonly liquidPressure: number | undefined;
  /** The gas at the compressor inlet, or with an exchanger at the evaporator outlet. */
  readonly gas: Given<GasKey>;
  readonly liquid: Given<'subcooling' | 'liquidTemperature'>;
  readonly compression: Given<'isentropicEfficiency' | 'dischargeTemperature'>;
  readonly exchanger: Given<ExchangerKey> | undefined;
  readonly flow: Given<MassFlowKey> | undefined;
  /** Beside a displacement only. */
  readonly volumetricEfficiency: number | undefined;
  readonly deadState: number;
  readonly sinkTemperature: number | undefined;
  readonly sourceTemperature: number | undefined;
  readonly referenceState: ReferenceStateName;
}

/** Dead state where none is given [K]: 25 °C, the usual choice of tables of chemical exergy. */
export const usualDeadState = 298.15;

/** Temperatures of bodies that an exergy account is asked about lie well inside this [K]. */
const bodyTemperatures = { low: 100, high: 1000 } as const;

/** Flows and powers that a loop may be asked about lie well inside this [kg/s, W, m³/s]. */
const flows = { low: 1e-9, high: 1e9 } as const;

type Range = 'positive' | 'nonNegative' | 'share' | 'bodyTemperature' | 'flow';

type NumberKey = Exclude<keyof TextbookCycleRequest, 'refrigerant' | 'referenceState'>;

const numberKeys: Readonly<Record<NumberKey, Range>> = {
  evaporating: 'positive',
  evaporatingPressure: 'positive',
  condensing: 'positive',
  condensingPressure: 'positive',
  superheat: 'nonNegative',
  suctionTemperature: 'positive',
  subcooling: 'nonNegative',
  liquidTemperature: 'positive',
  isentropicEfficiency: 'share',
  dischargeTemperature: 'positive',
  deadState: 'bodyTemperature',
  sinkTemperature: 'bodyTemperature',
  sourceTemperature: 'bodyTemperature',
  suctionPressure: 'positive',
  liquidPressure: 'positive',
  suctionQuality: 'share',
  evaporatorOutletTemperature: 'positive',
  heatExchangerEffectiveness: 'share',
  suctionTemperatureAfterExchanger: 'positive',
  massFlow: 'flow',
  coolingCapacity: 'flow',
  heatingCapacity: 'flow',
  compressorPower: 'flow',
  displacement: 'flow',
  volumetricEfficiency: 'share',
};

const massFlowKeys = ['massFlow', 'coolingCapacity', 'heatingCapacity', 'compressorPower', 'displacement'] as const;

const rangeWords: Readonly<Record<Range, string>> = {
  positive: 'a finite number above 0',
  nonNegative: 'a finite number, 0 or above',
  share: 'a number above 0, at most 1',
  bodyTemperature: `a temperature from ${bodyTemperatures.low} to ${bodyTemperatures.high} K`,
  flow: 'a number above 0, from 1e-9 to 1e9 in base SI',
};

type Numbers = ReadonlyMap<string, number>;

/**
 * Checks a request from outside.
 * @param request  anything, for instance one parsed line of JSON
 * @throws InputError with the key as its path: code 'unknownKey', 'missing', 'bothGiven' (two partners), 'partnerMissing'
 *         (of no use without another key), 'wetSuctionWithExchanger' or 'badInput'.
 */
export function checkTextbookCycleRequest(request: unknown): CheckedCycleRequest {
  if (typeof request !== 'object' || request === null || Array.isArray(request)) {
    throw new InputError('request', describe(request), 'an object with the keys of a cycle');
  }
  const given = request as Readonly<Record<string, unknown>>;
  const numbers = new Map<string, number>();
  for (const key of Object.keys(given)) {
    const value = given[key];
    if (isNumberKey(key)) {
      if (value !== undefined) numbers.set(key, checkNumber(key, value));
    } else if (key !== 'refrigerant' && key !== 'referenceState') throw unknownKey(key, value);
  }
  const { refrigerant } = given;
  if (typeof refrigerant !== 'string' || refrigerant === '') {
    const code = refrigerant === undefined ? 'missing' : 'badInput';
    throw new InputError('refrigerant', describe(refrigerant), 'the name of a refrigerant', code);
  }
  const exchanger = atMostOneOf(numbers, ['heatExchangerEffectiveness', 'suctionTemperatureAfterExchanger']);
  const flow = atMostOneOf(numbers, massFlowKeys);
  return {
    refrigerant,
    evaporating: oneOf(numbers, ['evaporating', 'evaporatingPressure']),
    condensing: oneOf(numbers, ['condensing', 'condensingPressure']),
    suctionPressure: numbers.get('suctionPressure'),
    liquidPressure: numbers.get('liquidPressure'),
    gas: exchanger === undefined ? gasIntoCompressor(numbers) : gasOutOfEvaporator(numbers),
    liquid: oneOf(numbers, ['subcooling', 'liquidTemperature']),
    compression: oneOf(numbers, ['isentropicEfficiency', 'dischargeTemperature']),
    exchanger,
    flow,
    volumetricEfficiency: volumetricEfficiency(numbers, flow),
    deadState: numbers.get('deadState') ?? usualDeadState,
    sinkTemperature: numbers.get('sinkTemperature'),
    sourceTemperature: numbers.get('sourceTemperature'),
    referenceState: checkReferenceState(given.referenceState),
  };
}

function isNumberKey(key: string): key is NumberKey {
  return Object.hasOwn(numberKeys, key);
}

function unknownKey(key: string, value: unknown): InputError {
  const known = ['refrigerant', 'referenceState', ...Object.keys(numberKeys)];
  const nearest = nearestWord(key, known);
  const hint = nearest === undefined ? '' : `; did you mean ${nearest}?`;
  return new InputError(key, describe(value), `one of ${known.join(', ')}${hint}`, 'unknownKey');
}

function checkNumber(key: NumberKey, value: unknown): number {
  const range = numberKeys[key];
  if (typeof value === 'number' && Number.isFinite(value)) {
    if (range === 'positive' && value > 0) return value;
    if (range === 'nonNegative' && value >= 0) return value;
    if (range === 'share' && value > 0 && value <= 1) return value;
    if (range === 'bodyTemperature' && value >= bodyTemperatures.low && value <= bodyTemperatures.high) return value;
    if (range === 'flow' && value >= flows.low && value <= flows.high) return value;
  }
  throw new InputError(key, describe(value), rangeWords[range]);
}

/** Without an exchanger the gas is given where the compressor draws it in. */
function gasIntoCompressor(numbers: Numbers): Given<GasKey> {
  const outlet = numbers.get('evaporatorOutletTemperature');
  if (outlet !== undefined) {
    const expected =
      'heatExchangerEffectiveness or suctionTemperatureAfterExchanger beside it; without a heat exchanger suctionTemperature says it';
    throw new InputError('evaporatorOutletTemperature', outlet, expected, 'partnerMissing');
  }
  return oneOf(numbers, ['superheat', 'suctionTemperature', 'suctionQuality']);
}

/** With an exchanger the gas is given where it leaves the evaporator; what the compressor draws in follows. */
function gasOutOfEvaporator(numbers: Numbers): Given<GasKey> {
  const suction = numbers.get('suctionTemperature');
  if (suction !== undefined) {
    const expected =
      'with a heat exchanger superheat or evaporatorOutletTemperature, both of the gas out of the evaporator; suctionTemperatureAfterExchanger is that of the gas into the compressor';
    throw new InputError('suctionTemperature', suction, expected, 'bothGiven');
  }
  const quality = numbers.get('suctionQuality');
  if (quality !== undefined) {
    const expected =
      'dry gas out of the evaporator, by superheat or evaporatorOutletTemperature, with a heat exchanger';
    throw new InputError('suctionQuality', quality, expected, 'wetSuctionWithExchanger');
  }
  return oneOf(numbers, ['superheat', 'evaporatorOutletTemperature']);
}

function volumetricEfficiency(numbers: Numbers, flow: Given<MassFlowKey> | undefined): number | undefined {
  const efficiency = numbers.get('volumetricEfficiency');
  if (efficiency === undefined || flow?.key === 'displacement') return efficiency;
  const expected = 'a displacement beside it; nothing else needs a volumetric efficiency';
  throw new InputError('volumetricEfficiency', efficiency, expected, 'partnerMissing');
}

function oneOf<Key extends string>(numbers: Numbers, keys: readonly Key[]): Given<Key> {
  const given = atMostOneOf(numbers, keys);
  if (given !== undefined) return given;
  throw new InputError(keys[0]!, 'nothing', keys.join(' or '), 'missing');
}

function atMostOneOf<Key extends string>(numbers: Numbers, keys: readonly Key[]): Given<Key> | undefined {
  let given: Given<Key> | undefined;
  for (const key of keys) {
    const value = numbers.get(key);
    if (value === undefined) continue;
    if (given !== undefined) {
      throw new InputError(key, value, `either ${given.key} or ${key}, not both`, 'bothGiven');
    }
    given = { key, value };
  }
  return given;
}

function checkReferenceState(value: unknown): ReferenceStateName {
  if (value === undefined) return 'iir';
  const names = referenceStates.map(({ name }) => name);
  const name = names.find((candidate) => candidate === value);
  if (name === undefined) throw new InputError('referenceState', describe(value), names.join(', '));
  return name;
}

/** A value as a person would recognise it in a message; long ones are cut. */
function describe(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'number') return String(value);
  const text = JSON.stringify(value) ?? typeof value;
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}
