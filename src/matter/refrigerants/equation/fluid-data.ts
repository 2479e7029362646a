// The form of a coefficient file (data/refrigerants/<name>.json) and its complete check when it is loaded: every key is
// known, every number finite and of the right sign, columns of one length, every kind of term one that the program has.
// A broken file is a DataError that names the place; nothing is guessed or left out.

import { type TransportData, transportBlock } from '../transport/transport-data.ts';
import {
  asRecord,
  broken,
  byType,
  type Check,
  columns,
  finite,
  listOf,
  oneOf,
  positive,
  type Shape,
  shaped,
  wholeFrom,
  words,
} from './data-checks.ts';

export interface PowerTermData {
  readonly n: readonly number[];
  readonly d: readonly number[];
  readonly t: readonly number[];
  readonly l: readonly number[];
}
export interface GaussianTermData {
  readonly n: readonly number[];
  readonly d: readonly number[];
  readonly t: readonly number[];
  readonly eta: readonly number[];
  readonly epsilon: readonly number[];
  readonly beta: readonly number[];
  readonly gamma: readonly number[];
}
export interface DoubleExponentialTermData extends PowerTermData {
  readonly m: readonly number[];
}
export interface SecondGaussianTermData extends GaussianTermData {
  readonly b: readonly number[];
}
export interface NonAnalyticTermData {
  readonly n: readonly number[];
  readonly a: readonly number[];
  readonly b: readonly number[];
  readonly beta: readonly number[];
  readonly A: readonly number[];
  readonly B: readonly number[];
  readonly C: readonly number[];
  readonly D: readonly number[];
}
export type ResidualTermData =
  | ({ readonly type: 'power' } & PowerTermData)
  | ({ readonly type: 'gaussian' } & GaussianTermData)
  | ({ readonly type: 'doubleExponential' } & DoubleExponentialTermData)
  | ({ readonly type: 'secondGaussian' } & SecondGaussianTermData)
  | ({ readonly type: 'nonAnalytic' } & NonAnalyticTermData);

export interface LinearTermData {
  readonly constant: number;
  readonly slope: number;
}
export interface LogTermData {
  readonly factor: number;
}
export interface IdealPowerTermData {
  readonly n: readonly number[];
  readonly t: readonly number[];
}
export interface PlanckEinsteinTermData {
  readonly n: readonly number[];
  readonly theta: readonly number[];
}
export interface ConstantHeatCapacityData {
  /** c⁰p/R. */
  readonly heatCapacity: number;
  readonly startTemperature: number;
  readonly scalingTemperature: number;
}
export interface PolynomialHeatCapacityData {
  readonly c: readonly number[];
  readonly t: readonly number[];
  readonly startTemperature: number;
  readonly scalingTemperature: number;
}
export type IdealTermData =
  | ({ readonly type: 'lead' | 'offset' } & LinearTermData)
  | ({ readonly type: 'logTau' } & LogTermData)
  | ({ readonly type: 'power' } & IdealPowerTermData)
  | ({ readonly type: 'planckEinstein' } & PlanckEinsteinTermData)
  | ({ readonly type: 'constantHeatCapacity' } & ConstantHeatCapacityData)
  | ({ readonly type: 'polynomialHeatCapacity' } & PolynomialHeatCapacityData);

/** With θ = 1 − T/T_r: sum: v_r (1 + Σ n θ^t); exponential: v_r exp(Σ n θ^t); exponentialTau: v_r exp(T_r/T Σ n θ^t). */
export interface SaturationCurve {
  readonly form: 'sum' | 'exponential' | 'exponentialTau';
  readonly reducingTemperature: number;
  readonly reducingValue: number;
  readonly n: readonly number[];
  readonly t: readonly number[];
}

/** ln |ρ − ρc| = Σ cᵢ (ln Θ)^i with Θ = 1 − T/Tc ≤ distanceMax, ρ molar. */
export interface NearCriticalGuess {
  readonly distanceMax: number;
  readonly liquid: readonly number[];
  readonly vapour: readonly number[];
}

/** Part of a melting line between two temperatures: `power`: p₀ + a ((T/T₀)^t − 1); `powersOfRatio`: p₀ (1 + Σ a ((T/T₀)^t − 1));
 * `powersOfDistance`: p₀ (1 + Σ a (T/T₀ − 1)^t). */
export interface MeltingLinePart {
  readonly form: 'power' | 'powersOfRatio' | 'powersOfDistance';
  /** [K] */
  readonly from: number;
  /** [K] */
  readonly to: number;
  /** T₀ [K]. */
  readonly startTemperature: number;
  /** p₀ [Pa]. */
  readonly startPressure: number;
  readonly a: readonly number[];
  readonly t: readonly number[];
}

/** The published curves of a blend's bubble and dew pressure, part of its equation; the densities start solvers only. */
export interface BubbleAndDewCurves {
  readonly bubblePressure: SaturationCurve;
  readonly dewPressure: SaturationCurve;
  readonly liquidMolarDensity: SaturationCurve;
  readonly vapourMolarDensity: SaturationCurve;
}

/** First guesses for the dome of a pure fluid, which the program solves itself. */
export interface DomeGuess {
  readonly pressure: SaturationCurve;
  readonly liquidMolarDensity: SaturationCurve;
  readonly vapourMolarDensity: SaturationCurve;
  readonly nearCritical: NearCriticalGuess;
}

interface FluidHead {
  readonly name: string;
  readonly aliases: readonly string[];
  readonly source: Readonly<Record<string, string>>;
  readonly citations: { readonly equation: string; readonly surfaceTension: string };
  /** M [kg/mol] of the paper. */
  readonly molarMass: number;
  /** R [J/(mol K)] of the paper. */
  readonly gasConstant: number;
  /** The paper's own reducing point [K, mol/m³]. */
  readonly reducing: { readonly temperature: number; readonly molarDensity: number };
  /** Where the equation itself has its critical point [K, Pa, mol/m³]. */
  readonly critical: { readonly temperature: number; readonly pressure: number; readonly molarDensity: number };
  readonly triplePoint: { readonly temperature: number };
  readonly limits: { readonly temperatureMin: number; readonly temperatureMax: number; readonly pressureMax: number };
  readonly ideal: readonly IdealTermData[];
  readonly residual: readonly ResidualTermData[];
  readonly meltingLine?: { readonly parts: readonly MeltingLinePart[] };
  /** σ = Σ a (1 − T/Tc)^n [N/m]. */
  readonly surfaceTension: {
    readonly criticalTemperature: number;
    readonly a: readonly number[];
    readonly n: readonly number[];
  };
  readonly transport: TransportData;
}

/** A fluid of one kind of molecule. Its critical point is that of the equation itself. */
export interface PureFluidData extends FluidHead {
  readonly kind: 'pure';
  readonly firstGuess: DomeGuess;
}

/** A blend under one equation as if it were one substance; its critical point is where its bubble and dew curves meet. */
export interface PseudoPureFluidData extends FluidHead {
  readonly kind: 'pseudoPure';
  readonly bubbleAndDew: BubbleAndDewCurves;
}

export type FluidData = PureFluidData | PseudoPureFluidData;

const numbers = listOf(finite);
const positives = listOf(positive);
const powers = listOf(wholeFrom(0));
const powersFromOne = listOf(wholeFrom(1));
const curveColumns: Shape = { reducingTemperature: positive, reducingValue: positive, n: numbers, t: positives };
const curve = columns({ form: oneOf('sum', 'exponential', 'exponentialTau'), ...curveColumns });
/** The bubble and dew pressures of a blend, which are also solved for the temperature. */
const pressureCurve = columns({ form: oneOf('exponentialTau'), ...curveColumns });
const line: Shape = { constant: finite, slope: finite };
const bell: Shape = {
  n: numbers,
  d: powersFromOne,
  t: numbers,
  eta: numbers,
  epsilon: numbers,
  beta: numbers,
  gamma: numbers,
};

const head: Shape = {
  name: words,
  aliases: listOf(words, 0),
  source: shaped({ library: words, version: words, licence: words, fluidName: words, sha256: words, script: words }),
  citations: shaped({ equation: words, surfaceTension: words }),
  molarMass: positive,
  gasConstant: positive,
  reducing: shaped({ temperature: positive, molarDensity: positive }),
  critical: shaped({ temperature: positive, pressure: positive, molarDensity: positive }),
  triplePoint: shaped({ temperature: positive }),
  limits: shaped({ temperatureMin: positive, temperatureMax: positive, pressureMax: positive }),
  ideal: listOf(
    byType({
      lead: line,
      offset: line,
      logTau: { factor: finite },
      power: { n: numbers, t: numbers },
      planckEinstein: { n: numbers, theta: positives },
      constantHeatCapacity: { heatCapacity: finite, startTemperature: positive, scalingTemperature: positive },
      polynomialHeatCapacity: { c: numbers, t: numbers, startTemperature: positive, scalingTemperature: positive },
    }),
  ),
  residual: listOf(
    byType({
      power: { n: numbers, d: powers, t: numbers, l: powers },
      gaussian: bell,
      doubleExponential: { n: numbers, d: powersFromOne, t: numbers, l: powers, m: listOf(finite) },
      secondGaussian: { ...bell, b: positives },
      nonAnalytic: {
        n: numbers,
        a: positives,
        b: positives,
        beta: positives,
        A: numbers,
        B: numbers,
        C: numbers,
        D: numbers,
      },
    }),
  ),
  surfaceTension: columns({ criticalTemperature: positive, a: numbers, n: positives }),
  transport: transportBlock,
  meltingLine: {
    maybe: shaped({
      parts: listOf(
        columns({
          form: oneOf('power', 'powersOfRatio', 'powersOfDistance'),
          from: positive,
          to: positive,
          startTemperature: positive,
          startPressure: positive,
          a: numbers,
          t: numbers,
        }),
      ),
    }),
  },
};
const kinds: Readonly<Record<string, Shape>> = {
  pure: {
    firstGuess: shaped({
      pressure: curve,
      liquidMolarDensity: curve,
      vapourMolarDensity: curve,
      nearCritical: shaped({ distanceMax: positive, liquid: numbers, vapour: numbers }),
    }),
  },
  pseudoPure: {
    bubbleAndDew: shaped({
      bubblePressure: pressureCurve,
      dewPressure: pressureCurve,
      liquidMolarDensity: curve,
      vapourMolarDensity: curve,
    }),
  },
};

const fluid: Check = (value, path, file) => {
  const record = asRecord(value, path, file);
  const { kind } = record;
  if (typeof kind !== 'string' || !Object.hasOwn(kinds, kind)) {
    broken(file, `${path}.kind`, `must be one of ${Object.keys(kinds).join(', ')}`);
  }
  shaped({ kind: words, ...head, ...kinds[kind] })(value, path, file);
};

/**
 * The coefficient file, checked from end to end.
 * @param data  the parsed JSON
 * @param file  its name, for the error
 * @returns     the same object, typed
 * @throws DataError naming file, path inside it, and the rule broken
 */
export function checkedFluidData(data: unknown, file: string): FluidData {
  fluid(data, 'fluid', file);
  const checked = data as FluidData;
  const { critical, limits, reducing } = checked;
  if (limits.temperatureMin >= critical.temperature) {
    broken(file, 'fluid.limits.temperatureMin', 'must lie below the critical temperature');
  }
  if (limits.temperatureMax <= critical.temperature) {
    broken(file, 'fluid.limits.temperatureMax', 'must lie above the critical temperature');
  }
  if (limits.pressureMax <= critical.pressure) {
    broken(file, 'fluid.limits.pressureMax', 'must lie above the critical pressure');
  }
  // The paper's reducing point is the critical point or close by; a slip of a column or a unit is not.
  if (Math.abs(reducing.temperature / critical.temperature - 1) > 0.05) {
    broken(file, 'fluid.reducing.temperature', 'must lie within 5 % of the critical temperature');
  }
  return checked;
}
