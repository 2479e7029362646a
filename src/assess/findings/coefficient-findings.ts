// What is odd about the ten coefficients given of a machine without being impossible: an efficiency such machines seldom have, which
// most often comes from a wrong unit.

import {
  type PlausibilityDoubt,
  readingWords,
  remarkableOverallEfficiency,
  sensibleOverallEfficiency,
} from '../../parts/compressor/index.ts';
import type { Fact, Finding } from '../../quantities/index.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import { coefficientEvidence } from '../stages/machine-points.ts';

/** Of a machine that was identified from them: what cannot be of one machine was refused before. */
export function coefficientFindings({
  described,
  states,
}: Pick<StagedDesign, 'described' | 'states'>): readonly Finding[] {
  if (described.coefficients.length === 0) return [];
  return coefficientEvidence(described, states.fluid(described.madeFor)).doubts.map(unusualEfficiency);
}

function unusualEfficiency({ path, efficiency, readings }: PlausibilityDoubt): Finding {
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
      readings: { word: readings.length === 0 ? 'no other unit' : readings.map(readingWords).join(', or ') },
    },
    source: 'efficiencies typical of small hermetic machines, from memory',
    remedy: 'Check the units of the set, and evaluate one printed cell with it: only the sheet itself tells.',
    needsLicensedPerson: false,
  };
}
