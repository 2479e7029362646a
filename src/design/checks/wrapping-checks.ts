// What cannot be done to this tank: wrap a face it does not have, keep the water at freezing, a sheet of unknown thickness.

import type { DesignProblem } from '../problems.ts';
import type { DesignDocument } from '../schema/design.ts';
import { sheetProblems } from './layer-checks.ts';
import { hair, inMetric, problemAt, valueAt } from './reading.ts';

/** Coldest water that is computed [K]. */
const coldestWater = 275.15;

type Measure = NonNullable<NonNullable<DesignDocument['wrapping']>['measures']>[number];

export function wrappingProblems(document: DesignDocument): readonly DesignProblem[] {
  const measures = document.wrapping?.measures ?? [];
  return measures.flatMap((measure, index) => measureProblems(document, measure, `wrapping.measures.${index}`));
}

function measureProblems(document: DesignDocument, measure: Measure, path: string): readonly DesignProblem[] {
  switch (measure.kind) {
    case 'lid':
    case 'nightCover':
      return sheetProblems(document, `${path}.material`, `${path}.thickness`);
    case 'board':
    case 'doubleGlazing':
      return placeProblems(document, `${path}.where`, measure.where);
    case 'cooler':
      return coolerProblems(document, `${path}.by`);
    case 'mat':
    case 'calmerSurface':
      return [];
  }
}

function placeProblems(document: DesignDocument, path: string, where: string): readonly DesignProblem[] {
  const { load } = document.tank;
  if (load.kind !== 'cylinder') return [];
  // What is around a cylinder counts as its front; hidden sides are those of the vessels beside it.
  const besides = [load.sump, load.refuge, load.overflow].filter((vessel) => vessel?.kind === 'rectangular');
  const places = ['front', 'bottom', ...(besides.length > 0 ? ['hidden', 'sideVessels'] : [])];
  if (places.includes(where)) return [];
  return [problemAt(document, path, 'noSuchFace', `a place that this cylinder has: ${places.join(', ')}`)];
}

function coolerProblems(document: DesignDocument, path: string): readonly DesignProblem[] {
  const water = valueAt(document, 'tank.waterTemperature');
  const by = valueAt(document, path);
  if (water === undefined || by === undefined || water.low - by.high >= coldestWater - hair) return [];
  const most = Math.max(0, water.low - coldestWater);
  return [
    problemAt(
      document,
      path,
      'waterTooCold',
      `at most ${inMetric(most, 'temperatureDifference')}: the water stays above ${inMetric(coldestWater, 'temperature')}`,
    ),
  ];
}
