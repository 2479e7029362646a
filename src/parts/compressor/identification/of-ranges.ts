// The machine of which nothing was printed or measured: its numbers at the likely values of their ranges, each moved by its own range
// alone. What identifyMachine answers without points (a test holds them together), with none of its means: a first verdict needs no
// more than this.

import { hermeticParameters } from '../hermetic/parameters.ts';
import { dimensions, parameterScales } from './coordinates.ts';
import { deviationAmounts } from './deviation/discrepancy.ts';
import type { MachineDescription } from './evidence.ts';
import type { IdentifiedMachine, Influence } from './identified.ts';
import { machineAt, type Prior, priorOf } from './priors.ts';
import { parameterQuantities } from './quantity-names.ts';

/**
 * The machine of ranges alone.
 * @param description  fluid, supply of the motor, ranges of all numbers
 * @throws InputError at an impossible range
 */
export function machineOfRanges(description: Omit<MachineDescription, 'points' | 'series'>): IdentifiedMachine {
  const prior = priorOf(description);
  const deviations = new Float64Array(dimensions);
  const { flow, power } = deviationAmounts;
  return {
    compressor: machineAt(prior, deviations),
    prior,
    deviations,
    madeFor: description.fluid.name,
    influences: rangeInfluences(description.prior, prior),
    residuals: [],
    known: [],
    setAside: [],
    scatter: { flow: Math.hypot(flow.smooth, flow.rough), power: Math.hypot(power.smooth, power.rough) },
    kriged: { flow: null, power: null },
    frequencies: [description.ratedSupply.frequency],
  };
}

function rangeInfluences(ranges: MachineDescription['prior'], { spread, low, high }: Prior): readonly Influence[] {
  return hermeticParameters.flatMap((name, index) => {
    if (spread[index] === 0) return [];
    const { path, label, estimate } = ranges[name];
    const alone = (sigmas: number) => spread.map((each, number) => (number === index ? each * sigmas : 0));
    const [atLow, atHigh] = [alone(low[index]!), alone(high[index]!)];
    return [
      { path, label, estimate, quantity: parameterQuantities[name], scale: parameterScales[name], atLow, atHigh },
    ];
  });
}
