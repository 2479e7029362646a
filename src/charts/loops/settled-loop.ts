// What the pictures of the loop ask for where a design settles: its states, the levels of source and water, the limits that
// are saturation temperatures, and line families round in the view.

import type { OperatingAnswer } from '../../assess/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import { isobarsFor, isothermsFor } from './families.ts';
import type { DiagramRequest, LimitRequest } from './loop-diagram.ts';

export function settledLoop(operating: OperatingAnswer, view: UnitView): DiagramRequest {
  return {
    refrigerant: operating.refrigerant,
    points: operating.points,
    levels: [
      { name: 'source', temperature: operating.sourceTemperature },
      { name: 'water', temperature: operating.waterTemperature },
    ],
    limits: operating.limits.flatMap(({ limit, bound }) => {
      const drawn = drawnLimits[limit];
      return drawn === undefined ? [] : [{ ...drawn, temperature: bound }];
    }),
    isotherms: isothermsFor(view),
    isobars: isobarsFor(view),
  };
}

/** Limits of the machine that are saturation temperatures, and the side on which each is passed. */
const drawnLimits: Readonly<Record<string, Omit<LimitRequest, 'temperature'>>> = {
  condensingContinuous: { label: 'above its continuous condensing limit', beyond: 'above' },
  evaporatingLowest: { label: 'below its lowest evaporating limit', beyond: 'below' },
};
