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
