// Which fluid and oil a machine most likely holds when nothing but its origin and its year are known.

import type { Oil } from '../../../matter/refrigerants/index.ts';
import { catalogueEntry } from '../../../matter/refrigerants/index.ts';
import type { Band } from '../../../quantities/index.ts';
import { eraOf, erasMet } from './eras.ts';
import { machineData } from './machine-data.ts';

export interface LikelyFluid {
  /** Name of the refrigerant: 'R134a'. */
  readonly fluid: string;
  /** Others that such machines were built for in those years. */
  readonly others: readonly string[];
  readonly source: string;
}

/**
 * Refrigerant a machine was most likely made for.
 * @param appliance     class it came out of, one of applianceNames; absent: any
 * @param year          when it was made, a range of calendar years; absent: about 2008, with every era among the others
 * @param unitedStates  true where it was sold in the USA, whose eras differ for some classes
 * @returns             the likely fluid and others to be reckoned with
 * Source: what was sold when, from memory; a rating plate goes before it.
 */
export function likelyFluid(appliance?: string, year?: Band, unitedStates = false): LikelyFluid {
  const { histories, anyHistory, historySource, unknownYear } = machineData;
  const history = (appliance === undefined ? undefined : histories.get(appliance)) ?? anyHistory;
  const eras = unitedStates ? history.erasUnitedStates : history.eras;
  const { fluid, also } = eraOf(eras, year?.likely ?? unknownYear);
  const met = year === undefined ? eras : erasMet(eras, year);
  const others = new Set([...also, ...met.flatMap((era) => [era.fluid, ...era.also])]);
  others.delete(fluid);
  return { fluid, others: [...others], source: historySource };
}

/** Oils usually met with the fluid a machine was made for, the commonest first; empty where none is known. */
export function usualOil(madeFor: string): readonly Oil[] {
  return catalogueEntry(madeFor).usualOils;
}
