// Public names of the numerics: root finding, Chebyshev's polynomials, small symmetric systems, and the errors that everything
// throws.

export { chebyshevInPowers } from './chebyshev.ts';
export {
  choleskyFactor,
  inverseCholesky,
  leadingDirections,
  solveCholesky,
  solveLower,
  solveLowerTransposed,
} from './cholesky.ts';
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
export { type LeastSquares, leastSquares } from './least-squares.ts';
export { findRoot, type Root, type RootOptions } from './root.ts';
export { studentTail } from './student.ts';
