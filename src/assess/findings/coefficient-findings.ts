// What is odd about the ratings, the ten coefficients and the tables given of a machine without being impossible: an efficiency such machines
// seldom have, or a flow or power far from what is known of the machine, which most often comes from a wrong unit.

import {
  type PlausibilityDoubt,
  readingWords,
  remarkableOverallEfficiency,
  sensibleOverallEfficiency,
  unlikelyWords,
} from '../../parts/compressor/index.ts';
import type { Fact, Finding } from '../../quantities/index.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import { coefficientEvidence, tableEvidence } from '../stages/machine-points.ts';
import { ratingDoubts } from '../stages/machine-ratings.ts';

/** Of a machine that was identified from them: what cannot be of one machine was refused before. */
export function coefficientFindings({
  described,
  states,
}: Pick<StagedDesign, 'described' | 'states'>): readonly Finding[] {
  const { ratings, coefficients, tables } = described;
  if (ratings.length + coefficients.length + tables.length === 0) return [];
  const fluid = states.fluid(described.madeFor);
  return [
    ...ratingDoubts(described, fluid).map((doubt) => unusualNumbers(doubt, null)),
    ...coefficientEvidence(described, fluid).doubts.map((doubt) =>
      doubt.code === 'notAsExpected' ? unusualNumbers(doubt, doubt.effect) : unusualEfficiency(doubt),
    ),
    ...tableEvidence(described, fluid).doubts.map((doubt) => unusualNumbers(doubt, doubt.effect)),
  ];
}

function unusualNumbers(
  {
    path,
    efficiency,
    ofExpected,
    readings,
  }: Pick<PlausibilityDoubt, 'path' | 'efficiency' | 'ofExpected' | 'readings'>,
  effect: number | null,
): Finding {
  const besideFlow = effect === null ? [] : [`capacity ${effect.toPrecision(3)} times what the flow beside it gives`];
  return {
    code: 'numbersUnusual',
    severity: 'look',
    subject: 'model',
    facts: {
      path: { word: path },
      numbers: { word: [unlikelyWords(efficiency, ofExpected), ...besideFlow].join('; ') },
      readings: { word: wordsOf(readings) },
    },
    source: 'ranges of such machines and a model of hermetic compressors; how far is too far is our judgement',
    remedy: 'Check the units, the displacement, and the gas and liquid they hold for: only the sheet itself tells.',
    needsLicensedPerson: false,
  };
}

type EfficiencyDoubt = Exclude<PlausibilityDoubt, { readonly code: 'notAsExpected' }>;

function wordsOf(readings: PlausibilityDoubt['readings']): string {
  return readings.length === 0 ? 'no other unit' : readings.map(readingWords).join(', or ');
}

function unusualEfficiency({ path, efficiency, readings }: EfficiencyDoubt): Finding {
  const fact = (value: number): Fact => ({ value, quantity: 'fraction' });
  return {
    code: 'coefficientsUnusual',
    severity: 'look',
    subject: 'model',
    facts: {
      path: { word: path },
      efficiency: fact(efficiency.likely),
      usualLow: fact(remarkableOverallEfficiency),
      usualHigh: fact(sensibleOverallEfficiency.highest),
      readings: { word: wordsOf(readings) },
    },
    source: 'efficiencies typical of small hermetic machines, from memory',
    remedy: 'Check the units of the set, and evaluate one printed cell with it: only the sheet itself tells.',
    needsLicensedPerson: false,
  };
}
