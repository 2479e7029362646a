// Where the water comes to rest in the warmest month without heater and without cooling: what leaves the tank has grown to what
// pumps, lights and lamp give. The range is that of the load at that temperature, over what a kelvin is worth there.
// Simplifications: the room keeps its temperature and its humidity; lamps give as much to covered water as to open water; a
// monthly mean, which hot days pass; measures at their likely values.

import type { RestingWater } from '../../cautions/index.ts';
import type { Resolution } from '../../design/index.ts';
import { findRoot } from '../../numerics/index.ts';
import { applyMeasures, type Measure, tankHeatOf, tankValidity } from '../../tank/index.ts';
import { doubt } from '../doubt/doubt.ts';
import { doubtfulInputs, isTankInput, withInput } from '../inputs.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import { type StageResults, tankSlice } from '../stages/index.ts';
import { type SurroundingsResult, surroundingsOf, surroundingsSlice } from '../stages/surroundings/surroundings.ts';
import { carriedBy, type MeterResult, meterOf } from '../stages/tank/meter.ts';
import { tankConditions, tankDescription } from '../stages/tank/tank.ts';

/** How near the temperature at rest is found [K]. */
const tolerance = 0.01;

/** Width over which the worth of a kelvin is taken [K]. */
const width = 1;

export interface SummerSubject {
  readonly design: StagedDesign;
  /** For the range; null where likely values are enough. */
  readonly resolution: Resolution | null;
  readonly results: Pick<StageResults, 'surroundings' | 'meter'>;
}

/** The warmest month; of several alike the one that is warmest outdoors. */
export function warmestMonth({ months }: SurroundingsResult): SurroundingsResult['months'][number] {
  return months.reduce((warmest, month) =>
    month.roomTemperature > warmest.roomTemperature ||
    (month.roomTemperature === warmest.roomTemperature && month.outdoorTemperature > warmest.outdoorTemperature)
      ? month
      : warmest,
  );
}

/** Null where the water would freeze before it came to rest. */
export function waterInSummer(
  { design, resolution, results }: SummerSubject,
  measures: readonly Measure[],
): RestingWater | null {
  const { min: coldest, max: searchedUpTo } = tankValidity.waterTemperature;
  const loadAt = summerLoad(design, results, measures);
  if (loadAt(coldest) > 0) return null;
  if (loadAt(searchedUpTo) < 0) return { settlesAt: null, searchedUpTo };
  const likely = findRoot(loadAt, coldest, searchedUpTo, { absoluteTolerance: tolerance }).root;
  if (resolution === null) return { settlesAt: { low: likely, likely, high: likely }, searchedUpTo };
  const from = Math.max(coldest, likely - width / 2);
  const to = Math.min(searchedUpTo, likely + width / 2);
  const perKelvin = (loadAt(to) - loadAt(from)) / (to - from);
  const inputs = doubtfulInputs(resolution, design).filter(({ path }) => isTankInput(path));
  const loads = { load: loadAt(likely) };
  const { bands } = doubt(loads, inputs, (path, value) => {
    const at = withInput(design, resolution.followers, path, value);
    return { load: summerLoad(at, resultsAt(at), measures)(likely) };
  });
  const { low, high } = bands.load!;
  // The more it needs, the colder it rests.
  return {
    settlesAt: {
      low: likely - (high - loads.load) / perKelvin,
      likely,
      high: likely + (loads.load - low) / perKelvin,
    },
    searchedUpTo,
  };
}

/** What the tank would need in the warmest month by the temperature of its water [W]; below 0 where it has too much. */
function summerLoad(
  design: StagedDesign,
  { surroundings, meter }: SummerSubject['results'],
  measures: readonly Measure[],
): (waterTemperature: number) => number {
  const slice = carriedBy(tankSlice(design), meter);
  const month = warmestMonth(surroundings);
  const conditions = tankConditions(slice, month, surroundings.atmosphericPressure);
  const described = tankDescription(slice);
  const heat = tankHeatOf(applyMeasures(described, slice.tank.waterTemperature, measures).tank);
  return (waterTemperature) => heat({ ...conditions, waterTemperature }).load;
}

function resultsAt(design: StagedDesign): {
  readonly surroundings: SurroundingsResult;
  readonly meter: MeterResult | null;
} {
  const surroundings = surroundingsOf(surroundingsSlice(design));
  return { surroundings, meter: meterOf(tankSlice(design), surroundings) };
}
