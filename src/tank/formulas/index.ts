// All formula records of the tank, in the order in which the working uses them.

import type { Formula } from '../../quantities/index.ts';
import { balanceFormulas } from './balances.ts';
import { coolingFormulas } from './cooling.ts';
import { gapFormulas } from './gaps.ts';
import { headspaceFormulas } from './headspace.ts';
import { hoodFormulas } from './hood.ts';
import { meterFormulas } from './meter.ts';
import { methodFormulas } from './methods.ts';
import { partFormulas } from './parts.ts';
import { pipeFormulas } from './pipes.ts';
import { sumFormulas } from './sums.ts';
import { surfaceFormulas } from './surface.ts';
import { totalFormulas } from './totals.ts';
import { wallFormulas } from './walls.ts';

export const tankFormulas: readonly Formula[] = [
  ...wallFormulas,
  ...gapFormulas,
  ...pipeFormulas,
  ...surfaceFormulas,
  ...methodFormulas,
  ...headspaceFormulas,
  ...hoodFormulas,
  ...balanceFormulas,
  ...totalFormulas,
  ...sumFormulas,
  ...coolingFormulas,
  ...meterFormulas,
  ...partFormulas,
];
