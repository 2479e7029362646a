// Rules about a tank without any electricity: how long until its water is as cold as tropical animals must not be. The loss
// falls as the water cools, and so is followed; only the water stores heat, so a real tank takes rather longer.

import type { CautionFinding, Grounds } from '../../fact.ts';
import { duration, temperature } from '../../fact.ts';
import type { CautionFacts } from '../../facts.ts';
import { lowestUsualWater } from './livestock.ts';

export type PowerFailureFacts = Pick<CautionFacts, 'standing' | 'livestock' | 'waterTemperature'>;

/** A failure in the evening is found in the morning [s]: own judgement. */
const unnoticed = 12 * 3600;

const grounds: Grounds = {
  source:
    'energy balance of the cooling water, with heater, pumps and lights off in the coldest spell; the alarm temperature is usual advice, from memory',
  certainty: 'memory',
};

/** Within a night. */
export function powerFailureChillsFast(facts: PowerFailureFacts): CautionFinding | undefined {
  const time = timeToAlarm(facts);
  return time === null || time > unnoticed ? undefined : finding('powerFailureChillsFast', 'look', time);
}

/** Some time, but not within a night. */
export function powerFailureChillsTank(facts: PowerFailureFacts): CautionFinding | undefined {
  const time = timeToAlarm(facts);
  return time === null || time <= unnoticed ? undefined : finding('powerFailureChillsTank', 'note', time);
}

/** Null where the water never cools so far, is kept that cool, or holds plants only. */
function timeToAlarm({ standing, livestock, waterTemperature }: PowerFailureFacts): number | null {
  if (standing === null || livestock === 'plantsOnly' || waterTemperature <= lowestUsualWater) return null;
  return standing.timeToAlarm;
}

function finding(
  code: 'powerFailureChillsFast' | 'powerFailureChillsTank',
  severity: 'look' | 'note',
  time: number,
): CautionFinding {
  return {
    code,
    severity,
    subject: 'livestock',
    facts: { timeToAlarm: duration(time), limit: temperature(lowestUsualWater), unnoticed: duration(unnoticed) },
    ...grounds,
    remedy:
      'Blankets over glass and surface and an air stone on a battery gain hours; an alarm that needs no mains tells somebody. Boards and a lid lengthen the time for good.',
    needsLicensedPerson: false,
  };
}
