// What the tank model assumes that no design document asks for: the outer film of panes, bottom and lid, and how well their
// materials conduct. Each is a factor on the value the model uses; 1 is that value. A measured tank needs none of them.

import type { PlainDesign } from '../../design/index.ts';
import { layerConductivity, type MaterialRange, material } from '../../matter/materials/index.ts';
import type { Estimate } from '../../quantities/index.ts';
import { outerFilmRange } from '../../tank/index.ts';

/** Plain factors of the tank's assumptions. */
export interface TankFactors {
  /** On the outer surface coefficient h_c + h_r of panes, bottom and lid. */
  readonly outerFilmFactor: number;
  /** On the tabulated conductivity of panes and bottom, of the wrapping, of the lid. */
  readonly wallConductivityFactor: number;
  readonly insulationConductivityFactor: number;
  readonly lidConductivityFactor: number;
}

/** All of them as the model has them; also where a design has no such part. */
export const standardTankFactors: TankFactors = {
  outerFilmFactor: 1,
  wallConductivityFactor: 1,
  insulationConductivityFactor: 1,
  lidConductivityFactor: 1,
};

export interface TankAssumption {
  readonly key: keyof TankFactors;
  readonly label: string;
  readonly quantity: 'ratio';
  readonly estimate: Estimate;
  readonly source: string;
}

interface UsedLayer {
  readonly material: string;
  readonly thickness: number;
}

/** The factors that matter for this tank, with range and source; none where its load was measured. */
export function tankAssumptions({ load }: PlainDesign['tank']): readonly TankAssumption[] {
  if (load.kind === 'measured') return [];
  const wrapped = load.kind === 'panels' ? [] : Object.values(load.insulation);
  const hasLid = load.lid !== 'none';
  const lid = { material: load.lidMaterial, thickness: load.lidThickness };
  const { low, likely, high, source } = outerFilmRange;
  return [
    {
      key: 'outerFilmFactor',
      label: `outer film of ${hasLid ? 'panes, bottom and lid' : 'panes and bottom'}, as a multiple of the standard one`,
      quantity: 'ratio',
      estimate: { low, likely, high, origin: 'assumed' },
      source,
    },
    ...conductivityOf('wallConductivityFactor', 'panes', [load.wall]),
    ...conductivityOf('insulationConductivityFactor', 'insulation', wrapped),
    ...(hasLid ? conductivityOf('lidConductivityFactor', 'lid', [lid]) : []),
  ];
}

/** One factor for all layers of a kind; where they are of several materials its ends are the farthest of them. */
function conductivityOf(key: keyof TankFactors, part: string, layers: readonly UsedLayer[]): TankAssumption[] {
  if (layers.length === 0) return [];
  const ranges = layers.map((layer): MaterialRange => layerConductivity(layer.material, layer.thickness));
  const labels = layers.map((layer) => material(layer.material).label);
  return [
    {
      key,
      label: `conductivity of the ${part} (${together(labels, ' and ')}), as a multiple of the tabulated one`,
      quantity: 'ratio',
      estimate: {
        low: Math.min(...ranges.map(({ low, likely }) => low / likely)),
        likely: 1,
        high: Math.max(...ranges.map(({ high, likely }) => high / likely)),
        origin: 'assumed',
      },
      source: together(
        ranges.map(({ source }) => source),
        '; ',
      ),
    },
  ];
}

function together(words: readonly string[], between: string): string {
  return [...new Set(words)].join(between);
}
