// Short words of the station: times of the year, remedies, why one does not help, why a range is wide.

import type { MapMark, Remedy, RemedyReason } from '../../assess/index.ts';
import { isQuantityName, type QuantityName, sayQuantity, type UnitView } from '../../quantities/index.ts';

export const whenWords: Readonly<Record<MapMark['when'], string>> = {
  coldestSpell: 'in the coldest spell',
  mildDay: 'on a mild day',
};

/** What is done, with what is set. */
export function remedyWords({ name, setting }: Remedy, view: UnitView): string {
  const said = sayQuantity(setting.value, quantityNamed(setting.quantity), view, 2);
  switch (name) {
    case 'suctionPressureLimit':
      return `A valve that holds the suction pressure to ${said} at most`;
    case 'lowerCondensing':
      return `Condensing at ${said}: more coil, or cooler water`;
    case 'smallerMachine':
      return `A machine of ${said} of its size`;
    case 'intermittent':
      return `Running ${said} of the time`;
  }
}

export const reasonWords: Readonly<Record<RemedyReason, string>> = {
  belowLimitAnyway: 'Changes nothing: the pressure is lower anyway.',
  wouldFallShort: 'A smaller one would no longer carry the tank in the coldest spell.',
  noTimeToRest: 'It has to run all the time, so there is no time to rest.',
  noHeatNeeded: 'The tank needs no heat then.',
  noRunningPoint: 'The machine has no running point with it.',
};

export const doubtWords: Readonly<Record<string, string>> = {
  otherFluid: 'carried to another fluid',
  otherFrequency: 'carried to mains of another frequency',
  beyondEvaporating: 'evaporating beyond its data',
  beyondCondensing: 'condensing beyond its data',
  noPoints: 'nothing printed or measured of it',
};

export function quantityNamed(name: string): QuantityName {
  return isQuantityName(name) ? name : 'ratio';
}
