// Points that fill so little of the stroke that the model has no say there: what re-expands and leaks is then nearly all of it, and
// flow, heat and discharge temperature turn on the last percent. Where they and the others cannot be of one machine, the others
// describe it, and these are named.

import { hermeticParameters } from '../hermetic/parameters.ts';
import { littleFlowVolumetricEfficiency } from '../hermetic/point.ts';
import { fromScale, parameterScales } from './coordinates.ts';
import type { SetAsidePoint } from './identified.ts';
import type { PreparedPoint } from './points.ts';
import type { Prior } from './priors.ts';

/** With which the best filled point counts where the displacement is not known [-]; own judgement. */
const usualVolumetricEfficiency = 0.8;
/** So many σ about its likely value the displacement is looked for. */
const widest = 3;

/** The points whose flow fills less than `littleFlowVolumetricEfficiency` of the stroke. */
export function littleFilledPoints(prior: Prior, points: readonly PreparedPoint[]): readonly SetAsidePoint[] {
  const swept = points.map(sweptVolume);
  const displacement = likelyDisplacement(
    prior,
    swept.filter((volume) => volume !== undefined),
  );
  return points.flatMap(({ evidence: { path, label, evaporating, condensing } }, index) => {
    const volume = swept[index];
    if (volume === undefined) return [];
    const volumetricEfficiency = volume / displacement;
    if (volumetricEfficiency >= littleFlowVolumetricEfficiency) return [];
    return [{ path, label, evaporating, condensing, volumetricEfficiency }];
  });
}

/** Volume of inlet gas delivered per period of the mains [m³]; undefined where neither flow nor capacity is given. */
function sweptVolume({ evidence, conditions, refrigeratingEffect }: PreparedPoint): number | undefined {
  const { massFlow, capacity } = evidence.given;
  const flow = massFlow?.likely ?? (capacity === undefined ? undefined : capacity.likely / refrigeratingEffect);
  return flow === undefined ? undefined : flow / (conditions.suction.density * evidence.supply.frequency);
}

/** As typed, or within its range as the best filled point has it. */
function likelyDisplacement({ centre, spread, values }: Prior, swept: readonly number[]): number {
  const index = hermeticParameters.indexOf('displacement');
  if (spread[index] === 0) return values[index]!;
  const at = (sigmas: number) => fromScale(parameterScales.displacement, centre[index]! + sigmas * spread[index]!);
  const filled = Math.max(0, ...swept) / usualVolumetricEfficiency;
  return Math.min(Math.max(filled, at(-widest)), at(widest));
}
