// What the sizing of the exchangers assumes where the person has given nothing: ranges in base SI with their sources.
// Any of them can be replaced by an own value.

import { InputError } from '../../numerics/index.ts';
import type { Estimate } from '../../quantities/index.ts';

/** A range with the words of its source. */
export interface SourcedRange extends Estimate {
  readonly source: string;
}

function assumed(low: number, likely: number, high: number, source: string): SourcedRange {
  return { low, likely, high, origin: 'assumed', source };
}

const memory = 'typical range, from memory';
const practice = 'common practice, no source';

/** Everything but the tube itself. */
export const exchangerAssumptions = {
  /** Resistance of slime and deposits on the tank-water side [m² K/W]. */
  fouling: assumed(1e-4, 1.5e-4, 2e-4, memory),
  /** Film of condensing refrigerant inside the tube, on inner area [W/(m² K)]: between still stratified flow and wet annulus. */
  refrigerantFilm: assumed(
    800,
    1500,
    2500,
    'between the correlations of Shah 2009 and Cavallini et al. 2006 at the flows of small machines; constants from memory',
  ),
  /** Film of loop water in the refrigerant-to-loop exchanger, an annulus or plates [W/(m² K)]. */
  loopSideFilm: assumed(1000, 2000, 4000, practice),
  /** Share of the approach spent between loop water and tank; the rest between refrigerant and loop water [-]. */
  tankCoilShare: assumed(0.5, 0.6, 0.7, practice),
  /** How much the loop water changes on its way through the tank coil [K]. */
  loopTemperatureChange: assumed(1, 2, 4, practice),
  /** Share of the largest possible cooling that the air undergoes in the evaporator [-]. */
  airEffectiveness: assumed(0.45, 0.6, 0.75, practice),
  /** Overall coefficient of a dry finned evaporator on its whole air-side surface [W/(m² K)]. */
  finnedCoefficient: assumed(15, 25, 40, practice),
} as const;

/** What the coil in the tank is made of. */
export type TubeMaterial = 'titanium' | 'stainless316' | 'copper' | 'cupronickel' | 'polymer';

export interface TubeWall {
  /** k [W/(m K)]. */
  readonly conductivity: SourcedRange;
  /** Wall thickness [m]. */
  readonly thickness: SourcedRange;
}

const walls: Readonly<Record<TubeMaterial, TubeWall>> = {
  titanium: {
    conductivity: assumed(16, 16.2, 17, 'titanium grade 1 and 2, material data sheets'),
    thickness: assumed(0.5e-3, 0.6e-3, 0.9e-3, practice),
  },
  stainless316: {
    conductivity: assumed(14, 15, 17, 'stainless steel 316L, ISO 10456 class values'),
    thickness: assumed(0.5e-3, 0.7e-3, 1e-3, practice),
  },
  copper: {
    conductivity: assumed(330, 380, 390, 'ISO 10456:2007 table 3 (380)'),
    thickness: assumed(0.6e-3, 0.8e-3, 1e-3, practice),
  },
  cupronickel: {
    conductivity: assumed(40, 45, 50, 'copper-nickel 90/10, from memory'),
    thickness: assumed(0.7e-3, 0.9e-3, 1.2e-3, practice),
  },
  polymer: {
    conductivity: assumed(0.22, 0.4, 0.5, 'ISO 10456:2007 table 3: polypropylene 0.22, high-density polyethylene 0.50'),
    thickness: assumed(0.8e-3, 1e-3, 2e-3, practice),
  },
};

export const tubeMaterials: readonly TubeMaterial[] = ['titanium', 'stainless316', 'copper', 'cupronickel', 'polymer'];

/**
 * Wall of a coil by material. @throws InputError for another name; for "unknown" the caller chooses one and says which.
 */
export function tubeWall(material: TubeMaterial): TubeWall {
  const wall = walls[material];
  if (wall === undefined) throw new InputError('tubeMaterial', material, `one of ${tubeMaterials.join(', ')}`);
  return wall;
}
