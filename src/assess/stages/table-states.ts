// States by interpolation in tables of the fluids' equations.

import { refrigerant, tabulated } from '../../matter/refrigerants/index.ts';
import type { StatesFrom } from './states.ts';

/** States from tables inside their region, from the equation outside; a table is made when its fluid is first asked for. */
export const tableStates: StatesFrom = { kind: 'tables', fluid: (name) => tabulated(refrigerant(name)) };
