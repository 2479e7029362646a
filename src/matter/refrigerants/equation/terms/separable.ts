// Terms of the residual part that are a function of density times one of temperature, as all are but the non-analytic ones:
//     n X(δ) Y(τ),  X = δ^d exp(−δ^l)  (no exponential where l = 0)  or  δ^d exp(−η (δ − ε)²),  Y: temperature-factors.ts
// Terms of one X are summed over temperature first, once for each τ; an evaluation then goes over the distinct X only. That
// is the hottest loop of the engine: typed arrays, one class for all fluids (closures and one class for each kind of term
// ran at half the speed once several fluids were in use), powers of δ by multiplication.

import type { ResidualTermData } from '../fluid-data.ts';
import { exponentials } from './exponential.ts';
import type { ResidualSums } from './sums.ts';
import { type FurtherFactor, type TemperatureFactor, TemperatureFactors } from './temperature-factors.ts';

/** All kinds of terms in a coefficient file that can be separated. */
export type SeparableTermData = Exclude<ResidualTermData, { readonly type: 'nonAnalytic' }>;

/** X(δ): a decay has η = ε = 0, a bell has l = −1. */
interface Shape {
  readonly d: number;
  readonly l: number;
  readonly eta: number;
  readonly epsilon: number;
}

const BELL = -1;

export class SeparableTerms {
  /** The largest power of δ that any X needs. */
  private readonly highestPower: number;
  private readonly factors: TemperatureFactors;
  private readonly factorsAt: Float64Array;
  private readonly deltaPower: Float64Array;
  /** Shapes in order: decays by l, each l from the end of the one before to its own; then the bells. */
  private readonly decay: Int32Array;
  private readonly decayEnd: Int32Array;
  private readonly power: Int32Array;
  /** The exponential of each l, then of each bell. */
  private readonly decayed: Float64Array;
  private readonly eta: Float64Array;
  private readonly epsilon: Float64Array;

  constructor(data: readonly SeparableTermData[]) {
    const terms = data.flatMap(termsOf);
    const shapes = distinctShapes(terms.map(({ shape }) => shape));
    const decaying = shapes.filter(({ l }) => l !== BELL);
    const decays = [...new Set(decaying.map(({ l }) => l))];
    this.decay = Int32Array.from(decays);
    this.decayEnd = Int32Array.from(decays, (decay) => decaying.filter(({ l }) => l <= decay).length);
    this.power = Int32Array.from(shapes, ({ d }) => d);
    this.eta = Float64Array.from(shapes, ({ eta }) => eta);
    this.epsilon = Float64Array.from(shapes, ({ epsilon }) => epsilon);
    this.decayed = new Float64Array(decays.length + shapes.length - decaying.length);
    this.highestPower = Math.max(1, ...this.power, ...this.decay);
    this.deltaPower = new Float64Array(this.highestPower + 1);
    this.deltaPower[0] = 1;
    const numbers = new Map(shapes.map((shape, number) => [keyOf(shape), number]));
    const factors = terms.map(({ shape, ...factor }) => ({ ...factor, shape: numbers.get(keyOf(shape))! }));
    this.factors = new TemperatureFactors(factors, shapes.length);
    this.factorsAt = Float64Array.of(Number.NaN);
  }

  /** Sets the sums to those of all terms. */
  sum(tau: number, lnTau: number, delta: number, sums: ResidualSums): void {
    if (tau !== this.factorsAt[0]) {
      this.factors.fill(tau, lnTau);
      this.factorsAt[0] = tau;
    }
    const { highestPower, deltaPower, decay, decayEnd, power, eta, epsilon, decayed } = this;
    const factors = this.factors.sums;
    let deltaToK = 1;
    for (let k = 1; k <= highestPower; k++) {
      deltaToK *= delta;
      deltaPower[k] = deltaToK;
    }
    const blocks = decay.length;
    // Bells stand behind the decays in both rows: this far apart.
    const ahead = power.length - decayed.length;
    for (let block = 0; block < blocks; block++) decayed[block] = decay[block] === 0 ? 0 : -deltaPower[decay[block]!]!;
    for (let bell = blocks; bell < decayed.length; bell++) {
      const apart = delta - epsilon[bell + ahead]!;
      decayed[bell] = -eta[bell + ahead]! * apart * apart;
    }
    exponentials(decayed);
    let phi = 0;
    let phiDelta = 0;
    let phiTau = 0;
    let phiDeltaDelta = 0;
    let phiDeltaTau = 0;
    let phiTauTau = 0;
    let shape = 0;
    for (let block = 0; block < blocks; block++) {
      // Σ Y δ^d, and with d, d²; the same with τ Y′; and with τ² Y″.
      let y0 = 0;
      let y1 = 0;
      let y2 = 0;
      let t0 = 0;
      let t1 = 0;
      let c0 = 0;
      for (const end = decayEnd[block]!; shape < end; shape++) {
        const d = power[shape]!;
        const x = deltaPower[d]!;
        const y = factors[3 * shape]! * x;
        const yd = y * d;
        const t = factors[3 * shape + 1]! * x;
        y0 += y;
        y1 += yd;
        y2 += yd * d;
        t0 += t;
        t1 += t * d;
        c0 += factors[3 * shape + 2]! * x;
      }
      // With E = exp(−δ^l) and fall = l δ^l: δ X′ = X (d − fall), δ² X″ = X ((d − fall)² − (d − fall) − l fall).
      const l = decay[block]!;
      const fall = l * deltaPower[l]!;
      const e = decayed[block]!;
      phi += e * y0;
      phiDelta += e * (y1 - fall * y0);
      phiTau += e * t0;
      phiDeltaDelta += e * (y2 - (2 * fall + 1) * y1 + fall * (fall + 1 - l) * y0);
      phiDeltaTau += e * (t1 - fall * t0);
      phiTauTau += e * c0;
    }
    for (; shape < power.length; shape++) {
      const apart = delta - epsilon[shape]!;
      const steep = 2 * eta[shape]! * delta;
      const d = power[shape]!;
      const x = deltaPower[d]! * decayed[shape - ahead]!;
      const a = d - steep * apart;
      const y = factors[3 * shape]! * x;
      const t = factors[3 * shape + 1]! * x;
      phi += y;
      phiDelta += y * a;
      phiTau += t;
      phiDeltaDelta += y * (a * a - a - steep * (delta + apart));
      phiDeltaTau += t * a;
      phiTauTau += factors[3 * shape + 2]! * x;
    }
    sums[0] = phi;
    sums[1] = phiDelta;
    sums[2] = phiTau;
    sums[3] = phiDeltaDelta;
    sums[4] = phiDeltaTau;
    sums[5] = phiTauTau;
  }
}

interface SeparableTerm extends Omit<TemperatureFactor, 'shape'> {
  readonly shape: Shape;
}

/** The terms of one entry of a coefficient file, whose kinds differ in their factors only. */
function termsOf(data: SeparableTermData): SeparableTerm[] {
  const { n, d, t } = data;
  return n.map((factor, k) => ({ n: factor, t: t[k]!, shape: shapeOf(data, d[k]!, k), further: furtherOf(data, k) }));
}

function shapeOf(data: SeparableTermData, d: number, k: number): Shape {
  switch (data.type) {
    case 'power':
    case 'doubleExponential':
      return { d, l: data.l[k]!, eta: 0, epsilon: 0 };
    case 'gaussian':
      return { d, l: BELL, eta: data.eta[k]!, epsilon: data.epsilon[k]! };
    case 'secondGaussian':
      // Sign: η of this kind stands in the files as a negative number and enters as it is.
      return { d, l: BELL, eta: -data.eta[k]!, epsilon: data.epsilon[k]! };
    default:
      return data satisfies never;
  }
}

function furtherOf(data: SeparableTermData, k: number): FurtherFactor | undefined {
  switch (data.type) {
    case 'power':
      return undefined;
    case 'doubleExponential':
      return data.m[k]! > 0 ? { kind: 'decay', m: data.m[k]! } : undefined;
    case 'gaussian':
      return { kind: 'bell', beta: data.beta[k]!, gamma: data.gamma[k]! };
    case 'secondGaussian':
      return { kind: 'inverseBell', beta: data.beta[k]!, gamma: data.gamma[k]!, b: data.b[k]! };
    default:
      return data satisfies never;
  }
}

/** Each shape once: decays by rising l and d, then the bells. */
function distinctShapes(shapes: readonly Shape[]): Shape[] {
  const distinct = [...new Map(shapes.map((shape) => [keyOf(shape), shape])).values()];
  const isBell = ({ l }: Shape) => (l === BELL ? 1 : 0);
  return distinct.sort((a, b) => isBell(a) - isBell(b) || a.l - b.l || a.d - b.d);
}

function keyOf({ d, l, eta, epsilon }: Shape): string {
  return `${d} ${l} ${eta} ${epsilon}`;
}
