// What charge of a flammable refrigerant product standards set for products built to them: three fixed amounts, an amount
// by floor area, and the smallest floor or room for a charge. A machine made at home conforms to none of these standards:
// the figures are held beside its charge for comparison, they allow nothing. Which clause applies to which product with
// which extra measures is left out, since it is not sure; so are other heights than those of the standard.

import { InputError, requireNonNegative, requirePositive } from '../numerics/index.ts';
import type { Formula, FormulaSymbol } from '../quantities/index.ts';

/** The fixed amounts of IEC 60335-2-40 [kg]. */
export interface ChargeFactors {
  /** Up to it the standard asks nothing of the room. */
  readonly m1: number;
  /** Up to it floor area and ventilation decide. */
  readonly m2: number;
  /** Its upper end for occupied rooms. */
  readonly m3: number;
}

/** Volumes of air at the flammability limit behind the fixed amounts [m³]; fluids of class 2L are granted more. */
export const chargeVolumes = {
  flammable: { m1: 4, m2: 26, m3: 130 },
  mildlyFlammable: { m1: 6, m2: 52, m3: 260 },
} as const;

/** Height of release h₀ of IEC 60335-2-40 for a machine on the floor [m]; confirmed by the published R32 table. */
export const floorReleaseHeight = 0.6;

/** Height of release h₀ of IEC 60335-2-40 for a machine on a wall [m]; from memory. */
export const wallReleaseHeight = 1.8;

/** Air of a shop's refrigerated cabinet at the flammability limit, IEC 60335-2-89:2019 [m³]; from memory. */
export const commercialCabinetVolume = 13;

/**
 * The fixed amounts m1, m2 and m3 of a flammable fluid.
 *     m = V · LFL,  V = 4, 26, 130 m³; class 2L: 6, 52, 260 m³
 * @param lowerFlammabilityLimit  LFL [kg/m³], > 0
 * @param safetyClass             of ISO 817: 'A3', 'A2', 'A2L', 'B2L', …
 * @returns                       the three amounts [kg]
 * @throws InputError for a limit that is not above zero or a class that does not burn
 * Source: IEC 60335-2-40; 6 and 26 m³ confirmed by 1.84 kg of R32 and 0.988 kg of R290, the others from memory.
 * Worked value: R290, 0.038 kg/m³ → 0.152, 0.988, 4.94 kg.
 */
export function chargeFactors(lowerFlammabilityLimit: number, safetyClass: string): ChargeFactors {
  const volumes = isMildlyFlammable(safetyClass) ? chargeVolumes.mildlyFlammable : chargeVolumes.flammable;
  const of = (volume: number) => chargeAtFlammabilityLimit(volume, lowerFlammabilityLimit);
  return { m1: of(volumes.m1), m2: of(volumes.m2), m3: of(volumes.m3) };
}

/**
 * Charge that brings a volume of air to the flammability limit.
 *     m = V · LFL
 * @param volume                  V [m³], > 0
 * @param lowerFlammabilityLimit  LFL [kg/m³], > 0
 * @returns                       m [kg]
 * @throws InputError outside these ranges
 * Source: definition. Worked value: 0.3 m³ of R290 at 0.038 kg/m³ → 0.0114 kg.
 */
export function chargeAtFlammabilityLimit(volume: number, lowerFlammabilityLimit: number): number {
  requirePositive('volume', volume);
  requirePositive('lowerFlammabilityLimit', lowerFlammabilityLimit);
  return volume * lowerFlammabilityLimit;
}

/**
 * Largest charge that IEC 60335-2-40 sets for a room without ventilation, by its floor area.
 *     m_max = 2.5 LFL^1.25 h₀ √A;  class 2L: the smaller of this and 0.75 LFL h₀ A
 * @param lowerFlammabilityLimit  LFL [kg/m³], > 0
 * @param height                  h₀ [m] of release, > 0: 0.6 for a machine on the floor
 * @param area                    A [m²] of the floor, > 0
 * @param safetyClass             of ISO 817; decides whether the second bound counts
 * @returns                       m_max [kg]
 * Pitfall: the standard applies it to charges above m1 only; gas lies on the floor at any charge.
 * @throws InputError outside these ranges
 * Source: IEC 60335-2-40 clause GG.2, edition of 2018 for the second bound. Worked value: R32, 10 m², floor → 1.084 kg.
 */
export function largestChargeOnFloorArea(
  lowerFlammabilityLimit: number,
  height: number,
  area: number,
  safetyClass: string,
): number {
  requirePositive('lowerFlammabilityLimit', lowerFlammabilityLimit);
  requirePositive('height', height);
  requirePositive('area', area);
  const byRoot = 2.5 * lowerFlammabilityLimit ** 1.25 * height * Math.sqrt(area);
  if (!isMildlyFlammable(safetyClass)) return byRoot;
  return Math.min(byRoot, 0.75 * lowerFlammabilityLimit * height * area);
}

/**
 * Smallest floor area that IEC 60335-2-40 sets for a charge in a room without ventilation.
 *     A_min = (m / (2.5 LFL^1.25 h₀))²
 * @param charge                  m [kg], ≥ 0
 * @param lowerFlammabilityLimit  LFL [kg/m³], > 0
 * @param height                  h₀ [m] of release, > 0: 0.6 for a machine on the floor
 * @returns                       A_min [m²]
 * Pitfall: leaves out the second bound of class 2L, as the published table does.
 * @throws InputError outside these ranges
 * Source: IEC 60335-2-40 clause GG.2. Worked value: 1.84 kg of R32 on the floor → 28.81 m².
 */
export function smallestFloorArea(charge: number, lowerFlammabilityLimit: number, height: number): number {
  requireNonNegative('charge', charge);
  requirePositive('lowerFlammabilityLimit', lowerFlammabilityLimit);
  requirePositive('height', height);
  return (charge / (2.5 * lowerFlammabilityLimit ** 1.25 * height)) ** 2;
}

/**
 * Smallest volume in which a whole charge, evenly mixed, stays at a concentration.
 *     V = m / c_max
 * @param charge  m [kg], ≥ 0
 * @param limit   c_max [kg/m³], > 0, such as that of leakLimit
 * @returns       V [m³]
 * @throws InputError outside these ranges
 * Source: definition. Worked value: 0.150 kg of R290 at 0.0076 kg/m³ → 19.7 m³.
 */
export function smallestRoomVolume(charge: number, limit: number): number {
  requireNonNegative('charge', charge);
  requirePositive('limit', limit);
  return charge / limit;
}

/**
 * Floor of a room.
 *     A = V / H
 * @param volume  V [m³], > 0
 * @param height  H [m] from floor to ceiling, > 0
 * @returns       A [m²]
 * @throws InputError outside these ranges
 * Source: definition. Worked value: 25 m³, 2.5 m high → 10 m².
 */
export function floorOfRoom(volume: number, height: number): number {
  requirePositive('volume', volume);
  requirePositive('height', height);
  return volume / height;
}

/** Class 2L of ISO 817; throws for a class that does not burn. */
function isMildlyFlammable(safetyClass: string): boolean {
  if (!/^[AB](2L|2|3)$/.test(safetyClass)) {
    throw new InputError('safetyClass', safetyClass, 'a class that burns: A2L, A2, A3, B2L, B2 or B3');
  }
  return safetyClass.endsWith('2L');
}

const file = 'src/cautions/charge-limits.ts';
const clause = 'IEC 60335-2-40 clause GG.2; does not apply to a home-made machine';
const flammabilityLimit: FormulaSymbol = {
  meaning: 'lower flammability limit',
  unit: 'kg/m³',
  quantity: 'chargeDensity',
};
const height: FormulaSymbol = {
  meaning: 'height of release, 0.6 m for a machine on the floor',
  unit: 'm',
  quantity: 'length',
};
const floor: FormulaSymbol = { meaning: 'floor area of the room', unit: 'm²' };
const charge: FormulaSymbol = { meaning: 'charge of the circuit', unit: 'kg' };

/** Formula records of this file. */
export const chargeLimitFormulas: readonly Formula[] = [
  {
    id: 'cautions.chargeAtFlammabilityLimit',
    title: 'Charge that brings a volume of air to the flammability limit',
    result: { symbol: 'm', ...charge },
    expression: 'V * LFL',
    symbols: {
      V: {
        meaning: 'volume; of IEC 60335-2-40: 4, 26, 130 m³, class 2L 6, 52, 260 m³',
        unit: 'm³',
        quantity: 'volume',
      },
      LFL: flammabilityLimit,
    },
    source: 'definition; the volumes of IEC 60335-2-40 are part confirmed (6 and 26 m³), part from memory',
    validity: 'evenly mixed; a comparison with what products are built to, which does not apply to a home-made machine',
    file,
    compute: (v) => chargeAtFlammabilityLimit(v.V!, v.LFL!),
    examples: [
      { V: 26, LFL: 0.038 },
      { V: 6, LFL: 0.307 },
    ],
  },
  {
    id: 'cautions.floorAreaCharge',
    title: 'Largest charge a product standard sets for a floor area',
    result: { symbol: 'm_max', ...charge },
    expression: '2.5 * LFL^1.25 * h_0 * sqrt(A)',
    symbols: { LFL: flammabilityLimit, h_0: height, A: floor },
    source: clause,
    validity: 'classes 2 and 3; charges above m1, rooms without ventilation',
    file,
    compute: (v) => largestChargeOnFloorArea(v.LFL!, v.h_0!, v.A!, 'A3'),
    examples: [
      { LFL: 0.038, h_0: 0.6, A: 10 },
      { LFL: 0.043, h_0: 1.8, A: 14.5 },
    ],
  },
  {
    id: 'cautions.floorAreaChargeMildlyFlammable',
    title: 'Largest charge of a fluid of class 2L a product standard sets for a floor area',
    result: { symbol: 'm_max', ...charge },
    expression: 'min(2.5 * LFL^1.25 * h_0 * sqrt(A), 0.75 * LFL * h_0 * A)',
    symbols: { LFL: flammabilityLimit, h_0: height, A: floor },
    source: `${clause}; edition of 2018`,
    validity: 'class 2L; charges above m1, rooms without ventilation',
    file,
    compute: (v) => largestChargeOnFloorArea(v.LFL!, v.h_0!, v.A!, 'A2L'),
    examples: [
      { LFL: 0.307, h_0: 0.6, A: 1.5 },
      { LFL: 0.307, h_0: 0.6, A: 20 },
    ],
  },
  {
    id: 'cautions.smallestFloorArea',
    title: 'Smallest floor area a product standard sets for a charge',
    result: { symbol: 'A_min', ...floor },
    expression: '(m / (2.5 * LFL^1.25 * h_0))^2',
    symbols: { m: charge, LFL: flammabilityLimit, h_0: height },
    source: clause,
    validity: 'charges above m1, rooms without ventilation; leaves out the second bound of class 2L',
    file,
    compute: (v) => smallestFloorArea(v.m!, v.LFL!, v.h_0!),
    examples: [
      { m: 1.84, LFL: 0.307, h_0: 0.6 },
      { m: 0.15, LFL: 0.038, h_0: 0.6 },
    ],
  },
  {
    id: 'cautions.smallestRoomVolume',
    title: 'Smallest volume in which a whole charge stays at a concentration',
    result: { symbol: 'V', meaning: 'volume', unit: 'm³', quantity: 'volume' },
    expression: 'm / c_max',
    symbols: {
      m: charge,
      c_max: { meaning: 'concentration a leak should stay below', unit: 'kg/m³', quantity: 'chargeDensity' },
    },
    source: 'definition',
    validity: 'evenly mixed; heavy gas collects lower down',
    file,
    compute: (v) => smallestRoomVolume(v.m!, v.c_max!),
    examples: [
      { m: 0.15, c_max: 0.0076 },
      { m: 0.062, c_max: 0.0086 },
    ],
  },
  {
    id: 'cautions.floorOfRoom',
    title: 'Floor of a room',
    result: { symbol: 'A', ...floor },
    expression: 'V / H',
    symbols: {
      V: { meaning: 'volume of the room', unit: 'm³', quantity: 'volume' },
      H: { meaning: 'height from floor to ceiling', unit: 'm', quantity: 'length' },
    },
    source: 'definition',
    validity: 'a level floor and ceiling',
    file,
    compute: (v) => floorOfRoom(v.V!, v.H!),
    examples: [
      { V: 25, H: 2.7 },
      { V: 42, H: 2.4 },
    ],
  },
];
