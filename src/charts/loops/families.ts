// Values of the line families that are round in the units of the view.

import { fromView, type UnitView } from '../../quantities/index.ts';

/** Every 20 °C, or every 40 °F, as far as the widest dome, that of water [K]. */
export function isothermsFor(view: UnitView): readonly number[] {
  const [from, step, count] = view === 'us' ? [-80, 40, 21] : [-60, 20, 23];
  return Array.from({ length: count }, (_, index) => fromView(from + step * index, 'temperature', view));
}

/** 1, 2, 5 bar and so on, or 10, 20, 50 psi and so on, down to those of cold water [Pa]. */
export function isobarsFor(view: UnitView): readonly number[] {
  const numbers =
    view === 'us'
      ? [0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1500]
      : [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 40, 100];
  return numbers.map((number) => fromView(number, 'pressure', view));
}

/** More lines than this of one family crowd a picture. */
const mostLines = 13;

/**
 * The values of a family that a picture can bear: those inside its region, and where these are too many, every second or third,
 * so that the distance from line to line stays even.
 * @param values  rising
 * @param low     lower end of the region, in their unit
 * @param high    upper end
 */
export function linesWithin(values: readonly number[], low: number, high: number): readonly number[] {
  const inside = values.filter((value) => value >= low && value <= high);
  const every = Math.ceil(inside.length / mostLines);
  return inside.filter((_, index) => index % every === 0);
}
