// The results that Working names: which of them it offers to choose from, by the page they stand on, what an address means,
// and how a value is said. What each is called comes from the assessment's own list.

import { type Assessment, type BandWithUnit, namedResults } from '../../../assess/index.ts';
import {
  type Band,
  isQuantityName,
  type QuantityName,
  sayBand,
  sayQuantity,
  type UnitView,
} from '../../../quantities/index.ts';
import type { PageName } from '../../pages.ts';
import { hasStep } from '../../ui/result-link.tsx';
import type { CycleName } from '../../worker/cycle.ts';

export interface ChosenResult {
  readonly name: string;
  readonly label: string;
  readonly quantity: QuantityName;
}

export interface PageResults {
  readonly page: PageName;
  readonly results: readonly ChosenResult[];
}

/** Every result of the assessment that has a step, each once. */
export function allResults(assessment: Assessment): readonly ChosenResult[] {
  return withSteps(assessment).map(({ name, label, quantity }) => ({ name, label, quantity }));
}

/** Numbers of one month and of one state are found in their tables and by typing: as a list they would be a wall. */
const ofTables = /^year\.|\.points\.|\.months\./;

/** What stands on each page. */
export function resultsByPage(assessment: Assessment): readonly PageResults[] {
  const listed = withSteps(assessment).filter(({ place }) => !ofTables.test(place));
  const pages = ['what-leaves', 'the-machine', 'where-it-settles', 'two-bills'] as const;
  return pages.map((page) => ({
    page,
    results: listed
      .filter(({ name }) => pageOf(name) === page)
      .map(({ name, label, quantity }) => ({ name, label, quantity })),
  }));
}

function pageOf(name: string): PageName {
  if (name.startsWith('tank.')) return 'what-leaves';
  if (name.startsWith('accounts.')) return 'two-bills';
  return /^(identified|machines|operating\.(compressor|limits))\./.test(name) ? 'the-machine' : 'where-it-settles';
}

function withSteps(assessment: Assessment) {
  const results = namedResults(assessment).filter(({ name }) => hasStep(assessment.workings, name));
  const first = new Map<string, (typeof results)[number]>();
  for (const result of results) if (!first.has(result.name)) first.set(result.name, result);
  return [...first.values()];
}

/** The name of the step that is meant: its own, or the place in the assessment where it stands, such as tankLoad. */
export function resultMeant(part: string, assessment: Assessment): string {
  if (hasStep(assessment.workings, part)) return part;
  return namedResults(assessment).find(({ place }) => place === part)?.name ?? part;
}

const cycleListed: readonly (readonly [name: string, label: string, quantity: QuantityName])[] = [
  ['heatingCop', 'heating COP', 'ratio'],
  ['coolingCop', 'cooling COP', 'ratio'],
  ['carnotHeatingCop', 'COP of a reversible cycle', 'ratio'],
  ['specificWork', 'specific work', 'enthalpy'],
  ['heatDelivered', 'heat given, condenser', 'enthalpy'],
  ['heatTaken', 'heat taken, evaporator', 'enthalpy'],
  ['pressureRatio', 'pressure ratio', 'ratio'],
  ['isentropicEfficiency', 'isentropic efficiency', 'fraction'],
  ['volumetricHeatingCapacity', 'heat per volume drawn in', 'volumetricCapacity'],
  ['heatExchanger.heat', 'heat in the exchanger', 'enthalpy'],
  ['exergyDestruction.total', 'work lost in all parts', 'enthalpy'],
  ['exergyBasis.secondLawEfficiency', 'second-law efficiency', 'fraction'],
  ['perSecond.massFlow', 'mass flow', 'massFlow'],
  ['perSecond.heatingCapacity', 'heating capacity', 'power'],
  ['perSecond.coolingCapacity', 'cooling capacity', 'power'],
  ['perSecond.compressorPower', 'power on the gas', 'electricPower'],
];

/** Results of a textbook cycle. */
export function cycleResults(cycle: CycleName): readonly ChosenResult[] {
  return cycleListed.map(([name, label, quantity]) => ({ name: `${cycle}.${name}`, label, quantity }));
}

/** The band that the assessment has for a result, wherever in it that stands. */
export function bandOfResult(assessment: Assessment, result: string): BandWithUnit | undefined {
  const search = (value: unknown): BandWithUnit | undefined => {
    if (typeof value !== 'object' || value === null) return undefined;
    if (isBand(value)) return value.result === result ? value : undefined;
    for (const inner of Object.values(value)) {
      const found = search(inner);
      if (found !== undefined) return found;
    }
    return undefined;
  };
  const { workings: _, ...answers } = assessment;
  return search(answers);
}

function isBand(value: unknown): value is BandWithUnit {
  const band = value as Partial<BandWithUnit> | null | undefined;
  return (
    typeof band === 'object' && band !== null && typeof band.result === 'string' && typeof band.likely === 'number'
  );
}

/** "about 450 W (380 to 520)", or the one value with that many significant digits. */
export function sayResult(
  value: number,
  band: Band | undefined,
  quantity: string,
  view: UnitView,
  currency: string,
  digits?: number,
): string | undefined {
  if (!isQuantityName(quantity)) return undefined;
  const context = quantity === 'money' ? { currency } : {};
  return band === undefined
    ? sayQuantity(value, quantity, view, digits, context)
    : sayBand(band, quantity, view, context);
}
