// The working of the intermediate loop: its temperatures, the flow in the tube of the coil, its film, and the exchanger
// between refrigerant and loop water.

import { type StepInput, type StepInputs, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { CondenserCoil, CondenserRequest } from './condenser.ts';
import { gnielinskiValidity } from './films.ts';
import { temperatureDifference } from './relations.ts';
import type { CondenserOrigins } from './working.ts';
import { inputFrom, waterSteps } from './working-steps.ts';

type Loop = NonNullable<CondenserCoil['loop']>;

/** Steps of the loop, named `<prefix>.loopTemperature` and so on. */
export function loopSteps(
  request: CondenserRequest,
  loop: Loop,
  origins: CondenserOrigins,
  prefix: string,
): readonly WorkingStep[] {
  const own = (name: string) => `${prefix}.${name}`;
  const step = (name: string, formula: string, value: number, inputs: StepInputs) =>
    workingStep(own(name), formula, value, inputs);
  const { assumed } = request;
  const D: StepInput = [loop.innerDiameter, own('innerDiameter')];
  const dT = inputFrom(assumed, origins.assumed, 'loopTemperatureChange');
  const T_m: StepInput = [loop.meanTemperature, own('loopWater.temperature')];
  // Fresh water in the loop, whatever the tank holds.
  const water = waterSteps(loop.water, [0], own('loopWater'));
  const { rho, c_p, mu, k } = water.inputs;
  return [
    step('loopWater.temperature', 'exchanger.loopTemperature', loop.meanTemperature, {
      T_w: [request.waterTemperature, origins.waterTemperature],
      T_c: [request.condensingTemperature, origins.condensingTemperature],
      share: inputFrom(assumed, origins.assumed, 'tankCoilShare'),
    }),
    step('loopInlet', 'exchanger.loopInlet', loop.tankCoilInlet, { T_m, dT }),
    step('loopOutlet', 'exchanger.loopOutlet', loop.tankCoilOutlet, { T_m, dT }),
    ...water.steps,
    step('loopMassFlow', 'exchanger.loopMassFlow', loop.massFlow, { Q: [request.duty, origins.duty], c_p, dT }),
    step('loopVelocity', 'exchanger.tubeVelocity', loop.velocity, {
      m: [loop.massFlow, own('loopMassFlow')],
      rho,
      D,
    }),
    step('loopReynolds', 'exchanger.reynolds', loop.reynolds, { rho, w: [loop.velocity, own('loopVelocity')], D, mu }),
    ...nusseltSteps(loop, water.inputs.Pr, prefix),
    step('loopFilm', 'exchanger.film', loop.film, { Nu: [loop.nusselt, own('loopNusselt')], k, D }),
    ...differenceSteps(request, loop, origins, prefix),
    ...refrigerantSideSteps(request, loop, origins, prefix),
  ];
}

function nusseltSteps(loop: Loop, Pr: StepInput, prefix: string): readonly WorkingStep[] {
  const own = (name: string) => `${prefix}.${name}`;
  const Re: StepInput = [loop.reynolds, own('loopReynolds')];
  // Turbulent throughout: the working shows the friction factor apart.
  if (loop.reynolds < gnielinskiValidity.transitionEnds) {
    return [workingStep(own('loopNusselt'), 'exchanger.nusseltInsideTube', loop.nusselt, { Re, Pr })];
  }
  const f: StepInput = [loop.frictionFactor, own('loopFrictionFactor')];
  return [
    workingStep(own('loopFrictionFactor'), 'exchanger.frictionFactor', loop.frictionFactor, { Re }),
    workingStep(own('loopNusselt'), 'exchanger.nusseltTube', loop.nusselt, { Re, Pr, f }),
  ];
}

/** What drives the heat into the tank, and out of the refrigerant. */
function differenceSteps(
  request: CondenserRequest,
  loop: Loop,
  origins: CondenserOrigins,
  prefix: string,
): readonly WorkingStep[] {
  const own = (name: string) => `${prefix}.${name}`;
  const T_w: StepInput = [request.waterTemperature, origins.waterTemperature];
  const T_c: StepInput = [request.condensingTemperature, origins.condensingTemperature];
  const inlet: StepInput = [loop.tankCoilInlet, own('loopInlet')];
  const outlet: StepInput = [loop.tankCoilOutlet, own('loopOutlet')];
  const pairs = [
    ['loopInletDifference', inlet, T_w],
    ['loopOutletDifference', outlet, T_w],
    ['loopSide.outletDifference', T_c, outlet],
    ['loopSide.inletDifference', T_c, inlet],
  ] as const;
  const ends = pairs.map(([name, T_1, T_2]) => ({ name, T_1, T_2, value: temperatureDifference(T_1[0], T_2[0]) }));
  const [dT_in, dT_out, dT_cold, dT_hot] = ends.map(({ name, value }): StepInput => [value, own(name)]);
  return [
    ...ends.map(({ name, T_1, T_2, value }) =>
      workingStep(own(name), 'exchanger.temperatureDifference', value, { T_1, T_2 }),
    ),
    workingStep(own('meanDifference'), 'exchanger.logarithmicMean', loop.meanDifferenceToTank, {
      dT_1: dT_in!,
      dT_2: dT_out!,
    }),
    workingStep(own('loopSide.meanDifference'), 'exchanger.logarithmicMean', loop.meanDifferenceToRefrigerant, {
      dT_1: dT_cold!,
      dT_2: dT_hot!,
    }),
  ];
}

function refrigerantSideSteps(
  { assumed, duty }: CondenserRequest,
  { exchanger }: Loop,
  origins: CondenserOrigins,
  prefix: string,
): readonly WorkingStep[] {
  const own = (name: string) => `${prefix}.${name}`;
  return [
    workingStep(own('loopSide.overallCoefficient'), 'exchanger.loopSideCoefficient', exchanger.overallCoefficient, {
      h_r: inputFrom(assumed, origins.assumed, 'refrigerantFilm'),
      R_f: inputFrom(assumed, origins.assumed, 'fouling'),
      h_l: inputFrom(assumed, origins.assumed, 'loopSideFilm'),
    }),
    workingStep(own('loopSide.area'), 'exchanger.area', exchanger.area, {
      Q: [duty, origins.duty],
      U: [exchanger.overallCoefficient, own('loopSide.overallCoefficient')],
      dT_m: [exchanger.meanDifference, own('loopSide.meanDifference')],
    }),
  ];
}
