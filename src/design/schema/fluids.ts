// The refrigerants of a design: what a machine may be studied on, which is any that the engine knows, and what its
// compressor was made for, which is any of whose compressors something is assumed. Each with what to know before choosing.

import { catalogueEntry, isStudyOnly, refrigerantAliases, refrigerantNames } from '../../matter/refrigerants/index.ts';
import { compressorFluids } from '../../parts/compressor/index.ts';
import type { Choice } from './field.ts';

/** What the machine may be studied on. */
export const fluidChoices: readonly Choice[] = refrigerantNames.map(choiceOf);

/** What the compressor may have been made for. */
export const madeForChoices: readonly Choice[] = fluidChoices.filter(({ name }) => compressorFluids.includes(name));

function choiceOf(name: string): Choice {
  const { safetyClass, ozoneDepletionPotential } = catalogueEntry(name);
  // A common name has no numbers in it, as the systematic ones and those by number do.
  const common = refrigerantAliases(name).find((alias) => !/[0-9]/.test(alias));
  const isSimple = common !== undefined && !/fluoro/.test(common);
  const words = [
    ...(isSimple ? [common] : []),
    ...burningWords(safetyClass),
    ...(safetyClass.startsWith('B') ? ['toxic'] : []),
    ...((ozoneDepletionPotential ?? 0) > 0 ? ['ozone-depleting'] : []),
    ...(isStudyOnly(name) ? ['study only'] : []),
  ];
  return { name, label: words.length === 0 ? name : `${name} (${words.join(', ')})` };
}

function burningWords(safetyClass: string): readonly string[] {
  if (safetyClass.endsWith('2L')) return ['mildly flammable'];
  return safetyClass.endsWith('1') ? [] : ['flammable'];
}
