// A machine in words of a view: the plain sentence, times of the year, remedies, why one does not help, why a range is wide.

import {
  type Band,
  isQuantityName,
  type QuantityName,
  sayQuantity,
  sayRange,
  type UnitView,
} from '../../quantities/index.ts';
import { distanceQuantity } from '../answers/limits.ts';
import type { LimitMargin } from '../assessment/assessment.ts';
import type { MachineAnswer } from '../assessment/machine-answer.ts';
import type { CountRow, MachineSentence, MapMark, Remedy, RemedyReason } from '../studies/machine/answer.ts';

export const whenWords: Readonly<Record<MapMark['when'], string>> = {
  coldestSpell: 'in the coldest spell',
  mildDay: 'on a mild day',
};

/** What a given value is of. */
export const evidenceWords: Readonly<Record<MachineAnswer['residuals'][number]['of'], string>> = {
  massFlow: 'flow',
  capacity: 'capacity',
  power: 'electricity',
  current: 'current',
  dischargeTemperature: 'discharge',
};

/** What the sentence is made of; an assessment of a machine has all of it too. */
export type MachineWords = Pick<
  MachineSentence,
  'count' | 'madeFor' | 'builtFor' | 'wouldRunAt' | 'heat' | 'power' | 'currentShare'
> & { readonly firstLimit: LimitMargin & { readonly when?: MapMark['when'] } };

/** What the machine was built for, where it would run, what comes of it, and which limit it meets first. */
export function sayMachine(machine: MachineWords, refrigerant: string, view: UnitView): string {
  const { madeFor, builtFor, wouldRunAt, heat, power, currentShare, firstLimit, count } = machine;
  const fluid = madeFor === refrigerant ? '' : ` on ${refrigerant}`;
  const each = count === 1 ? '' : ' each';
  const current =
    currentShare === null
      ? '; its rated current is not known'
      : `, ${sayRange(currentShare, 'fraction', view)} of its rated current`;
  return [
    `Built for ${madeFor} evaporating at ${saySpan(builtFor, view)}, you would run it${fluid} at ${saySpan(wouldRunAt.evaporating, view)}:`,
    `expect ${between(heat, 'power', view)} of heat${each} from ${sayRange(power, 'electricPower', view)} of electricity${current}.`,
    `First limit: ${limitWords(firstLimit, view)}.`,
  ].join(' ');
}

function between(band: Band, quantity: QuantityName, view: UnitView): string {
  const range = sayRange(band, quantity, view);
  return range.includes(' to ') ? `between ${range.replace(' to ', ' and ')}` : range;
}

/** "-15 to 15 °C"; one temperature where the ends are not told apart. */
export function saySpan({ lowest, highest }: MachineSentence['builtFor'], view: UnitView): string {
  return sayRange({ low: lowest, likely: (lowest + highest) / 2, high: highest }, 'temperature', view);
}

/** "discharge temperature, 22 K away on a mild day"; "just met" where nothing would be left in the numbers shown. */
export function limitWords(firstLimit: MachineWords['firstLimit'], view: UnitView): string {
  const { label, quantity, margin, passed, when = 'coldestSpell' } = firstLimit;
  const left = sayQuantity(Math.abs(margin), distanceQuantity(quantity), view, 2);
  const isAtIt = /^0\b(?![.])/.test(left);
  return `${label}, ${isAtIt ? 'just met' : passed ? `passed by ${left}` : `${left} away`} ${whenWords[when]}`;
}

/** What is done, with what is set where it can be. */
export function remedyWords({ name, setting, after }: Remedy, view: UnitView): string {
  const said = sayQuantity(setting.value, isQuantityName(setting.quantity) ? setting.quantity : 'ratio', view, 2);
  switch (name) {
    case 'suctionPressureLimit':
      return `A valve that holds the suction pressure to ${said} at most`;
    case 'lowerCondensing':
      return after === null ? 'Twice the coil in the water' : `Twice the coil in the water: condensing at ${said}`;
    case 'smallerMachine':
      return after === null ? 'A smaller machine' : `A machine of ${said} of its size, rated in proportion`;
    case 'intermittent':
      return after === null ? 'Running with rests' : `Running ${said} of the time`;
  }
}

/** What the remedies are simulated with, and what is left out. */
export const remedyBasis =
  'The exchangers are those that the approaches of the design imply as it is, and answer each change: less heat, a smaller difference, in proportion. Left out: what starting often does to the machine.';

export const remedyReasons: Readonly<Record<RemedyReason, string>> = {
  belowLimitAnyway: 'Changes nothing: the pressure is lower anyway.',
  wouldFallShort: 'A smaller one would no longer carry the tank in the coldest spell.',
  noTimeToRest: 'It has to run all the time, so there is no time to rest.',
  noHeatNeeded: 'The tank needs no heat then.',
  noRunningPoint: 'The machine has no running point with it.',
};

/** Why the model is in doubt, as clauses. */
export const doubtWords: Readonly<Record<string, string>> = {
  otherFluid: 'it is carried to another fluid',
  otherFrequency: 'it is carried to mains of another frequency',
  beyondEvaporating: 'it would evaporate beyond its data',
  beyondCondensing: 'it would condense beyond its data',
  noPoints: 'nothing was printed or measured of it',
};

const leftWords = {
  yes: 'which still carries the load',
  perhaps: 'which may carry the load',
  no: 'which falls short',
} as const;

/** What several machines ask of their supply when they start, and what is left when one fails. */
export function sayStartsAndFailure({ machines, withoutOne, starting }: CountRow, view: UnitView): string {
  const heat = sayRange(withoutOne.heat, 'power', view);
  const failure =
    machines === 1
      ? 'If it fails, a backup heater is all there is.'
      : `If one of the ${machines} fails, ${machines === 2 ? 'one is left and brings' : `${machines - 1} are left and bring`} ${heat}, ${leftWords[withoutOne.carries]}.`;
  if (starting === null)
    return `${failure} What they draw at a start nothing tells: neither locked-rotor nor rated current is given.`;
  const last = sayRange(starting.oneAfterAnother, 'current', view);
  if (machines === 1) return `${failure} It draws ${last} for a moment at each start.`;
  const all = sayRange(starting.allAtOnce, 'current', view);
  return `${failure} Started one after another their compressors draw ${last} for a moment, all at once, as after a power cut without a delay, ${all}.`;
}
