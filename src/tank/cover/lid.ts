// The covered share of a vessel's surface: one temperature for the damp inner faces of the lid and of the panels above the
// water, found by balance: what crosses the trapped air leaves through them. Condensate runs back.

import { findRoot } from '../../numerics/index.ts';
import type { Cover, Vessel } from '../built-tank.ts';
import type { AirState, LidState } from '../load.ts';
import { type PanelState, type Surroundings, settlePanel } from '../stack/panel.ts';
import { sumOfConductances } from '../totals.ts';
import { headspaceFlux, lidTemperature } from './headspace.ts';

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

/** The covered share as it settles. */
export function coveredSurface(input: LidInput): LidState {
  const { vessel, coveredShare, waterTemperature, surroundings, air, atmosphericPressure } = input;
  const area = coveredShare * vessel.waterSurface;
  const gap = vessel.freeboard;
  const { room } = surroundings;
  const lidAt = (inner: number) => lidPanel(input, area, inner);
  if (gap === 0) {
    const nothing = { iterations: 0, residual: 0, headspace: undefined, freeboard: [] };
    return { coveredShare, area, gap, innerTemperature: waterTemperature, lid: lidAt(waterTemperature), ...nothing };
  }
  const freeboardAt = (inner: number) => freeboardPanels(input, inner);
  const crossing = (inner: number) => headspaceFlux(waterTemperature, air.waterVapour, inner, gap, atmosphericPressure);
  const imbalance = (inner: number) => {
    const lid = lidAt(inner);
    const transmission = lid.area * lid.transmittance + sumOfConductances(freeboardAt(inner));
    return inner - lidTemperature(room, area, crossing(inner).heatFlux, transmission);
  };
  const settled =
    waterTemperature === room
      ? { root: waterTemperature, iterations: 0, residual: 0 }
      : findRoot(imbalance, room, waterTemperature, { absoluteTolerance: 1e-9, what: 'lid temperature' });
  return {
    coveredShare,
    area,
    gap,
    innerTemperature: settled.root,
    iterations: settled.iterations,
    residual: settled.residual,
    headspace: crossing(settled.root),
    lid: lidAt(settled.root),
    freeboard: freeboardAt(settled.root),
  };
}

function lidPanel({ cover, surroundings, outerFilmFactor }: LidInput, area: number, inside: number): PanelState {
  return settlePanel({
    name: 'lid',
    area,
    facing: 'top',
    inside,
    waterFilmResistance: 0,
    stack: cover.stack,
    emissivity: cover.emissivity,
    exposure: { kind: 'roomAir' },
    surroundings,
    outerFilmFactor,
  });
}

/** Panels above the water line, without what lies in the water. */
function freeboardPanels(input: LidInput, inside: number): readonly PanelState[] {
  const { vessel, coveredShare, surroundings, outerFilmFactor } = input;
  return vessel.panels
    .filter(({ dryArea }) => dryArea > 0)
    .map(({ name, facing, dryArea, stack, layersInWater, emissivity, exposure }) =>
      settlePanel({
        name,
        area: coveredShare * dryArea,
        facing,
        inside,
        waterFilmResistance: 0,
        stack: stack.slice(layersInWater),
        emissivity,
        exposure,
        surroundings,
        outerFilmFactor,
      }),
    );
}
