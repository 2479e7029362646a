// All formula records of the tank, in the order in which the working uses them.

import type { Formula } from '../../quantities/index.ts';
import { balanceFormulas } from './balances.ts';
import { coolingFormulas } from './cooling.ts';
import { headspaceFormulas } from './headspace.ts';
import { sumFormulas } from './sums.ts';
import { surfaceFormulas } from './surface.ts';
import { totalFormulas } from './totals.ts';
import { wallFormulas } from './walls.ts';

export const tankFormulas: readonly Formula[] = [
  ...wallFormulas,
  ...surfaceFormulas,
  ...headspaceFormulas,
  ...balanceFormulas,
  ...totalFormulas,
  ...sumFormulas,
  ...coolingFormulas,
];
