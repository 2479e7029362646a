// The quantity that an answer of the engine names; a pure number where it names none.

import { isQuantityName, type QuantityName } from '../../quantities/index.ts';

export function quantityNamed(name: string): QuantityName {
  return isQuantityName(name) ? name : 'ratio';
}
