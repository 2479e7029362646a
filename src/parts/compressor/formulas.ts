// Every formula record of the compressor: the same functions the engine runs, in a form that people read and machines evaluate.

import type { Formula } from '../../quantities/index.ts';
import { benchFormulas } from './bench/formulas.ts';
import { domeFormulas } from './classes/dome.ts';
import { limitFormulas } from './envelope/limit-distance.ts';
import { nameplateFormulas } from './envelope/nameplate.ts';
import { startingFormulas } from './envelope/starting.ts';
import { hermeticFormulas } from './hermetic/formulas/index.ts';
import { identificationFormulas } from './identification/formulas.ts';
import { polynomialFormulas } from './polynomial/formulas.ts';
import { runningFormulas } from './running-formulas.ts';

export const compressorFormulas: readonly Formula[] = [
  ...benchFormulas,
  ...domeFormulas,
  ...identificationFormulas,
  ...hermeticFormulas,
  ...runningFormulas,
  ...limitFormulas,
  ...nameplateFormulas,
  ...startingFormulas,
  ...polynomialFormulas,
];
