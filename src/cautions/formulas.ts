// Every formula record of the cautions in one list.

import type { Formula } from '../quantities/index.ts';
import { chargeLimitFormulas } from './charge-limits.ts';
import { dampFormulas } from './rules/house/damp.ts';
import { leakFormulas } from './rules/refrigerant/leak.ts';

export const cautionsFormulas: readonly Formula[] = [...leakFormulas, ...chargeLimitFormulas, ...dampFormulas];
