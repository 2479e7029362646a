// The working of a coefficient set's own value: the polynomial, and the steps that carry it to another gas.

import {
  type Refrigerant,
  saturationAtDewTemperature,
  saturationAtTemperature,
  saturationPressureWorking,
  stateInLoop,
  stateWorking,
} from '../../../matter/refrigerants/index.ts';
import { type StepInput, type StepInputs, type WorkingStep, workingStep } from '../../../quantities/index.ts';
import type { RatingConditions } from '../rating-points.ts';
import { printedLevels } from './basis.ts';
import type { CoefficientAt } from './coefficient-at.ts';
import type { CoefficientSet } from './coefficient-set.ts';
import { type RatedStates, ratedStates } from './flow-and-capacity.ts';
import {
  capacityRatioOf,
  densityShareDabiriRice1981,
  flowRatioDabiriRice1981,
  powerRatioDabiriRice1981,
} from './superheat.ts';
import { coefficientsInSi, zeroCelsius } from './units.ts';

/**
 * Steps named `<prefix>.own`, and where the value was carried to another gas `<prefix>.flowRatio` and so on up to
 * `<prefix>.corrected`.
 * @param fluid       what the set is of
 * @param set         the set; its coefficients stand in the steps for °C and base SI
 * @param at          the four temperatures asked for [K]
 * @param result      what coefficientAt gave
 * @param conditions  where the four temperatures came from
 * @param prefix      path of the value in the caller's result
 */
export function coefficientWorking(
  fluid: Refrigerant,
  set: CoefficientSet,
  at: RatingConditions,
  result: CoefficientAt,
  conditions: string,
  prefix: string,
): readonly WorkingStep[] {
  const own = ownValue(fluid, set, at, result, conditions, `${prefix}.own`);
  const { of } = set;
  if (of === 'current' || result.corrected === null) return [own];
  const worked: Worked = {
    fluid,
    prefix,
    asked: ratedStates(fluid, askedOf(result, at)),
    given: ratedStates(fluid, result.conditions),
  };
  const flowRatio = flowRatioDabiriRice1981(worked.asked.suction.density / worked.given.suction.density);
  const states = [
    ...stateSteps(worked, 'given', result.conditions, `${set.path}.basis`, conditions),
    ...stateSteps(worked, 'asked', askedOf(result, at), conditions, conditions),
  ];
  const flow = workingStep(`${prefix}.flowRatio`, 'compressor.flowAtOtherSuperheat', flowRatio, {
    F: [densityShareDabiriRice1981],
    rho_new: [worked.asked.suction.density, `${prefix}.asked.suction.density`],
    rho_map: [worked.given.suction.density, `${prefix}.given.suction.density`],
  });
  const rest = of === 'massFlow' ? [] : [ratioStep(worked, of, flowRatio)];
  const last = rest[0] ?? flow;
  const corrected = workingStep(`${prefix}.corrected`, 'compressor.carriedValue', result.corrected, {
    X: [result.own, `${prefix}.own`],
    r: [last.value, last.result],
  });
  return [own, ...states, flow, ...rest, corrected];
}

function askedOf(result: CoefficientAt, at: RatingConditions): RatingConditions {
  return { ...result.conditions, returnGas: at.returnGas, liquid: at.liquid };
}

function ownValue(
  fluid: Refrigerant,
  set: CoefficientSet,
  at: RatingConditions,
  { own }: CoefficientAt,
  conditions: string,
  name: string,
): WorkingStep {
  const { evaporating, condensing } = printedLevels(fluid, set.basis, at.evaporating, at.condensing);
  const inSi = coefficientsInSi(set.coefficients, set.temperatureUnit, set.unit);
  const coefficients = inSi.map((value, index): [string, StepInput] => [
    `C${index + 1}`,
    [value, `${set.path}.values`],
  ]);
  const inputs: StepInputs = {
    ...Object.fromEntries(coefficients),
    S: [evaporating - zeroCelsius, conditions],
    D: [condensing - zeroCelsius, conditions],
  };
  return workingStep(name, 'compressor.tenCoefficients', own, inputs);
}

interface Worked {
  readonly fluid: Refrigerant;
  readonly prefix: string;
  readonly asked: RatedStates;
  readonly given: RatedStates;
}

/** Ratio of power, or of capacity. */
function ratioStep({ prefix, asked, given }: Worked, of: 'power' | 'capacity', flowRatio: number): WorkingStep {
  const r_m: StepInput = [flowRatio, `${prefix}.flowRatio`];
  if (of === 'power') {
    const ratio = powerRatioDabiriRice1981(flowRatio, asked.isentropicWork / given.isentropicWork);
    return workingStep(`${prefix}.powerRatio`, 'compressor.powerAtOtherSuperheat', ratio, {
      r_m,
      dh_new: [asked.isentropicWork, `${prefix}.asked.isentropicWork`],
      dh_map: [given.isentropicWork, `${prefix}.given.isentropicWork`],
    });
  }
  const effect = ({ suction, liquidEnthalpy }: RatedStates) => suction.enthalpy - liquidEnthalpy;
  const ratio = capacityRatioOf(flowRatio, effect(asked) / effect(given));
  return workingStep(`${prefix}.capacityRatio`, 'compressor.capacityAtOtherGas', ratio, {
    r_m,
    h_1: [asked.suction.enthalpy, `${prefix}.asked.suction.enthalpy`],
    h_l: [asked.liquidEnthalpy, `${prefix}.asked.liquid.enthalpy`],
    h_1map: [given.suction.enthalpy, `${prefix}.given.suction.enthalpy`],
    h_lmap: [given.liquidEnthalpy, `${prefix}.given.liquid.enthalpy`],
  });
}

/** Pressures, gas, liquid and isentropic end of the four temperatures of the set, or of those asked for. */
function stateSteps(
  { fluid, prefix, given, asked }: Worked,
  which: 'given' | 'asked',
  at: RatingConditions,
  gasAndLiquid: string,
  levels: string,
): readonly WorkingStep[] {
  const { suction, dischargePressure, isentropicWork } = which === 'given' ? given : asked;
  const own = (name: string) => `${prefix}.${which}.${name}`;
  const evaporation = saturationAtDewTemperature(fluid, at.evaporating);
  const condensation = saturationAtDewTemperature(fluid, at.condensing);
  const liquid = saturationAtTemperature(fluid, at.liquid);
  const end = stateInLoop(fluid, { pressure: dischargePressure, entropy: suction.entropy });
  const endFrom = { pressure: own('condensingPressure'), entropy: own('suction.entropy') };
  return [
    saturationPressureWorking(fluid, evaporation, own('evaporatingPressure'), levels),
    saturationPressureWorking(fluid, condensation, own('condensingPressure'), levels),
    saturationPressureWorking(fluid, liquid, own('liquid.pressure'), gasAndLiquid, 'bubble'),
    ...stateWorking(fluid, suction, own('suction'), {
      pressure: own('evaporatingPressure'),
      temperature: gasAndLiquid,
    }),
    ...stateWorking(fluid, liquid.liquid, own('liquid'), {
      pressure: own('liquid.pressure'),
      temperature: gasAndLiquid,
    }),
    ...stateWorking(fluid, end, own('isentropicDischarge'), endFrom),
    workingStep(own('isentropicWork'), 'compressor.isentropicWork', isentropicWork, {
      h_2s: [end.enthalpy, own('isentropicDischarge.enthalpy')],
      h_1: [suction.enthalpy, own('suction.enthalpy')],
    }),
  ];
}
