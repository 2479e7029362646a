// Values of the line families that are round in the units of the view.

import { fromView, type UnitView } from '../../quantities/index.ts';

/** Every 20 °C, or every 40 °F [K]. */
export function isothermsFor(view: UnitView): readonly number[] {
  const [from, step, count] = view === 'us' ? [-80, 40, 14] : [-60, 20, 14];
  return Array.from({ length: count }, (_, index) => fromView(from + step * index, 'temperature', view));
}

/** 1, 2, 5 bar and so on, or 10, 20, 50 psi and so on [Pa]. */
export function isobarsFor(view: UnitView): readonly number[] {
  const numbers = view === 'us' ? [5, 10, 20, 50, 100, 200, 500] : [0.2, 0.5, 1, 2, 5, 10, 20, 40];
  return numbers.map((number) => fromView(number, 'pressure', view));
}
