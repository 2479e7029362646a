// All formula records of the loop, in the order in which the working uses them.

import type { Formula } from '../../quantities/index.ts';
import { comparedFormulas } from './compared.ts';
import { exchangeAndFlowFormulas } from './exchange-and-flow.ts';
import { firstLawFormulas } from './first-law.ts';
import { secondLawFormulas } from './second-law.ts';
import { stateFormulas } from './states.ts';

export const loopFormulas: readonly Formula[] = [
  ...firstLawFormulas,
  ...stateFormulas,
  ...exchangeAndFlowFormulas,
  ...comparedFormulas,
  ...secondLawFormulas,
];
