// Every formula record of the hermetic machine's model.

import type { Formula } from '../../../../quantities/index.ts';
import { efficiencyFormulas } from './efficiencies.ts';
import { gasPathFormulas } from './gas-path.ts';
import { motorFormulas } from './motor.ts';
import { shellFormulas } from './shell.ts';

export const hermeticFormulas: readonly Formula[] = [
  ...gasPathFormulas,
  ...motorFormulas,
  ...shellFormulas,
  ...efficiencyFormulas,
];
