// Where the machine of a document comes from, as far as its defaults need it: its fluid, its level, the mains it was wound for.
// Read from the texts alone, so that the page may ask before anything is computed.

import {
  type Application,
  applianceClass,
  likelyFluid,
  type MachineOrigin,
  ratingPoint,
  type StartType,
} from '../../parts/compressor/index.ts';
import { valueAt } from '../checks/reading.ts';
import type { Region } from '../plain.ts';
import type { DesignDocument } from '../schema/design.ts';

export const compressorPath = 'machine.compressor';

/** A default that is a choice, with the words of its source. */
export interface ChosenDefault<Name extends string = string> {
  readonly name: Name;
  readonly source: string;
}

/** What is likely of a machine, and why. */
export interface DescribedMachine {
  readonly madeFor: ChosenDefault;
  readonly application: ChosenDefault<Application>;
  /** Mains here: of the region, or of the nameplate where the region is not known. */
  readonly supply: MainsDefault;
  /** First frequency that a rating, a set of coefficients or a table names [Hz]; undefined where none does. */
  readonly statedFrequency: number | undefined;
  /** All but the frequency of its mains, for the ranges of its numbers. */
  readonly origin: Omit<MachineOrigin, 'frequency'>;
}

export interface MainsDefault {
  readonly frequency: number;
  readonly voltage: number;
  readonly frequencySource: string;
  readonly voltageSource: string;
}

/** The two fluids of a design: what the machine runs on, and what its compressor was made for. */
export function fluidsOf(document: DesignDocument): { readonly refrigerant: string; readonly madeFor: string } {
  const madeFor = document.machine.compressor?.madeFor ?? likelyMadeFor(document).name;
  return { refrigerant: document.machine.refrigerant ?? madeFor, madeFor };
}

export function describeMachine(document: DesignDocument): DescribedMachine {
  const { machine } = document;
  const described = machine.compressor ?? {};
  const madeFor = likelyMadeFor(document);
  const application = usualApplication(document);
  return {
    madeFor,
    application,
    supply: mainsHere(document),
    statedFrequency: statedFrequency(document),
    origin: {
      appliance: described.appliance,
      madeFor: described.madeFor ?? madeFor.name,
      year: valueAt(document, `${compressorPath}.year`),
      domeHeight: valueAt(document, `${compressorPath}.domeHeight`),
      domeDiameter: valueAt(document, `${compressorPath}.domeDiameter`),
      application: machine.application ?? (application.isKnown ? application.name : undefined),
      startType: described.nameplate?.startType as StartType | undefined,
      isRated: isRated(described),
    },
  };
}

/** Is anything stated of its flow? */
function isRated({
  ratings = [],
  coefficients = [],
  tables = [],
}: NonNullable<DesignDocument['machine']['compressor']>): boolean {
  const isOfFlow = ({ of }: { readonly of: string }) => of === 'capacity' || of === 'massFlow';
  return ratings.some(({ capacity }) => capacity !== undefined) || coefficients.some(isOfFlow) || tables.length > 0;
}

function likelyMadeFor(document: DesignDocument): ChosenDefault {
  const { appliance } = document.machine.compressor ?? {};
  const isUnitedStates = document.place?.region === 'unitedStates';
  const found = likelyFluid(appliance, valueAt(document, `${compressorPath}.year`), isUnitedStates);
  const others = found.others.length === 0 ? '' : `, also ${found.others.join(', ')}`;
  const whose = appliance === undefined ? 'most often met in such domes' : `most often met in a ${titleOf(appliance)}`;
  return { name: found.fluid, source: `${whose}${others}; ${found.source}. The plate decides.` };
}

function titleOf(appliance: string): string {
  return applianceClass(appliance).title;
}

/** The level of suction pressure that it was made for; known from the appliance or from how it is rated. */
function usualApplication(document: DesignDocument): ChosenDefault<Application> & { readonly isKnown: boolean } {
  const { appliance, ratings } = document.machine.compressor ?? {};
  if (appliance !== undefined) {
    return { name: applianceClass(appliance).application, source: `usual of a ${titleOf(appliance)}`, isKnown: true };
  }
  const at = ratings?.[0]?.at;
  if (at?.kind === 'named') {
    const { application, title } = ratingPoint(at.point);
    return { name: application, source: `rated at ${title}`, isKnown: true };
  }
  const evaporating =
    valueAt(document, `${compressorPath}.ratings.0.at.evaporating`) ??
    valueAt(document, `${compressorPath}.coefficients.0.evaporatingRange`);
  if (evaporating !== undefined) {
    return { name: levelOf(evaporating.likely), source: 'by the cold it is rated at', isKnown: true };
  }
  return { name: 'low', source: 'nothing is known of it: the level whose motor bears least', isKnown: false };
}

/** Between the evaporating temperatures of the named rating points: −23.3, −6.7 and 7.2 °C [K]. */
function levelOf(evaporating: number): Application {
  if (evaporating < 258.15) return 'low';
  return evaporating < 273.15 ? 'medium' : 'high';
}

function statedFrequency(document: DesignDocument): number | undefined {
  const { ratings = [], coefficients = [], tables = [] } = document.machine.compressor ?? {};
  const paths = Object.entries({ ratings, coefficients, tables }).flatMap(([list, items]) =>
    items.map((_, index) => `${compressorPath}.${list}.${index}.frequency`),
  );
  return paths.map((path) => valueAt(document, path)?.likely).find((frequency) => frequency !== undefined);
}

const nominal = 'nominal mains, IEC 60038';

function mainsHere(document: DesignDocument): MainsDefault {
  const region: Region = document.place?.region ?? 'unknown';
  const plate = (name: string) => valueAt(document, `${compressorPath}.nameplate.${name}`)?.likely;
  const ofPlate = 'as on the nameplate, since the region is not known';
  const plateFrequency = region === 'unknown' ? plate('frequency') : undefined;
  const plateVoltage = region === 'unknown' ? plate('voltage') : undefined;
  const frequency = plateFrequency ?? (region === 'unitedStates' ? 60 : 50);
  const typed = valueAt(document, 'machine.supply.frequency')?.likely ?? frequency;
  const isLowVoltage = region === 'unitedStates' || (region === 'unknown' && typed > 55);
  return {
    frequency,
    voltage: plateVoltage ?? (isLowVoltage ? 120 : 230),
    frequencySource: plateFrequency === undefined ? nominal : ofPlate,
    voltageSource: plateVoltage === undefined ? nominal : ofPlate,
  };
}
