// What the limits of a machine are called.

import type { LimitName } from '../../parts/compressor/index.ts';

const labels: Readonly<Record<LimitName, string>> = {
  evaporatingLowest: 'lowest evaporating temperature',
  evaporatingHighest: 'highest evaporating temperature',
  condensingContinuous: 'continuous condensing temperature',
  condensingPeak: 'highest condensing temperature',
  dischargeCaution: 'discharge temperature, beginning of doubt',
  dischargeHighest: 'discharge temperature',
  pressureRatioLowest: 'lowest pressure ratio',
  pressureRatioCaution: 'pressure ratio, beginning of doubt',
  pressureRatioHighest: 'pressure ratio',
  suctionPressureHighest: 'highest suction pressure for its motor',
  returnGasHighest: 'return gas that still cools its motor',
  superheatCaution: 'superheat of the returning gas, beginning of doubt',
  superheatLowest: 'superheat of the returning gas',
  wallCaution: 'temperature of motor and shell, beginning of doubt',
  wallHighest: 'temperature of motor and shell',
  currentRated: 'rated current',
  currentContinuous: 'current it bears for long',
  motorLoadHighest: 'motor load at the hardest it was built for',
};

/** @param name  one of LimitName; any other stays as it is */
export function limitLabel(name: string): string {
  return Object.hasOwn(labels, name) ? labels[name as LimitName] : name;
}
