// Every result that carries a band, by the name it has in the working: one list, so that a result is varied, combined,
// printed and traced under the same name.

import { type Account, type LoopSeason, lifeCostDifference } from '../../accounts/index.ts';
import { NoSolutionError } from '../../numerics/index.ts';
import { currentShare } from '../../parts/compressor/index.ts';
import type { QuantityName } from '../../quantities/index.ts';
import type { ResultValues } from '../doubt/doubt.ts';
import type { AccountsResult } from '../stages/accounts/accounts.ts';
import type { StageResults } from '../stages/index.ts';
import { allMachines } from '../stages/plant.ts';
import { allMachinesResult, machineFlows } from './machines.ts';
import { monthValues } from './moments.ts';
import { neverNegative, type ResultValue, tankValues } from './tank-values.ts';

const machineValues: readonly ResultValue[] = [
  value('operating.evaporatingTemperature', 'temperature', ({ operating }) => operating.evaporating.temperature),
  value('operating.condensingTemperature', 'temperature', ({ operating }) => operating.condensing.temperature),
  value('operating.evaporatingPressure', 'pressure', ({ operating }) => operating.evaporating.pressure),
  value('operating.condensingPressure', 'pressure', ({ operating }) => operating.condensing.pressure),
  value('operating.dischargeTemperature', 'temperature', ({ operating }) => operating.dischargeTemperature),
  value('operating.compressor.pressureRatio', 'ratio', ({ operating }) => operating.pressureRatio),
  value('operating.compressor.massFlow', 'massFlow', ({ operating }) => operating.massFlow),
  value('operating.compressor.volumetricEfficiency', 'fraction', ({ operating }) => operating.volumetricEfficiency),
  value('operating.compressor.overallEfficiency', 'fraction', ({ operating }) => operating.overallEfficiency),
  value('operating.compressor.power', 'electricPower', ({ operating }) => operating.compressorPower),
  value('operating.compressor.current', 'current', ({ operating }) => operating.compressor.current),
  value('operating.compressor.motor.load', 'fraction', ({ operating }) => operating.compressor.motor.load),
  value('operating.compressor.wallTemperature', 'temperature', ({ operating }) => operating.compressor.wallTemperature),
  value('identified.displacement', 'displacement', ({ compressor }) => compressor.compressor.displacement),
  value('operating.heatTaken', 'power', ({ operating }) => operating.heatTaken),
  value('operating.heatDelivered', 'power', ({ operating }) => operating.heatDelivered),
  value('operating.compressor.shellHeat', 'power', ({ operating }) => operating.shellHeat),
  value('operating.compressorCop', 'ratio', ({ operating }) => operating.compressorCop),
  value('plant.heatReachingWater', 'power', ({ plant }) => requiredRunning(plant.heatReachingWaterRunning)),
  value('plant.systemPower', 'electricPower', ({ plant }) => requiredRunning(plant.systemPowerRunning)),
  value('plant.systemCop', 'ratio', ({ plant }) => requiredRunning(plant.systemCop)),
  value('plant.heatTaken', 'power', ({ plant }) => plant.heatTakenFromSource),
  value('plant.heatFromMachine', 'power', ({ plant }) => plant.heatFromMachine),
  value('plant.backupHeat', 'power', ({ plant }) => plant.backupHeat),
  value(
    'plant.fromSocket',
    'electricPower',
    ({ plant, tank }) => plant.electricity.total + tank.gains.pump + tank.gains.light + tank.gains.ultraviolet,
  ),
  value('condenser.length', 'length', ({ sizing }) => sizing.condenser.tankCoil.length),
  value('condenser.area', 'area', ({ sizing }) => sizing.condenser.tankCoil.area),
  value('evaporator.faceArea', 'area', ({ sizing }) => sizing.evaporator.faceArea),
  value('evaporator.volumeFlow', 'volumeFlow', ({ sizing }) => sizing.evaporator.volumeFlow),
];

/** Heat for the water beyond what the tank needs: of either sign. */
const margin: ResultValue = value(
  'plant.margin',
  'power',
  ({ plant, tank }) => requiredRunning(plant.heatReachingWaterRunning) - tank.load,
);

/** Current over the rated one, where that is known. */
function ratedValues({ compressor }: StageResults): readonly ResultValue[] {
  if (compressor.ratedCurrent === null) return [];
  return [
    value('operating.compressor.currentShare', 'fraction', ({ operating, compressor: { ratedCurrent } }) =>
      currentShare(operating.compressor.current, ratedCurrent!),
    ),
  ];
}

/** Of all machines, where there are several; of a single one they are the loop's own. */
function severalValues({ hardware }: StageResults): readonly ResultValue[] {
  if (hardware.count === 1) return [];
  return machineFlows.map((name) =>
    value(
      allMachinesResult(hardware.count, name),
      name === 'compressorPower' ? 'electricPower' : 'power',
      (results) => {
        return allMachines(results.operating, results.hardware.count)[name];
      },
    ),
  );
}

/** Of a blend: where it ends to condense and begins to boil, and its glides. A single substance has none. */
function blendValues({ operating }: StageResults): readonly ResultValue[] {
  if (operating.condensing.glide === 0) return [];
  return (['evaporating', 'condensing'] as const).flatMap((level) => [
    value<StageResults>(
      `operating.${level}BubbleTemperature`,
      'temperature',
      (results) => results.operating[level].bubbleTemperature,
    ),
    value<StageResults>(
      `operating.${level}Glide`,
      'temperatureDifference',
      (results) => results.operating[level].glide,
    ),
  ]);
}

const accountParts: readonly (readonly [string, QuantityName, (account: Account) => number])[] = [
  ['electricity', 'energy', ({ energies }) => energies.electricity],
  ['electricityCost', 'money', ({ electricityCost }) => electricityCost],
  ['roomHeat', 'energy', ({ energies }) => energies.roomHeatHeated],
  ['roomHeatCredit', 'money', ({ roomHeatCredit }) => roomHeatCredit],
  ['coolingCost', 'money', ({ coolingCost }) => coolingCost],
  ['runningCost', 'money', ({ runningCost }) => runningCost],
  ['purchase', 'money', ({ purchase }) => purchase],
  ['annualCost', 'money', ({ annualCost }) => annualCost],
];

/** Those of a room with a dehumidifier, which a design has or has not at every value of its inputs. */
const dehumidifierParts: typeof accountParts = [
  ['dehumidifierElectricity', 'energy', ({ energies }) => energies.dehumidifierElectricity ?? 0],
  ['dehumidifierCost', 'money', ({ dehumidifierCost }) => dehumidifierCost ?? 0],
];

/**
 * The lines of one account at the likely values: 'accounts.plainHeater.runningCost'; `accountIn` finds the same account in any
 * results.
 */
export function partsOfAccount<Results>(
  { scenario, dehumidifierCost }: Account,
  accountIn: (results: Results) => Account,
): readonly ResultValue<Results>[] {
  const parts = dehumidifierCost === null ? accountParts : [...accountParts, ...dehumidifierParts];
  return parts.map(([part, quantity, read]) => ({
    name: `accounts.${scenario}.${part}`,
    quantity,
    read: (results) => read(accountIn(results)),
  }));
}

/** Values that exist for the scenarios and months of these results. */
function accountValues(results: StageResults): readonly ResultValue[] {
  const accounts = results.accounts.accounts.flatMap((account) =>
    partsOfAccount<StageResults>(account, (now) => accountOf(now.accounts.accounts, account.scenario)),
  );
  const season = results.year.seasonCop === null ? [] : [value('year.seasonCop', 'ratio', seasonCop)];
  return [...accounts, ...season, ...comparisonValues(results)];
}

/**
 * This loop against each other way, both varied together, so that what moves both accounts alike cancels. Beside the
 * difference of the costs stand the numbers that its dependence on the price of house heat and on the COP over the year is
 * made of: against/crossing.ts.
 */
function comparisonValues({ accounts: { accounts, season } }: StageResults): readonly ResultValue[] {
  const pair = (other: string, read: (loop: Account, other: Account, all: AccountsResult) => number) => {
    return ({ accounts: all }: StageResults) =>
      read(accountOf(all.accounts, 'thisLoop'), accountOf(all.accounts, other), all);
  };
  const difference = (loop: Account, other: Account) => lifeCostDifference(loop.annualCost, other.annualCost);
  const roomHeat = (loop: Account, other: Account) => loop.energies.roomHeatHeated - other.energies.roomHeatHeated;
  const others = accounts.filter(({ scenario }) => scenario !== 'thisLoop').map(({ scenario }) => scenario);
  return [
    ...others.flatMap((other) => {
      const name = (part: string) => `accounts.against.${other}.${part}`;
      return [
        value(name('lifeCost'), 'money', pair(other, difference)),
        value(name('roomHeat'), 'energy', pair(other, roomHeat)),
        value(
          name('costWithoutHouseHeat'),
          'money',
          pair(other, (loop, its, { prices }) => difference(loop, its) + prices.houseHeat * roomHeat(loop, its)),
        ),
        ...(season === null
          ? []
          : [
              value(
                name('costWithoutElectricity'),
                'money',
                pair(other, (loop, its, all) => {
                  const { costAtCopOne, cop } = loopSeason(all);
                  return difference(loop, its) - costAtCopOne / cop;
                }),
              ),
            ]),
      ];
    }),
    ...(season === null
      ? []
      : [value('accounts.thisLoop.costAtCopOne', 'money', ({ accounts: all }) => loopSeason(all).costAtCopOne)]),
  ];
}

function accountOf(accounts: readonly Account[], scenario: string): Account {
  return accounts.find((each) => each.scenario === scenario)!;
}

function loopSeason({ season }: AccountsResult): LoopSeason {
  if (season !== null) return season;
  throw new NoSolutionError('No heat is needed in the whole year.', 'a load above 0 in at least one month');
}

function seasonCop({ year }: StageResults): number {
  if (year.seasonCop !== null) return year.seasonCop;
  throw new NoSolutionError('No heat is needed in the whole year.', 'a load above 0 in at least one month');
}

/**
 * Every value of these results, to be read from them and from any variation of them: a path of heat that a variation takes
 * away counts as 0 and does not go missing.
 */
export function resultValues(likely: StageResults): readonly ResultValue[] {
  return [
    ...tankValues(likely),
    ...[...machineValues, ...ratedValues(likely), ...severalValues(likely)].map(neverNegative),
    margin,
    ...blendValues(likely),
    ...monthValues(likely),
    ...accountValues(likely),
  ];
}

/** The numbers of one run, by name. */
export function readValues<Results>(all: readonly ResultValue<Results>[], results: Results): ResultValues {
  const values: Record<string, number> = {};
  for (const { name, read } of all) values[name] = read(results);
  return values;
}

/** The quantity each value is of, by name. */
export function quantitiesOf<Results>(all: readonly ResultValue<Results>[]): Readonly<Record<string, QuantityName>> {
  return Object.fromEntries(all.map(({ name, quantity }) => [name, quantity]));
}

function value<Results = StageResults>(
  name: string,
  quantity: QuantityName,
  read: ResultValue<Results>['read'],
): ResultValue<Results> {
  return { name, quantity, read };
}

/** The stages hand on only plants whose machine runs; a null here is a broken promise. */
export function requiredRunning(number: number | null): number {
  if (number === null) throw new Error('the plant at the coldest spell has no running machine');
  return number;
}
