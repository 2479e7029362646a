// Which fluid and oil a machine most likely holds when nothing but its origin and its year are known.

import shipped from '../../../../data/compressors.json';
import { catalogueEntry, type Oil } from '../../../matter/refrigerants/index.ts';
import { DataError } from '../../../numerics/index.ts';
import type { Band } from '../../../quantities/index.ts';
import { type CompressorFile, fileName, sourceWords } from '../data.ts';
import { type Era, eraOf, erasMet, requireRising } from './eras.ts';

/** The fluid usual until a year, and those met beside it. */
export interface FluidEra extends Era {
  readonly fluid: string;
  readonly also: readonly string[];
}

interface FluidHistory {
  readonly eras: readonly FluidEra[];
  readonly erasUnitedStates: readonly FluidEra[];
}

export interface FluidHistories {
  readonly byAppliance: ReadonlyMap<string, FluidHistory>;
  /** Where no appliance is told. */
  readonly any: FluidHistory;
  /** Year taken where none is told. */
  readonly unknownYear: number;
  readonly source: string;
}

/** What was sold when, as checked records. @throws DataError that names the place and the rule it breaks. */
export function readFluidHistories(file: CompressorFile): FluidHistories {
  const { fluidsByYear } = file;
  const { any, anyUnitedStates, unknownYear } = fluidsByYear;
  const erasFrom = (path: string, eras: readonly FluidEra[], builtFor: object): readonly FluidEra[] => {
    requireRising(path, eras);
    for (const [index, era] of eras.entries()) requireKnown(`${path}.${index}`, era, builtFor);
    return eras;
  };
  return {
    byAppliance: new Map(
      file.appliances.map((appliance, index) => {
        const path = `appliances.${index}`;
        const eras = erasFrom(`${path}.fluidsByYear`, appliance.fluidsByYear, appliance.madeFor);
        const there = 'fluidsByYearUnitedStates' in appliance ? appliance.fluidsByYearUnitedStates : undefined;
        const erasUnitedStates =
          there === undefined ? eras : erasFrom(`${path}.fluidsByYearUnitedStates`, there, appliance.madeFor);
        return [appliance.name, { eras, erasUnitedStates }];
      }),
    ),
    any: {
      eras: erasFrom('fluidsByYear.any', any, file.referencePressures),
      erasUnitedStates: erasFrom('fluidsByYear.anyUnitedStates', anyUnitedStates, file.referencePressures),
    },
    unknownYear,
    source: sourceWords(file, 'fluidsByYear.source', fluidsByYear.source),
  };
}

function requireKnown(path: string, era: FluidEra, builtFor: object): void {
  const unknown = [era.fluid, ...era.also].find((fluid) => !(fluid in builtFor));
  if (unknown !== undefined) throw new DataError(fileName, path, `names ${unknown}, for which it knows no machine`);
}

const histories = readFluidHistories(shipped);

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
  const { byAppliance, any, source, unknownYear } = histories;
  const history = (appliance === undefined ? undefined : byAppliance.get(appliance)) ?? any;
  const eras = unitedStates ? history.erasUnitedStates : history.eras;
  const { fluid, also } = eraOf(eras, year?.likely ?? unknownYear);
  const met = year === undefined ? eras : erasMet(eras, year);
  const others = new Set([...also, ...met.flatMap((era) => [era.fluid, ...era.also])]);
  others.delete(fluid);
  return { fluid, others: [...others], source };
}

/** Oils usually met with the fluid a machine was made for, the commonest first; empty where none is known. */
export function usualOil(madeFor: string): readonly Oil[] {
  return catalogueEntry(madeFor).usualOils;
}
