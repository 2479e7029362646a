// What savings are reckoned with over time.

export interface Terms {
  /** Real discount rate [1/year]. */
  readonly discountRate: number;
  /** Number of yearly savings that are counted. */
  readonly years: number;
}
