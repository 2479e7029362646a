// The coefficient files of refrigerants, fetched when a fluid is first asked about: a person looks at two or three of them,
// and the first answer waits for no other. In the one file they are all part of the worker's script.

import { addCoefficientFile, hasCoefficientFile } from '../../matter/refrigerants/index.ts';

/** Answers one parsed coefficient file. */
export type FluidLoader = () => Promise<unknown>;

const loaders: Readonly<Record<string, FluidLoader>> = byName(
  import.meta.glob('../../../data/refrigerants/R*.json', { import: 'default' }),
);

/** Names of the refrigerants that there are files of. */
export const fetchableFluids: readonly string[] = Object.keys(loaders);

/**
 * Sees that the coefficient files of refrigerants are here. What is here already costs nothing. A file that could not be
 * fetched is asked for anew at the next request; browsers that keep a failed import need a new page for it.
 * @param names    own names of refrigerants, 'R134a'; each may stand more than once
 * @param sources  where the files come from
 * @returns        those whose file could not be fetched
 */
export async function ensureFluids(
  names: readonly string[],
  sources: Readonly<Record<string, FluidLoader>> = loaders,
): Promise<readonly string[]> {
  const wanted = [...new Set(names)].filter((name) => !hasCoefficientFile(name));
  const fetched = await Promise.all(wanted.map((name) => fetchFluid(sources[name])));
  return wanted.filter((_name, index) => fetched[index] === false);
}

async function fetchFluid(load: FluidLoader | undefined): Promise<boolean> {
  if (load === undefined) return false;
  try {
    addCoefficientFile(await load());
    return true;
  } catch {
    return false;
  }
}

function byName(files: Readonly<Record<string, FluidLoader>>): Readonly<Record<string, FluidLoader>> {
  return Object.fromEntries(
    Object.entries(files).map(([path, load]) => [path.slice(path.lastIndexOf('/') + 1, -'.json'.length), load]),
  );
}
