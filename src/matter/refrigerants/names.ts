// The names of the refrigerants the program knows. Apart from the fluids themselves (library.ts), so that a page that only
// offers names needs nothing of the engine.

import names from '../../../data/refrigerants/names.json';
import { InputError } from '../../numerics/index.ts';
import { editDistance } from '../../quantities/index.ts';

interface NameEntry {
  readonly name: string;
  readonly aliases: readonly string[];
  readonly needs?: readonly string[];
}

const known: readonly NameEntry[] = names;

/** Names by ISO 817 / ASHRAE 34, in the order they are offered. */
export const refrigerantNames: readonly string[] = known.map(({ name }) => name);

/** Every name, and every folded name, with the one by ISO 817 / ASHRAE 34: a batch asks for one a line. */
const namesByText = new Map(
  known.flatMap(({ name, aliases }) =>
    [name, ...aliases].flatMap(
      (other) =>
        [
          [other, name],
          [folded(other), name],
        ] as const,
    ),
  ),
);

/** Other names of a refrigerant (its own name): 'propane', 'HC-290'; none for a name that is not known. */
export function refrigerantAliases(name: string): readonly string[] {
  return known.find((entry) => entry.name === name)?.aliases ?? [];
}

/**
 * The other refrigerants (own names) whose coefficient files transportAt needs for one (its own name): the reference fluids of
 * its corresponding states. States and everything else of a fluid need no other file.
 */
export function fluidsNeededBy(name: string): readonly string[] {
  return known.find((entry) => entry.name === name)?.needs ?? [];
}

/**
 * The name by ISO 817 / ASHRAE 34 that a text means; undefined where it means none.
 * @param text  'R134a' or another name of it ('R-134a', 'propane'); capitals, spaces and hyphens do not matter
 */
export function refrigerantNamed(text: string): string | undefined {
  return namesByText.get(text) ?? namesByText.get(folded(text));
}

/**
 * The name by ISO 817 / ASHRAE 34 of a refrigerant under any of its names.
 * @param name  as for refrigerantNamed
 * @throws InputError ('unknownRefrigerant') naming the nearest known name
 */
export function refrigerantName(name: string): string {
  const own = refrigerantNamed(name);
  if (own === undefined) {
    const expected = `one of ${refrigerantNames.join(', ')}; the nearest is ${nearestName(folded(name))}`;
    throw new InputError('refrigerant', name, expected, 'unknownRefrigerant');
  }
  return own;
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
