// One root of a continuous function of one variable inside a bracket, by Brent's method: inverse quadratic and secant
// steps, with bisection whenever they would be slow. The bracket is checked at the door; a failure is an error that
// carries it, never NaN. findRoot does not search for a bracket: the caller knows the physics.

import { ConvergenceError, InputError, requireFinite } from './errors.ts';

export interface RootOptions {
  /** Stop when the bracket is narrower than this [unit of x]; default 0: only the relative one counts. */
  readonly absoluteTolerance?: number;
  /** Stop when the bracket is narrower than this share of |x|; default 1e-13. */
  readonly relativeTolerance?: number;
  /** Stop as soon as |f(x)| is at most this [unit of f]; default 0: only an exact zero. */
  readonly residualTolerance?: number;
  /** f(low) and f(high) where they are known: not evaluated then, which the function need not bear. */
  readonly valueAtLow?: number;
  readonly valueAtHigh?: number;
  /** Default 200: a root of high multiplicity needs many; a simple one about 8. */
  readonly maxIterations?: number;
  /** What is searched for, for the error's message: 'condensing temperature'. */
  readonly what?: string;
}

export interface Root {
  readonly root: number;
  /** Evaluations of f after those at the ends of the bracket. */
  readonly iterations: number;
  /** f(root). */
  readonly residual: number;
}

/**
 * Root x of f(x) = 0 between two points where f has opposite signs.
 *     Brent's method: inverse quadratic interpolation a, b, c → x, kept only where it shrinks the bracket fast enough
 * @param f        continuous function of one number
 * @param low      one end of the bracket, finite
 * @param high     the other end, finite, not equal to `low`; may be below it
 * @param options  tolerances, see RootOptions
 * @returns        the root, how many evaluations it took, and f there
 * @throws InputError (code 'noSignChange') if f has the same sign at both ends; InputError if an end or an option is not
 *         usable; ConvergenceError with the last bracket if f is not finite inside it or maxIterations did not suffice.
 * Pitfall: a pole with a sign change looks like a root; look at `residual` where f may have one.
 * Source: R. P. Brent (1973), Algorithms for Minimization without Derivatives, chapter 4 (from memory of the source).
 * Worked value: f(x) = x² − 2 on 0 … 2 → 1.41421356237.
 */
export function findRoot(f: (x: number) => number, low: number, high: number, options: RootOptions = {}): Root {
  const what = options.what ?? 'root';
  const absolute = options.absoluteTolerance ?? 0;
  const relative = options.relativeTolerance ?? 1e-13;
  const residualTolerance = options.residualTolerance ?? 0;
  const maxIterations = options.maxIterations ?? 200;
  checkArguments(low, high, absolute, relative, residualTolerance, maxIterations);

  const evaluate = (x: number, iterations: number, from: number, to: number): number => {
    const value = f(x);
    if (!Number.isFinite(value)) throw new ConvergenceError(what, iterations, [x], value, [from, to]);
    return value;
  };

  // b is the best point, [b, c] always brackets the root, a is the previous best point.
  let a = low;
  let b = high;
  let fa = options.valueAtLow ?? evaluate(a, 0, low, high);
  let fb = options.valueAtHigh ?? evaluate(b, 0, low, high);
  if (Math.abs(fa) <= residualTolerance) return { root: a, iterations: 0, residual: fa };
  if (Math.abs(fb) <= residualTolerance) return { root: b, iterations: 0, residual: fb };
  if (fa > 0 === fb > 0) {
    const ends = `f(${low}) = ${fa}, f(${high}) = ${fb}`;
    throw new InputError(what, ends, 'values of opposite sign at the two ends of the bracket', 'noSignChange');
  }
  let c = a;
  let fc = fa;
  let step = b - a;
  let stepBefore = step;

  for (let iterations = 1; iterations <= maxIterations; iterations++) {
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b;
      b = c;
      c = a;
      fa = fb;
      fb = fc;
      fc = fa;
    }
    const tolerance = 2 * Number.EPSILON * Math.abs(b) + 0.5 * Math.max(absolute, relative * Math.abs(b));
    const half = 0.5 * (c - b);
    if (Math.abs(half) <= tolerance || Math.abs(fb) <= residualTolerance) {
      return { root: b, iterations: iterations - 1, residual: fb };
    }
    const tried = interpolatedStep(a, b, c, fa, fb, fc, half);
    const useful =
      Math.abs(stepBefore) >= tolerance &&
      Math.abs(fa) > Math.abs(fb) &&
      tried * Math.sign(half) > 0 &&
      Math.abs(tried) < Math.min(1.5 * Math.abs(half) - 0.5 * tolerance, 0.5 * Math.abs(stepBefore));
    stepBefore = useful ? step : half;
    step = useful ? tried : half;
    a = b;
    fa = fb;
    b += Math.abs(step) > tolerance ? step : tolerance * Math.sign(half);
    fb = evaluate(b, iterations, Math.min(a, c), Math.max(a, c));
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      stepBefore = step;
    }
  }
  throw new ConvergenceError(what, maxIterations, [b], fb, [Math.min(b, c), Math.max(b, c)]);
}

/** Step from b by the secant (two points) or by inverse quadratic interpolation (three); 0 where neither exists. */
function interpolatedStep(a: number, b: number, c: number, fa: number, fb: number, fc: number, half: number): number {
  const s = fb / fa;
  let step: number;
  if (a === c) {
    step = -(2 * half * s) / (1 - s);
  } else {
    const q = fa / fc;
    const r = fb / fc;
    step = -(s * (2 * half * q * (q - r) - (b - a) * (r - 1))) / ((q - 1) * (r - 1) * (s - 1));
  }
  return Number.isFinite(step) ? step : 0;
}

function checkArguments(
  low: number,
  high: number,
  absolute: number,
  relative: number,
  residual: number,
  maxIterations: number,
): void {
  requireFinite('low', low);
  requireFinite('high', high);
  if (low === high) throw new InputError('high', high, 'a bracket of two different ends');
  const tolerances = { absoluteTolerance: absolute, relativeTolerance: relative, residualTolerance: residual };
  for (const [name, value] of Object.entries(tolerances)) {
    if (!(Number.isFinite(value) && value >= 0)) throw new InputError(name, value, 'a finite number, 0 or above');
  }
  if (!(Number.isInteger(maxIterations) && maxIterations > 0)) {
    throw new InputError('maxIterations', maxIterations, 'a whole number above 0');
  }
}
