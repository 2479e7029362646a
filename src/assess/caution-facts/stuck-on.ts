// The machine running on with its thermostat stuck: how fast it warms the water at first, and where the water would come to
// rest, when what the tank loses has grown to what the loop brings. Likely values; the source and the room keep their
// temperature, and no cut-out, protector or limit of the machine is taken to stop it.

import type { OperatingFacts, StuckOn } from '../../cautions/index.ts';
import { findRoot, KettlefinError } from '../../numerics/index.ts';
import { heatReachingWater } from '../../plant/index.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import { loopSlice, type StageResults, tankSlice } from '../stages/index.ts';
import { operatingAt } from '../stages/machine.ts';
import { allMachines, plantHardware } from '../stages/plant.ts';
import { carriedBy } from '../stages/tank/meter.ts';
import { type TankPlace, tankLoadAt } from '../stages/tank/tank.ts';

/** Warmest water that is tried [K]. */
const warmestTried = 333.15;

/** Step of the search for a surplus that has gone [K]. */
const step = 8;

/** How near the resting temperature is found [K]. */
const tolerance = 0.2;

type Needed = Pick<StageResults, 'surroundings' | 'meter' | 'tank' | 'compressor'>;

/** Null where running on would not warm the water. */
export function stuckOn(design: StagedDesign, results: Needed, states: readonly OperatingFacts[]): StuckOn | null {
  const state = states.reduce((most, each) => (surplusOf(each) > surplusOf(most) ? each : most));
  const surplus = surplusOf(state);
  if (!(surplus > 0)) return null;
  const surplusAt = (water: number) => surplusWith(design, results, state, water);
  let below = design.tank.waterTemperature;
  let above = below;
  const found = { when: state.when, timePerKelvin: results.tank.heatCapacity / surplus };
  while (above < warmestTried) {
    above = Math.min(above + step, warmestTried);
    const there = orNull(() => surplusAt(above));
    if (there === null) break;
    if (there <= 0) {
      const settlesAt = findRoot(surplusAt, below, above, { absoluteTolerance: tolerance }).root;
      return { ...found, settlesAt, searchedUpTo: above };
    }
    below = above;
  }
  return { ...found, settlesAt: null, searchedUpTo: below };
}

function surplusOf({ heatDelivered, load }: OperatingFacts): number {
  return heatDelivered - load;
}

/** Heat the loops would bring less heat the tank would need with water that warm [W]. */
function surplusWith(design: StagedDesign, results: Needed, state: OperatingFacts, water: number): number {
  const { count, loopPumpPower, loopPumpShareToWater } = plantHardware(design);
  const loop = { ...loopSlice(design), waterTemperature: water };
  const place = placeAt(results, state);
  const { roomTemperature, sourceTemperature } = state;
  const at = { roomTemperature, sourceTemperature, outdoorTemperature: place.outdoorTemperature };
  const machines = allMachines(operatingAt(loop, results.compressor, at), count);
  const tank = carriedBy(tankSlice(design), results.meter);
  const warmer = { ...tank, tank: { ...tank.tank, waterTemperature: water } };
  const { load } = tankLoadAt(warmer, place, results.surroundings.atmosphericPressure);
  return heatReachingWater(machines.condenserHeat, loopPumpPower, loopPumpShareToWater) - load;
}

/** What surrounds the tank at the moment of a state; of months of one room temperature the warmest outdoors. */
function placeAt({ surroundings }: Needed, { when, roomTemperature }: OperatingFacts): TankPlace {
  const { spell, months } = surroundings;
  if (when === 'coldestSpell') return spell;
  const alike = months.filter((month) => month.roomTemperature === roomTemperature);
  const wanted = when === 'usual' ? 0 : Math.max(...alike.map(({ distance }) => distance));
  return alike.find(({ distance }) => distance === wanted) ?? spell;
}

/** Null where the models have no answer. */
function orNull(compute: () => number): number | null {
  try {
    return compute();
  } catch (error) {
    if (error instanceof KettlefinError) return null;
    throw error;
  }
}
