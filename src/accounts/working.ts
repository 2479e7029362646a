// The steps behind one account: its energies from those of the months, then its money. Results are named after the
// scenario: 'accounts.thisLoop.annualCost'.

import { type StepInput, type WorkingStep, workingStep } from '../quantities/index.ts';
import { type MonthResult, shareOfEnergy, shareStep, sumStep, type Year, type YearPart } from '../year/index.ts';
import type { Account, AccountPrices } from './account.ts';
import {
  certifiedRoomHeat,
  hasDehumidifier,
  heaterCop,
  heaterRoomHeat,
  heatTakenAtCop,
  roomHeatLessTaken,
  type ScenarioEnergies,
  type ScenarioId,
} from './energies.ts';

/**
 * The money of one account. Steps `accounts.<scenario>.electricity`, `.roomHeat` and `.roomHeatSummer` are taken to exist:
 * `scenarioWorking` gives them.
 * @param result    the account
 * @param prices    those it was made with
 * @param purchase  where the purchase came from: a design path or another step
 */
export function accountWorking(result: Account, prices: AccountPrices, purchase: string): readonly WorkingStep[] {
  const { energies } = result;
  const own = (name: string) => `accounts.${result.scenario}.${name}`;
  const p: StepInput = [prices.electricity, 'prices.electricity'];
  return [
    workingStep(own('electricityCost'), 'accounts.energyCost', result.electricityCost, {
      E: [energies.electricity, own('electricity')],
      p,
    }),
    workingStep(own('roomHeatCredit'), 'accounts.energyCost', result.roomHeatCredit, {
      E: [energies.roomHeatHeated, own('roomHeat')],
      p: [prices.houseHeat, 'room.houseHeatPrice'],
    }),
    workingStep(own('coolingCost'), 'accounts.summerCoolingCost', result.coolingCost, {
      cooled: [prices.roomCooledInSummer ? 1 : 0, 'room.cooledInSummer'],
      Q: [energies.roomHeatSummer, own('roomHeatSummer')],
      COP_cool: [prices.roomCoolingCop],
      p,
    }),
    ...dehumidifierCostStep(own, energies.dehumidifierElectricity, result.dehumidifierCost, p),
    workingStep(own('runningCost'), 'accounts.runningCost', result.runningCost, {
      K_el: [result.electricityCost, own('electricityCost')],
      K_room: [result.roomHeatCredit, own('roomHeatCredit')],
      K_cool: [result.coolingCost, own('coolingCost')],
      K_dry: dehumidifierCostInput(own, result.dehumidifierCost),
    }),
    workingStep(own('annualCost'), 'accounts.annualCost', result.annualCost, {
      R: [result.runningCost, own('runningCost')],
      C: [result.purchase, purchase],
      r: [prices.discountRate, 'prices.discountRate'],
      n: [prices.years, 'prices.life'],
    }),
  ];
}

/** What a dehumidifier costs in a year or a month; no step in a room without one. */
export function dehumidifierCostStep(
  own: (name: string) => string,
  electricity: number | null,
  cost: number | null,
  p: StepInput,
  electricityFrom = own('dehumidifierElectricity'),
): readonly WorkingStep[] {
  if (electricity === null || cost === null) return [];
  return [workingStep(own('dehumidifierCost'), 'accounts.energyCost', cost, { E: [electricity, electricityFrom], p })];
}

/** That cost as it enters the running cost. */
export function dehumidifierCostInput(own: (name: string) => string, cost: number | null): StepInput {
  return cost === null ? [0, 'room.moisture.kind'] : [cost, own('dehumidifierCost')];
}

/** What a certified heat pump is assumed to do. */
export interface CertifiedHeatPump {
  readonly cop: number;
  readonly sourceIsTankRoom: boolean;
  /** Where the two came from: design paths. */
  readonly from: { readonly cop: string; readonly sourceIsTankRoom: string };
}

/**
 * The energies of one scenario from those of the year, whose steps are taken to exist under 'year.', those of the wrapped tank
 * under 'wrapped.'.
 * @param energies   of the scenario
 * @param year       those they were made from; of the wrapped tank for insulationOnly
 * @param certified  read for the certified heat pump only
 */
export function scenarioWorking(
  energies: ScenarioEnergies,
  year: Year,
  certified: CertifiedHeatPump,
): readonly WorkingStep[] {
  return [...heatWorking(energies, year, certified), ...dryingSteps(energies, year)];
}

/** What a dehumidifier draws in a year; no step in a room without one. */
function dryingSteps({ scenario, dehumidifierElectricity }: ScenarioEnergies, year: Year): readonly WorkingStep[] {
  if (dehumidifierElectricity === null) return [];
  return [
    sumStep(
      `accounts.${scenario}.dehumidifierElectricity`,
      dehumidifierElectricity,
      year,
      ({ energies, conditions }) => [
        energies.dehumidifierElectricity,
        `${yearPrefix(scenario)}.${conditions.month}.energies.dehumidifierElectricity`,
      ],
    ),
  ];
}

function heatWorking(energies: ScenarioEnergies, year: Year, certified: CertifiedHeatPump): readonly WorkingStep[] {
  const { scenario } = energies;
  const own = (name: string) => `accounts.${scenario}.${name}`;
  const from = yearPrefix(scenario);
  const needed: StepInput = [year.energies.heatNeeded, `${from}.energies.heatNeeded`];
  const atCop = (COP: StepInput) =>
    workingStep(own('electricity'), 'accounts.electricityAtCop', energies.electricity, { Q: needed, COP });
  switch (scenario) {
    case 'plainHeater':
    case 'insulationOnly':
      return [
        atCop([heaterCop]),
        ...(hasDehumidifier(year) ? year.months.map((month) => driedHeaterStep(scenario, month)) : []),
        ...roomSteps(energies, year, (month) => [
          heaterRoomHeat(month),
          month.dehumidifier === null
            ? `${from}.${month.conditions.month}.energies.tankSensible`
            : monthStep(scenario, month, 'roomHeat'),
        ]),
      ];
    case 'thisLoop':
      return loopSteps(energies, year);
    case 'certifiedHeatPump':
      return [
        atCop([certified.cop, certified.from.cop]),
        ...year.months.flatMap((month) => certifiedMonthSteps(month, certified)),
        ...roomSteps(energies, year, (month) => [
          certifiedRoomHeat(month, certified.cop, certified.sourceIsTankRoom),
          certifiedStep(month, 'roomHeat'),
        ]),
      ];
    default: {
      const unknown: never = scenario;
      return unknown;
    }
  }
}

/** Heat of the tank and of the dehumidifier into the room of a month. */
function driedHeaterStep(scenario: ScenarioId, month: MonthResult): WorkingStep {
  const { tankSensible } = month.energies;
  const from = `${yearPrefix(scenario)}.${month.conditions.month}.energies`;
  return driedStep(monthStep(scenario, month, 'roomHeat'), month, heaterRoomHeat(month), from, [
    tankSensible,
    `${from}.tankSensible`,
  ]);
}

/** @param from  under which name the energies of the month stand */
function driedStep(result: string, { energies }: MonthResult, value: number, from: string, Q: StepInput): WorkingStep {
  return workingStep(result, 'year.roomHeatWithDehumidifier', value, {
    Q,
    Q_d: [energies.dehumidifierHeat, `${from}.dehumidifierHeat`],
  });
}

/** Under which name the steps of a scenario's year stand: that of the tank as it is, or wrapped. */
export function yearPrefix(scenario: ScenarioId): 'year' | 'wrapped' {
  return scenario === 'insulationOnly' ? 'wrapped' : 'year';
}

/** This loop's are the year's own, added up from the same months. */
function loopSteps(energies: ScenarioEnergies, year: Year): readonly WorkingStep[] {
  const own = (name: string) => `accounts.${energies.scenario}.${name}`;
  const inPart = (part: YearPart, name: string) => (month: MonthResult) =>
    [
      shareOfEnergy(month.conditions[part], month.energies.roomHeat),
      `year.${month.conditions.month}.energies.${name}`,
    ] as const;
  return [
    sumStep(own('electricity'), energies.electricity, year, ({ energies: { electricity }, conditions: { month } }) => [
      electricity.total,
      `year.${month}.energies.electricity`,
    ]),
    sumStep(own('roomHeat'), energies.roomHeatHeated, year, inPart('heatedShare', 'roomHeatHeated')),
    sumStep(own('roomHeatSummer'), energies.roomHeatSummer, year, inPart('summerShare', 'roomHeatSummer')),
  ];
}

/** Heat into the room of each month in its heated and its summer part, and both sums. */
function roomSteps(
  energies: ScenarioEnergies,
  year: Year,
  heatOf: (month: MonthResult) => StepInput,
): readonly WorkingStep[] {
  const parts = [
    ['roomHeat', 'heatedShare', energies.roomHeatHeated],
    ['roomHeatSummer', 'summerShare', energies.roomHeatSummer],
  ] as const;
  return parts.flatMap(([name, part, total]) => {
    const at = (month: MonthResult) => monthStep(energies.scenario, month, `${part}Heat`);
    return [
      ...year.months.map((month) => shareStep(at(month), month, part, heatOf(month))),
      sumStep(`accounts.${energies.scenario}.${name}`, total, year, (month) => [
        shareOfEnergy(month.conditions[part], heatOf(month)[0]),
        at(month),
      ]),
    ];
  });
}

function certifiedMonthSteps(month: MonthResult, certified: CertifiedHeatPump): readonly WorkingStep[] {
  const { energies } = month;
  const { cop, sourceIsTankRoom, from } = certified;
  const at = (name: string) => `year.${month.conditions.month}.energies.${name}`;
  const taken = heatTakenAtCop(energies.heatNeeded, cop);
  const Q_tank: StepInput = [energies.tankSensible, at('tankSensible')];
  const isDried = month.dehumidifier !== null;
  const ofTank = certifiedStep(month, isDried ? 'roomHeatWithoutDehumidifier' : 'roomHeat');
  const roomHeat = (Q_src: StepInput) => {
    const heat = roomHeatLessTaken(energies.tankSensible, Q_src[0]);
    return workingStep(ofTank, 'accounts.roomHeatLessTaken', heat, { Q_tank, Q_src });
  };
  const withDehumidifier = (heat: WorkingStep) =>
    isDried
      ? [
          heat,
          driedStep(
            certifiedStep(month, 'roomHeat'),
            month,
            certifiedRoomHeat(month, cop, sourceIsTankRoom),
            `year.${month.conditions.month}.energies`,
            [heat.value, ofTank],
          ),
        ]
      : [heat];
  if (!sourceIsTankRoom) return withDehumidifier(roomHeat([0, from.sourceIsTankRoom]));
  return [
    workingStep(certifiedStep(month, 'heatTaken'), 'accounts.heatTakenAtCop', taken, {
      Q: [energies.heatNeeded, at('heatNeeded')],
      COP: [cop, from.cop],
    }),
    ...withDehumidifier(roomHeat([taken, certifiedStep(month, 'heatTaken')])),
  ];
}

function certifiedStep(month: MonthResult, name: string): string {
  return monthStep('certifiedHeatPump', month, name);
}

function monthStep(scenario: ScenarioId, { conditions }: MonthResult, name: string): string {
  return `accounts.${scenario}.${conditions.month}.${name}`;
}
