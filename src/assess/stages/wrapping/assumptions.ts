// What is assumed of measures that no design document asks for: how well what is added conducts, and what usual measures cost.

import { usualMeasures } from '../../../accounts/index.ts';
import { layerConductivity } from '../../../matter/materials/index.ts';
import type { Estimate } from '../../../quantities/index.ts';
import type { OfferedMeasure } from './offered.ts';

/** Plain factors of the measures' assumptions; 1 is the tabulated conductivity, and the usual price. */
export interface MeasureFactors {
  readonly measureConductivityFactor: number;
  readonly measureCostFactor: number;
}

export const standardMeasureFactors: MeasureFactors = { measureConductivityFactor: 1, measureCostFactor: 1 };

export interface MeasureAssumption {
  readonly key: keyof MeasureFactors;
  readonly label: string;
  readonly quantity: 'ratio';
  readonly estimate: Estimate;
  readonly source: string;
}

/** The factors that matter for these measures. */
export function measureAssumptions(measures: readonly OfferedMeasure[]): readonly MeasureAssumption[] {
  const sheets = measures.flatMap(({ sheet }) => sheet ?? []);
  const ranges = sheets.map(({ material, thickness }) => layerConductivity(material, thickness));
  const usual = measures.filter((each) => each.usual !== null && each.cost.likely > 0);
  const sum = (end: 'low' | 'likely' | 'high') => usual.reduce((total, { cost }) => total + cost[end], 0);
  return [
    ...(ranges.length === 0
      ? []
      : [
          {
            key: 'measureConductivityFactor' as const,
            label: 'conductivity of what is added to the tank, as a multiple of the tabulated one',
            quantity: 'ratio' as const,
            estimate: {
              low: Math.min(...ranges.map(({ low, likely }) => low / likely)),
              likely: 1,
              high: Math.max(...ranges.map(({ high, likely }) => high / likely)),
              origin: 'assumed' as const,
            },
            source: [...new Set(ranges.map(({ source }) => source))].join('; '),
          },
        ]),
    ...(usual.length === 0
      ? []
      : [
          {
            key: 'measureCostFactor' as const,
            label: 'price of what is added to the tank, as a multiple of the usual one',
            quantity: 'ratio' as const,
            estimate: {
              low: sum('low') / sum('likely'),
              likely: 1,
              high: sum('high') / sum('likely'),
              origin: 'assumed' as const,
            },
            source: usualMeasures.source,
          },
        ]),
  ];
}
