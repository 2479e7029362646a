// What can be of one machine: efficiencies above 1 cannot be, and very low ones come from a wrong unit. Where a whole set or table
// is not of one machine, the units in which it would be are named; nothing is corrected.

import { InputError } from '../../../numerics/index.ts';
import type { Band, Estimate } from '../../../quantities/index.ts';
import { sheetTolerance } from '../polynomial/tolerance.ts';
import type { PolynomialUnit, TemperatureUnit } from '../polynomial/units.ts';
import type { Expected } from './expected.ts';
import { type PrintedValues, surpriseOf, usualSurprise } from './surprise.ts';

/** Overall efficiencies of small hermetic machines; typical, from memory: measured ones lie within 0.3 and 0.7. */
export const sensibleOverallEfficiency = { lowest: 0.2, highest: 0.75 } as const;

/** Below this a set carries a doubt, though it is not refused. */
export const remarkableOverallEfficiency = 0.27;

/** Volumetric efficiencies that make sense with a known displacement: at most 1, and by as much above as a whole sheet may be off. */
const sensibleVolumetricEfficiency = { lowest: 0.2, highest: 1 + sheetTolerance } as const;

/** Swept volumes per revolution of small hermetic machines [m³], where the displacement is not known. */
const sensibleDisplacement = { smallest: 5e-7, largest: 2e-4 } as const;

/** A machine may be so much larger or smaller than its class usually is: one in ten passes the ends of its range anyway. Own judgement. */
const beyondItsClass = 1.6;

/** Volumetric efficiency with which a swept volume is guessed. */
const usualVolumetricEfficiency = 0.75;

/**
 * A capacity over the flow beside it may differ this far from what gas and liquid give, relative: told beyond the first, refused
 * beyond the second. Own judgement: 20 K of the liquid are worth a fifth.
 */
const effectDeviation = { told: 0.08, refused: 0.3 } as const;

/** @param effect  capacity over what the flow beside it gives [-]; null without both */
export function isEffectUsual(effect: number | null): boolean {
  return effect === null || Math.abs(effect - 1) <= effectDeviation.told;
}

/** What is impossible about a capacity beside its flow, in words. */
export function faultOfEffect(effect: number | null): string | undefined {
  if (effect === null || Math.abs(effect - 1) <= effectDeviation.refused) return undefined;
  return `capacity ${rounded(effect)} times what the flow beside it gives`;
}

/** So many points of a set or table are held against what is expected: each takes some two dozen solved machines. */
const comparedPoints = 3;

/** Those of the points that are held against what is expected, spread evenly from the lowest suction pressure to the highest. */
export function comparedOf<Point>(points: readonly Point[], pressure: (point: Point) => number): readonly Point[] {
  const sorted = [...points].sort((a, b) => pressure(a) - pressure(b));
  const count = Math.min(comparedPoints, sorted.length);
  return Array.from({ length: count }, (_, place) => sorted[Math.floor(((place + 0.5) * sorted.length) / count)]!);
}

/** How many readings are named at most. */
const mostReadings = 4;

/** Another reading of the same numbers. */
export interface UnitReading {
  /** Path of the set, or of the column of a table. */
  readonly path: string;
  readonly unit: PolynomialUnit | 'kcal/h' | 'hp' | '°C' | '°F' | 'K' | `${string} in place of ${string}`;
  /** Of a set of coefficients. */
  readonly temperatureUnit?: TemperatureUnit;
}

/** Readings that would make sense together: what is not named stays as it is. */
export interface SensibleReading {
  readonly changes: readonly UnitReading[];
  /** Overall efficiency in the middle of its range; null where there is no power. */
  readonly overallEfficiency: number | null;
}

/** Numbers that cannot be those of one machine in the units given. `readings` lists units in which they could. */
export class ImplausibleUnitError extends InputError {
  readonly readings: readonly SensibleReading[];

  constructor(path: string, received: string, readings: readonly SensibleReading[], code = 'implausibleUnit') {
    super(path, received, expectation(readings), code);
    // What was received is a judgement of many numbers: none of them alone "is not accepted".
    this.message = `${path}: ${received}: not the numbers of one small machine. Expected ${this.expected}`;
    this.readings = readings;
  }

  override facts() {
    return { ...super.facts(), readings: this.readings };
  }
}

function expectation(readings: readonly SensibleReading[]): string {
  const { lowest, highest } = sensibleOverallEfficiency;
  const wanted = `values of one small machine, with an overall efficiency of ${lowest} to ${highest} and never above 1`;
  if (readings.length === 0)
    return `${wanted}; no other unit would make sense: check the order of the numbers, or narrow the ranges to where they hold`;
  return `${wanted}; it would make sense with ${readings.map(readingWords).join(', or ')}`;
}

/** "machine.compressor.coefficients.0 in kg/h over °C (efficiency 0.52)" */
export function readingWords({ changes, overallEfficiency }: SensibleReading): string {
  const units = changes.map(({ path, unit, temperatureUnit }) => {
    const degrees = temperatureUnit === undefined ? '' : ` over ${temperatureUnit === 'celsius' ? '°C' : '°F'}`;
    return `${path} in ${unit}${degrees}`;
  });
  const efficiency = overallEfficiency === null ? '' : ` (efficiency ${rounded(overallEfficiency)})`;
  return `${units.join(' and ')}${efficiency}`;
}

/** A reading that was tried. */
export interface FoundReading extends SensibleReading {
  readonly changeCount: number;
  /** How far it lies from what is expected of the machine (surpriseOf); null where nothing is. */
  readonly surprise: number | null;
}

export function isUsual({ surprise }: Pick<FoundReading, 'surprise'>): boolean {
  return surprise === null || surprise <= usualSurprise;
}

/** Those that such a machine would have, or if there is none, all. */
export function usualOrAll(found: readonly FoundReading[]): readonly FoundReading[] {
  const usual = found.filter(isUsual);
  return usual.length > 0 ? usual : found;
}

/** Usual readings with one single change that are so much less surprising than the numbers as they stand. */
export function likelierReadings(
  found: readonly FoundReading[],
  surprise: number | null,
  gain: number,
): readonly SensibleReading[] {
  if (surprise === null) return [];
  return fewestChanges(
    found.filter((each) => {
      const isLikelier = each.surprise !== null && surprise - each.surprise >= gain;
      return isLikelier && isUsual(each) && each.changeCount === 1;
    }),
  );
}

/** Flow and power of the middle point over what is expected there; null where they are not given or not expected. */
export interface OfExpected {
  readonly flow: number | null;
  readonly power: number | null;
}

/** Printed numbers beside what is expected of the machine at the same points: D² as surpriseOf, and the median shares. */
export function heldAgainst(
  expected: readonly (Expected | undefined)[],
  printed: readonly PrintedValues[],
): { readonly surprise: number | null; readonly ofExpected: OfExpected } {
  return { surprise: surpriseOf(expected, printed), ofExpected: ofExpectedIn(expected, printed) };
}

function ofExpectedIn(expected: readonly (Expected | undefined)[], printed: readonly PrintedValues[]): OfExpected {
  const median = (of: 'flow' | 'power') => {
    const ratios = expected.flatMap((each, index) => {
      const value = printed[index]![of];
      return value === undefined || each === undefined ? [] : [value / Math.exp(each.likely[of])];
    });
    return ratios.length === 0 ? null : bandOf(ratios).likely;
  };
  return { flow: median('flow'), power: median('power') };
}

/** "overall efficiency 0.22 to 0.25, flow 0.46 times and power 0.98 times what a machine of this kind and size would have" */
export function unlikelyWords(overall: Band | null, ofExpected: OfExpected): string {
  const efficiency = overall === null ? '' : `overall efficiency ${spanWords(overall)}, `;
  const shares = (['flow', 'power'] as const).flatMap((of) =>
    ofExpected[of] === null ? [] : [`${of} ${rounded(ofExpected[of])} times`],
  );
  return `${efficiency}${shares.join(' and ')} what a machine of this kind and size would have`;
}

function spanWords({ low, high }: Band): string {
  return low === high ? rounded(low) : `${rounded(low)} to ${rounded(high)}`;
}

/** The one place that all readings change; undefined where they change several, or none. */
export function onePlaceOf(readings: readonly SensibleReading[]): string | undefined {
  const paths = new Set(readings.flatMap(({ changes }) => changes.map(({ path }) => path)));
  return paths.size === 1 ? [...paths][0] : undefined;
}

/** The readings with the fewest changes, those with the most usual efficiency first. */
export function fewestChanges(
  found: readonly Pick<FoundReading, 'changes' | 'overallEfficiency' | 'changeCount'>[],
): readonly SensibleReading[] {
  const fewest = Math.min(...found.map(({ changeCount }) => changeCount));
  return found
    .filter(({ changeCount }) => changeCount === fewest)
    .sort((a, b) => offness(a) - offness(b))
    .slice(0, mostReadings)
    .map(({ changes, overallEfficiency }) => ({ changes, overallEfficiency }));
}

function offness({ overallEfficiency }: SensibleReading): number {
  return overallEfficiency === null ? 0 : Math.abs(overallEfficiency - 0.5);
}

/** What is impossible about efficiencies over a range, in words; undefined where nothing is. */
export function faultOfOverall(overall: Band): string | undefined {
  if (overall.high <= 1 && overall.likely >= sensibleOverallEfficiency.lowest) return undefined;
  return `overall efficiency ${rounded(overall.low)} to ${rounded(overall.high)}`;
}

/**
 * What is impossible about a flow, in words.
 * @param swept         flow over density and frequency, η_v V_d, over the range [m³]
 * @param displacement  swept volume per revolution [m³]; null where nothing is known of it
 */
export function faultOfSwept(swept: Band, displacement: Estimate | null): string | undefined {
  if (displacement === null) {
    const size = swept.likely / usualVolumetricEfficiency;
    if (size >= sensibleDisplacement.smallest && size <= sensibleDisplacement.largest) return undefined;
    return `a swept volume of about ${rounded(size * 1e6)} cm³`;
  }
  const { lowest, highest } = sensibleVolumetricEfficiency;
  const beyond = displacement.origin === 'assumed' ? beyondItsClass : 1;
  const [largest, smallest] = [displacement.high * beyond, displacement.low / beyond];
  if (swept.high / largest <= highest && swept.likely / smallest >= lowest) return undefined;
  const { likely } = displacement;
  return `volumetric efficiency ${rounded(swept.low / likely)} to ${rounded(swept.high / likely)}`;
}

/** Smallest, middle (median) and largest. */
export function bandOf(values: readonly number[]): Band {
  const sorted = [...values].sort((a, b) => a - b);
  return { low: sorted[0]!, likely: sorted[Math.floor(sorted.length / 2)]!, high: sorted.at(-1)! };
}

/** Three digits, for messages. */
export function rounded(value: number): string {
  return String(Number(value.toPrecision(3)));
}
