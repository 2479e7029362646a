// A compressor of the design put as the identification reads it: ranges of its numbers, and every point that was printed or
// measured of it. What reads such points is handed over (machine-handed-over.ts); a machine without any is described without it.

import { type ApplicationName, fieldRecord } from '../../design/index.ts';
import { hermeticParameters, type MachineDescription, type PriorRange } from '../../parts/compressor/index.ts';
import { compressorPath as path } from './machine.ts';
import { type DescribedCompressor, hasGivenPoints, supplyOf } from './machine-evidence.ts';
import { machineParts } from './machine-handed-over.ts';
import type { StatesFrom } from './states.ts';

export interface DescribedMachineInput {
  readonly described: DescribedCompressor;
  /** Back pressure it was made for: at that rating point its plate is read. */
  readonly application: ApplicationName;
  readonly states: StatesFrom;
}

/**
 * Everything known of a machine.
 * @throws InputError and OutOfModelError of the readers of coefficients and tables, at the path in the design
 */
export function describedMachine({ described, application, states }: DescribedMachineInput): MachineDescription {
  const fluid = states.fluid(described.madeFor);
  const evidence = hasGivenPoints(described) ? machineParts().givenEvidence(described, application, fluid) : [];
  return {
    fluid,
    ratedSupply: supplyOf(described.nameplate),
    prior: priorOf(described),
    points: evidence.flatMap(({ points }) => points),
    series: evidence.flatMap(({ series }) => series),
  };
}

function priorOf(described: DescribedCompressor): MachineDescription['prior'] {
  const ranges = hermeticParameters.map((name): [string, PriorRange] => {
    const at = `${path}.${name}`;
    return [name, { path: at, label: fieldRecord(at)!.label, estimate: described[name] }];
  });
  return Object.fromEntries(ranges) as unknown as MachineDescription['prior'];
}
