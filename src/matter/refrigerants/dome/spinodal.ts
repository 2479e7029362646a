// The slow, sure way to the phase equilibrium, for temperatures where Newton's method leaves the physical side: find the
// two spinodals, where ∂p/∂ρ = 0, going inwards from the outer ends of the isotherm; between the pressures there, the
// difference of the Gibbs energies of both phases changes sign once; bisect it.

import { ConvergenceError } from '../../../numerics/index.ts';
import type { Refrigerant } from '../types.ts';
import { type Equilibrium, pureEquilibrium } from './equilibrium.ts';

const SCAN = 400;
const HALVINGS = 200;

export function spinodalSearch(fluid: Refrigerant, temperature: number): Equilibrium {
  const { equation, critical, guess } = fluid;
  const dense = Math.max(1.15 * guess.liquidDensity(temperature), 1.2 * critical.density);
  const thin = 0.2 * guess.vapourDensity(temperature);
  const liquidEnd = spinodal(fluid, temperature, dense, critical.density);
  const vapourEnd = spinodal(fluid, temperature, thin, critical.density);
  let low = Math.max(
    equation.residualAt(temperature, liquidEnd).pressure,
    equation.residualAt(temperature, thin).pressure,
  );
  let high = equation.residualAt(temperature, vapourEnd).pressure;
  if (!(low < high)) throw new ConvergenceError('saturation', 0, [temperature], high - low, [low, high]);
  let liquid = liquidEnd;
  let vapour = vapourEnd;
  for (let step = 0; step < HALVINGS; step++) {
    const pressure = high / low > 1.001 ? Math.sqrt(low * high) : (low + high) / 2;
    liquid = branchDensity(fluid, temperature, pressure, liquidEnd, dense);
    vapour = branchDensity(fluid, temperature, pressure, thin, vapourEnd);
    const liquidPart = equation.residualAt(temperature, liquid).chemicalPart;
    const gap = liquidPart - equation.residualAt(temperature, vapour).chemicalPart;
    if (gap === 0 || pressure === low || pressure === high) {
      return pureEquilibrium(temperature, pressure, liquid, vapour);
    }
    // The Gibbs energy of the vapour rises faster with pressure: above saturation the liquid has the lower one.
    if (gap < 0) high = pressure;
    else low = pressure;
  }
  throw new ConvergenceError('saturation', HALVINGS, [temperature, liquid, vapour], high - low, [low, high]);
}

/** First density from `outer` towards `inner` where the isotherm stops rising; `inner` if it never does. */
function spinodal(fluid: Refrigerant, temperature: number, outer: number, inner: number): number {
  const { equation } = fluid;
  const ratio = (inner / outer) ** (1 / SCAN);
  let stable = outer;
  for (let k = 1; k <= SCAN; k++) {
    const density = k === SCAN ? inner : outer * ratio ** k;
    if (equation.residualAt(temperature, density).stiffness <= 0) {
      let unstable = density;
      for (let halving = 0; halving < 60; halving++) {
        const middle = (stable + unstable) / 2;
        if (equation.residualAt(temperature, middle).stiffness > 0) stable = middle;
        else unstable = middle;
      }
      return stable;
    }
    stable = density;
  }
  return inner;
}

/** Density on a rising branch by bisection; the nearer end where the branch does not reach the pressure. */
function branchDensity(fluid: Refrigerant, temperature: number, pressure: number, low: number, high: number): number {
  const { equation } = fluid;
  let below = low;
  let above = high;
  for (let halving = 0; halving < 100; halving++) {
    const middle = (below + above) / 2;
    if (middle === below || middle === above) break;
    if (equation.residualAt(temperature, middle).pressure < pressure) below = middle;
    else above = middle;
  }
  return (below + above) / 2;
}
