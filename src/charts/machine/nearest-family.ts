// Which line of the map of a machine has its range and limits drawn.

import type { MachineMap } from './map-points.ts';

/**
 * Index of the family nearest to a condensing temperature.
 * @param study   the map and its marks
 * @param wanted  [K]; that of the coldest spell, or else of the first mark, where absent
 */
export function nearestFamily(study: MachineMap, wanted?: number): number {
  const { map, marks } = study;
  const mark = marks.find(({ when }) => when === 'coldestSpell') ?? marks[0];
  const aim = wanted ?? mark?.condensing ?? map[0]?.condensing ?? 0;
  const distances = map.map(({ condensing }) => Math.abs(condensing - aim));
  return Math.max(0, distances.indexOf(Math.min(...distances)));
}
