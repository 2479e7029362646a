// Non-analytic terms near the critical point (Span & Wagner 1996; Wagner & Pruss 2002, for carbon dioxide and water):
//     n Δ^b δ ψ,  Δ = θ² + B ((δ − 1)²)^a,  θ = (1 − τ) + A ((δ − 1)²)^(1/(2β)),  ψ = exp(−C (δ − 1)² − D (τ − 1)²)
// At δ = 1 the derivatives in δ are taken at their limits, those so close to it that no double tells them apart; at δ = 1,
// τ = 1 the second derivative in τ grows without limit, and so does c_v.

import type { NonAnalyticTermData } from '../fluid-data.ts';
import { exponentials } from './exponential.ts';
import type { ResidualSums } from './sums.ts';

/** Smallest (δ − 1)² that is used: below it the derivatives of the powers overflow although the terms stay finite. */
const SMALLEST_SQUARE = 1e-30;
/** Where ψ is less than e to this the term is beyond all digits, as it is over most of the range. */
const LOWEST_EXPONENT = -50;

export class NonAnalyticTerms {
  private readonly n: Float64Array;
  private readonly a: Float64Array;
  private readonly b: Float64Array;
  /** 1/(2β). */
  private readonly half: Float64Array;
  private readonly bend: Float64Array;
  private readonly wall: Float64Array;
  private readonly densityWidth: Float64Array;
  private readonly temperatureWidth: Float64Array;
  /** Of the term at hand: ψ and the powers of (δ − 1)² in θ and Δ. */
  private readonly row = new Float64Array(3);

  constructor(data: readonly NonAnalyticTermData[]) {
    const column = (pick: (entry: NonAnalyticTermData) => readonly number[]) => Float64Array.from(data.flatMap(pick));
    this.n = column(({ n }) => n);
    this.a = column(({ a }) => a);
    this.b = column(({ b }) => b);
    this.half = column(({ beta }) => beta).map((beta) => 1 / (2 * beta));
    this.bend = column(({ A }) => A);
    this.wall = column(({ B }) => B);
    this.densityWidth = column(({ C }) => C);
    this.temperatureWidth = column(({ D }) => D);
  }

  add(tau: number, delta: number, sums: ResidualSums): void {
    const { n, densityWidth, temperatureWidth } = this;
    const off = delta - 1;
    const square = Math.max(off * off, SMALLEST_SQUARE);
    const late = tau - 1;
    let lnSquare = Number.NaN;
    for (let k = 0; k < n.length; k++) {
      const exponent = -densityWidth[k]! * square - temperatureWidth[k]! * late * late;
      if (exponent < LOWEST_EXPONENT) continue;
      if (Number.isNaN(lnSquare)) lnSquare = Math.log(square);
      const { row } = this;
      row[0] = exponent;
      row[1] = this.half[k]! * lnSquare;
      row[2] = this.a[k]! * lnSquare;
      exponentials(row);
      this.addTerm(k, tau, delta, off < 0 ? -Math.sqrt(square) : Math.sqrt(square), sums);
    }
  }

  private addTerm(k: number, tau: number, delta: number, side: number, sums: ResidualSums): void {
    const { row } = this;
    const square = side * side;
    const a = this.a[k]!;
    const b = this.b[k]!;
    const half = this.half[k]!;
    const C = this.densityWidth[k]!;
    const D = this.temperatureWidth[k]!;
    const late = tau - 1;
    const bend = this.bend[k]! * row[1]!;
    const wall = this.wall[k]! * row[2]!;
    const theta = bend - late;
    const distance = theta * theta + wall;
    // First and second derivative of Δ in δ: d/dδ of square^m is 2 m square^m / side.
    const thetaDelta = (2 * half * bend) / side;
    const thetaDeltaDelta = (2 * half * (2 * half - 1) * bend) / square;
    const distanceDelta = 2 * theta * thetaDelta + (2 * a * wall) / side;
    const distanceDeltaDelta =
      2 * thetaDelta * thetaDelta + 2 * theta * thetaDeltaDelta + (2 * a * (2 * a - 1) * wall) / square;
    const power = Math.exp(b * Math.log(distance));
    const first = (b * power) / distance;
    const second = ((b - 1) * first) / distance;
    const powerDelta = first * distanceDelta;
    const powerDeltaDelta = first * distanceDeltaDelta + second * distanceDelta * distanceDelta;
    const powerTau = -2 * theta * first;
    const powerTauTau = 2 * first + 4 * theta * theta * second;
    const powerDeltaTau = -2 * thetaDelta * first - 2 * theta * second * distanceDelta;
    const bell = this.n[k]! * row[0]!;
    const bellDelta = -2 * C * side * bell;
    const bellDeltaDelta = (4 * C * C * square - 2 * C) * bell;
    const bellTau = -2 * D * late * bell;
    const bellTauTau = (4 * D * D * late * late - 2 * D) * bell;
    const bellDeltaTau = 4 * C * D * side * late * bell;
    // With f = Δ^b ψ the term is δ f: (δf)_δ = f + δ f_δ, (δf)_δδ = 2 f_δ + δ f_δδ.
    const f = power * bell;
    const fDelta = powerDelta * bell + power * bellDelta;
    const fDeltaDelta = powerDeltaDelta * bell + 2 * powerDelta * bellDelta + power * bellDeltaDelta;
    const fTau = powerTau * bell + power * bellTau;
    const fTauTau = powerTauTau * bell + 2 * powerTau * bellTau + power * bellTauTau;
    const fDeltaTau = powerDeltaTau * bell + powerDelta * bellTau + powerTau * bellDelta + power * bellDeltaTau;
    sums[0]! += delta * f;
    sums[1]! += delta * (f + delta * fDelta);
    sums[2]! += tau * delta * fTau;
    sums[3]! += delta * delta * (2 * fDelta + delta * fDeltaDelta);
    sums[4]! += delta * tau * (fTau + delta * fDeltaTau);
    sums[5]! += tau * tau * delta * fTauTau;
  }
}
