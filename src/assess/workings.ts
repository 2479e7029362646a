// Every printed number's working: the steps of each part of the engine in the order of computing, linked to the design's
// paths and to one another, and checked against the formula records by the tests.

import { accountsFormulas, accountWorking } from '../accounts/index.ts';
import { cautionsFormulas } from '../cautions/index.ts';
import { loopFormulas, operatingPointWorking } from '../loop/index.ts';
import { airFormulas } from '../matter/air/index.ts';
import { refrigerant, refrigerantFormulas } from '../matter/refrigerants/index.ts';
import { waterFormulas } from '../matter/water/index.ts';
import { compressorFormulas } from '../parts/compressor/index.ts';
import { condenserWorking, evaporatorWorking, exchangerFormulas } from '../parts/exchangers/index.ts';
import { plantFormulas, plantWorking } from '../plant/index.ts';
import type { Formula, WorkingStep } from '../quantities/index.ts';
import { surroundingsFormulas } from '../surroundings/index.ts';
import { tankFormulas, tankLoadWorking } from '../tank/index.ts';
import { yearFormulas, yearWorking } from '../year/index.ts';
import type { StagedDesign } from './stages/engine-assumptions.ts';
import type { StageResults } from './stages/index.ts';
import { machineState, tankHeat } from './stages/plant.ts';
import { tankDescription } from './stages/tank.ts';
import type { TankResults } from './values.ts';

/** Every formula record of the engine. */
export const allFormulas: readonly Formula[] = [
  ...refrigerantFormulas,
  ...airFormulas,
  ...waterFormulas,
  ...surroundingsFormulas,
  ...tankFormulas,
  ...compressorFormulas,
  ...exchangerFormulas,
  ...loopFormulas,
  ...plantFormulas,
  ...yearFormulas,
  ...accountsFormulas,
  ...cautionsFormulas,
];

const formulasById = new Map(allFormulas.map((formula) => [formula.id, formula]));

/** The formula of that id; undefined for an id nobody has. */
export function formulaById(id: string): Formula | undefined {
  return formulasById.get(id);
}

/** All steps behind one assessment, likely values. */
export function workingsOf(design: StagedDesign, results: StageResults): readonly WorkingStep[] {
  return [
    ...tankWorkings(design, results),
    ...operatingSteps(design, results),
    ...sizingSteps(design, results),
    ...plantSteps(results),
    ...yearWorking(results.year),
    ...results.accounts.accounts.flatMap((account) => accountWorking(account, results.accounts.prices)),
  ];
}

/** The steps behind the tank's load and the air pressure of the place. */
export function tankWorkings(design: StagedDesign, { tank, surroundings }: TankResults): readonly WorkingStep[] {
  const conditions = {
    waterTemperature: design.tank.waterTemperature,
    roomTemperature: surroundings.spell.roomTemperature,
    roomRelativeHumidity: design.room.relativeHumidity,
    atmosphericPressure: surroundings.atmosphericPressure,
  };
  const steps = tankLoadWorking(tankDescription(design.tank), conditions, tank, {
    waterTemperature: 'tank.waterTemperature',
    roomTemperature: 'room.coldest',
    roomRelativeHumidity: 'room.relativeHumidity',
    atmosphericPressure: 'surroundings.atmosphericPressure',
  });
  return [airPressureStep(design, surroundings.atmosphericPressure), ...steps];
}

function airPressureStep({ place }: StagedDesign, value: number): WorkingStep {
  return {
    result: 'surroundings.atmosphericPressure',
    formula: 'air.pressureAtAltitude',
    inputs: { z: place.altitude },
    from: { z: 'place.altitude' },
    value,
  };
}

function operatingSteps(design: StagedDesign, results: StageResults): readonly WorkingStep[] {
  const { operating, compressor, surroundings } = results;
  const { exchangers, machine, tank, source } = design;
  const input = {
    fluid: refrigerant(machine.refrigerant),
    compressor: compressor.model,
    sourceTemperature: surroundings.spell.sourceTemperature,
    waterTemperature: tank.waterTemperature,
    evaporatorApproach: exchangers.evaporatorApproach,
    condenserApproach: exchangers.condenserApproach,
    superheat: exchangers.superheat,
    subcooling: exchangers.subcooling,
  };
  return operatingPointWorking(
    input,
    operating,
    {
      sourceTemperature: source.kind === 'roomAir' ? 'room.coldest' : 'source.coldest',
      waterTemperature: 'tank.waterTemperature',
      evaporatorApproach: 'exchangers.evaporatorApproach',
      condenserApproach: 'exchangers.condenserApproach',
      superheat: 'exchangers.superheat',
      subcooling: 'exchangers.subcooling',
      model: modelOrigins(compressor.rated !== undefined),
    },
    'operating',
  );
}

const compressorPath = 'machine.compressor';

/** Two of the eight numbers come from the rating where one was given. */
function modelOrigins(rated: boolean) {
  const own = (key: string) => `${compressorPath}.${key}`;
  const fromRating = `${own('capacity')} and ${own('power')}`;
  return {
    displacement: rated ? fromRating : own('displacement'),
    speed: own('speed'),
    clearanceRatio: own('clearanceRatio'),
    reexpansionExponent: own('reexpansionExponent'),
    fillingFactor: own('fillingFactor'),
    compressionEfficiency: rated ? fromRating : own('compressionEfficiency'),
    frictionPressure: own('frictionPressure'),
    shellHeatShare: own('shellHeatShare'),
  };
}

function sizingSteps({ source }: StagedDesign, { sizing }: StageResults): readonly WorkingStep[] {
  const { condenserRequest, condenser, evaporatorRequest, evaporator } = sizing;
  return [
    ...condenserWorking(
      condenserRequest,
      condenser,
      {
        duty: 'operating.heatDelivered',
        condensingTemperature: 'operating.condensingTemperature',
        waterTemperature: 'tank.waterTemperature',
        salinity: 'tank.salinity',
        approach: 'exchangers.condenserApproach',
        tubeDiameter: 'exchangers.tubeDiameter',
        wallThickness: 'engine.wallThickness',
        wallConductivity: 'engine.wallConductivity',
        assumed: {
          fouling: 'engine.fouling',
          refrigerantFilm: 'engine.refrigerantFilm',
          loopSideFilm: 'engine.loopSideFilm',
          tankCoilShare: 'engine.tankCoilShare',
          loopTemperatureChange: 'engine.loopTemperatureChange',
        },
      },
      'condenser',
    ),
    ...evaporatorWorking(
      evaporatorRequest,
      evaporator,
      {
        duty: 'operating.heatTaken',
        approach: 'exchangers.evaporatorApproach',
        airTemperature: source.kind === 'roomAir' ? 'room.coldest' : 'source.coldest',
        pressure: 'surroundings.atmosphericPressure',
        faceVelocity: 'exchangers.airSpeed',
        humidity: 'room.relativeHumidity',
        assumed: { effectiveness: 'engine.airEffectiveness', finnedCoefficient: 'engine.finnedCoefficient' },
      },
      'evaporator',
    ),
  ];
}

function plantSteps({ tank, operating, hardware, plant }: StageResults): readonly WorkingStep[] {
  return plantWorking(tankHeat(tank), machineState(operating), hardware, plant, 'plant', {
    Q_c: 'operating.heatDelivered',
    phi: 'engine.loopPumpShareToWater',
    P_p: 'power.loopPump',
    L: 'tank.load',
    P_comp: 'operating.compressor.power',
    P_fan: 'power.fan',
    P_ctl: 'power.controls',
    Q_tank: 'tank.sensibleToRoom',
    P_sh: 'operating.compressor.shellHeat',
    Q_e: 'operating.heatTaken',
  });
}
