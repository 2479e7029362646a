// The family of typed errors of the whole project: a code, the facts as fields, and a plain message for logs.
// The sentence a person reads is made at the edge (command line, workbench) from these facts.

/** Every error the engine throws on purpose. `code` is stable and named in the documentation. */
export abstract class KettlefinError extends Error {
  abstract readonly code: string;
  /** The facts as plain data, for --json answers and for posting out of a worker. */
  abstract facts(): Readonly<Record<string, unknown>>;
}

/** The caller gave something impossible: a negative length, an unknown name, NaN. */
export class InputError extends KettlefinError {
  override readonly name = 'InputError';
  readonly code: string;
  readonly path: string;
  readonly received: unknown;
  readonly expected: string;

  constructor(path: string, received: unknown, expected: string, code = 'badInput') {
    super(`${path}: ${shown(received)} is not accepted; expected ${expected}`);
    this.code = code;
    this.path = path;
    this.received = received;
    this.expected = expected;
  }

  facts() {
    return { path: this.path, received: shown(this.received), expected: this.expected };
  }
}

/** Longer texts are cut in messages [characters]. */
const longestShown = 100;

/** Whatever was received, short enough for a message. Never runs code of it: an object may say nothing about itself. */
function shown(received: unknown): string {
  if (Array.isArray(received)) return 'a list';
  if (typeof received === 'object' && received !== null) return 'an object';
  if (typeof received === 'function') return 'a function';
  const text = String(received);
  return text.length > longestShown ? `${text.slice(0, longestShown)}…` : text;
}

/** Beyond what a model can describe: a temperature above an equation's limit. */
export class OutOfModelError extends KettlefinError {
  override readonly name = 'OutOfModelError';
  readonly code: string;
  readonly quantity: string;
  readonly value: number;
  readonly unit: string;
  readonly low: number;
  readonly high: number;

  /** @param reason  where the limits come from, if that is not plain: the end of the sentence */
  constructor(
    quantity: string,
    value: number,
    unit: string,
    low: number,
    high: number,
    code = 'outOfModel',
    reason?: string,
  ) {
    super(
      `${quantity} ${value} ${unit} is outside ${low} to ${high} ${unit}${reason === undefined ? '' : `: ${reason}`}`,
    );
    this.code = code;
    this.quantity = quantity;
    this.value = value;
    this.unit = unit;
    this.low = low;
    this.high = high;
  }

  facts() {
    return { quantity: this.quantity, value: this.value, unit: this.unit, low: this.low, high: this.high };
  }
}

/** Physics forbids the request; `limit` says what was reached. */
export class NoSolutionError extends KettlefinError {
  override readonly name = 'NoSolutionError';
  readonly code: string;
  readonly limit: string;

  constructor(message: string, limit: string, code = 'noSolution') {
    super(message);
    this.code = code;
    this.limit = limit;
  }

  facts() {
    return { limit: this.limit };
  }
}

/** A solver gave up. */
export class ConvergenceError extends KettlefinError {
  override readonly name = 'ConvergenceError';
  readonly code = 'notConverged';
  readonly iterations: number;
  readonly lastPoint: readonly number[];
  readonly residual: number;
  readonly bracket: readonly [number, number] | undefined;

  constructor(
    what: string,
    iterations: number,
    lastPoint: readonly number[],
    residual: number,
    bracket?: readonly [number, number],
  ) {
    super(`${what} did not converge in ${iterations} iterations (residual ${residual})`);
    this.iterations = iterations;
    this.lastPoint = lastPoint;
    this.residual = residual;
    this.bracket = bracket;
  }

  facts() {
    return {
      iterations: this.iterations,
      lastPoint: this.lastPoint,
      residual: this.residual,
      bracket: this.bracket ?? null,
    };
  }
}

/** A data file that ships with the project is broken. */
export class DataError extends KettlefinError {
  override readonly name = 'DataError';
  readonly code = 'brokenData';
  readonly file: string;
  readonly path: string;
  readonly rule: string;

  constructor(file: string, path: string, rule: string) {
    super(`${file}: ${path}: ${rule}`);
    this.file = file;
    this.path = path;
    this.rule = rule;
  }

  facts() {
    return { file: this.file, path: this.path, rule: this.rule };
  }
}

/** @throws InputError unless `value` is a finite number. */
export function requireFinite(path: string, value: number): void {
  if (!Number.isFinite(value)) throw new InputError(path, value, 'a finite number');
}

/** @throws InputError unless `value` is a finite number above zero. */
export function requirePositive(path: string, value: number): void {
  if (!(Number.isFinite(value) && value > 0)) throw new InputError(path, value, 'a finite number above 0');
}

/** @throws InputError unless `value` is a finite number, zero or above. */
export function requireNonNegative(path: string, value: number): void {
  if (!(Number.isFinite(value) && value >= 0)) throw new InputError(path, value, 'a finite number, 0 or above');
}

/** @throws InputError unless `low` ≤ `value` ≤ `high`. */
export function requireWithin(path: string, value: number, low: number, high: number): void {
  if (!(Number.isFinite(value) && value >= low && value <= high)) {
    throw new InputError(path, value, `a number from ${low} to ${high}`);
  }
}
