// Stage: how long a coil and how large a face the assumed approach temperatures imply, each for one machine.

import type { OperatingPoint } from '../../loop/index.ts';
import {
  type CondenserCoil,
  type CondenserRequest,
  condenserCoil,
  type EvaporatorFace,
  type EvaporatorRequest,
  evaporatorFace,
} from '../../parts/exchangers/index.ts';
import { heatReachingWater, perMachine } from '../../plant/index.ts';
import type { SizingValues, StagedDesign } from './engine-assumptions.ts';
import { allMachines, type PlantParts } from './plant.ts';
import type { SurroundingsResult } from './surroundings/surroundings.ts';

export interface SizingResult {
  readonly condenserRequest: CondenserRequest;
  readonly condenser: CondenserCoil;
  readonly evaporatorRequest: EvaporatorRequest;
  readonly evaporator: EvaporatorFace;
}

/** What the sizes need of the design beside the operating point. */
export interface SizingSlice {
  readonly tank: Pick<StagedDesign['tank'], 'waterTemperature' | 'salinity'>;
  readonly relativeHumidity: number;
  readonly exchangers: Pick<StagedDesign['exchangers'], 'condenserArrangement' | 'tubeDiameter' | 'airSpeed'>;
  readonly engine: SizingValues;
}

export function sizingOf(
  { tank, relativeHumidity, exchangers, engine }: SizingSlice,
  { spell, atmosphericPressure }: SurroundingsResult,
  operating: OperatingPoint,
  { count, loopPumpPower, loopPumpShareToWater }: PlantParts,
): SizingResult {
  const condenserRequest: CondenserRequest = {
    // The coil in the tank also passes on what the loop pump puts into its water.
    duty: perMachine(
      count,
      heatReachingWater(allMachines(operating, count).condenserHeat, loopPumpPower, loopPumpShareToWater),
    ),
    // Of a blend the coldest that it condenses at: the coil is rather too long than too short.
    condensingTemperature: operating.condensing.bubbleTemperature,
    waterTemperature: tank.waterTemperature,
    salinity: tank.salinity,
    arrangement: exchangers.condenserArrangement,
    tube: {
      outerDiameter: exchangers.tubeDiameter,
      wallThickness: engine.wallThickness,
      wallConductivity: engine.wallConductivity,
    },
    assumed: engine,
  };
  const evaporatorRequest: EvaporatorRequest = {
    duty: operating.heatTaken,
    airTemperature: spell.sourceTemperature,
    // The source's humidity is taken as the tank room's; it decides condensation, hardly the size.
    relativeHumidity,
    pressure: atmosphericPressure,
    evaporatingTemperature: operating.evaporating.temperature,
    faceVelocity: exchangers.airSpeed,
    assumed: { effectiveness: engine.airEffectiveness, finnedCoefficient: engine.finnedCoefficient },
  };
  return {
    condenserRequest,
    condenser: condenserCoil(condenserRequest),
    evaporatorRequest,
    evaporator: evaporatorFace(evaporatorRequest),
  };
}
