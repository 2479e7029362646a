// The refrigerants the program knows, by name. Each coefficient file is loaded and checked when it is first asked for.

import r12 from '../../../data/refrigerants/R12.json';
import r22 from '../../../data/refrigerants/R22.json';
import r134a from '../../../data/refrigerants/R134a.json';
import r290 from '../../../data/refrigerants/R290.json';
import r600a from '../../../data/refrigerants/R600a.json';
import { InputError } from '../../numerics/index.ts';
import { editDistance } from '../../quantities/index.ts';
import { loadRefrigerant } from './load.ts';
import type { Refrigerant } from './types.ts';

interface FileHead {
  readonly name: string;
  readonly aliases: readonly string[];
}

const files: readonly FileHead[] = [r134a, r600a, r290, r12, r22];

/** Names by ISO 817 / ASHRAE 34, in the order they are offered. */
export const refrigerantNames: readonly string[] = files.map(({ name }) => name);

// Loading is a pure function of the file: keeping its result changes no answer, only the time.
const loaded = new Map<string, Refrigerant>();

/**
 * The fluid of a name, ready to be asked for states.
 * @param name  'R134a' or another name of it ('R-134a', 'propane'); capitals, spaces and hyphens do not matter
 * @returns     the fluid; the same object at each call
 * @throws InputError ('unknownRefrigerant') naming the nearest known name; DataError if its file is broken
 */
export function refrigerant(name: string): Refrigerant {
  const wanted = folded(name);
  const file = files.find((entry) => [entry.name, ...entry.aliases].some((known) => folded(known) === wanted));
  if (file === undefined) {
    const expected = `one of ${refrigerantNames.join(', ')}; the nearest is ${nearestName(wanted)}`;
    throw new InputError('refrigerant', name, expected, 'unknownRefrigerant');
  }
  let fluid = loaded.get(file.name);
  if (fluid === undefined) {
    fluid = loadRefrigerant(file, `data/refrigerants/${file.name}.json`);
    loaded.set(file.name, fluid);
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
  for (const entry of files) {
    for (const known of [entry.name, ...entry.aliases]) {
      const distance = editDistance(wanted.slice(0, 40), folded(known));
      if (distance < smallest) {
        smallest = distance;
        nearest = entry.name;
      }
    }
  }
  return nearest;
}
