// How many such machines the tank needs: whole numbers, what each number of them gives, and how many run in which month. Each has a
// circuit of its own, so that no charge grows.

import { heatReachingWater } from '../../../plant/index.ts';
import type { Band } from '../../../quantities/index.ts';
import { bandWithUnit } from '../../answers/pieces.ts';
import type { CountRow, HowMany, StagedMonth } from './answer.ts';

/** Heat and electricity of one machine in one state of the year [W]. */
export interface OneMachine {
  /** Out of its condenser. */
  readonly heat: Band;
  readonly power: Band;
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
  readonly months: readonly { readonly month: string; readonly load: number; readonly heatOfOne: number | null }[];
}

/** More machines than this are counted and not listed. */
const mostRows = 8;

export function howMany(input: HowManyInput): HowMany {
  const { load, planned, coldestSpell, beside, chargePerCircuit } = input;
  const pumpHeat = heatReachingWater(0, beside.loopPumpPower, beside.loopPumpShareToWater);
  const needed = {
    low: machinesFor(load.low - pumpHeat, coldestSpell.heat.high),
    likely: machinesFor(load.likely - pumpHeat, coldestSpell.heat.likely),
    high: machinesFor(load.high - pumpHeat, coldestSpell.heat.low),
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

/** The fewest machines whose heat is at least the load; 0 where none is needed, null where one gives no heat. */
export function machinesFor(load: number, heatOfOne: number): number | null {
  if (load <= 0) return 0;
  if (!(heatOfOne > 0)) return null;
  return Math.ceil(load / heatOfOne - 1e-9);
}

function countRow({ coldestSpell, mildDay, load, beside }: HowManyInput, pumpHeat: number, machines: number): CountRow {
  const heat = plus(times(coldestSpell.heat, machines), pumpHeat);
  const ofAll = plus(times(coldestSpell.power, machines), machines * beside.fanPower);
  const name = `howMany.${machines}`;
  return {
    machines,
    coldestSpell: bandWithUnit(`${name}.coldestSpell`, 'power', heat),
    mildDay:
      mildDay === null ? null : bandWithUnit(`${name}.mildDay`, 'power', plus(times(mildDay.heat, machines), pumpHeat)),
    power: bandWithUnit(`${name}.power`, 'electricPower', plus(ofAll, beside.loopPumpPower + beside.controlsPower)),
    share: heat.likely > 0 ? Math.min(1, Math.max(0, load.likely) / heat.likely) : 1,
    carries: heat.low >= load.high ? 'yes' : heat.high < load.low ? 'no' : 'perhaps',
  };
}

/** Machines that run at the same time for a month's mean load, the last of them a share of the time. */
function staged(
  { month, load, heatOfOne }: HowManyInput['months'][number],
  pumpHeat: number,
  machines: number,
): StagedMonth {
  const left = load - pumpHeat;
  if (load <= 0 || left <= 0) return { month, load, heatOfOne, running: 0, shareOfLast: 0 };
  if (heatOfOne === null || !(heatOfOne > 0)) return { month, load, heatOfOne, running: null, shareOfLast: null };
  const needed = left / heatOfOne;
  if (needed >= machines) return { month, load, heatOfOne, running: machines, shareOfLast: 1 };
  const running = Math.ceil(needed - 1e-9);
  return { month, load, heatOfOne, running, shareOfLast: needed - (running - 1) };
}

function times({ low, likely, high }: Band, factor: number): Band {
  return { low: factor * low, likely: factor * likely, high: factor * high };
}

function plus({ low, likely, high }: Band, term: number): Band {
  return { low: low + term, likely: likely + term, high: high + term };
}
