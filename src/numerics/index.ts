// Public names of the numerics: root finding, Chebyshev's polynomials, and the errors that everything throws.

export { chebyshevInPowers } from './chebyshev.ts';
export {
  ConvergenceError,
  DataError,
  InputError,
  KettlefinError,
  NoSolutionError,
  OutOfModelError,
  requireFinite,
  requireNonNegative,
  requirePositive,
  requireWithin,
} from './errors.ts';
export { findRoot, type Root, type RootOptions } from './root.ts';
