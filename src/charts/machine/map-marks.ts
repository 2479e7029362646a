// The coldest spell and the mild day on the map of a machine: a point with its range where the loop of the design settles.

import type { MapMark } from '../../assess/index.ts';
import { sayBand, sayQuantity, toView, type UnitView } from '../../quantities/index.ts';
import type { ChartNote, ChartSeries } from '../specification.ts';
import { type Drawn, drawnQuantities } from './map-points.ts';

const names: Readonly<Record<MapMark['when'], string>> = { coldestSpell: 'coldest spell', mildDay: 'mild day' };

/** Nearer to each other than this they are one place with two names [K]. */
const onePlace = 0.5;

export function markSeries(marks: readonly MapMark[], of: Drawn, view: UnitView): readonly ChartSeries[] {
  const { quantity, short } = drawnQuantities[of];
  return places(marks).flatMap(({ mark, name }): readonly ChartSeries[] => {
    const x = toView(mark.evaporating, 'temperature', view);
    const band = mark.values[of];
    const y = (value: number) => toView(value, quantity, view);
    const from = sayQuantity(mark.evaporating, 'temperature', view);
    const to = sayQuantity(mark.condensing, 'temperature', view);
    return [
      { label: name, kind: 'line', ink: 'ink', width: 2, x: [x, x], y: [y(band.low), y(band.high)], silent: true },
      {
        label: name,
        kind: 'points',
        ink: 'ink',
        x: [x],
        y: [y(band.likely)],
        hover: [`<b>${name}</b><br>${from} → ${to}<br>${short}: ${sayBand(band, quantity, view)}`],
      },
    ];
  });
}

/** Nearer to the right end of the picture than this, a name stands to the left of its mark. */
const edge = 0.88;

/**
 * The names of the marks.
 * @param marks  coldest spell and mild day
 * @param of     what is drawn
 * @param range  of the evaporating temperature, in the units of the view
 * @param view   units
 */
export function markNotes(
  marks: readonly MapMark[],
  of: Drawn,
  range: readonly [number, number],
  view: UnitView,
): readonly ChartNote[] {
  const [first, last] = range;
  const y = (value: number) => toView(value, drawnQuantities[of].quantity, view);
  const marked = places(marks);
  return marked.map(({ mark, name }, index) => {
    const x = toView(mark.evaporating, 'temperature', view);
    const share = (x - first) / (last - first);
    const { low, high } = mark.values[of];
    // The colder one below its range and the warmer above, where the lines rise away from it: neither stands in the other's way.
    const isAlone = marked.length === 1;
    if (index === 0 && !isAlone) return { text: name, x, y: y(low), ink: 'ink', place: 'below' };
    return { text: name, x, y: y(high), ink: 'ink', place: share > edge ? 'aboveLeft' : 'above' };
  });
}

function places(marks: readonly MapMark[]): readonly { readonly mark: MapMark; readonly name: string }[] {
  const [first, second] = marks;
  if (first === undefined) return [];
  if (second === undefined) return [{ mark: first, name: names[first.when] }];
  if (Math.abs(first.evaporating - second.evaporating) < onePlace) {
    return [{ mark: first, name: `${names[first.when]} and ${names[second.when]}` }];
  }
  return marks.map((mark) => ({ mark, name: names[mark.when] }));
}
