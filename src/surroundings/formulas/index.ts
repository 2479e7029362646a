// All formula records of the surroundings.

import type { Formula } from '../../quantities/index.ts';
import { moistureFormulas } from './moisture.ts';
import { monthFormulas } from './months.ts';
import { nearbyFormulas } from './nearby.ts';

export const surroundingsFormulas: readonly Formula[] = [...monthFormulas, ...nearbyFormulas, ...moistureFormulas];
