// A number with its doubt. The engine takes plain numbers; only design/, assess/, cli/ and app/ handle estimates.

/** Where an estimate came from; decides whether it counts as an assumption beside the verdict. */
export type Origin = 'typed' | 'nameplate' | 'measured' | 'assumed' | 'inferred';

/**
 * A quantity in base SI with the ends one would be surprised to see passed (about one time in ten).
 * Always finite, low ≤ likely ≤ high.
 */
export interface Estimate {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly origin: Origin;
}

/** A result with its band, in base SI. */
export interface Band {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}
