// The refrigerants the program knows, by name. Names are always here; a coefficient file is handed over before its fluid is
// asked for, all of them at once (every-fluid.ts) or one by one where loading them all would cost too much (the workbench).
// A file is checked and made into a fluid when the fluid is first asked for.

import names from '../../../data/refrigerants/names.json';
import { DataError, InputError } from '../../numerics/index.ts';
import { editDistance } from '../../quantities/index.ts';
import { loadRefrigerant } from './load.ts';
import type { Refrigerant } from './types.ts';

interface NameEntry {
  readonly name: string;
  readonly aliases: readonly string[];
}

const known: readonly NameEntry[] = names;

/** Names by ISO 817 / ASHRAE 34, in the order they are offered. */
export const refrigerantNames: readonly string[] = known.map(({ name }) => name);

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
  const name = (file as Partial<NameEntry> | null)?.name;
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
 * The name by ISO 817 / ASHRAE 34 of a refrigerant under any of its names.
 * @param name  'R134a' or another name of it ('R-134a', 'propane'); capitals, spaces and hyphens do not matter
 * @throws InputError ('unknownRefrigerant') naming the nearest known name
 */
export function refrigerantName(name: string): string {
  const wanted = folded(name);
  const entry = known.find(({ name: own, aliases }) => [own, ...aliases].some((other) => folded(other) === wanted));
  if (entry === undefined) {
    const expected = `one of ${refrigerantNames.join(', ')}; the nearest is ${nearestName(wanted)}`;
    throw new InputError('refrigerant', name, expected, 'unknownRefrigerant');
  }
  return entry.name;
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

function folded(name: string): string {
  return String(name)
    .toLowerCase()
    .replaceAll(/[^a-z0-9]/g, '');
}

function nearestName(wanted: string): string {
  let nearest = refrigerantNames[0]!;
  let smallest = Number.POSITIVE_INFINITY;
  for (const entry of known) {
    for (const other of [entry.name, ...entry.aliases]) {
      const distance = editDistance(wanted.slice(0, 40), folded(other));
      if (distance < smallest) {
        smallest = distance;
        nearest = entry.name;
      }
    }
  }
  return nearest;
}
