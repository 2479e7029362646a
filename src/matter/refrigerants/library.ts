// The refrigerants by name. Their names are always known (names.ts); a coefficient file is handed over before its fluid is
// asked for, all of them at once (every-refrigerant/) or one by one where loading them all would cost too much (the workbench).
// A file is checked and made into a fluid when the fluid is first asked for.

import { DataError } from '../../numerics/index.ts';
import { loadRefrigerant } from './load.ts';
import { refrigerantName, refrigerantNames } from './names.ts';
import type { Refrigerant } from './types.ts';

const files = new Map<string, unknown>();
// Loading is a pure function of the file: keeping its result changes no answer, only the time.
const loaded = new Map<string, Refrigerant>();

/**
 * Hands over the coefficient file of one of the known refrigerants. Nothing in it is looked at yet but the name; a name
 * handed over before is left as it was.
 * @param file  the parsed JSON of data/refrigerants/<name>.json
 * @throws DataError if it does not carry one of the known names
 */
export function addCoefficientFile(file: unknown): void {
  const name = (file as { readonly name?: string } | null)?.name;
  if (name === undefined || !refrigerantNames.includes(name)) {
    throw new DataError('coefficient file', 'fluid.name', 'must be one of the names in data/refrigerants/names.json');
  }
  if (!files.has(name)) files.set(name, file);
}

/** Whether the coefficient file of a refrigerant (its own name) is here, so that `refrigerant` answers. */
export function hasCoefficientFile(name: string): boolean {
  return files.has(name);
}

/**
 * The fluid of a name, ready to be asked for states.
 * @param name  as for refrigerantName
 * @returns     the fluid; the same object at each call
 * @throws InputError ('unknownRefrigerant') naming the nearest known name; DataError if its file is broken or was not handed
 *         over before
 */
export function refrigerant(name: string): Refrigerant {
  const own = refrigerantName(name);
  let fluid = loaded.get(own);
  if (fluid === undefined) {
    const path = `data/refrigerants/${own}.json`;
    const file = files.get(own);
    if (file === undefined) throw new DataError(path, 'fluid', 'must be handed over with addCoefficientFile first');
    fluid = loadRefrigerant(file, path);
    loaded.set(own, fluid);
  }
  return fluid;
}
