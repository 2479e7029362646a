// The fields of the design that a chain of steps goes back to.

import { fieldRecord } from '../../design/index.ts';
import type { ResultChain } from '../../quantities/index.ts';

/** Paths of the design among what a chain begins with; the rest are assumptions of the models. */
export function designPathsOf({ origins }: ResultChain): readonly string[] {
  return origins.filter((origin) => fieldRecord(origin) !== undefined);
}
