// The first sentence of the station: what the machine was built for, where it would run, what comes of it, and which limit it meets
// first.

import type { LimitMargin, MachineAnswer } from '../../assess/index.ts';
import { sayRange, type UnitView } from '../../quantities/index.ts';
import { say } from '../ui/say.ts';
import { quantityNamed } from './words.ts';

export function machineSentence(machine: MachineAnswer, refrigerant: string, view: UnitView): string {
  const { madeFor, builtFor, wouldRunAt, heat, power, currentShare, firstLimit, count } = machine;
  const fluid = madeFor === refrigerant ? '' : ` on ${refrigerant}`;
  const each = count === 1 ? '' : ' each';
  const current =
    currentShare === null
      ? 'of what share of its rated current nobody can say, for that is not known'
      : `${sayRange(currentShare, 'fraction', view)} of its rated current`;
  const heatEnds = between(heat, 'power', view);
  return [
    `Built for ${madeFor} evaporating at ${span(builtFor, view)}, you would run it${fluid} at ${span(wouldRunAt.evaporating, view)}:`,
    `expect ${heatEnds} of heat${each} from ${sayRange(power, 'electricPower', view)} of electricity, ${current}.`,
    limitWords(firstLimit, view),
  ].join(' ');
}

function between(band: MachineAnswer['heat'], quantity: 'power', view: UnitView): string {
  const range = sayRange(band, quantity, view);
  return range.includes(' to ') ? `between ${range.replace(' to ', ' and ')}` : range;
}

/** One temperature where its ends are not told apart. */
function span({ lowest, highest }: MachineAnswer['builtFor'], view: UnitView): string {
  return sayRange({ low: lowest, likely: (lowest + highest) / 2, high: highest }, 'temperature', view);
}

function limitWords({ label, quantity, margin, passed }: LimitMargin, view: UnitView): string {
  const name = quantity === 'temperature' ? 'temperatureDifference' : quantityNamed(quantity);
  const left = say(Math.abs(margin), name, view, 2);
  return passed ? `First limit: ${label}, passed by ${left}.` : `First limit: ${label}, ${left} away.`;
}
