// From the Assessment to the flows of the heat path: watts averaged over the coldest spell, so that what comes into the
// water equals what leaves it. Small ways out are drawn together; the table of What leaves keeps them apart.

import type { Assessment } from '../../assess/index.ts';
import type { HeatFlow } from './layout.ts';

/** At most this many ways out of the water are drawn singly. */
const drawnSingly = 5;

/** Ways out below this share of all are drawn together. */
const smallShare = 0.04;

/** Less than this share of what comes in is the solver's rounding, not a surplus. */
const smallestSurplus = 0.01;

export interface WayOut {
  readonly path: string;
  readonly label: string;
  readonly watts: number;
}

export interface HeatPathFlows {
  readonly flows: readonly HeatFlow[];
  readonly waysOut: readonly WayOut[];
  /** Electricity of everything drawn, averaged over the spell [W]. */
  readonly electricity: number;
  readonly heatTaken: number;
  readonly delivered: number;
  /** Heat of the machine that does not reach the water [W]. */
  readonly beside: number;
  /** Heat that comes in through panes and surface, where the room is warmer than the water [W]. */
  readonly fromRoom: number;
  /** Heat that comes in and goes out by no way: it warms the water [W]. */
  readonly surplus: number;
}

/** Heat of each way out, the largest first, small ones gathered under 'other'. */
export function waysOut(assessment: Assessment): readonly WayOut[] {
  const all = assessment.flows.paths
    .map(({ path, label, heat }) => ({ path, label, watts: heat }))
    .filter((way) => way.watts > 0)
    .sort((a, b) => b.watts - a.watts);
  const total = all.reduce((sum, way) => sum + way.watts, 0);
  const single = all.filter((way, index) => index < drawnSingly && way.watts >= smallShare * total);
  const rest = all.slice(single.length);
  if (rest.length < 2) return all;
  const watts = rest.reduce((sum, way) => sum + way.watts, 0);
  return [...single, { path: 'other', label: `${rest.length} smaller ways`, watts }];
}

export function heatPathFlows(assessment: Assessment): HeatPathFlows {
  const { flows: running, tank } = assessment;
  const share = running.runFraction;
  const heatTaken = running.heatTaken * share;
  const power = (running.compressorPower + running.fanPower + running.loopPumpPower + running.controlsPower) * share;
  const delivered = running.delivered * share;
  const beside = Math.max(0, heatTaken + power - delivered);
  const gains = tank.gains.pump + tank.gains.light + tank.gains.ultraviolet;
  const out = waysOut(assessment);
  const fromRoom = running.paths.reduce((sum, { heat }) => sum + Math.max(0, -heat), 0);
  const coming = delivered + running.backup + gains + fromRoom;
  const excess = coming - out.reduce((sum, { watts }) => sum + watts, 0);
  const surplus = excess > smallestSurplus * coming ? excess : 0;
  const flows: HeatFlow[] = [
    { from: 'source', to: 'machine', watts: heatTaken, ink: 'fromSource' },
    { from: 'socket', to: 'machine', watts: power, ink: 'electricity' },
    { from: 'room', to: 'water', watts: fromRoom, ink: 'leaving' },
    { from: 'machine', to: 'out.machine', watts: beside, ink: 'leaving' },
    { from: 'machine', to: 'water', watts: delivered, ink: 'intoWater' },
    { from: 'socket', to: 'heater', watts: running.backup, ink: 'electricity', hatched: true },
    { from: 'socket', to: 'appliances', watts: gains, ink: 'electricity' },
    { from: 'heater', to: 'water', watts: running.backup, ink: 'intoWater', hatched: true },
    { from: 'appliances', to: 'water', watts: gains, ink: 'intoWater' },
    ...out.map(({ path, watts }) => ({ from: 'water', to: `out.${path}`, watts, ink: 'leaving' }) as const),
    { from: 'water', to: 'out.surplus', watts: surplus, ink: 'intoWater' },
  ];
  return {
    flows,
    waysOut: out,
    electricity: power + gains + running.backup,
    heatTaken,
    delivered,
    beside,
    fromRoom,
    surplus,
  };
}
