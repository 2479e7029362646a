// The working of the machine: compressor from a rating, operating point at a source temperature, sizes of both exchangers,
// and tank, room and loop together.

import { type OperatingPoint, operatingPointWorking } from '../../loop/index.ts';
import { ratingWorking } from '../../parts/compressor/index.ts';
import { condenserWorking, evaporatorWorking } from '../../parts/exchangers/index.ts';
import { type PlantOrigins, plantWorking } from '../../plant/index.ts';
import type { WorkingStep } from '../../quantities/index.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import type { StageResults } from '../stages/index.ts';
import { machineState, tankHeat } from '../stages/plant.ts';
import { atmosphere } from './tank.ts';

const compressorPath = 'machine.compressor';

/** Design fields; of a rated machine displacement and compression efficiency are steps of these names. */
const modelOrigins = {
  displacement: `${compressorPath}.displacement`,
  speed: `${compressorPath}.speed`,
  clearanceRatio: `${compressorPath}.clearanceRatio`,
  reexpansionExponent: `${compressorPath}.reexpansionExponent`,
  fillingFactor: `${compressorPath}.fillingFactor`,
  compressionEfficiency: `${compressorPath}.compressionEfficiency`,
  frictionPressure: `${compressorPath}.frictionPressure`,
  shellHeatShare: `${compressorPath}.shellHeatShare`,
};

/** Temperature of the source, and where it came from. */
export interface SourceTemperature {
  readonly temperature: number;
  readonly from: string;
}

/** The source at the coldest spell. */
export function spellSource({ source }: StagedDesign, { surroundings }: StageResults): SourceTemperature {
  const from = source.kind === 'roomAir' ? 'room.coldest' : 'source.coldest';
  return { temperature: surroundings.spell.sourceTemperature, from };
}

/** How a rating became a compressor; none where displacement was given or assumed. */
export function ratingSteps({ machine, states }: StagedDesign, { compressor }: StageResults): readonly WorkingStep[] {
  const given = machine.compressor;
  if (compressor.rated === undefined || given.kind !== 'rating') return [];
  const { capacity, power, ratingPoint } = given;
  const { displacement: _V, compressionEfficiency: _eta, ...assumed } = compressor.model;
  const request = { fluid: states.fluid(given.madeFor), capacity, power, ratingPoint, assumed };
  return ratingWorking(
    request,
    compressor.rated,
    {
      capacity: `${compressorPath}.capacity`,
      power: `${compressorPath}.power`,
      ratingPoint: `${compressorPath}.ratingPoint`,
      assumed: modelOrigins,
    },
    compressorPath,
  );
}

/** The loop at that source temperature, or where its two dew temperatures were given. */
export function operatingSteps(
  design: StagedDesign,
  { compressor }: StageResults,
  operating: OperatingPoint,
  source: SourceTemperature,
  prefix: string,
  areLevelsGiven = false,
): readonly WorkingStep[] {
  const { exchangers, machine, states, tank } = design;
  const input = {
    fluid: states.fluid(machine.refrigerant),
    compressor: compressor.model,
    sourceTemperature: source.temperature,
    waterTemperature: tank.waterTemperature,
    evaporatorApproach: exchangers.evaporatorApproach,
    condenserApproach: exchangers.condenserApproach,
    superheat: exchangers.superheat,
    subcooling: exchangers.subcooling,
  };
  const origins = {
    sourceTemperature: source.from,
    waterTemperature: 'tank.waterTemperature',
    evaporatorApproach: 'exchangers.evaporatorApproach',
    condenserApproach: 'exchangers.condenserApproach',
    superheat: 'exchangers.superheat',
    subcooling: 'exchangers.subcooling',
    model: modelOrigins,
    areLevelsGiven,
  };
  return operatingPointWorking(input, operating, origins, prefix);
}

/** Sizes that the assumed approaches imply. */
export function sizingSteps({ source }: StagedDesign, { sizing, operating }: StageResults): readonly WorkingStep[] {
  const { condenserRequest, condenser, evaporatorRequest, evaporator } = sizing;
  return [
    ...condenserWorking(
      condenserRequest,
      condenser,
      {
        duty: 'plant.heatReachingWater',
        condensingTemperature:
          operating.condensing.glide === 0
            ? 'operating.condensingTemperature'
            : 'operating.condensingBubbleTemperature',
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
        pressure: atmosphere,
        faceVelocity: 'exchangers.airSpeed',
        humidity: 'room.relativeHumidity',
        assumed: { effectiveness: 'engine.airEffectiveness', finnedCoefficient: 'engine.finnedCoefficient' },
      },
      'evaporator',
    ),
  ];
}

/** Tank, room and loop at the coldest spell. */
export function plantSteps(design: StagedDesign, results: StageResults): readonly WorkingStep[] {
  const { tank, operating, hardware, plant } = results;
  return plantWorking(
    tankHeat(tank),
    machineState(operating),
    hardware,
    plant,
    'plant',
    plantOrigins(design, 'tank', 'operating'),
  );
}

/**
 * Where the numbers of a plant came from.
 * @param design     names the fields
 * @param tank       prefix of the tank's steps: 'tank'
 * @param operating  prefix of the operating point's steps; null where the machine does not run
 */
export function plantOrigins(design: StagedDesign, tank: string, operating: string | null): PlantOrigins {
  const hasPump = design.exchangers.condenserArrangement === 'intermediateLoop';
  const common = {
    phi: 'engine.loopPumpShareToWater',
    // A coil in the tank has no loop and no pump.
    P_p: hasPump ? 'power.loopPump' : 'exchangers.condenserArrangement',
    P_fan: 'power.fan',
    P_ctl: 'power.controls',
    L: `${tank}.load`,
    Q_tank: `${tank}.sensibleToRoom`,
    Q_latent: `${tank}.latentToRoom`,
    shellPlace: 'machine.shellPlace',
    sourceKind: 'source.kind',
  };
  if (operating === null) return common;
  return {
    ...common,
    Q_c: `${operating}.heatDelivered`,
    P_comp: `${operating}.compressor.power`,
    P_sh: `${operating}.compressor.shellHeat`,
    Q_e: `${operating}.heatTaken`,
  };
}
