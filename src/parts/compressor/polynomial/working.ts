// The working of a coefficient set's own value: the polynomial, and the steps that carry it to another gas.

import {
  type Refrigerant,
  saturationAtDewTemperature,
  saturationAtTemperature,
  saturationPressureWorking,
  stateInLoop,
  stateWorking,
} from '../../../matter/refrigerants/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../../quantities/index.ts';
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
import { tenCoefficients } from './ten-coefficients.ts';
import { onTemperatureScale, temperatureScale, unitFactor } from './units.ts';

/**
 * Steps up to `<prefix>.own`, and where the value was carried to another gas `<prefix>.flowRatio` and so on up to
 * `<prefix>.corrected`.
 * @param fluid       what the set is of
 * @param set         the set; its coefficients stand in the steps as printed
 * @param at          the four temperatures asked for [K]
 * @param result      what coefficientAt gave
 * @param conditions  where the four temperatures came from
 * @param prefix      path of the value in the caller's result
 * @param basis       where the gas and the liquid of the set came from
 */
export function coefficientWorking(
  fluid: Refrigerant,
  set: CoefficientSet,
  at: RatingConditions,
  result: CoefficientAt,
  conditions: string,
  prefix: string,
  basis: BasisOrigins = { gas: `${set.path}.basis`, liquid: `${set.path}.basis` },
): readonly WorkingStep[] {
  const own = ownSteps(fluid, set, at, result, conditions, `${prefix}.own`);
  const { of } = set;
  if (of === 'current' || result.corrected === null) return own;
  const worked: Worked = {
    fluid,
    prefix,
    asked: ratedStates(fluid, askedOf(result, at)),
    given: ratedStates(fluid, result.conditions),
  };
  const flowRatio = flowRatioDabiriRice1981(worked.asked.suction.density / worked.given.suction.density);
  const states = [
    ...stateSteps(worked, 'given', result.conditions, basis, conditions),
    ...stateSteps(worked, 'asked', askedOf(result, at), { gas: conditions, liquid: conditions }, conditions),
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
  return [...own, ...states, flow, ...rest, corrected];
}

function askedOf(result: CoefficientAt, at: RatingConditions): RatingConditions {
  return { ...result.conditions, returnGas: at.returnGas, liquid: at.liquid };
}

function ownSteps(
  fluid: Refrigerant,
  set: CoefficientSet,
  at: RatingConditions,
  { own }: CoefficientAt,
  conditions: string,
  name: string,
): readonly WorkingStep[] {
  const { evaporating, condensing } = printedLevels(fluid, set.basis, at.evaporating, at.condensing);
  // Mid-points were reckoned from the dew temperatures by the basis of the set.
  const origin = (level: number, dew: number) => (level === dew ? conditions : `${set.path}.basis.saturation`);
  return polynomialWorking(
    set,
    [evaporating, origin(evaporating, at.evaporating)],
    [condensing, origin(condensing, at.condensing)],
    own,
    name,
  );
}

/**
 * Steps `<name>.suction`, `<name>.discharge`, `<name>.printed` and `<name>`: both levels on the scale of the set, the polynomial with
 * its numbers as printed, and its value in base SI.
 * @param set          the set
 * @param evaporating  as the set is asked [K], dew or mid-point, and where it came from
 * @param condensing   the same
 * @param value        what coefficientValue gave
 * @param name         of the value
 */
export function polynomialWorking(
  set: CoefficientSet,
  evaporating: StepInput,
  condensing: StepInput,
  value: number,
  name: string,
): readonly WorkingStep[] {
  const { perKelvin, atZero } = temperatureScale(set.temperatureUnit);
  const onScale = (level: StepInput, which: string) =>
    workingStep(`${name}.${which}`, 'compressor.onTemperatureScale', onTemperatureScale(level[0], perKelvin, atZero), {
      T: level,
      a: [perKelvin],
      b: [atZero],
    });
  const suction = onScale(evaporating, 'suction');
  const discharge = onScale(condensing, 'discharge');
  const coefficients = set.coefficients.map((each, index): [string, StepInput] => [
    `C${index + 1}`,
    [each, `${set.path}.values`],
  ]);
  const printed = workingStep(
    `${name}.printed`,
    'compressor.tenCoefficients',
    tenCoefficients(set.coefficients, suction.value, discharge.value),
    {
      ...Object.fromEntries(coefficients),
      S: [suction.value, suction.result],
      D: [discharge.value, discharge.result],
    },
  );
  const inSi = workingStep(name, 'compressor.valueInSi', value, {
    X_set: [printed.value, printed.result],
    k_unit: [unitFactor(set.unit)],
  });
  return [suction, discharge, printed, inSi];
}

/** Where the temperatures of gas and liquid came from. */
export interface BasisOrigins {
  readonly gas: string;
  readonly liquid: string;
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
  origins: BasisOrigins,
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
    saturationPressureWorking(fluid, liquid, own('liquid.pressure'), origins.liquid, 'bubble'),
    ...stateWorking(fluid, suction, own('suction'), {
      pressure: own('evaporatingPressure'),
      temperature: origins.gas,
    }),
    ...stateWorking(fluid, liquid.liquid, own('liquid'), {
      pressure: own('liquid.pressure'),
      temperature: origins.liquid,
    }),
    ...stateWorking(fluid, end, own('isentropicDischarge'), endFrom),
    workingStep(own('isentropicWork'), 'compressor.isentropicWork', isentropicWork, {
      h_2s: [end.enthalpy, own('isentropicDischarge.enthalpy')],
      h_1: [suction.enthalpy, own('suction.enthalpy')],
    }),
  ];
}
