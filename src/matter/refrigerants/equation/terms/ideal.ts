// The ideal-gas part φ⁰ without ln δ, which the equation adds itself. All kinds of terms of the coefficient files,
//     lead and offset a₁ + a₂ τ · log a ln τ · power n τ^t · Planck-Einstein n ln(1 − exp(−θ τ)) ·
//     constant and polynomial heat capacity c⁰p/R = c T^t, integrated from a start temperature T₀,
// come down to one sum when the file is loaded:
//     φ⁰ = a + b τ + c ln τ + g τ ln τ + Σ n τ^t + Σ n ln(1 − exp(−θ τ))

import type { IdealTermData, PolynomialHeatCapacityData } from '../fluid-data.ts';
import { exponentials } from './exponential.ts';
import type { IdealSums } from './sums.ts';

/** Below this θτ the difference 1 − exp(−θτ) is taken by expm1, which keeps its digits. */
const SMALL = 0.1;

export class IdealTerms {
  private constant = 0;
  private linear = 0;
  private logarithm = 0;
  private linearLogarithm = 0;
  private readonly powerFactor: Float64Array;
  private readonly powerExponent: Float64Array;
  /** The powers, then exp(−θτ) of the oscillators. */
  private readonly filled: Float64Array;
  private readonly oscillatorFactor: Float64Array;
  private readonly oscillatorTheta: Float64Array;

  constructor(data: readonly IdealTermData[]) {
    const powers: [n: number, t: number][] = [];
    const oscillators: [n: number, theta: number][] = [];
    for (const term of data) {
      switch (term.type) {
        case 'lead':
        case 'offset':
          this.constant += term.constant;
          this.linear += term.slope;
          break;
        case 'logTau':
          this.logarithm += term.factor;
          break;
        case 'power':
          term.n.forEach((n, k) => {
            powers.push([n, term.t[k]!]);
          });
          break;
        case 'planckEinstein':
          term.n.forEach((n, k) => {
            oscillators.push([n, term.theta[k]!]);
          });
          break;
        case 'constantHeatCapacity':
          this.addHeatCapacity({ ...term, c: [term.heatCapacity], t: [0] }, powers);
          break;
        case 'polynomialHeatCapacity':
          this.addHeatCapacity(term, powers);
          break;
        default:
          term satisfies never;
      }
    }
    this.filled = new Float64Array(powers.length + oscillators.length);
    this.powerFactor = Float64Array.from(powers, ([n]) => n);
    this.powerExponent = Float64Array.from(powers, ([, t]) => t);
    this.oscillatorFactor = Float64Array.from(oscillators, ([n]) => n);
    this.oscillatorTheta = Float64Array.from(oscillators, ([, theta]) => theta);
  }

  /**
   * c⁰p/R = Σ c T^t from T₀, with T = Tc/τ:
   *     t = 0:   c (1 − τ/τ₀ + ln(τ/τ₀))
   *     t = −1:  (c/Tc) (τ ln(τ₀/τ) + τ − τ₀)
   *     else:    −c T^t/(t (t + 1)) − c T₀^(t+1) τ/(Tc (t + 1)) + c T₀^t/t
   */
  private addHeatCapacity(data: PolynomialHeatCapacityData, powers: [n: number, t: number][]): void {
    const { startTemperature, scalingTemperature } = data;
    const tauStart = scalingTemperature / startTemperature;
    data.c.forEach((c, k) => {
      const t = data.t[k]!;
      if (t === 0) {
        this.constant += c * (1 - Math.log(tauStart));
        this.linear -= c / tauStart;
        this.logarithm += c;
      } else if (t === -1) {
        const scale = c / scalingTemperature;
        this.constant -= scale * tauStart;
        this.linear += scale * (Math.log(tauStart) + 1);
        this.linearLogarithm -= scale;
      } else {
        const start = c * startTemperature ** t;
        this.constant += start / t;
        this.linear -= start / (tauStart * (t + 1));
        powers.push([(-c * scalingTemperature ** t) / (t * (t + 1)), -t]);
      }
    });
  }

  /**
   * Sets the sums. Of the oscillators with x = θτ, e = exp(−x) and y = e/(1 − e): φ = n ln(1 − e), τ φ_τ = n x y,
   * τ² φ_ττ = −n x² y (1 + y).
   */
  sum(tau: number, lnTau: number, sums: IdealSums): void {
    const {
      powerFactor,
      powerExponent,
      oscillatorFactor,
      oscillatorTheta,
      linear,
      logarithm,
      linearLogarithm,
      filled,
    } = this;
    const ahead = powerFactor.length;
    for (let k = 0; k < ahead; k++) filled[k] = powerExponent[k]! * lnTau;
    for (let k = 0; k < oscillatorTheta.length; k++) filled[k + ahead] = -oscillatorTheta[k]! * tau;
    exponentials(filled);
    const curved = linearLogarithm * tau;
    let phi = this.constant + linear * tau + (logarithm + curved) * lnTau;
    let phiTau = linear * tau + logarithm + curved * (lnTau + 1);
    let phiTauTau = curved - logarithm;
    for (let k = 0; k < ahead; k++) {
      const t = powerExponent[k]!;
      const value = powerFactor[k]! * filled[k]!;
      phi += value;
      phiTau += value * t;
      phiTauTau += value * t * (t - 1);
    }
    for (let k = 0; k < oscillatorFactor.length; k++) {
      const n = oscillatorFactor[k]!;
      const x = oscillatorTheta[k]! * tau;
      const e = filled[k + ahead]!;
      const rest = x < SMALL ? -Math.expm1(-x) : 1 - e;
      const xy = (x * e) / rest;
      phi += n * Math.log(rest);
      phiTau += n * xy;
      phiTauTau -= n * xy * (x + xy);
    }
    sums[0] = phi;
    sums[1] = phiTau;
    sums[2] = phiTauTau;
  }
}
