// The covered share of a vessel's surface: one temperature for the damp inner faces of the lid and of the panels above the
// water, found by balance: what crosses the trapped air leaves through them. Condensate runs back. The lid is a stack of
// layers, so that a second pane over a sealed gap, a twin-wall sheet or a board on top are all the same to it.

import { findRoot, type Root } from '../../numerics/index.ts';
import type { Cover, Vessel } from '../built-tank.ts';
import type { AirState, LidState } from '../load.ts';
import type { Surroundings } from '../stack/panel.ts';
import { headspaceFlux } from './headspace.ts';
import {
  type FaceGroups,
  facesAboveWater,
  groupFaces,
  heatThroughFaces,
  type InnerFace,
  settleFaces,
  sinkRange,
} from './inner-faces.ts';

export interface LidInput {
  readonly vessel: Vessel;
  readonly cover: Extract<Cover, { readonly kind: 'lid' }>;
  readonly coveredShare: number;
  readonly waterTemperature: number;
  readonly surroundings: Surroundings;
  readonly atmosphericPressure: number;
  readonly air: AirState;
  readonly outerFilmFactor: number;
}

/** The balance of the inner faces may be open by this much heat per area of water [W/m²]. */
const BALANCE_TOLERANCE = 1e-8;
/** Beyond the coldest and the warmest of all that meets here the sign of the balance is plain [K]. */
const MARGIN = 1e-3;

/**
 * The covered share as it settles.
 * @throws ConvergenceError where the balance does not settle; InputError where an exposure lacks its temperature
 */
export function coveredSurface(input: LidInput): LidState {
  const { vessel, coveredShare, waterTemperature, air, atmosphericPressure } = input;
  const area = coveredShare * vessel.waterSurface;
  const gap = vessel.freeboard;
  const faces = facesOf(input, area);
  const groups = groupFaces(faces);
  const crossing = (inner: number) => headspaceFlux(waterTemperature, air.waterVapour, inner, gap, atmosphericPressure);
  const settled: Root =
    gap === 0
      ? { root: waterTemperature, iterations: 0, residual: 0 }
      : settleInner(input, faces, groups, (inner) => area * crossing(inner).heatFlux);
  const [lid, ...freeboard] = settleFaces(faces, groups, settled.root, input);
  return {
    coveredShare,
    area,
    gap,
    innerTemperature: settled.root,
    iterations: settled.iterations,
    residual: settled.residual,
    headspace: gap === 0 ? undefined : crossing(settled.root),
    lid: lid!,
    freeboard,
  };
}

/** The lid first, then the panels above the water; a lid that lies on the water leaves none. */
function facesOf({ vessel, cover, coveredShare }: LidInput, area: number): readonly InnerFace[] {
  const { stack, emissivity } = cover;
  const lid: InnerFace = { name: 'lid', area, facing: 'top', stack, emissivity, exposure: { kind: 'roomAir' } };
  return vessel.freeboard === 0 ? [lid] : [lid, ...facesAboveWater(vessel, coveredShare)];
}

/** Temperature at which the faces give off what reaches them [W]. */
function settleInner(
  input: LidInput,
  faces: readonly InnerFace[],
  groups: FaceGroups,
  reaching: (inner: number) => number,
): Root {
  const [coldestSink, warmestSink] = sinkRange(faces, input.surroundings);
  const coldest = Math.min(coldestSink, input.waterTemperature);
  const warmest = Math.max(warmestSink, input.waterTemperature);
  if (coldest === warmest) return { root: coldest, iterations: 0, residual: 0 };
  const low = coldest - MARGIN;
  const high = warmest + MARGIN;
  const leaving = (inner: number) => heatThroughFaces(groups, inner, input);
  const options = { residualTolerance: BALANCE_TOLERANCE * faces[0]!.area, what: 'lid temperature' };
  const surplus = (inner: number) => reaching(inner) - leaving(inner);
  if (coldestSink !== warmestSink) return findRoot(surplus, low, high, options);
  // In one room nothing crosses the air to faces as warm as the water, and nothing leaves faces as cold as the room: each end
  // needs one of the two terms only, which saves a fifth of the work.
  const isWaterWarmer = input.waterTemperature > coldestSink;
  return findRoot(surplus, low, high, {
    ...options,
    valueAtLow: isWaterWarmer ? reaching(low) : -leaving(low),
    valueAtHigh: isWaterWarmer ? -leaving(high) : reaching(high),
  });
}
