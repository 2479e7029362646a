// The steps behind a year: each month's steady state, its energies, and their sums. Names: 'year.january.electricity' is a
// mean power, 'year.january.energies.electricity' the month's energy, 'year.energies.electricity' the year's.

import type { PlantHardware, PlantOrigins } from '../plant/index.ts';
import { plantWorking } from '../plant/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../quantities/index.ts';
import { monthSymbols } from './formulas.ts';
import { energyOver, type MonthResult, shareOfEnergy, type Year } from './year.ts';

/** Where the numbers of one month's state came from. */
export type MonthOrigins = (month: MonthResult) => PlantOrigins;

/** Energies that are summed over the year as they are. */
const summed = ['heatNeeded', 'heatFromMachine', 'backupHeat', 'electricity'] as const;

/**
 * The steps behind a year. Steps `<prefix>.<month>.heatedShare` and `.summerShare` are taken to exist: the surroundings'
 * working gives them. So are `<prefix>.<month>.energies.dehumidifierHeat` and `.dehumidifierElectricity` where the room has one.
 * @param year      the year
 * @param hardware  fan, pump, controls, as the year was computed with
 * @param origins   by month; see PlantOrigins
 * @param prefix    put before every name
 */
export function yearWorking(
  year: Year,
  hardware: PlantHardware,
  origins: MonthOrigins,
  prefix = 'year',
): readonly WorkingStep[] {
  const own = (name: string) => `${prefix}.${name}`;
  const { energies } = year;
  const totals = { ...energies, electricity: energies.electricity.total };
  return [
    ...year.months.flatMap((month) => monthSteps(month, hardware, origins(month), own(month.conditions.month))),
    ...summed.map((name) =>
      sumStep(own(`energies.${name}`), totals[name], year, ({ energies: of, conditions }) => [
        name === 'electricity' ? of.electricity.total : of[name],
        own(`${conditions.month}.energies.${name}`),
      ]),
    ),
    ...sharedSums(year, prefix),
    ...(year.seasonCop === null
      ? []
      : [
          workingStep(own('seasonCop'), 'year.seasonCop', year.seasonCop, {
            Q_m: [energies.heatFromMachine, own('energies.heatFromMachine')],
            Q_b: [energies.backupHeat, own('energies.backupHeat')],
            E: [energies.electricity.total, own('energies.electricity')],
          }),
        ]),
  ];
}

/** The months of a year added up: the step of any energy of which `read` gives each month's number and step. */
export function sumStep(
  result: string,
  value: number,
  year: Year,
  read: (month: MonthResult) => StepInput,
): WorkingStep {
  const inputs: Record<string, StepInput> = {};
  for (const symbol of Object.values(monthSymbols)) inputs[symbol] = [0];
  for (const month of year.months) inputs[monthSymbols[month.conditions.month]!] = read(month);
  return workingStep(result, 'year.sum', value, inputs);
}

/** The heated, or the summer, part of a month's energy. */
export function shareStep(
  result: string,
  month: MonthResult,
  part: YearPart,
  energy: StepInput,
  prefix = 'year',
): WorkingStep {
  const share = month.conditions[part];
  return workingStep(result, 'year.share', shareOfEnergy(share, energy[0]), {
    s: [share, `${prefix}.${month.conditions.month}.${part}`],
    E: energy,
  });
}

/** Parts of the year that count on their own. */
export type YearPart = 'heatedShare' | 'summerShare';

function monthSteps(
  month: MonthResult,
  hardware: PlantHardware,
  origins: PlantOrigins,
  prefix: string,
): readonly WorkingStep[] {
  const { tank, machine, state, energies, conditions } = month;
  const own = (name: string) => `${prefix}.${name}`;
  const energy = (name: string, value: number, power: number, from: string | undefined) =>
    workingStep(own(`energies.${name}`), name === 'electricity' ? 'year.electricity' : 'year.energy', value, {
      P: from === undefined ? [power] : [power, from],
      t: [conditions.duration],
    });
  return [
    ...plantWorking(tank, machine, hardware, state, prefix, origins),
    energy('heatNeeded', energies.heatNeeded, state.heatNeeded, own('heatNeeded')),
    energy('heatFromMachine', energies.heatFromMachine, state.heatFromMachine, own('heatFromMachine')),
    energy('backupHeat', energies.backupHeat, state.backupHeat, own('backupHeat')),
    energy('heatTaken', energies.heatTakenFromSource, state.heatTakenFromSource, own('heatTaken')),
    energy('electricity', energies.electricity.total, state.electricity.total, own('electricity')),
    energy('tankSensible', energies.tankSensible, state.roomHeat.fromTank, origins.Q_tank),
    energy('tankLatent', energies.tankLatent, state.latentToRoom, origins.Q_latent),
    ...roomHeatSteps(month, prefix),
  ];
}

/** Room heat of a month; where a dehumidifier runs, its heat, whose step is taken to exist, is added. */
function roomHeatSteps(
  { state, energies, conditions, dehumidifier }: MonthResult,
  prefix: string,
): readonly WorkingStep[] {
  const own = (name: string) => `${prefix}.energies.${name}`;
  const withoutDrying = energyOver(state.roomHeat.net, conditions.duration);
  const of = (name: string) =>
    workingStep(own(name), 'year.energy', withoutDrying, {
      P: [state.roomHeat.net, `${prefix}.roomNetHeat`],
      t: [conditions.duration],
    });
  if (dehumidifier === null) return [of('roomHeat')];
  return [
    of('roomHeatWithoutDehumidifier'),
    workingStep(own('roomHeat'), 'year.roomHeatWithDehumidifier', energies.roomHeat, {
      Q: [withoutDrying, own('roomHeatWithoutDehumidifier')],
      Q_d: [energies.dehumidifierHeat, own('dehumidifierHeat')],
    }),
  ];
}

/** Room heat in the heated and in the summer part of the year. */
function sharedSums(year: Year, prefix: string): readonly WorkingStep[] {
  const sums = [
    ['roomHeatHeated', 'heatedShare', year.roomHeatHeated],
    ['roomHeatSummer', 'summerShare', year.roomHeatSummer],
  ] as const;
  return sums.flatMap(([name, part, total]) => {
    const at = (month: MonthResult) => `${prefix}.${month.conditions.month}.energies.${name}`;
    const shares = year.months.map((month) =>
      shareStep(
        at(month),
        month,
        part,
        [month.energies.roomHeat, `${prefix}.${month.conditions.month}.energies.roomHeat`],
        prefix,
      ),
    );
    const sum = sumStep(`${prefix}.${name}`, total, year, (month) => [
      shareOfEnergy(month.conditions[part], month.energies.roomHeat),
      at(month),
    ]);
    return [...shares, sum];
  });
}
