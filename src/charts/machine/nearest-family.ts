// Which line of the map of a machine has its range and limits drawn.

import type { MachineStudy } from '../../assess/index.ts';

/**
 * Index of the family nearest to a condensing temperature; of the coldest spell where none is wished for.
 * @param wanted  [K]
 */
export function nearestFamily({ map, marks, sentence }: MachineStudy, wanted?: number): number {
  const coldest = marks.find(({ when }) => when === 'coldestSpell')?.condensing ?? sentence.condensing;
  const aim = wanted ?? coldest;
  const distances = map.map(({ condensing }) => Math.abs(condensing - aim));
  return Math.max(0, distances.indexOf(Math.min(...distances)));
}
