// Formula record of what was metered.

import type { Formula } from '../../../quantities/index.ts';
import { powerOfCurrent } from './point.ts';

export const benchFormulas: readonly Formula[] = [
  {
    id: 'compressor.powerOfCurrent',
    title: 'Power of a current',
    result: { symbol: 'P', meaning: 'electric power', unit: 'W', quantity: 'electricPower' },
    expression: 'V * I * cosphi',
    symbols: {
      V: { meaning: 'voltage of the mains', unit: 'V' },
      I: { meaning: 'current read', unit: 'A' },
      cosphi: { meaning: 'power factor of the motor', unit: '1', quantity: 'ratio' },
    },
    source: 'active power of an alternating current with the power factor of its definition',
    validity: 'effective values; the power factor is a range unless a watt meter was there',
    file: 'src/parts/compressor/bench/point.ts',
    compute: ({ V, I, cosphi }) => powerOfCurrent(V!, I!, cosphi!),
    examples: [
      { V: 230, I: 0.9, cosphi: 0.6 },
      { V: 120, I: 2.1, cosphi: 0.85 },
    ],
  },
];
