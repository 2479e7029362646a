// The working of both sizings: each number with its formula, the numbers put in and where they came from.

import type { FormulaValues, WorkingStep } from '../../quantities/index.ts';
import type { CondenserCoil, CondenserRequest } from './condenser.ts';
import type { EvaporatorFace, EvaporatorRequest } from './evaporator.ts';

/** Where the condenser's inputs came from: design paths or names of other steps. */
export interface CondenserOrigins {
  readonly duty: string;
  readonly condensingTemperature: string;
  readonly waterTemperature: string;
  readonly tubeDiameter: string;
  /** Words for what was assumed here, as 'assumed: exchangers.fouling'. */
  readonly assumed: string;
}

/** Where the evaporator's inputs came from. */
export interface EvaporatorOrigins {
  readonly duty: string;
  readonly approach: string;
  readonly faceVelocity: string;
  readonly humidity: string;
  readonly assumed: string;
}

type Step = readonly [name: string, formula: string, value: number, inputs: FormulaValues, from: readonly string[]];

/** Steps of a condenserCoil result, named `<prefix>.waterFilm` and so on. */
export function condenserWorking(
  request: CondenserRequest,
  coil: CondenserCoil,
  origins: CondenserOrigins,
  prefix = 'condenser',
): readonly WorkingStep[] {
  const { tankCoil, loop } = coil;
  const { water } = tankCoil;
  const { tube, assumed } = request;
  const inner = tube.outerDiameter - 2 * tube.wallThickness;
  const own = (name: string) => `${prefix}.${name}`;
  const { expansion, density, heatCapacity, viscosity, conductivity, prandtl } = water;
  const meanOrigin = loop === null ? origins.condensingTemperature : own('meanDifference');
  const waterOrigin = `${origins.waterTemperature} and ${own('surfaceDifference')}`;
  const d = origins.tubeDiameter;
  const insideOrigin = loop === null ? origins.assumed : own('loopFilm');
  const steps: Step[] = [
    ...loopSteps(request, coil, origins, prefix),
    [
      'rayleigh',
      'exchanger.rayleigh',
      tankCoil.rayleigh,
      {
        beta: Math.abs(expansion),
        dT: tankCoil.surfaceDifference,
        D: tube.outerDiameter,
        rho: density,
        c_p: heatCapacity,
        mu: viscosity,
        k: conductivity,
      },
      [waterOrigin, own('surfaceDifference'), d, waterOrigin, waterOrigin, waterOrigin, waterOrigin],
    ],
    [
      'waterNusselt',
      'exchanger.nusseltCylinder',
      tankCoil.waterNusselt,
      { Ra: tankCoil.rayleigh, Pr: prandtl },
      [own('rayleigh'), waterOrigin],
    ],
    [
      'waterFilm',
      'exchanger.film',
      tankCoil.waterFilm,
      { Nu: tankCoil.waterNusselt, k: conductivity, D: tube.outerDiameter },
      [own('waterNusselt'), waterOrigin, d],
    ],
    [
      'wallResistance',
      'exchanger.tubeWall',
      tankCoil.wallResistance,
      { D_o: tube.outerDiameter, D_i: inner, k: tube.wallConductivity },
      [d, origins.assumed, origins.assumed],
    ],
    [
      'overallCoefficient',
      'exchanger.overallCoefficient',
      tankCoil.overallCoefficient,
      {
        h_w: tankCoil.waterFilm,
        R_f: assumed.fouling,
        R_w: tankCoil.wallResistance,
        D_o: tube.outerDiameter,
        D_i: inner,
        h_i: tankCoil.insideFilm,
      },
      [own('waterFilm'), origins.assumed, own('wallResistance'), d, origins.assumed, insideOrigin],
    ],
    [
      'area',
      'exchanger.area',
      tankCoil.area,
      { Q: request.duty, U: tankCoil.overallCoefficient, dT_m: tankCoil.meanDifference },
      [origins.duty, own('overallCoefficient'), meanOrigin],
    ],
    ['length', 'exchanger.length', tankCoil.length, { A: tankCoil.area, D_o: tube.outerDiameter }, [own('area'), d]],
  ];
  return steps.map((step) => named(step, prefix));
}

function loopSteps(
  request: CondenserRequest,
  coil: CondenserCoil,
  origins: CondenserOrigins,
  prefix: string,
): readonly Step[] {
  const { loop } = coil;
  if (loop === null) return [];
  const own = (name: string) => `${prefix}.${name}`;
  const { assumed, waterTemperature, condensingTemperature, duty } = request;
  const toTank = own('loopTemperature');
  const turbulent: Step[] =
    loop.reynolds >= 4000
      ? [
          [
            'loopNusselt',
            'exchanger.nusseltTube',
            loop.nusselt,
            { Re: loop.reynolds, Pr: loop.prandtl, f: loop.frictionFactor },
            [own('loopReynolds'), toTank, own('loopFrictionFactor')],
          ],
        ]
      : [];
  return [
    [
      'loopFrictionFactor',
      'exchanger.frictionFactor',
      loop.frictionFactor,
      { Re: loop.reynolds },
      [own('loopReynolds')],
    ],
    ...turbulent,
    [
      'loopFilm',
      'exchanger.film',
      loop.film,
      { Nu: loop.nusselt, k: loop.conductivity, D: loop.innerDiameter },
      [own('loopNusselt'), toTank, origins.tubeDiameter],
    ],
    [
      'meanDifference',
      'exchanger.logarithmicMean',
      loop.meanDifferenceToTank,
      { dT_1: loop.tankCoilInlet - waterTemperature, dT_2: loop.tankCoilOutlet - waterTemperature },
      [toTank, toTank],
    ],
    [
      'loopSide.meanDifference',
      'exchanger.logarithmicMean',
      loop.meanDifferenceToRefrigerant,
      {
        dT_1: condensingTemperature - loop.tankCoilOutlet,
        dT_2: condensingTemperature - loop.tankCoilInlet,
      },
      [origins.condensingTemperature, origins.condensingTemperature],
    ],
    [
      'loopSide.overallCoefficient',
      'exchanger.loopSideCoefficient',
      loop.exchanger.overallCoefficient,
      { h_r: assumed.refrigerantFilm, R_f: assumed.fouling, h_l: assumed.loopSideFilm },
      [origins.assumed, origins.assumed, origins.assumed],
    ],
    [
      'loopSide.area',
      'exchanger.area',
      loop.exchanger.area,
      { Q: duty, U: loop.exchanger.overallCoefficient, dT_m: loop.exchanger.meanDifference },
      [origins.duty, own('loopSide.overallCoefficient'), own('loopSide.meanDifference')],
    ],
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
  const steps: Step[] = [
    [
      'capacityFlow',
      'exchanger.airCapacityFlow',
      face.capacityFlow,
      { Q: request.duty, eps: face.effectiveness, dT: face.approach },
      [origins.duty, origins.assumed, origins.approach],
    ],
    [
      'volumeFlow',
      'exchanger.airVolumeFlow',
      face.volumeFlow,
      { C: face.capacityFlow, rho_da: face.dryAirDensity, W: face.humidityRatio },
      [own('capacityFlow'), origins.humidity, origins.humidity],
    ],
    [
      'faceArea',
      'exchanger.faceArea',
      face.faceArea,
      { V: face.volumeFlow, w: request.faceVelocity },
      [own('volumeFlow'), origins.faceVelocity],
    ],
    ['transferUnits', 'exchanger.transferUnits', face.transferUnits, { eps: face.effectiveness }, [origins.assumed]],
    [
      'conductance',
      'exchanger.conductance',
      face.conductance,
      { NTU: face.transferUnits, C: face.capacityFlow },
      [own('transferUnits'), own('capacityFlow')],
    ],
  ];
  return steps.map((step) => named(step, prefix));
}

/** Pairs the symbols of the inputs, in their order, with where they came from. */
function named(step: Step, prefix: string): WorkingStep {
  const [name, formula, value, inputs, origins] = step;
  const from = Object.fromEntries(Object.keys(inputs).map((symbol, index) => [symbol, origins[index]!]));
  return { result: `${prefix}.${name}`, formula, inputs, from, value };
}
