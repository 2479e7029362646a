// Eras of the data file: each holds until its last year, the last one for ever.

import { DataError } from '../../../numerics/index.ts';
import type { Band } from '../../../quantities/index.ts';
import { fileName } from '../data.ts';

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

/** @throws DataError unless there is at least one entry and each ends in a later year than the one before it. */
export function requireRising(path: string, eras: readonly Era[]): void {
  if (eras.length === 0) throw new DataError(fileName, path, 'needs at least one entry');
  eras.forEach(({ until }, index) => {
    if (until > (eras[index - 1]?.until ?? 0)) return;
    throw new DataError(fileName, `${path}.${index}.until`, 'needs a later year than the entry before');
  });
}
