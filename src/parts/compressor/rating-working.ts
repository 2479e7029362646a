// The working of a machine identified from one rating: states of the rated cycle, the flow that the capacity implies, then
// displacement and compression efficiency.

import {
  saturationAtTemperature,
  saturationPressureWorking,
  stateInLoop,
  stateWorking,
} from '../../matter/refrigerants/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { CompressorModel } from './model.ts';
import type { RatedMachine, RatingRequest } from './rating.ts';

/** Where the inputs came from: design paths. */
export interface RatingOrigins {
  readonly capacity: string;
  readonly power: string;
  readonly ratingPoint: string;
  readonly assumed: Readonly<Record<Exclude<keyof CompressorModel, 'displacement' | 'compressionEfficiency'>, string>>;
}

/**
 * Steps in the order of computing: those of the rated cycle are named `<prefix>.rated.massFlow` and so on, then follow
 * `<prefix>.displacement` and `<prefix>.compressionEfficiency`.
 * @param request  the rating
 * @param rated    the machine found from it
 * @param origins  where the inputs came from
 * @param prefix   path of the model in the caller's result, as 'machine.compressor'
 */
export function ratingWorking(
  request: RatingRequest,
  rated: RatedMachine,
  origins: RatingOrigins,
  prefix = 'compressor',
): readonly WorkingStep[] {
  const { model, point } = rated;
  const at = (name: string) => `${prefix}.rated.${name}`;
  const from = origins.assumed;
  const h_1: StepInput = [point.suction.enthalpy, at('suction.enthalpy')];
  const m: StepInput = [rated.massFlow, at('massFlow')];
  const work = point.isentropicDischargeEnthalpy - point.suction.enthalpy;
  const N: StepInput = [model.speed, from.speed];
  return [
    ...stateSteps(request, rated, origins.ratingPoint, at),
    workingStep(at('pressureRatio'), 'compressor.pressureRatio', point.pressureRatio, {
      p_d: [point.discharge.pressure, at('condensingPressure')],
      p_s: [point.suction.pressure, at('evaporatingPressure')],
    }),
    workingStep(at('volumetricEfficiency'), 'compressor.volumetricEfficiency', point.volumetricEfficiency, {
      f: [model.fillingFactor, from.fillingFactor],
      C: [model.clearanceRatio, from.clearanceRatio],
      n: [model.reexpansionExponent, from.reexpansionExponent],
      r: [point.pressureRatio, at('pressureRatio')],
    }),
    workingStep(at('massFlow'), 'compressor.massFlowFromCapacity', rated.massFlow, {
      Q_e: [request.capacity, origins.capacity],
      h_1,
      h_l: [rated.liquidEnthalpy, at('liquid.enthalpy')],
    }),
    workingStep(`${prefix}.displacement`, 'compressor.displacementFromRating', model.displacement, {
      m,
      eta_v: [point.volumetricEfficiency, at('volumetricEfficiency')],
      N,
      rho_s: [point.suction.density, at('suction.density')],
    }),
    workingStep(at('isentropicWork'), 'compressor.isentropicWork', work, {
      h_2s: [point.isentropicDischargeEnthalpy, at('isentropicDischarge.enthalpy')],
      h_1,
    }),
    workingStep(
      `${prefix}.compressionEfficiency`,
      'compressor.compressionEfficiencyFromRating',
      model.compressionEfficiency,
      {
        m,
        dh_s: [work, at('isentropicWork')],
        W: [request.power, origins.power],
        p_f: [model.frictionPressure, from.frictionPressure],
        V_d: [model.displacement, `${prefix}.displacement`],
        N,
      },
    ),
  ];
}

/** Saturation pressures, gas at the inlet, isentropic discharge and liquid of the rating point. */
function stateSteps(
  { fluid }: RatingRequest,
  { conditions, point }: RatedMachine,
  ratingPoint: string,
  at: (name: string) => string,
): readonly WorkingStep[] {
  const { suction } = point;
  const evaporating = saturationAtTemperature(fluid, conditions.evaporating);
  const condensing = saturationAtTemperature(fluid, conditions.condensing);
  const ofTheLiquid = saturationAtTemperature(fluid, conditions.liquid);
  const isentropic = stateInLoop(fluid, { pressure: condensing.vapour.pressure, entropy: suction.entropy });
  const suctionFrom = { pressure: at('evaporatingPressure'), temperature: ratingPoint };
  const isentropicFrom = { pressure: at('condensingPressure'), entropy: at('suction.entropy') };
  const liquidFrom = { pressure: at('liquid.pressure'), temperature: ratingPoint };
  return [
    saturationPressureWorking(fluid, evaporating, at('evaporatingPressure'), ratingPoint),
    saturationPressureWorking(fluid, condensing, at('condensingPressure'), ratingPoint),
    saturationPressureWorking(fluid, ofTheLiquid, at('liquid.pressure'), ratingPoint, 'bubble'),
    ...stateWorking(fluid, suction, at('suction'), suctionFrom),
    ...stateWorking(fluid, isentropic, at('isentropicDischarge'), isentropicFrom),
    ...stateWorking(fluid, ofTheLiquid.liquid, at('liquid'), liquidFrom),
  ];
}
