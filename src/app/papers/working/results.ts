// The results that Working offers to choose from: what each is called, what it is a number of, and on which page it
// stands. Only those that this assessment has a step for.

import type { Assessment, BandWithUnit } from '../../../assess/index.ts';
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

export interface NamedResult {
  readonly name: string;
  readonly label: string;
  readonly quantity: QuantityName;
}

export interface ResultGroup {
  readonly page: PageName;
  readonly results: readonly NamedResult[];
}

type Listed = readonly [name: string, label: string, quantity: QuantityName];

/** Every result by the page it is shown on, in the order of that page. */
export function resultGroups(assessment: Assessment): readonly ResultGroup[] {
  const groups: readonly (readonly [PageName, readonly Listed[]])[] = [
    ['what-leaves', tankResults(assessment)],
    ['the-machine', machineResults],
    ['where-it-settles', settlingResults],
    ['two-bills', billResults(assessment)],
  ];
  return groups.map(([page, listed]) => ({
    page,
    results: listed
      .filter(([name]) => hasStep(assessment.workings, name))
      .map(([name, label, quantity]) => ({ name, label, quantity })),
  }));
}

function tankResults({ tank }: Assessment): readonly Listed[] {
  return [
    ['tank.load', 'heat the tank needs', 'power'],
    ['tank.loss', 'heat that leaves the tank', 'power'],
    ...tank.paths.map(({ path, label }): Listed => [`tank.paths.${path}`, `heat that leaves, ${label}`, 'power']),
    ['tank.gains.pump', 'heat from pumps', 'power'],
    ['tank.gains.light', 'heat from lights', 'power'],
    ['tank.evaporation', 'water that evaporates', 'evaporation'],
    ['tank.timePerKelvin', 'time to cool by one kelvin', 'duration'],
  ];
}

const machineResults: readonly Listed[] = [
  ['operating.compressor.power', 'electricity of the compressor', 'electricPower'],
  ['operating.compressor.shellHeat', 'shell heat, lost beside the water', 'power'],
  ['operating.compressor.volumetricEfficiency', 'volumetric efficiency', 'fraction'],
  ['operating.compressor.overallEfficiency', 'overall efficiency', 'fraction'],
  ['operating.compressor.massFlow', 'refrigerant flow', 'massFlow'],
  ['operating.compressor.pressureRatio', 'pressure ratio', 'ratio'],
];

const settlingResults: readonly Listed[] = [
  ['plant.heatReachingWater', 'heat to the water', 'power'],
  ['operating.evaporatingTemperature', 'evaporating temperature', 'temperature'],
  ['operating.condensingTemperature', 'condensing temperature', 'temperature'],
  ['operating.evaporatingPressure', 'evaporating pressure', 'pressure'],
  ['operating.condensingPressure', 'condensing pressure', 'pressure'],
  ['operating.dischargeTemperature', 'temperature of the discharge gas', 'temperature'],
  ['operating.heatTaken', 'heat taken from the source', 'power'],
  ['plant.systemPower', 'electricity, all parts', 'electricPower'],
  ['operating.compressorCop', 'COP of the compressor alone', 'ratio'],
  ['plant.systemCop', 'COP with fan, pump, controls', 'ratio'],
  ['year.seasonCop', 'COP over the year, heater included', 'ratio'],
  ['plant.margin', 'heat to the water less heat needed', 'power'],
  ['plant.runFraction', 'share of the time it runs', 'fraction'],
  ['plant.backupHeat', 'heat a plain heater must add', 'power'],
  ['condenser.length', 'length of the coil in the water', 'length'],
  ['condenser.area', 'surface of the coil in the water', 'area'],
  ['evaporator.faceArea', 'face of the coil at the source', 'area'],
  ['evaporator.volumeFlow', 'air through the coil', 'volumeFlow'],
];

function billResults({ accounts }: Assessment): readonly Listed[] {
  return accounts.flatMap(({ scenario, label }): readonly Listed[] =>
    (
      [
        ['annualCost', 'over its life, per year', 'money'],
        ['runningCost', 'running, a year', 'money'],
        ['electricity', 'electricity', 'energy'],
        ['electricityCost', 'cost of electricity', 'money'],
        ['roomHeat', 'heat into the room while it is heated', 'energy'],
        ['roomHeatCredit', 'credit for that heat', 'money'],
        ['coolingCost', 'summer cooling', 'money'],
        ['purchase', 'to buy', 'money'],
      ] as const
    ).map(([part, words, quantity]) => [`accounts.${scenario}.${part}`, `${label}: ${words}`, quantity]),
  );
}

const cycleListed: readonly Listed[] = [
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
export function cycleResults(cycle: CycleName): readonly NamedResult[] {
  return cycleListed.map(([name, label, quantity]) => ({ name: `${cycle}.${name}`, label, quantity }));
}

/** The name of the step that is meant: its own name, or that of a key of the assessment, such as tankLoad. */
export function resultMeant(part: string, assessment: Assessment): string {
  if (hasStep(assessment.workings, part)) return part;
  const value = (assessment as unknown as Readonly<Record<string, unknown>>)[part];
  return isBand(value) ? value.result : part;
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

/** "about 450 W (380 to 520)", or the one value. */
export function sayResult(
  value: number,
  band: Band | undefined,
  quantity: string,
  view: UnitView,
  currency: string,
): string | undefined {
  if (!isQuantityName(quantity)) return undefined;
  const context = quantity === 'money' ? { currency } : {};
  return band === undefined
    ? sayQuantity(value, quantity, view, undefined, context)
    : sayBand(band, quantity, view, context);
}
