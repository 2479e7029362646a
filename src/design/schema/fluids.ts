// The refrigerants of a design: what a machine may be studied on, which is any that the engine knows, and what its
// compressor was made for, which is any of whose compressors something is assumed.

import { refrigerantAliases, refrigerantNames } from '../../matter/refrigerants/index.ts';
import { compressorFluids } from '../../parts/compressor/index.ts';
import type { Choice } from './field.ts';

/** What the machine may be studied on. */
export const fluidChoices: readonly Choice[] = refrigerantNames.map(choiceOf);

/** What the compressor may have been made for. */
export const madeForChoices: readonly Choice[] = refrigerantNames
  .filter((name) => compressorFluids.includes(name))
  .map(choiceOf);

function choiceOf(name: string): Choice {
  const common = refrigerantAliases(name).find((alias) => !/[0-9]/.test(alias));
  return { name, label: common === undefined ? name : `${name} (${common})` };
}
