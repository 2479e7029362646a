// How near its limits a machine is, as rows of a table in a terminal.

import { distanceQuantity, type LimitMargin } from '../../../assess/index.ts';
import { sayQuantity, type UnitView } from '../../../quantities/index.ts';

/** Name, bound, value here, and what is left of the way. */
export function limitsRows(limits: readonly LimitMargin[], view: UnitView): readonly (readonly string[])[] {
  return limits.map(({ label, quantity, value, bound, margin, passed }) => {
    const distance = sayQuantity(Math.abs(margin), distanceQuantity(quantity), view, 2);
    return [
      label,
      sayQuantity(bound, quantity, view),
      `here about ${sayQuantity(value, quantity, view)}`,
      passed ? `passed by ${distance}` : `${distance} to go`,
    ];
  });
}
