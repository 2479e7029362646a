// The kinds of terms of the ideal-gas part φ⁰ (without ln δ, which the equation adds itself):
//     lead and offset a₁ + a₂ τ · log a ln τ · power n τ^t · Planck-Einstein n ln(1 − exp(−θ τ))
//     constant and polynomial heat capacity c⁰p/R = c T^t, integrated from a start temperature T₀.
// All depend on τ alone, so the equation evaluates them once per temperature.

import type {
  IdealPowerTermData,
  LinearTermData,
  LogTermData,
  PlanckEinsteinTermData,
  PolynomialHeatCapacityData,
} from '../fluid-data.ts';
import type { IdealSums, IdealTerms } from './term.ts';

export function linearTerms({ constant, slope }: LinearTermData): IdealTerms {
  return {
    add(tau: number, _lnTau: number, sums: IdealSums): void {
      sums[0]! += constant + slope * tau;
      sums[1]! += slope * tau;
    },
  };
}

export function logTauTerms({ factor }: LogTermData): IdealTerms {
  return {
    add(_tau: number, lnTau: number, sums: IdealSums): void {
      sums[0]! += factor * lnTau;
      sums[1]! += factor;
      sums[2]! -= factor;
    },
  };
}

export function idealPowerTerms({ n, t }: IdealPowerTermData): IdealTerms {
  return {
    add(_tau: number, lnTau: number, sums: IdealSums): void {
      for (let k = 0; k < n.length; k++) {
        const value = n[k]! * Math.exp(t[k]! * lnTau);
        sums[0]! += value;
        sums[1]! += value * t[k]!;
        sums[2]! += value * t[k]! * (t[k]! - 1);
      }
    },
  };
}

/**
 * With x = θτ, e = exp(−x) and y = e/(1 − e): φ = n ln(1 − e), τ φ_τ = n x y, τ² φ_ττ = −n x² y (1 + y).
 * Below x = 0.1 the difference 1 − e is taken by expm1, which keeps its digits.
 */
export class PlanckEinsteinTerms implements IdealTerms {
  private readonly n: Float64Array;
  private readonly theta: Float64Array;

  constructor(data: PlanckEinsteinTermData) {
    this.n = Float64Array.from(data.n);
    this.theta = Float64Array.from(data.theta);
  }

  add(tau: number, _lnTau: number, sums: IdealSums): void {
    const { n, theta } = this;
    let s0 = 0;
    let s1 = 0;
    let s2 = 0;
    for (let k = 0; k < n.length; k++) {
      const x = theta[k]! * tau;
      const e = Math.exp(-x);
      const rest = x < 0.1 ? -Math.expm1(-x) : 1 - e;
      const y = e / rest;
      s0 += n[k]! * Math.log(rest);
      s1 += n[k]! * x * y;
      s2 += n[k]! * x * x * y * (1 + y);
    }
    sums[0]! += s0;
    sums[1]! += s1;
    sums[2]! -= s2;
  }
}

/**
 * c⁰p/R = Σ c T^t from T₀, with T = Tc/τ:
 *     t = 0:   c (1 − τ/τ₀ + ln(τ/τ₀))
 *     t = −1:  (c/Tc) (τ ln(τ₀/τ) + τ − τ₀)
 *     else:    −c T^t/(t (t + 1)) − c T₀^(t+1) τ/(Tc (t + 1)) + c T₀^t/t
 */
export function polynomialHeatCapacityTerms(data: PolynomialHeatCapacityData): IdealTerms {
  const { c, t, startTemperature, scalingTemperature } = data;
  const tauStart = scalingTemperature / startTemperature;
  const startPower = t.map((exponent) => startTemperature ** exponent);
  return {
    add(tau: number, _lnTau: number, sums: IdealSums): void {
      const temperature = scalingTemperature / tau;
      for (let k = 0; k < c.length; k++) {
        const exponent = t[k]!;
        if (exponent === 0) {
          const ratio = tau / tauStart;
          sums[0]! += c[k]! * (1 - ratio + Math.log(ratio));
          sums[1]! += c[k]! * (1 - ratio);
          sums[2]! -= c[k]!;
        } else if (exponent === -1) {
          const scale = c[k]! / scalingTemperature;
          const logRatio = Math.log(tauStart / tau);
          sums[0]! += scale * (tau * logRatio + tau - tauStart);
          sums[1]! += scale * tau * logRatio;
          sums[2]! -= scale * tau;
        } else {
          const value = c[k]! * (exponent === 1 ? temperature : temperature ** exponent);
          const start = c[k]! * startPower[k]!;
          const line = (start * tau) / (tauStart * (exponent + 1));
          sums[0]! += start / exponent - value / (exponent * (exponent + 1)) - line;
          sums[1]! += value / (exponent + 1) - line;
          sums[2]! -= value;
        }
      }
    },
  };
}
