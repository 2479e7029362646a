// The part of the terms that depends on temperature alone: for every shape over density (shapes.ts) the sum of n Y(τ) over
// its terms, and its slopes. Most terms have Y = τ^t, whose distinct exponents are taken once; some have a further
// factor, which decays with τ^m or is a bell over τ.

import { exponentials } from './exponential.ts';
import { TauPowers } from './tau-powers.ts';

/** A further factor of a term over τ: exp(−τ^m), exp(−β (τ − γ)²) or exp(1 / (β (τ − γ)² + b)). */
export type FurtherFactor =
  | { readonly kind: 'decay'; readonly m: number }
  | { readonly kind: 'bell'; readonly beta: number; readonly gamma: number }
  | { readonly kind: 'inverseBell'; readonly beta: number; readonly gamma: number; readonly b: number };

/** n τ^t with a further factor or none, times the shape of the number `shape`. */
export interface TemperatureFactor {
  readonly shape: number;
  readonly n: number;
  readonly t: number;
  readonly further: FurtherFactor | undefined;
}

type WithFurther = TemperatureFactor & { readonly further: FurtherFactor };

export class TemperatureFactors {
  /** Sums of n Y, n τ Y′ and n τ² Y″ of the first shape, then of the next. */
  readonly sums: Float64Array;

  private readonly tauPowers: TauPowers;
  /**
   * Powers of τ in order of shapes: where each shape ends, which power, and n, n t, n t (t − 1) of each term one behind the
   * other: a row for each of the three took half as long again.
   */
  private readonly end: Int32Array;
  private readonly which: Int32Array;
  private readonly coefficients: Float64Array;
  private readonly bells: FurtherColumns;
  private readonly inverseBells: FurtherColumns;
  private readonly decays: FurtherColumns;

  constructor(factors: readonly TemperatureFactor[], shapes: number) {
    const plain = factors.filter(({ further }) => further === undefined).sort((a, b) => a.shape - b.shape);
    this.tauPowers = new TauPowers(plain.map(({ t }) => t));
    this.end = Int32Array.from({ length: shapes }, (_, shape) => plain.filter((term) => term.shape <= shape).length);
    this.which = Int32Array.from(plain, ({ t }) => this.tauPowers.placeOf(t));
    this.coefficients = Float64Array.from(plain.flatMap(({ n, t }) => [n, n * t, n * t * (t - 1)]));
    const ofKind = (kind: FurtherFactor['kind']) =>
      new FurtherColumns(factors.filter((term): term is WithFurther => term.further?.kind === kind));
    this.bells = ofKind('bell');
    this.inverseBells = ofKind('inverseBell');
    this.decays = ofKind('decay');
    this.sums = new Float64Array(3 * shapes);
  }

  /** Fills the sums for τ. */
  fill(tau: number, lnTau: number): void {
    this.fillPowers(tau, lnTau);
    if (this.bells.n.length > 0) this.addBells(tau, lnTau);
    if (this.inverseBells.n.length > 0) this.addInverseBells(tau, lnTau);
    if (this.decays.n.length > 0) this.addDecays(lnTau);
  }

  private fillPowers(tau: number, lnTau: number): void {
    const { end, which, coefficients, sums } = this;
    this.tauPowers.fill(tau, lnTau);
    const { powers } = this.tauPowers;
    let term = 0;
    for (let shape = 0, sum = 0; shape < end.length; shape++, sum += 3) {
      let y = 0;
      let yTau = 0;
      let yTauTau = 0;
      for (const stop = end[shape]!; term < stop; term++) {
        const power = powers[which[term]!]!;
        const first = 3 * term;
        y += coefficients[first]! * power;
        yTau += coefficients[first + 1]! * power;
        yTauTau += coefficients[first + 2]! * power;
      }
      sums[sum] = y;
      sums[sum + 1] = yTau;
      sums[sum + 2] = yTauTau;
    }
  }

  /** exp(−β (τ − γ)²). */
  private addBells(tau: number, lnTau: number): void {
    const { shape, n, t, beta, gamma, exponent } = this.bells;
    for (let k = 0; k < n.length; k++) {
      const apart = tau - gamma[k]!;
      exponent[k] = t[k]! * lnTau - beta[k]! * apart * apart;
    }
    exponentials(exponent);
    for (let k = 0; k < n.length; k++) {
      const apart = tau - gamma[k]!;
      const steep = 2 * beta[k]! * tau;
      this.add(shape[k]!, n[k]! * exponent[k]!, t[k]! - steep * apart, -steep * (tau + apart));
    }
  }

  /** exp(1 / (β (τ − γ)² + b)). */
  private addInverseBells(tau: number, lnTau: number): void {
    const { shape, n, t, beta, gamma, b, exponent, inner } = this.inverseBells;
    for (let k = 0; k < n.length; k++) {
      const apart = tau - gamma[k]!;
      inner[k] = 1 / (beta[k]! * apart * apart + b[k]!);
      exponent[k] = t[k]! * lnTau + inner[k]!;
    }
    exponentials(exponent);
    for (let k = 0; k < n.length; k++) {
      const apart = tau - gamma[k]!;
      const pull = 2 * beta[k]! * tau * inner[k]! * inner[k]!;
      const change = -pull * (tau + apart) + 4 * beta[k]! * tau * apart * apart * pull * inner[k]!;
      this.add(shape[k]!, n[k]! * exponent[k]!, t[k]! - pull * apart, change);
    }
  }

  /** exp(−τ^m). */
  private addDecays(lnTau: number): void {
    const { shape, n, t, m, exponent, inner } = this.decays;
    for (let k = 0; k < n.length; k++) inner[k] = m[k]! * lnTau;
    exponentials(inner);
    for (let k = 0; k < n.length; k++) exponent[k] = t[k]! * lnTau - inner[k]!;
    exponentials(exponent);
    for (let k = 0; k < n.length; k++) {
      const power = m[k]! * inner[k]!;
      this.add(shape[k]!, n[k]! * exponent[k]!, t[k]! - power, -m[k]! * power);
    }
  }

  /** Adds a term Y from A = τ Y′/Y and τ A′: τ Y′ = Y A, τ² Y″ = Y (A² − A + τ A′). */
  private add(shape: number, y: number, a: number, change: number): void {
    const { sums } = this;
    sums[3 * shape]! += y;
    sums[3 * shape + 1]! += y * a;
    sums[3 * shape + 2]! += y * (a * a - a + change);
  }
}

/** The terms of one kind of further factor in columns; what a kind does not have is 0. */
class FurtherColumns {
  readonly shape: Int32Array;
  readonly n: Float64Array;
  readonly t: Float64Array;
  readonly beta: Float64Array;
  readonly gamma: Float64Array;
  readonly b: Float64Array;
  readonly m: Float64Array;
  /** Filled at each τ: the exponent of the term, then its exponential; and what stands in the exponent. */
  readonly exponent: Float64Array;
  readonly inner: Float64Array;

  constructor(terms: readonly WithFurther[]) {
    const column = (pick: (further: FurtherFactor) => number) =>
      Float64Array.from(terms, ({ further }) => pick(further));
    this.shape = Int32Array.from(terms, ({ shape }) => shape);
    this.n = Float64Array.from(terms, ({ n }) => n);
    this.t = Float64Array.from(terms, ({ t }) => t);
    this.beta = column((further) => (further.kind === 'decay' ? 0 : further.beta));
    this.gamma = column((further) => (further.kind === 'decay' ? 0 : further.gamma));
    this.b = column((further) => (further.kind === 'inverseBell' ? further.b : 0));
    this.m = column((further) => (further.kind === 'decay' ? further.m : 0));
    this.exponent = new Float64Array(terms.length);
    this.inner = new Float64Array(terms.length);
  }
}
