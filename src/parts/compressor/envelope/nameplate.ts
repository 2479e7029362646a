// Numbers printed on one nameplate against each other: which of them cannot belong to the same machine.

import type { Band, Formula } from '../../../quantities/index.ts';
import { envelopeData } from './envelope-data.ts';

/** What a nameplate says, each with the range of its reading; absent where it is not printed. */
export interface Nameplate {
  /** [V] */
  readonly voltage?: Band | undefined;
  /** [A] */
  readonly ratedCurrent?: Band | undefined;
  readonly lockedRotorCurrent?: Band | undefined;
  /** [W] */
  readonly power?: Band | undefined;
}

export interface Contradiction {
  /** `lockedRotorRatio`: locked-rotor over rated current; `powerFactor`: power over volts times amps. */
  readonly of: 'lockedRotorRatio' | 'powerFactor';
  readonly value: Band;
  /** What is usual. */
  readonly usual: Band;
  readonly source: string;
}

/**
 * Locked-rotor current over rated current [-].
 *     r = I_l / I_r
 * Source: definition; 4 to 8 is usual, from memory. Worked value: 9.6, 1.6 → 6.
 */
export function lockedRotorRatio(lockedRotorCurrent: number, ratedCurrent: number): number {
  return lockedRotorCurrent / ratedCurrent;
}

/**
 * Power factor that a nameplate's power, voltage and current imply [-].
 *     cos φ = P / (V I)
 * Source: definition; above 1 is impossible at one running point. Worked value: 130, 230, 0.9 → 0.62802.
 */
export function impliedPowerFactor(power: number, voltage: number, current: number): number {
  return power / (voltage * current);
}

/**
 * Running current over the rated one [-]; above 1 the machine takes more than its plate says.
 *     i = I / I_r
 * Pitfall: plates state either the current of a rating point or the most for long, which is larger by about a half.
 * Source: definition. Worked value: 0.72, 0.9 → 0.8.
 */
export function currentShare(current: number, ratedCurrent: number): number {
  return current / ratedCurrent;
}

/**
 * Range of the current that a motor draws while its rotor stands, as it does for a moment at each start [A]: as printed, else the usual
 * multiples of the rated one.
 * @returns null where neither is printed
 * Source: as lockedRotorRatio. Worked value: rated 1.6 A alone → 6.4 to 12.8 A.
 */
export function lockedRotorCurrentOf({ ratedCurrent, lockedRotorCurrent }: Nameplate): Band | null {
  if (lockedRotorCurrent !== undefined) {
    const { low, likely, high } = lockedRotorCurrent;
    return { low, likely, high };
  }
  if (ratedCurrent === undefined) return null;
  const usual = envelopeData.lockedRotorOverRatedCurrent;
  return {
    low: usual.low * ratedCurrent.low,
    likely: usual.likely * ratedCurrent.likely,
    high: usual.high * ratedCurrent.high,
  };
}

/** Pairs of numbers that contradict each other whatever their ranges allow; a nameplate without such pairs gives none. */
export function nameplateContradictions(nameplate: Nameplate): readonly Contradiction[] {
  const { voltage, ratedCurrent, lockedRotorCurrent, power } = nameplate;
  const found: Contradiction[] = [];
  if (ratedCurrent !== undefined && lockedRotorCurrent !== undefined) {
    const { source, ...usual } = envelopeData.lockedRotorOverRatedCurrent;
    const value = {
      low: lockedRotorRatio(lockedRotorCurrent.low, ratedCurrent.high),
      likely: lockedRotorRatio(lockedRotorCurrent.likely, ratedCurrent.likely),
      high: lockedRotorRatio(lockedRotorCurrent.high, ratedCurrent.low),
    };
    if (isOutside(value, usual)) found.push({ of: 'lockedRotorRatio', value, usual, source });
  }
  if (ratedCurrent !== undefined && power !== undefined && voltage !== undefined) {
    const { source, ...usual } = envelopeData.nameplatePowerFactor;
    const value = {
      low: impliedPowerFactor(power.low, voltage.high, ratedCurrent.high),
      likely: impliedPowerFactor(power.likely, voltage.likely, ratedCurrent.likely),
      high: impliedPowerFactor(power.high, voltage.low, ratedCurrent.low),
    };
    if (isOutside(value, usual)) found.push({ of: 'powerFactor', value, usual, source });
  }
  return found;
}

function isOutside(value: Band, usual: Band): boolean {
  return value.high < usual.low || value.low > usual.high;
}

const file = 'src/parts/compressor/envelope/nameplate.ts';
const amps = { unit: 'A', quantity: 'current' } as const;

/** Formula records of this file. */
export const nameplateFormulas: readonly Formula[] = [
  {
    id: 'compressor.lockedRotorRatio',
    title: 'Locked-rotor over rated current',
    result: { symbol: 'r', meaning: 'locked-rotor over rated current', unit: '1' },
    expression: 'I_l / I_r',
    symbols: { I_l: { meaning: 'locked-rotor current', ...amps }, I_r: { meaning: 'rated current', ...amps } },
    source: 'definition; 4 to 8 is usual, from memory',
    validity: 'motors started at full voltage',
    file,
    compute: (v) => lockedRotorRatio(v.I_l!, v.I_r!),
    examples: [
      { I_l: 9.6, I_r: 1.6 },
      { I_l: 5.2, I_r: 0.9 },
    ],
  },
  {
    id: 'compressor.impliedPowerFactor',
    title: 'Power factor a nameplate implies',
    result: { symbol: 'cos_phi', meaning: 'power factor', unit: '1' },
    expression: 'P / (V * I_r)',
    symbols: {
      P: { meaning: 'power printed', unit: 'W', quantity: 'electricPower' },
      V: { meaning: 'voltage', unit: 'V', quantity: 'voltage' },
      I_r: { meaning: 'rated current', ...amps },
    },
    source: 'definition of the power factor',
    validity: 'single-phase motors, power and current of the same running point',
    file,
    compute: (v) => impliedPowerFactor(v.P!, v.V!, v.I_r!),
    examples: [
      { P: 130, V: 230, I_r: 0.9 },
      { P: 620, V: 120, I_r: 6.1 },
    ],
  },
  {
    id: 'compressor.currentShare',
    title: 'Running current over the rated current',
    result: { symbol: 'i', meaning: 'share of the rated current', unit: '1', quantity: 'fraction' },
    expression: 'I / I_r',
    symbols: { I: { meaning: 'running current', ...amps }, I_r: { meaning: 'rated current, as printed', ...amps } },
    source: 'definition',
    validity: 'any',
    file,
    compute: (v) => currentShare(v.I!, v.I_r!),
    examples: [
      { I: 0.72, I_r: 0.9 },
      { I: 1.65, I_r: 1.3 },
    ],
  },
];
