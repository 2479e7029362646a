// Every number of an assessment by its name in the working: what it is called, what it is a number of, in which part of the
// answer it stands. The name is that of a step, or of the design's field where the number is one that was put in.

import type { LimitName } from '../../parts/compressor/index.ts';
import { type Band, type QuantityName, sentenceStart } from '../../quantities/index.ts';
import { distanceQuantity, limitDecidedBy, limitedResult } from '../answers/limits.ts';
import type { Assessment, BandWithUnit, LoopPoint, MonthAnswer, ScenarioAccount } from '../assessment/assessment.ts';
import type { TankAnswer, TankMonth } from '../assessment/tank-answer.ts';

export type ResultGroup = 'tank' | 'machine' | 'year' | 'accounts';

export interface NamedResult {
  readonly group: ResultGroup;
  /** Path of the number in the Assessment, a member of a list by its own name: 'operating.points.compressorInlet.density'. */
  readonly place: string;
  /** Name of its step, or path of its field. */
  readonly name: string;
  readonly label: string;
  readonly quantity: QuantityName;
  readonly value: number;
  /** Where the assessment gives a range. */
  readonly band?: Band;
}

/** Every number of the answer, in the order in which the assessment gives them. */
export function namedResults(assessment: Assessment): readonly NamedResult[] {
  return [
    ...tankResults(assessment),
    ...headlineResults(assessment),
    ...operatingResults(assessment),
    ...limitResults(assessment),
    ...sizingResults(assessment),
    ...flowResults(assessment),
    ...assessment.year.flatMap(monthResults),
    ...seasonResults(assessment),
    ...assessment.accounts.flatMap(accountResults),
  ];
}

/** A number without a range. */
function plain(
  group: ResultGroup,
  place: string,
  name: string,
  label: string,
  quantity: QuantityName,
  value: number,
): NamedResult {
  return { group, place, name, label, quantity, value };
}

function ranged(
  group: ResultGroup,
  place: string,
  label: string,
  quantity: QuantityName,
  band: BandWithUnit,
): NamedResult {
  return { group, place, name: band.result, label, quantity, value: band.likely, band };
}

function tankResults({ tank, tankLoad }: Assessment): readonly NamedResult[] {
  const { timePerKelvin } = tank;
  return [
    ranged('tank', 'tankLoad', 'heat the tank needs', 'power', tankLoad),
    ranged('tank', 'tank.load', 'heat the tank needs', 'power', tank.load),
    ranged('tank', 'tank.loss', 'heat that leaves the tank', 'power', tank.loss),
    ...tank.paths.map(({ path, label, heat }) =>
      ranged('tank', `tank.paths.${path}.heat`, `heat that leaves, ${label}`, 'power', heat),
    ),
    plain('tank', 'tank.gains.pump', 'tank.gains.pump', 'heat from pumps', 'power', tank.gains.pump),
    plain('tank', 'tank.gains.light', 'tank.gains.light', 'heat from lights', 'power', tank.gains.light),
    ...ultravioletResults(tank),
    ranged('tank', 'tank.evaporation', 'water that evaporates', 'evaporation', tank.evaporation),
    ...(tank.vessels.length < 2
      ? []
      : tank.vessels.map(({ vessel, label, loss }) =>
          ranged('tank', `tank.vessels.${vessel}.loss`, `heat that leaves by the ${label}`, 'power', loss),
        )),
    ranged('tank', 'tank.conductance', 'change of the loss per kelvin', 'thermalConductance', tank.conductance),
    ranged('tank', 'tank.timeConstant', 'time constant of the tank', 'duration', tank.timeConstant),
    ...tank.falls.flatMap(({ by, time, result }) =>
      time === null
        ? []
        : [plain('tank', `tank.falls.${by}.time`, result, `time to fall by ${by} K without heat`, 'duration', time)],
    ),
    ...meterResults(tank),
    ...tank.months.flatMap(tankMonthResults),
    ranged('year', 'tank.yearHeatNeeded', 'heat needed in the year', 'energy', tank.yearHeatNeeded),
    plain('tank', 'tank.heatCapacity', 'tank.heatCapacity', 'heat capacity', 'heatCapacity', tank.heatCapacity),
    ...(timePerKelvin === null
      ? []
      : [
          plain(
            'tank',
            'tank.timePerKelvin',
            'tank.timePerKelvin',
            'time to cool by one kelvin',
            'duration',
            timePerKelvin,
          ),
        ]),
    plain(
      'tank',
      'tank.waterTemperature',
      'tank.waterTemperature',
      'water temperature',
      'temperature',
      tank.waterTemperature,
    ),
    plain('tank', 'tank.roomTemperature', 'room.coldest', 'coldest room', 'temperature', tank.roomTemperature),
  ];
}

/** A measured tank knows none. */
function ultravioletResults({ gains, vessels }: TankAnswer): readonly NamedResult[] {
  const name = 'tank.gains.ultraviolet';
  return vessels.length === 0
    ? []
    : [plain('tank', name, name, 'heat from the ultraviolet lamp', 'power', gains.ultraviolet)];
}

function meterResults({ meter }: TankAnswer): readonly NamedResult[] {
  if (meter === null) return [];
  const of = (key: string) => `tank.meter.${key}`;
  return [
    ranged('tank', of('meanPower'), 'heater while it was measured', 'electricPower', meter.meanPower),
    ranged('tank', of('measuredLoss'), 'heat that left while it was measured', 'power', meter.measuredLoss),
    ranged('tank', of('modelledLoss'), 'the same by the model', 'power', meter.modelledLoss),
    ranged('tank', of('ratio'), 'measured over modelled loss', 'ratio', meter.ratio),
  ];
}

function tankMonthResults({ month, loss, load, evaporation }: TankMonth): readonly NamedResult[] {
  const at = `tank.months.${month}`;
  const words = sentenceStart(month);
  return [
    ranged('year', `${at}.loss`, `${words}: heat that leaves the tank`, 'power', loss),
    ranged('year', `${at}.load`, `${words}: heat the tank needs`, 'power', load),
    ranged('year', `${at}.evaporation`, `${words}: water that evaporates`, 'evaporation', evaporation),
  ];
}

function headlineResults(assessment: Assessment): readonly NamedResult[] {
  const { heatDelivered, compressorPower, systemPower, compressorCop, systemCop } = assessment;
  return [
    ranged('machine', 'heatDelivered', 'heat to the water', 'power', heatDelivered),
    ranged('machine', 'compressorPower', 'electricity of the compressor', 'electricPower', compressorPower),
    ranged('machine', 'systemPower', 'electricity, all parts', 'electricPower', systemPower),
    ranged('machine', 'compressorCop', 'COP of the compressor alone', 'ratio', compressorCop),
    ranged('machine', 'systemCop', 'COP with fan, pump and controls', 'ratio', systemCop),
  ];
}

const pointLabels: Readonly<Record<string, string>> = {
  compressorInlet: '1, compressor inlet',
  compressorOutletIsentropic: '2s, outlet without losses',
  compressorOutlet: '2, compressor outlet',
  condenserOutlet: '3, condenser outlet',
  evaporatorInlet: '4, evaporator inlet',
};

const pointProperties = [
  ['temperature', 'temperature', 'temperature'],
  ['pressure', 'pressure', 'pressure'],
  ['enthalpy', 'enthalpy', 'enthalpy'],
  ['entropy', 'entropy', 'entropy'],
  ['density', 'density', 'density'],
  ['quality', 'vapour by mass', 'fraction'],
] as const satisfies readonly (readonly [keyof LoopPoint, string, QuantityName])[];

function operatingResults({ operating }: Assessment): readonly NamedResult[] {
  const of = (key: string) => `operating.${key}`;
  const { points } = operating;
  const numbers = [
    ['atmosphericPressure', 'air pressure of the place', 'pressure'],
    ['evaporatingTemperature', 'evaporating temperature', 'temperature'],
    ['condensingTemperature', 'condensing temperature', 'temperature'],
    ['evaporatingPressure', 'evaporating pressure', 'pressure'],
    ['condensingPressure', 'condensing pressure', 'pressure'],
    ['dischargeTemperature', 'temperature of the discharge gas', 'temperature'],
    ['pressureRatio', 'pressure ratio', 'ratio'],
    ['massFlow', 'refrigerant flow', 'massFlow'],
    ['volumetricEfficiency', 'volumetric efficiency', 'fraction'],
    ['overallEfficiency', 'overall efficiency', 'fraction'],
    ['shellHeat', 'shell heat, lost beside the water', 'power'],
  ] as const;
  return [
    ...numbers.map(([key, label, quantity]) => ranged('machine', of(key), label, quantity, operating[key])),
    ...blendResults(operating.blend),
    ...points.flatMap((point) =>
      pointProperties.flatMap(([property, label, quantity]) => {
        const value = point[property];
        const name = of(`points.${point.name}.${property}`);
        const words = `state ${pointLabels[point.name] ?? point.name}: ${label}`;
        return value === null ? [] : [plain('machine', name, name, words, quantity, value)];
      }),
    ),
  ];
}

function blendResults(blend: Assessment['operating']['blend']): readonly NamedResult[] {
  if (blend === null) return [];
  const numbers = [
    ['evaporatingBubbleTemperature', 'evaporating bubble temperature', 'temperature'],
    ['evaporatingGlide', 'glide in the evaporator', 'temperatureDifference'],
    ['condensingBubbleTemperature', 'condensing bubble temperature', 'temperature'],
    ['condensingGlide', 'glide in the condenser', 'temperatureDifference'],
  ] as const;
  return numbers.map(([key, label, quantity]) =>
    ranged('machine', `operating.blend.${key}`, label, quantity, blend[key]),
  );
}

function limitResults({ operating }: Assessment): readonly NamedResult[] {
  return operating.limits.flatMap(({ limit, label, quantity, value, bound, margin }) => {
    const at = `operating.limits.${limit}`;
    const name = limit as LimitName;
    return [
      plain('machine', `${at}.value`, limitedResult(name), `${label}: where it stands`, quantity, value),
      plain('machine', `${at}.bound`, limitDecidedBy(name), `${label}: its limit`, quantity, bound),
      plain('machine', `${at}.margin`, at, `${label}: distance left`, distanceQuantity(quantity), margin),
    ];
  });
}

function sizingResults({ sizing: { condenser, evaporator } }: Assessment): readonly NamedResult[] {
  const at = 'sizing.';
  return [
    ranged('machine', `${at}condenser.coilLength`, 'length of the coil in the water', 'length', condenser.coilLength),
    ranged('machine', `${at}condenser.coilArea`, 'surface of the coil in the water', 'area', condenser.coilArea),
    ranged('machine', `${at}evaporator.faceArea`, 'face of the coil at the source', 'area', evaporator.faceArea),
    ranged('machine', `${at}evaporator.airFlow`, 'air through the coil', 'volumeFlow', evaporator.airFlow),
  ];
}

function flowResults({ flows }: Assessment): readonly NamedResult[] {
  const numbers = [
    ['heatTaken', 'operating.heatTaken', 'heat taken from the source', 'power'],
    ['compressorPower', 'operating.compressor.power', 'electricity of the compressor', 'electricPower'],
    ['fanPower', 'power.fan', 'electricity of the fan', 'electricPower'],
    ['loopPumpPower', 'power.loopPump', 'electricity of the loop pump', 'electricPower'],
    ['controlsPower', 'power.controls', 'electricity of controls', 'electricPower'],
    ['shellHeat', 'operating.compressor.shellHeat', 'shell heat', 'power'],
    ['delivered', 'plant.heatReachingWater', 'heat to the water', 'power'],
    ['runFraction', 'plant.runFraction', 'share of the time it runs', 'fraction'],
    ['backup', 'plant.backupHeat', 'heat a plain heater must add', 'power'],
  ] as const;
  return [
    ...numbers.map(([key, name, label, quantity]) =>
      plain('machine', `flows.${key}`, name, label, quantity, flows[key]),
    ),
    ...flows.paths.map(({ path, label, heat }) =>
      plain('tank', `flows.paths.${path}.heat`, `tank.paths.${path}`, `heat that leaves, ${label}`, 'power', heat),
    ),
  ];
}

function monthResults(answer: MonthAnswer): readonly NamedResult[] {
  const { month } = answer;
  const numbers = [
    ['roomTemperature', 'roomTemperature', 'room', 'temperature'],
    ['sourceTemperature', 'sourceTemperature', 'source', 'temperature'],
    ['heatNeeded', 'energies.heatNeeded', 'heat needed', 'energy'],
    ['heatDelivered', 'energies.heatFromMachine', 'heat from the machine', 'energy'],
    ['electricity', 'energies.electricity', 'electricity', 'energy'],
    ['backup', 'energies.backupHeat', 'heat a plain heater adds', 'energy'],
    ['runFraction', 'runFraction', 'share of the time it runs', 'fraction'],
    ['heatTaken', 'energies.heatTaken', 'heat taken from the source', 'energy'],
    ['roomHeat', 'energies.roomHeat', 'heat into the room', 'energy'],
    ['heated', 'heatedShare', 'share in which the room is heated', 'fraction'],
    ['vapourHeat', 'energies.tankLatent', 'heat that leaves as vapour', 'energy'],
  ] as const;
  const words = sentenceStart(month);
  return numbers.map(([key, name, label, quantity]) =>
    plain('year', `year.${month}.${key}`, `year.${month}.${name}`, `${words}: ${label}`, quantity, answer[key]),
  );
}

function seasonResults({ seasonCop }: Assessment): readonly NamedResult[] {
  return seasonCop === null
    ? []
    : [ranged('year', 'seasonCop', 'COP over the year, heater included', 'ratio', seasonCop)];
}

function accountResults(account: ScenarioAccount): readonly NamedResult[] {
  const { scenario, label, purchase } = account;
  const of = (key: string) => `accounts.${scenario}.${key}`;
  const numbers = [
    ['electricity', 'electricity', 'energy'],
    ['electricityCost', 'cost of electricity', 'money'],
    ['roomHeat', 'heat into the room while it is heated', 'energy'],
    ['roomCredit', 'credit for that heat', 'money'],
    ['coolingCost', 'summer cooling', 'money'],
    ['dehumidifierElectricity', 'electricity of the dehumidifier', 'energy'],
    ['dehumidifierCost', 'cost of the dehumidifier', 'money'],
    ['runningCost', 'running, a year', 'money'],
    ['lifeCostPerYear', 'over its life, per year', 'money'],
  ] as const;
  const bought = scenario === 'plainHeater' ? 'prices.heater' : of('purchase');
  return [
    ...numbers.flatMap(([key, words, quantity]) => {
      const band = account[key];
      return band === null ? [] : [ranged('accounts', of(key), `${label}: ${words}`, quantity, band)];
    }),
    plain('accounts', of('purchase'), bought, `${label}: to buy`, 'money', purchase),
    ...account.months.flatMap((month) => accountMonthResults(account, month)),
  ];
}

function accountMonthResults(
  { scenario, label }: ScenarioAccount,
  answer: ScenarioAccount['months'][number],
): readonly NamedResult[] {
  const { month } = answer;
  const at = `accounts.${scenario}.months.${month}`;
  const own = (name: string) => `accounts.${scenario}.${month}.${name}`;
  const ofYear = (name: string) => `year.${month}.energies.${name}`;
  // This loop's energies are the year's own.
  const isLoop = scenario === 'thisLoop';
  const of = scenario === 'insulationOnly' ? 'wrapped' : 'year';
  const dried = `${of}.${month}.energies.dehumidifierElectricity`;
  const numbers = [
    ['heated', `year.${month}.heatedShare`, 'share in which the room is heated', 'fraction'],
    ['electricity', isLoop ? ofYear('electricity') : own('electricity'), 'electricity', 'energy'],
    ['electricityCost', own('electricityCost'), 'cost of electricity', 'money'],
    ['roomHeat', isLoop ? ofYear('roomHeatHeated') : own('heatedShareHeat'), 'heat into the heated room', 'energy'],
    ['roomCredit', own('roomHeatCredit'), 'credit for that heat', 'money'],
    ['coolingCost', own('coolingCost'), 'summer cooling', 'money'],
    ['dehumidifierElectricity', dried, 'electricity of the dehumidifier', 'energy'],
    ['dehumidifierCost', own('dehumidifierCost'), 'cost of the dehumidifier', 'money'],
    ['runningCost', own('runningCost'), 'running', 'money'],
  ] as const;
  return numbers.flatMap(([key, name, words, quantity]) => {
    const value = answer[key];
    return value === null
      ? []
      : [plain('accounts', `${at}.${key}`, name, `${label}, ${month}: ${words}`, quantity, value)];
  });
}
