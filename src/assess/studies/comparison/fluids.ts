// The fluids of a comparison, checked at the door: two to five, each known, each once.

import { refrigerant } from '../../../matter/refrigerants/index.ts';
import { InputError } from '../../../numerics/index.ts';

/** As many columns as still stand side by side. */
export const fewestFluids = 2;
export const mostFluids = 5;

/**
 * The names of the fluids as the catalogue has them, in the order asked.
 * @param fluids  names, also other names of a fluid: 'R-134a', 'propane'
 * @throws InputError 'unknownRefrigerant' naming the nearest, 'fluidTwice', 'tooFewFluids', 'tooManyFluids'
 */
export function comparedFluids(fluids: readonly string[]): readonly string[] {
  const names = fluids.map((fluid) => refrigerant(fluid).name);
  const twice = names.find((name, index) => names.indexOf(name) !== index);
  if (twice !== undefined) {
    throw new InputError('fluids', `${twice} twice`, 'each fluid once: beside itself nothing differs', 'fluidTwice');
  }
  if (names.length < fewestFluids) {
    throw new InputError('fluids', names.join(', ') || 'none', 'at least two fluids', 'tooFewFluids');
  }
  if (names.length > mostFluids) {
    throw new InputError('fluids', `${names.length} fluids`, 'at most five fluids', 'tooManyFluids');
  }
  return names;
}
