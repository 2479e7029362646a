// How many such machines the tank needs: whole numbers, what each number of them gives, and how many run in which month. Each has a
// circuit of its own, so that no charge grows.

import { heatReachingWater } from '../../../plant/index.ts';
import type { Band } from '../../../quantities/index.ts';
import { bandWithUnit } from '../../answers/pieces.ts';
import type { Carries, CountRow, HowMany, StagedMonth } from './answer.ts';

/** Heat and electricity of one machine in one state of the year [W]. */
export interface OneMachine {
  /** Out of its condenser. */
  readonly heat: Band;
  readonly power: Band;
  /** Of its compressor [A]. */
  readonly current: Band;
}

/** What stands beside the machines [W]: a fan for each of them; one loop and one set of controls for all. */
export interface PartsBeside {
  readonly fanPower: number;
  readonly loopPumpPower: number;
  /** Share of the loop pump's electricity that ends in the water. */
  readonly loopPumpShareToWater: number;
  readonly controlsPower: number;
}

export interface HowManyInput {
  readonly coldestSpell: OneMachine;
  /** Null where there is no month in which it has something to do. */
  readonly mildDay: OneMachine | null;
  /** Heat the tank needs in the coldest spell [W]. */
  readonly load: Band;
  readonly planned: number;
  readonly beside: PartsBeside;
  readonly chargePerCircuit: Band;
  /** What one motor draws while its rotor stands [A]; null where nothing tells. */
  readonly lockedRotorCurrent: Band | null;
  readonly months: readonly { readonly month: string; readonly load: number; readonly heatOfOne: number | null }[];
}

/** More machines than this are counted and not listed. */
const mostRows = 8;

export function howMany(input: HowManyInput): HowMany {
  const { load, planned, coldestSpell, beside, chargePerCircuit } = input;
  const pumpHeat = heatReachingWater(0, beside.loopPumpPower, beside.loopPumpShareToWater);
  const needed = {
    low: machinesFor(load.low, coldestSpell.heat.high, pumpHeat),
    likely: machinesFor(load.likely, coldestSpell.heat.likely, pumpHeat),
    high: machinesFor(load.high, coldestSpell.heat.low, pumpHeat),
  };
  const listed = Math.min(mostRows, Math.max(planned, needed.high ?? needed.likely ?? 1, 2));
  const machines = Math.max(planned, needed.likely ?? planned);
  return {
    needed,
    planned,
    load: bandWithUnit('tank.load', 'power', load),
    rows: Array.from({ length: listed }, (_, index) => countRow(input, pumpHeat, index + 1)),
    months: input.months.map((month) => staged(month, pumpHeat, machines)),
    chargePerCircuit,
    chargeOfAll: times(chargePerCircuit, machines),
  };
}

/**
 * The fewest machines whose heat with that of the loop pump is at least the load; 0 where none is needed, null where one gives no heat.
 * The pump runs only while a machine does, so that its heat alone carries nothing.
 */
export function machinesFor(load: number, heatOfOne: number, pumpHeat: number): number | null {
  if (load <= 0) return 0;
  if (!(heatOfOne > 0)) return null;
  return Math.max(1, Math.ceil((load - pumpHeat) / heatOfOne - 1e-9));
}

function countRow(input: HowManyInput, pumpHeat: number, machines: number): CountRow {
  const { coldestSpell, mildDay, load, beside } = input;
  const heat = plus(times(coldestSpell.heat, machines), pumpHeat);
  const left = machines === 1 ? times(coldestSpell.heat, 0) : plus(times(coldestSpell.heat, machines - 1), pumpHeat);
  const ofAll = plus(times(coldestSpell.power, machines), machines * beside.fanPower);
  const name = `howMany.${machines}`;
  return {
    machines,
    coldestSpell: bandWithUnit(`${name}.coldestSpell`, 'power', heat),
    mildDay:
      mildDay === null ? null : bandWithUnit(`${name}.mildDay`, 'power', plus(times(mildDay.heat, machines), pumpHeat)),
    power: bandWithUnit(`${name}.power`, 'electricPower', plus(ofAll, beside.loopPumpPower + beside.controlsPower)),
    share: heat.likely > 0 ? Math.min(1, Math.max(0, load.likely) / heat.likely) : 1,
    carries: carriedBy(heat, load),
    withoutOne: { heat: bandWithUnit(`${name}.withoutOne`, 'power', left), carries: carriedBy(left, load) },
    starting: startingCurrents(input, machines, name),
  };
}

function carriedBy(heat: Band, load: Band): Carries {
  if (heat.low >= load.high) return 'yes';
  return heat.high < load.low ? 'no' : 'perhaps';
}

/** One after another the last one starts while the others run; after a power cut all start at once unless something delays them. */
function startingCurrents(
  { lockedRotorCurrent, coldestSpell }: HowManyInput,
  machines: number,
  name: string,
): CountRow['starting'] {
  if (lockedRotorCurrent === null) return null;
  const lastOne = sum(times(coldestSpell.current, machines - 1), lockedRotorCurrent);
  return {
    oneAfterAnother: bandWithUnit(`${name}.oneAfterAnother`, 'current', lastOne),
    allAtOnce: bandWithUnit(`${name}.allAtOnce`, 'current', times(lockedRotorCurrent, machines)),
  };
}

/**
 * Machines that run at the same time for a month's mean load, the last of them a share of the time. One alone takes the loop pump with
 * it; of several the pump runs all the time.
 */
function staged(
  { month, load, heatOfOne }: HowManyInput['months'][number],
  pumpHeat: number,
  machines: number,
): StagedMonth {
  if (load <= 0) return { month, load, heatOfOne, running: 0, shareOfLast: 0 };
  if (heatOfOne === null || !(heatOfOne > 0)) return { month, load, heatOfOne, running: null, shareOfLast: null };
  const needed = machinesFor(load, heatOfOne, pumpHeat)!;
  if (needed > machines) return { month, load, heatOfOne, running: machines, shareOfLast: 1 };
  const shareOfLast = needed === 1 ? load / (heatOfOne + pumpHeat) : (load - pumpHeat) / heatOfOne - (needed - 1);
  return { month, load, heatOfOne, running: needed, shareOfLast: Math.min(1, shareOfLast) };
}

function times({ low, likely, high }: Band, factor: number): Band {
  return { low: factor * low, likely: factor * likely, high: factor * high };
}

function plus({ low, likely, high }: Band, term: number): Band {
  return { low: low + term, likely: likely + term, high: high + term };
}

function sum(a: Band, b: Band): Band {
  return { low: a.low + b.low, likely: a.likely + b.likely, high: a.high + b.high };
}
