// Public names of the numerics: root finding, and the errors that everything throws.

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
