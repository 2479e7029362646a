// What cannot lie over the water: a lid larger than the opening, gaps that are told in two ways.

import type { DesignProblem } from '../problems.ts';
import type { DesignDocument } from '../schema/design.ts';
import { aboveLimit, problemAt, valueAt } from './reading.ts';
import type { SizedLoad } from './tank-checks.ts';

const tank = 'tank.load';

export function coverProblems(document: DesignDocument, load: SizedLoad): readonly DesignProblem[] {
  const area = `${tank}.lidArea`;
  const larger = aboveLimit(document, area, smallestOpening(document, load), 'largerThanOpening', (opening) => {
    return `at most the opening of the tank, ${opening}`;
  });
  if (larger.length > 0 || load.lidArea === undefined || load.lidOpenShare === undefined) return larger;
  return [problemAt(document, area, 'givenTwice', 'either the area of the lid or the share of its gaps, not both')];
}

/** The opening at the smaller end of the sizes [m²]. */
function smallestOpening(document: DesignDocument, load: SizedLoad): number {
  const low = (name: string) => valueAt(document, `${tank}.${name}`)?.low ?? 0;
  switch (load.kind) {
    case 'rectangular':
      return low('length') * low('width');
    case 'cylinder':
      return (Math.PI / 4) * low('diameter') ** 2;
    case 'lShape':
      return low('length') * low('width') - low('recessLength') * low('recessWidth');
    case 'panels':
      return low('waterSurface');
  }
}
