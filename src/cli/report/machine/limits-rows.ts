// How near its limits a machine is, as rows of a table in a terminal.

import { differenceOf, type LimitMargin } from '../../../assess/index.ts';
import { isQuantityName, sayQuantity, type UnitView } from '../../../quantities/index.ts';

/** Name, bound, value here, and what is left of the way. */
export function limitsRows(limits: readonly LimitMargin[], view: UnitView): readonly (readonly string[])[] {
  return limits.map(({ label, quantity, value, bound, margin, passed }) => {
    const level = isQuantityName(quantity) ? quantity : 'ratio';
    const distance = sayQuantity(Math.abs(margin), differenceOf(quantity), view, 2);
    return [
      label,
      sayQuantity(bound, level, view),
      `here about ${sayQuantity(value, level, view)}`,
      passed ? `passed by ${distance}` : `${distance} to go`,
    ];
  });
}
