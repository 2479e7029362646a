// What a textbook cycle may be asked with, and the checks at the door: each fact is given by exactly one of two partner
// keys, every number is finite and inside its range, and a key that is not known is refused by name. Answers a request in
// which the choice between partners is data. Checks that need the fluid (critical point, dew line) are the cycle's own.

import { type ReferenceStateName, referenceStates } from '../matter/refrigerants/index.ts';
import { InputError } from '../numerics/index.ts';

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

/** One of two partner keys: which was given, and its value. */
export interface Given<Key extends string> {
  readonly key: Key;
  readonly value: number;
}

/** A request that passed the door. */
export interface CheckedCycleRequest {
  readonly refrigerant: string;
  readonly evaporating: Given<'evaporating' | 'evaporatingPressure'>;
  readonly condensing: Given<'condensing' | 'condensingPressure'>;
  readonly suction: Given<'superheat' | 'suctionTemperature'>;
  readonly liquid: Given<'subcooling' | 'liquidTemperature'>;
  readonly compression: Given<'isentropicEfficiency' | 'dischargeTemperature'>;
  readonly deadState: number;
  readonly sinkTemperature: number | undefined;
  readonly sourceTemperature: number | undefined;
  readonly referenceState: ReferenceStateName;
}

/** Dead state where none is given [K]: 25 °C, the usual choice of tables of chemical exergy. */
export const usualDeadState = 298.15;

/** Temperatures of bodies that an exergy account is asked about lie well inside this [K]. */
const bodyTemperatures = { low: 100, high: 1000 } as const;

type Range = 'positive' | 'nonNegative' | 'efficiency' | 'bodyTemperature';

const numberKeys: Readonly<
  Partial<Record<Exclude<keyof TextbookCycleRequest, 'refrigerant' | 'referenceState'>, Range>>
> = {
  evaporating: 'positive',
  evaporatingPressure: 'positive',
  condensing: 'positive',
  condensingPressure: 'positive',
  superheat: 'nonNegative',
  suctionTemperature: 'positive',
  subcooling: 'nonNegative',
  liquidTemperature: 'positive',
  isentropicEfficiency: 'efficiency',
  dischargeTemperature: 'positive',
  deadState: 'bodyTemperature',
  sinkTemperature: 'bodyTemperature',
  sourceTemperature: 'bodyTemperature',
};

const rangeWords: Readonly<Record<Range, string>> = {
  positive: 'a finite number above 0',
  nonNegative: 'a finite number, 0 or above',
  efficiency: 'a number above 0, at most 1',
  bodyTemperature: `a temperature from ${bodyTemperatures.low} to ${bodyTemperatures.high} K`,
};

type NumberKey = keyof typeof numberKeys;

/**
 * Checks a request from outside.
 * @param request  anything, for instance one parsed line of JSON
 * @throws InputError with the key as its path: code 'unknownKey', 'missing', 'bothGiven' (two partners) or 'badInput'.
 */
export function checkTextbookCycleRequest(request: unknown): CheckedCycleRequest {
  if (typeof request !== 'object' || request === null || Array.isArray(request)) {
    throw new InputError('request', describe(request), 'an object with the keys of a cycle');
  }
  const given = request as Readonly<Record<string, unknown>>;
  const known = ['refrigerant', 'referenceState', ...Object.keys(numberKeys)];
  for (const key of Object.keys(given)) {
    if (!known.includes(key))
      throw new InputError(key, describe(given[key]), `one of ${known.join(', ')}`, 'unknownKey');
  }
  const numbers = new Map<string, number>();
  for (const key of Object.keys(numberKeys) as NumberKey[]) {
    if (given[key] !== undefined) numbers.set(key, checkNumber(key, given[key]));
  }
  const { refrigerant } = given;
  if (typeof refrigerant !== 'string' || refrigerant === '') {
    const code = refrigerant === undefined ? 'missing' : 'badInput';
    throw new InputError('refrigerant', describe(refrigerant), 'the name of a refrigerant', code);
  }
  return {
    refrigerant,
    evaporating: oneOf(numbers, 'evaporating', 'evaporatingPressure'),
    condensing: oneOf(numbers, 'condensing', 'condensingPressure'),
    suction: oneOf(numbers, 'superheat', 'suctionTemperature'),
    liquid: oneOf(numbers, 'subcooling', 'liquidTemperature'),
    compression: oneOf(numbers, 'isentropicEfficiency', 'dischargeTemperature'),
    deadState: numbers.get('deadState') ?? usualDeadState,
    sinkTemperature: numbers.get('sinkTemperature'),
    sourceTemperature: numbers.get('sourceTemperature'),
    referenceState: checkReferenceState(given.referenceState),
  };
}

function checkNumber(key: NumberKey, value: unknown): number {
  const range = numberKeys[key]!;
  if (typeof value === 'number' && Number.isFinite(value)) {
    if (range === 'positive' && value > 0) return value;
    if (range === 'nonNegative' && value >= 0) return value;
    if (range === 'efficiency' && value > 0 && value <= 1) return value;
    if (range === 'bodyTemperature' && value >= bodyTemperatures.low && value <= bodyTemperatures.high) return value;
  }
  throw new InputError(key, describe(value), rangeWords[range]);
}

function oneOf<Key extends string>(numbers: ReadonlyMap<string, number>, first: Key, second: Key): Given<Key> {
  const a = numbers.get(first);
  const b = numbers.get(second);
  if (a !== undefined && b !== undefined) {
    throw new InputError(second, b, `either ${first} or ${second}, not both`, 'bothGiven');
  }
  if (a !== undefined) return { key: first, value: a };
  if (b !== undefined) return { key: second, value: b };
  throw new InputError(first, 'nothing', `${first} or ${second}`, 'missing');
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
