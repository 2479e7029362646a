// Published curves of capacity and power of machines, as numbers in base SI; the machine that some points of a curve identify; and
// how often its bands hold the rest of the curve.

import { type Refrigerant, refrigerant, tabulated } from '../../../src/matter/refrigerants/index.ts';
import { KettlefinError } from '../../../src/numerics/index.ts';
import {
  type Application,
  type EvidencePoint,
  evidenceFromCoefficients,
  hermeticParameters,
  type IdentifiedMachine,
  identifyMachine,
  type MachineDescription,
  machinePrior,
  type RatingBasis,
  ratedConditions,
  ratedStates,
} from '../../../src/parts/compressor/index.ts';
import type { Band, Estimate } from '../../../src/quantities/index.ts';
import { predictedAt } from '../../parts/compressor/identification/prediction.ts';
import published from './compressor-curves.json';

/** Evaporating and condensing temperature [°C]. */
export type Levels = readonly [evaporating: number, condensing: number];

export interface Curve {
  readonly fluid: string;
  readonly application: Application;
  readonly mainsHertz: number;
  readonly returnGasCelsius: number;
  /** Lowest and highest. */
  readonly evaporatingRangeCelsius: readonly number[];
  readonly capacity: readonly number[];
  readonly power: readonly number[];
}

export const { source } = published;
export const curves = published.machines as readonly (Curve & { readonly number: number })[];
export const otherFluid = published.otherFluid as unknown as { readonly from: Curve; readonly to: Curve };
export const otherFrequency = {
  from: curves.find(({ number }) => number === published.otherFrequency.machine)!,
  to: published.otherFrequency.to as unknown as Curve,
};

const kelvin = (celsius: number) => celsius + 273.15;
const voltage = 230;
/** Air around the shell, not printed: as usual on calorimeters. */
const surroundings = kelvin(32.2);
/** Condensing levels that are looked at [°C]; the data set states all curves down to 10 °C, which few machines were measured at. */
const condensingLevels = [29, 41, 48.9];

const fluids = new Map<string, Refrigerant>();
function fluidOf({ fluid }: Curve): Refrigerant {
  const found = fluids.get(fluid) ?? tabulated(refrigerant(fluid));
  fluids.set(fluid, found);
  return found;
}

function polynomial(values: readonly number[], [x, y]: Levels): number {
  const terms = [1, x, x ** 2, y, y ** 2, x * y, x ** 3, y ** 3, x ** 2 * y, x * y ** 2];
  return terms.reduce((sum, term, index) => sum + term * values[index]!, 0);
}

function basisOf({ returnGasCelsius }: Curve): RatingBasis {
  return {
    gas: { kind: 'returnGas', returnGas: kelvin(returnGasCelsius) },
    liquid: { kind: 'subcooling', subcooling: 0 },
    saturation: 'dew',
  };
}

function conditionsOf(curve: Curve, [evaporating, condensing]: Levels) {
  return ratedConditions(fluidOf(curve), basisOf(curve), kelvin(evaporating), kelvin(condensing), 'curve');
}

/** kg/s and W, as published. */
export function publishedAt(curve: Curve, levels: Levels): { readonly massFlow: number; readonly power: number } {
  const { suction, liquidEnthalpy } = ratedStates(fluidOf(curve), conditionsOf(curve, levels));
  const massFlow = polynomial(curve.capacity, levels) / (suction.enthalpy - liquidEnthalpy);
  return { massFlow, power: polynomial(curve.power, levels) };
}

/** Coldest and warmest that is looked at: a superheat of 2 K is left. */
function endsOf({ evaporatingRangeCelsius: [lowest, highest], returnGasCelsius }: Curve) {
  return { cold: lowest! + 1, warm: Math.min(highest!, returnGasCelsius - 2) };
}

function between(cold: number, warm: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, index) => cold + ((warm - cold) * index) / (count - 1));
}

/** Over the whole curve. */
export function placesOf(curve: Curve): readonly Levels[] {
  const { cold, warm } = endsOf(curve);
  return between(cold, warm, 5).flatMap((evaporating) =>
    condensingLevels.filter((condensing) => condensing - evaporating >= 18).map((each): Levels => [evaporating, each]),
  );
}

function around(likely: number, share: number): Estimate {
  return { low: likely * (1 - share), likely, high: likely * (1 + share), origin: 'typed' };
}

const series = {
  path: 'machine.compressor.ratings',
  label: 'sheet',
  flowFactor: around(1, 0.05),
  powerFactor: around(1, 0.05),
};

function pointsOf(curve: Curve, given: readonly Levels[], scatter: number): readonly EvidencePoint[] {
  return given.map((levels, index) => ({
    path: `${series.path}.${index}`,
    label: `point ${index + 1}`,
    ...conditionsOf(curve, levels),
    surroundings,
    supply: { frequency: curve.mainsHertz, voltage },
    given: {
      capacity: around(polynomial(curve.capacity, levels), scatter),
      power: around(polynomial(curve.power, levels), scatter),
    },
    series: series.path,
  }));
}

/** Order of AHRI 540: 1, S, D, S², S D, D², S³, D S², S D², D³. */
function inOrderOfStandard([c1, x, xx, y, yy, xy, xxx, yyy, xxy, xyy]: readonly number[]): readonly number[] {
  return [c1!, x!, y!, xx!, xy!, yy!, xxx!, xxy!, xyy!, yyy!];
}

function fromCoefficients(curve: Curve): Pick<MachineDescription, 'points' | 'series'> {
  const { cold, warm } = endsOf(curve);
  return evidenceFromCoefficients({
    fluid: fluidOf(curve),
    surroundings,
    displacement: null,
    sets: (['capacity', 'power'] as const).map((of) => ({
      path: `machine.compressor.coefficients.${of}`,
      label: of,
      of,
      coefficients: inOrderOfStandard(curve[of]) as never,
      temperatureUnit: 'celsius',
      unit: 'W',
      basis: basisOf(curve),
      evaporatingRange: { low: kelvin(cold), high: kelvin((cold + warm) / 2) },
      condensingRange: { low: kelvin(condensingLevels[0]!), high: kelvin(condensingLevels.at(-1)!) },
      supply: { frequency: curve.mainsHertz, voltage },
    })),
  });
}

/** Ways to tell of a machine, all of its colder half. */
export const ways = {
  'one rating': (curve: Curve) => {
    const given: Levels[] = [[endsOf(curve).cold + 3, 40.6]];
    return { given, evidence: { points: pointsOf(curve, given, 0), series: [series] } };
  },
  'three ratings at one condensing temperature': (curve: Curve) => {
    const { cold, warm } = endsOf(curve);
    const given = between(cold, (cold + warm) / 2, 3).map((evaporating): Levels => [evaporating, 41]);
    return { given, evidence: { points: pointsOf(curve, given, 0), series: [series] } };
  },
  'a table of 15 points': (curve: Curve) => {
    const { cold, warm } = endsOf(curve);
    const given = between(cold, (cold + warm) / 2, 3).flatMap((evaporating) =>
      [29, 34, 39, 44, 48.9].map((condensing): Levels => [evaporating, condensing]),
    );
    return { given, evidence: { points: pointsOf(curve, given, 0.02), series: [series] } };
  },
  'ten coefficients each': (curve: Curve) => {
    const { cold, warm } = endsOf(curve);
    const given: Levels[] = [
      [cold, condensingLevels[0]!],
      [(cold + warm) / 2, condensingLevels.at(-1)!],
    ];
    return { given, evidence: fromCoefficients(curve) };
  },
} as const;

export type Way = keyof typeof ways;
export const wayNames = Object.keys(ways) as readonly Way[];

/** With nothing else known of the machine than what it was made for. */
export function identifiedBy(curve: Curve, way: Way): IdentifiedMachine {
  const { evidence } = ways[way](curve);
  const { fluid: madeFor, application, mainsHertz: frequency } = curve;
  const ranges = machinePrior({ madeFor, application, frequency, isRated: true });
  const prior = Object.fromEntries(
    hermeticParameters.map((name) => [
      name,
      { path: `machine.compressor.${name}`, label: name, estimate: ranges[name] },
    ]),
  ) as unknown as MachineDescription['prior'];
  return identifyMachine({ fluid: fluidOf(curve), ratedSupply: { frequency, voltage }, prior, ...evidence });
}

/** How far the given points lie: among them, up to 13 K beyond in either temperature, farther. */
export const distances = ['among', 'near', 'far'] as const;
export type Distance = (typeof distances)[number];

function distanceOf(given: readonly Levels[], levels: Levels): Distance {
  const beyond = [0, 1].map((which) => {
    const values = given.map((each) => each[which]!);
    return Math.max(0, levels[which]! - Math.max(...values), Math.min(...values) - levels[which]!);
  });
  const most = Math.max(...beyond);
  if (most < 0.3) return 'among';
  return most <= 13 ? 'near' : 'far';
}

/** One value of a curve beside what the identified machine says of it. */
export interface Found {
  readonly distance: Distance;
  /** Likely over published, less 1. */
  readonly deviation: number;
  readonly isHeld: boolean;
  /** Of the band, relative. */
  readonly halfWidth: number;
}

export interface FoundPlace {
  readonly flow: Found;
  readonly power: Found;
}

/** The places of `of` as the machine says them; null where the model has no answer for all of the band. */
export function foundAlong(
  identified: IdentifiedMachine,
  given: readonly Levels[],
  of: Curve,
  places = placesOf(of),
): readonly (FoundPlace | null)[] {
  return places.map((levels) => {
    const [evaporating, condensing] = levels;
    const place = {
      evaporating: kelvin(evaporating),
      condensing: kelvin(condensing),
      returnGas: kelvin(of.returnGasCelsius),
      surroundings,
      supply: { frequency: of.mainsHertz, voltage },
    };
    const real = publishedAt(of, levels);
    const distance = distanceOf(given, levels);
    const beside = ({ low, likely, high }: Band, value: number): Found => ({
      distance,
      deviation: likely / value - 1,
      isHeld: value >= low && value <= high,
      halfWidth: (high - low) / (2 * likely),
    });
    try {
      const { massFlow, power } = predictedAt(identified, fluidOf(of), place);
      return { flow: beside(massFlow, real.massFlow), power: beside(power, real.power) };
    } catch (error) {
      if (error instanceof KettlefinError) return null;
      throw error;
    }
  });
}

export interface Counted {
  readonly count: number;
  /** Share of the bands that hold the published value. */
  readonly held: number;
  readonly bias: number;
  readonly rootMeanSquare: number;
  /** Median. */
  readonly halfWidth: number;
}

export function counted(found: readonly Found[]): Counted {
  const count = found.length;
  const mean = (value: (each: Found) => number) => found.reduce((sum, each) => sum + value(each), 0) / count;
  const widths = found.map(({ halfWidth }) => halfWidth).sort((a, b) => a - b);
  return {
    count,
    held: mean(({ isHeld }) => (isHeld ? 1 : 0)),
    bias: mean(({ deviation }) => deviation),
    rootMeanSquare: Math.sqrt(mean(({ deviation }) => deviation ** 2)),
    halfWidth: widths[Math.floor(count / 2)] ?? Number.NaN,
  };
}

export interface WayFound {
  readonly flow: readonly Found[];
  readonly power: readonly Found[];
  /** Places where the model has no answer. */
  readonly unanswered: number;
}

/** Every curve told in one way. */
export function foundBy(way: Way): WayFound {
  const all = curves.flatMap((curve) => foundAlong(identifiedBy(curve, way), ways[way](curve).given, curve));
  const answered = all.filter((each) => each !== null);
  return {
    flow: answered.map(({ flow }) => flow),
    power: answered.map(({ power }) => power),
    unanswered: all.length - answered.length,
  };
}
