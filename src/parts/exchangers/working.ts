// The working of both sizings: each number with its formula, the numbers put in and where they came from.

import { saturationVapourPressure, vapourPressure } from '../../matter/air/index.ts';
import { type StepInput, type StepInputs, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { CondenserAssumptions, CondenserCoil, CondenserRequest } from './condenser.ts';
import type { EvaporatorAssumptions, EvaporatorFace, EvaporatorRequest } from './evaporator.ts';
import { loopSteps } from './loop-working.ts';
import { innerDiameterOf } from './relations.ts';
import { inputFrom, waterSteps } from './working-steps.ts';

/** Where the condenser's inputs came from: design paths or names of other steps. */
export interface CondenserOrigins {
  readonly duty: string;
  readonly condensingTemperature: string;
  readonly waterTemperature: string;
  readonly salinity: string;
  /** Of the condensing against the water temperature. */
  readonly approach: string;
  readonly tubeDiameter: string;
  readonly wallThickness: string;
  readonly wallConductivity: string;
  readonly assumed: Readonly<Record<keyof CondenserAssumptions, string>>;
}

/** Where the evaporator's inputs came from. */
export interface EvaporatorOrigins {
  readonly duty: string;
  readonly approach: string;
  readonly airTemperature: string;
  readonly humidity: string;
  readonly pressure: string;
  readonly faceVelocity: string;
  readonly assumed: Readonly<Record<keyof EvaporatorAssumptions, string>>;
}

/** Steps of a condenserCoil result, named `<prefix>.waterFilm` and so on. */
export function condenserWorking(
  request: CondenserRequest,
  coil: CondenserCoil,
  origins: CondenserOrigins,
  prefix = 'condenser',
): readonly WorkingStep[] {
  const { tankCoil, loop } = coil;
  const { tube, assumed } = request;
  const own = (name: string) => `${prefix}.${name}`;
  const step = (name: string, formula: string, value: number, inputs: StepInputs) =>
    workingStep(own(name), formula, value, inputs);
  const innerDiameter = innerDiameterOf(tube.outerDiameter, tube.wallThickness);
  const D_i: StepInput = [innerDiameter, own('innerDiameter')];
  const D_o: StepInput = [tube.outerDiameter, origins.tubeDiameter];
  const T_w: StepInput = [request.waterTemperature, origins.waterTemperature];
  const Q: StepInput = [request.duty, origins.duty];
  const U: StepInput = [tankCoil.overallCoefficient, own('overallCoefficient')];
  const h_w: StepInput = [tankCoil.waterFilm, own('waterFilm')];
  const dT: StepInput = [tankCoil.surfaceDifference, own('surfaceDifference')];
  const dT_m: StepInput = [tankCoil.meanDifference, loop === null ? origins.approach : own('meanDifference')];
  const insideFrom = loop === null ? origins.assumed.refrigerantFilm : own('loopFilm');
  const film = waterSteps(tankCoil.water, [request.salinity, origins.salinity], own('water'));
  const { beta, rho, c_p, mu, k, Pr } = film.inputs;
  return [
    step('innerDiameter', 'exchanger.innerDiameter', innerDiameter, {
      D_o,
      s: [tube.wallThickness, origins.wallThickness],
    }),
    ...(loop === null ? [] : loopSteps(request, loop, origins, prefix)),
    step('surfaceDifference', 'exchanger.surfaceDifference', tankCoil.surfaceDifference, { dT_m, U, h_w }),
    step('water.temperature', 'exchanger.filmTemperature', tankCoil.water.temperature, { T_w, dT }),
    ...film.steps,
    step('rayleigh', 'exchanger.rayleigh', tankCoil.rayleigh, { beta, dT, D: D_o, rho, c_p, mu, k }),
    step('waterNusselt', 'exchanger.nusseltCylinder', tankCoil.waterNusselt, {
      Ra: [tankCoil.rayleigh, own('rayleigh')],
      Pr,
    }),
    step('waterFilm', 'exchanger.film', tankCoil.waterFilm, {
      Nu: [tankCoil.waterNusselt, own('waterNusselt')],
      k,
      D: D_o,
    }),
    step('wallResistance', 'exchanger.tubeWall', tankCoil.wallResistance, {
      D_o,
      D_i,
      k: [tube.wallConductivity, origins.wallConductivity],
    }),
    step('overallCoefficient', 'exchanger.overallCoefficient', tankCoil.overallCoefficient, {
      h_w,
      R_f: inputFrom(assumed, origins.assumed, 'fouling'),
      R_w: [tankCoil.wallResistance, own('wallResistance')],
      D_o,
      D_i,
      h_i: [tankCoil.insideFilm, insideFrom],
    }),
    step('area', 'exchanger.area', tankCoil.area, { Q, U, dT_m }),
    step('length', 'exchanger.length', tankCoil.length, { A: [tankCoil.area, own('area')], D_o }),
  ];
}

/** Steps of an evaporatorFace result, named `<prefix>.faceArea` and so on. */
export function evaporatorWorking(
  request: EvaporatorRequest,
  face: EvaporatorFace,
  origins: EvaporatorOrigins,
  prefix = 'evaporator',
): readonly WorkingStep[] {
  const own = (name: string) => `${prefix}.${name}`;
  const step = (name: string, formula: string, value: number, inputs: StepInputs) =>
    workingStep(own(name), formula, value, inputs);
  const { airTemperature, relativeHumidity, assumed } = request;
  const saturation = saturationVapourPressure(airTemperature);
  const vapour = vapourPressure(airTemperature, relativeHumidity);
  const T: StepInput = [airTemperature, origins.airTemperature];
  const p: StepInput = [request.pressure, origins.pressure];
  const p_w: StepInput = [vapour, own('vapourPressure')];
  const C: StepInput = [face.capacityFlow, own('capacityFlow')];
  const NTU: StepInput = [face.transferUnits, own('transferUnits')];
  const eps = inputFrom(assumed, origins.assumed, 'effectiveness');
  return [
    step('capacityFlow', 'exchanger.airCapacityFlow', face.capacityFlow, {
      Q: [request.duty, origins.duty],
      eps,
      dT: [face.approach, origins.approach],
    }),
    step('saturation', 'air.saturationVapourPressure', saturation, { T }),
    step('vapourPressure', 'air.vapourPressure', vapour, {
      RH: [relativeHumidity, origins.humidity],
      p_ws: [saturation, own('saturation')],
    }),
    step('humidityRatio', 'air.humidityRatio', face.humidityRatio, { p_w, p }),
    step('dryAirDensity', 'air.dryAirDensity', face.dryAirDensity, { T, p_w, p }),
    step('volumeFlow', 'exchanger.airVolumeFlow', face.volumeFlow, {
      C,
      rho_da: [face.dryAirDensity, own('dryAirDensity')],
      W: [face.humidityRatio, own('humidityRatio')],
    }),
    step('faceArea', 'exchanger.faceArea', face.faceArea, {
      V: [face.volumeFlow, own('volumeFlow')],
      w: [request.faceVelocity, origins.faceVelocity],
    }),
    step('transferUnits', 'exchanger.transferUnits', face.transferUnits, { eps }),
    step('conductance', 'exchanger.conductance', face.conductance, { NTU, C }),
    step('finnedArea', 'exchanger.finnedArea', face.finnedArea, {
      UA: [face.conductance, own('conductance')],
      U: inputFrom(assumed, origins.assumed, 'finnedCoefficient'),
    }),
  ];
}
