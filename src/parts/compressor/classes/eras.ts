// Eras of the data file: each holds until its last year, the last one for ever.

import type { Band } from '../../../quantities/index.ts';

export interface Era {
  /** Last year. */
  readonly until: number;
}

/** Eras that a range of years touches; never none. */
export function erasMet<E extends Era>(eras: readonly E[], { low, high }: Pick<Band, 'low' | 'high'>): readonly E[] {
  return eras.filter((era, index) => {
    const after = eras[index - 1]?.until ?? Number.NEGATIVE_INFINITY;
    const until = index === eras.length - 1 ? Number.POSITIVE_INFINITY : era.until;
    return low <= until && high > after;
  });
}

/** The era of one year. */
export function eraOf<E extends Era>(eras: readonly E[], year: number): E {
  return erasMet(eras, { low: year, high: year })[0]!;
}
