// Puts the results of the stages and their bands into the parts of the Assessment that people and programs read.

import { type Account, type AccountPrices, type CertifiedPerformance, monthAccounts } from '../../accounts/index.ts';
import type { OperatingFacts } from '../../cautions/index.ts';
import type { Year } from '../../year/index.ts';
import type {
  BlendAnswer,
  HeatFlows,
  LimitMargin,
  MonthAnswer,
  OperatingAnswer,
  OperatingMomentAnswer,
  ScenarioAccount,
  SizingAnswer,
} from '../assessment/assessment.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import type { StageResults } from '../stages/index.ts';
import { allMachines } from '../stages/plant.ts';
import { pathLabel, scenarioLabel } from '../wording/labels.ts';
import { type Bands, bandOf, bareBand, loopPoints } from './pieces.ts';
import { requiredRunning } from './values.ts';

export function operatingAnswer(
  design: StagedDesign,
  { operating, surroundings }: StageResults,
  limits: readonly LimitMargin[],
  bands: Bands,
): OperatingAnswer {
  return {
    refrigerant: design.machine.refrigerant,
    sourceTemperature: surroundings.spell.sourceTemperature,
    waterTemperature: design.tank.waterTemperature,
    atmosphericPressure: bandOf(bands, 'surroundings.atmosphericPressure'),
    evaporatingTemperature: bandOf(bands, 'operating.evaporatingTemperature'),
    condensingTemperature: bandOf(bands, 'operating.condensingTemperature'),
    blend: operating.condensing.glide === 0 ? null : blendAnswer(bands),
    evaporatingPressure: bandOf(bands, 'operating.evaporatingPressure'),
    condensingPressure: bandOf(bands, 'operating.condensingPressure'),
    dischargeTemperature: bandOf(bands, 'operating.dischargeTemperature'),
    pressureRatio: bandOf(bands, 'operating.compressor.pressureRatio'),
    massFlow: bandOf(bands, 'operating.compressor.massFlow'),
    volumetricEfficiency: bandOf(bands, 'operating.compressor.volumetricEfficiency'),
    overallEfficiency: bandOf(bands, 'operating.compressor.overallEfficiency'),
    shellHeat: bandOf(bands, 'operating.compressor.shellHeat'),
    points: loopPoints(operating.points),
    limits,
  };
}

function blendAnswer(bands: Bands): BlendAnswer {
  return {
    evaporatingBubbleTemperature: bandOf(bands, 'operating.evaporatingBubbleTemperature'),
    evaporatingGlide: bandOf(bands, 'operating.evaporatingGlide'),
    condensingBubbleTemperature: bandOf(bands, 'operating.condensingBubbleTemperature'),
    condensingGlide: bandOf(bands, 'operating.condensingGlide'),
  };
}

/** The moments that the rules of caution look at, without what only they need. */
export function operatingRange(moments: readonly OperatingFacts[]): readonly OperatingMomentAnswer[] {
  return moments.map(
    ({
      sourceDewPoint: _dew,
      roomTemperature: _room,
      massFlow: _flow,
      ranges: _ranges,
      machine: _machine,
      ...moment
    }) => moment,
  );
}

export function sizingAnswer(design: StagedDesign, { sizing }: StageResults, bands: Bands): SizingAnswer {
  const { exchangers } = design;
  return {
    condenser: {
      approach: exchangers.condenserApproach,
      coilLength: bandOf(bands, 'condenser.length'),
      coilArea: bandOf(bands, 'condenser.area'),
      tubeDiameter: exchangers.tubeDiameter,
      leavesOut: sizing.condenser.leavesOut,
    },
    evaporator: {
      approach: exchangers.evaporatorApproach,
      faceArea: bandOf(bands, 'evaporator.faceArea'),
      airFlow: bandOf(bands, 'evaporator.volumeFlow'),
      leavesOut: sizing.evaporator.leavesOut,
    },
  };
}

export function heatFlows(
  design: StagedDesign,
  { operating, plant, tank, hardware }: StageResults,
  bands: Bands,
): HeatFlows {
  const machines = allMachines(operating, hardware.count);
  return {
    heatTaken: machines.heatTaken,
    compressorPower: machines.compressorPower,
    fanPower: hardware.fanPower,
    loopPumpPower: hardware.loopPumpPower,
    controlsPower: design.power.controls,
    shellHeat: machines.shellHeat,
    delivered: requiredRunning(plant.heatReachingWaterRunning),
    runFraction: plant.runFraction,
    backup: plant.backupHeat,
    paths: tank.paths.map(({ path, heat }) => ({ path, label: pathLabel(path), heat })),
    ranges: {
      heatTaken: bareBand(bands, 'plant.heatTaken'),
      electricity: bareBand(bands, 'plant.fromSocket'),
      delivered: bareBand(bands, 'plant.heatFromMachine'),
      backup: bareBand(bands, 'plant.backupHeat'),
    },
  };
}

export function monthAnswers({ year }: StageResults): readonly MonthAnswer[] {
  return year.months.map(({ conditions, energies, runFraction }) => ({
    month: conditions.month,
    roomTemperature: conditions.roomTemperature,
    sourceTemperature: conditions.sourceTemperature,
    heatNeeded: energies.heatNeeded,
    heatDelivered: energies.heatFromMachine,
    electricity: energies.electricity.total,
    backup: energies.backupHeat,
    runFraction,
    heatTaken: energies.heatTakenFromSource,
    roomHeat: energies.roomHeat,
    heated: conditions.heatedShare,
    vapourHeat: energies.tankLatent,
  }));
}

export function scenarioAccounts({ accounts, year, wrapped }: StageResults, bands: Bands): readonly ScenarioAccount[] {
  const { certified, prices } = accounts;
  return accounts.accounts.map((account) => {
    const own = account.scenario === 'insulationOnly' && wrapped !== null ? wrapped.year : year;
    return scenarioAccount(account, own, certified, prices, bands);
  });
}

/** One account as people and programs read it, with its months. */
export function scenarioAccount(
  { scenario, purchase, dehumidifierCost }: Account,
  year: Year,
  certified: CertifiedPerformance,
  prices: AccountPrices,
  bands: Bands,
): ScenarioAccount {
  const part = (name: string) => bandOf(bands, `accounts.${scenario}.${name}`);
  return {
    scenario,
    label: scenarioLabel(scenario),
    electricity: part('electricity'),
    electricityCost: part('electricityCost'),
    roomHeat: part('roomHeat'),
    roomCredit: part('roomHeatCredit'),
    coolingCost: part('coolingCost'),
    dehumidifierElectricity: dehumidifierCost === null ? null : part('dehumidifierElectricity'),
    dehumidifierCost: dehumidifierCost === null ? null : part('dehumidifierCost'),
    runningCost: part('runningCost'),
    purchase,
    purchaseRange: bareBand(bands, `accounts.${scenario}.purchase`),
    lifeCostPerYear: part('annualCost'),
    months: monthAccounts(scenario, year, certified, prices).map(
      ({ heatedShare, roomHeatCredit, roomHeatSummer: _, ...month }) => ({
        ...month,
        heated: heatedShare,
        roomCredit: roomHeatCredit,
      }),
    ),
  };
}
