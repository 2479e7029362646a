// Rules about how fast the machine can warm the water and how fast the water cools without it: a relay that sticks, a
// machine that stops, one that cannot carry the load. Balance of energy at likely values; the usual advice on rates is from
// memory and has no authoritative source, so it can warn and never clear.

import type { CautionFinding, Grounds } from '../../fact.ts';
import { duration, highestBy, power, temperature, word } from '../../fact.ts';
import type { CautionFacts, OperatingFacts } from '../../facts.ts';

export type WarmingFacts = Pick<
  CautionFacts,
  'operating' | 'tankHeatCapacity' | 'overTemperatureCutOut' | 'stuckOn' | 'livestock'
>;

/** Least time that usual advice gives the water for a change of 1 K [s]; from memory. */
const usualTimePerKelvin = 3600;

const balance: Grounds = {
  source: 'energy balance of the tank at likely values: time for the first 1 K = heat capacity / surplus or lack',
  certainty: 'physics',
};
const rates: Grounds = {
  source: `${balance.source}; at most 1 K an hour is usual advice, from memory`,
  certainty: 'memory',
};

/** No independent cut-out: a relay that sticks cooks the tank. */
export function overTemperatureCutOutMissing(facts: WarmingFacts): CautionFinding | undefined {
  if (facts.overTemperatureCutOut !== 'none') return undefined;
  return cutOutFinding('overTemperatureCutOutMissing', facts);
}

/** Nobody has said whether there is one. */
export function overTemperatureCutOutUnknown(facts: WarmingFacts): CautionFinding | undefined {
  if (facts.overTemperatureCutOut !== 'unknown') return undefined;
  return cutOutFinding('overTemperatureCutOutUnknown', facts);
}

/** There is a cut-out, and until it opens the machine would warm the water faster than usual advice allows. */
export function heatsWaterFast(facts: WarmingFacts): CautionFinding | undefined {
  const { stuckOn, overTemperatureCutOut } = facts;
  if (overTemperatureCutOut !== 'independent' || stuckOn === null) return undefined;
  if (stuckOn.timePerKelvin >= usualTimePerKelvin) return undefined;
  return {
    code: 'heatsWaterFast',
    severity: 'note',
    subject: 'livestock',
    facts: stuckOnFacts(facts),
    ...rates,
    remedy:
      'Test the over-temperature cut-out now and then. A thermostat that switches within 0.5 K and a smaller machine keep the swings small.',
    needsLicensedPerson: false,
  };
}

/** In some state the machine gives less than the tank needs: something else must give the rest. */
export function reliesOnBackup(facts: WarmingFacts): CautionFinding | undefined {
  const state = highestBy(facts.operating, (each) => each.load - each.heatDelivered);
  const missing = state.load - state.heatDelivered;
  if (!(missing > 0)) return undefined;
  return {
    code: 'reliesOnBackup',
    severity: 'look',
    subject: 'livestock',
    facts: {
      when: word(state.when),
      missing: power(missing),
      load: power(state.load),
      heatDelivered: power(state.heatDelivered),
    },
    source: 'energy balance of the tank at likely values',
    certainty: 'physics',
    remedy: 'A heater that carries the whole load by itself, on its own thermostat, or less loss from the tank.',
    needsLicensedPerson: false,
  };
}

/** How fast the tank cools when the machine stops, within usual advice. */
export function machineFailureCoolsTank(facts: WarmingFacts): CautionFinding | undefined {
  const cooling = coolingWithoutHeat(facts);
  if (cooling === undefined || cooling.timePerKelvin < usualTimePerKelvin) return undefined;
  return failureFinding('machineFailureCoolsTank', 'note', cooling, balance);
}

/** The same, faster than usual advice allows. */
export function machineFailureCoolsFast(facts: WarmingFacts): CautionFinding | undefined {
  const cooling = coolingWithoutHeat(facts);
  if (cooling === undefined || cooling.timePerKelvin >= usualTimePerKelvin) return undefined;
  return failureFinding('machineFailureCoolsFast', 'look', cooling, rates);
}

interface Cooling {
  readonly state: OperatingFacts;
  readonly timePerKelvin: number;
}

function coolingWithoutHeat(facts: WarmingFacts): Cooling | undefined {
  const state = highestBy(facts.operating, (each) => each.load);
  return state.load > 0 ? { state, timePerKelvin: facts.tankHeatCapacity / state.load } : undefined;
}

function failureFinding(
  code: 'machineFailureCoolsTank' | 'machineFailureCoolsFast',
  severity: 'note' | 'look',
  { state, timePerKelvin }: Cooling,
  grounds: Grounds,
): CautionFinding {
  return {
    code,
    severity,
    subject: 'livestock',
    facts: {
      when: word(state.when),
      timePerKelvin: duration(timePerKelvin),
      usualTime: duration(usualTimePerKelvin),
    },
    ...grounds,
    remedy: 'An ordinary heater standing by and an alarm that somebody hears.',
    needsLicensedPerson: false,
  };
}

function cutOutFinding(
  code: 'overTemperatureCutOutMissing' | 'overTemperatureCutOutUnknown',
  facts: WarmingFacts,
): CautionFinding {
  const isMissing = code === 'overTemperatureCutOutMissing';
  return {
    code,
    severity: isMissing ? 'stop' : 'look',
    subject: 'livestock',
    facts: stuckOnFacts(facts),
    source: 'common practice, no source: an independent mechanical cut-out set at 29 to 31 °C',
    certainty: isMissing ? 'stated' : 'practice',
    remedy:
      'An independent mechanical over-temperature cut-out in the water, not part of the controller, wired by a licensed electrician to open the supply of every heat source.',
    needsLicensedPerson: true,
  };
}

function stuckOnFacts({ stuckOn }: WarmingFacts): CautionFinding['facts'] {
  if (stuckOn === null) return {};
  return {
    when: word(stuckOn.when),
    timePerKelvin: duration(stuckOn.timePerKelvin),
    usualTime: duration(usualTimePerKelvin),
    ...(stuckOn.settlesAt === null
      ? { beyondWater: temperature(stuckOn.searchedUpTo) }
      : { settlesAt: temperature(stuckOn.settlesAt) }),
  };
}
