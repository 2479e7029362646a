// The working of an operating point: each number of the result with its formula, the numbers put in and where they came
// from. Names follow the result object; states are named as 'points.compressorInlet.enthalpy'.

import {
  type DomeOrigins,
  glideWorking,
  type Refrigerant,
  type StateOrigins,
  saturatedSidesWorking,
  saturationPressureWorking,
  saturationTemperatureWorking,
  stateWorking,
} from '../../matter/refrigerants/index.ts';
import { type MachineOrigins, runningWorking } from '../../parts/compressor/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { CyclePoint } from '../cycle-result.ts';
import { type OperatingPoint, type OperatingPointInput, suctionGas } from '../operating-point.ts';

/** Where the inputs of an operating point came from: design paths or names of other steps. */
export interface OperatingOrigins {
  readonly sourceTemperature: string;
  readonly waterTemperature: string;
  readonly evaporatorApproach: string;
  readonly condenserApproach: string;
  readonly superheat: string;
  readonly subcooling: string;
  readonly machine: MachineOrigins;
  /** Asked only where a valve limits the suction pressure. */
  readonly suctionPressureLimit?: string;
  /** Where both dew temperatures were asked for: source, water and approaches did not make them, and they have no step. */
  readonly areLevelsGiven?: boolean;
}

/**
 * Steps of an operating point in the order of computing, the compressor's own among them.
 * @param input    what the point was computed from
 * @param result   the point
 * @param origins  where the inputs came from
 * @param prefix   path of the point in the caller's result: 'operating' gives 'operating.heatDelivered'
 */
export function operatingPointWorking(
  input: OperatingPointInput,
  result: OperatingPoint,
  origins: OperatingOrigins,
  prefix = 'operating',
): readonly WorkingStep[] {
  const own = (name: string) => `${prefix}.${name}`;
  const [inlet, isentropic] = result.points;
  return [
    ...levelSteps(input, result, origins, own),
    ...suctionSteps(input, result, origins, own),
    ...isentropicSteps(input, result, own),
    ...runningWorking(
      input.machine,
      input.fluid,
      result.compressor,
      origins.machine,
      {
        suction: own(`points.${inlet.name}`),
        dischargePressure: own('condensingPressure'),
        isentropicEnthalpy: own(`points.${isentropic.name}.enthalpy`),
      },
      own('compressor'),
    ),
    ...dischargeSteps(input, result, own),
    ...liquidSteps(input, result, origins, own),
    ...expandedSteps(input, result, own),
    ...heatSteps(result, own),
  ];
}

type Naming = (name: string) => string;

/** Temperatures and pressures of both levels, and both sides of the dome there where a state needs them. */
function levelSteps(
  input: OperatingPointInput,
  result: OperatingPoint,
  origins: OperatingOrigins,
  own: Naming,
): readonly WorkingStep[] {
  const { fluid } = input;
  const { evaporating, condensing } = result;
  const nearest = fluid.bubbleAndDew === undefined ? 'condensingTemperature' : 'condensingBubbleTemperature';
  const fromApproaches = [
    workingStep(own('evaporatingTemperature'), 'loop.evaporatingTemperature', evaporating.temperature, {
      T_source: [input.sourceTemperature, origins.sourceTemperature],
      dT_e: [input.evaporatorApproach, origins.evaporatorApproach],
    }),
    workingStep(own(nearest), 'loop.condensingTemperature', condensing.bubbleTemperature, {
      T_water: [input.waterTemperature, origins.waterTemperature],
      dT_c: [input.condenserApproach, origins.condenserApproach],
    }),
  ];
  return [
    ...(origins.areLevelsGiven ? [] : fromApproaches),
    ...(['evaporating', 'condensing'] as const).flatMap((level) => {
      const dome = domeOf(input, result, level, own);
      const pressure = own(`${level}Pressure`);
      const needed = result.points.some((point) => point.quality !== null && levelOf(point, result) === level);
      const known = level === 'condensing' && !origins.areLevelsGiven ? 'bubble' : 'dew';
      return [
        ...lineSteps(fluid, dome, pressure, known),
        ...(needed ? saturatedSidesWorking(fluid, dome.saturation, dome.prefix, { ...dome, pressure }) : []),
      ];
    }),
  ];
}

/** The pressure of a level; of a blend from the line whose temperature is known, then the other line's temperature and the glide. */
function lineSteps(
  fluid: Refrigerant,
  { saturation, prefix, temperature, bubbleTemperature }: DomeOrigins,
  pressure: string,
  known: 'bubble' | 'dew',
): readonly WorkingStep[] {
  if (bubbleTemperature === undefined) return [saturationPressureWorking(fluid, saturation, pressure, temperature)];
  const places = { dew: temperature, bubble: bubbleTemperature };
  const other = known === 'dew' ? 'bubble' : 'dew';
  return [
    saturationPressureWorking(fluid, saturation, pressure, places[known], known),
    saturationTemperatureWorking(fluid, saturation, places[other], pressure, other),
    glideWorking(saturation, `${prefix}Glide`, places),
  ];
}

function levelOf({ pressure }: CyclePoint, { evaporating }: OperatingPoint): 'evaporating' | 'condensing' {
  return pressure === evaporating.pressure ? 'evaporating' : 'condensing';
}

function domeOf(
  { fluid }: OperatingPointInput,
  result: OperatingPoint,
  level: 'evaporating' | 'condensing',
  own: Naming,
): DomeOrigins {
  const lines = { saturation: result[level], prefix: own(level), temperature: own(`${level}Temperature`) };
  return fluid.bubbleAndDew === undefined ? lines : { ...lines, bubbleTemperature: own(`${level}BubbleTemperature`) };
}

/** A state at one of the two levels: its pressure, then what the equation gives from how it was found. */
function pointSteps(
  input: OperatingPointInput,
  result: OperatingPoint,
  point: CyclePoint,
  found: 'temperature' | 'enthalpy' | 'entropy',
  own: Naming,
): readonly WorkingStep[] {
  const at = own(`points.${point.name}`);
  const level = levelOf(point, result);
  const dome = point.quality === null ? undefined : domeOf(input, result, level, own);
  const origins = { pressure: `${at}.pressure`, [found]: `${at}.${found}` } as unknown as StateOrigins;
  return [
    workingStep(`${at}.pressure`, 'loop.pressureKept', point.pressure, {
      p_in: [point.pressure, own(`${level}Pressure`)],
    }),
    ...stateWorking(input.fluid, point, at, origins, dome),
  ];
}

function suctionSteps(
  input: OperatingPointInput,
  result: OperatingPoint,
  origins: OperatingOrigins,
  own: Naming,
): readonly WorkingStep[] {
  const [inlet] = result.points;
  if (inlet.pressure < result.evaporating.pressure) return throttledSteps(input, result, origins, own);
  return [
    workingStep(own(`points.${inlet.name}.temperature`), 'loop.suctionTemperature', inlet.temperature, {
      T_e: [result.evaporating.temperature, own('evaporatingTemperature')],
      dT_sh: [input.superheat, origins.superheat],
    }),
    ...pointSteps(input, result, inlet, 'temperature', own),
  ];
}

/** The gas that leaves the evaporator, then the same enthalpy at the pressure that the valve lets through. */
function throttledSteps(
  input: OperatingPointInput,
  result: OperatingPoint,
  origins: OperatingOrigins,
  own: Naming,
): readonly WorkingStep[] {
  const { fluid, suctionPressureLimit: limit } = input;
  if (limit === undefined) return [];
  const [inlet] = result.points;
  const { evaporating } = result;
  const gas = suctionGas(fluid, evaporating, input.superheat);
  const before = own('evaporatorGas');
  const at = own(`points.${inlet.name}`);
  const dome = gas.quality === null ? undefined : domeOf(input, result, 'evaporating', own);
  const pressure = own('evaporatingPressure');
  return [
    workingStep(`${before}.temperature`, 'loop.suctionTemperature', gas.temperature, {
      T_e: [evaporating.temperature, own('evaporatingTemperature')],
      dT_sh: [input.superheat, origins.superheat],
    }),
    ...stateWorking(fluid, gas, before, { pressure, temperature: `${before}.temperature` }, dome),
    workingStep(`${at}.pressure`, 'loop.limitedPressure', inlet.pressure, {
      p_e: [evaporating.pressure, pressure],
      p_max: [limit, origins.suctionPressureLimit],
    }),
    workingStep(`${at}.enthalpy`, 'loop.enthalpyKept', inlet.enthalpy, { h_in: [gas.enthalpy, `${before}.enthalpy`] }),
    ...stateWorking(fluid, inlet, at, { pressure: `${at}.pressure`, enthalpy: `${at}.enthalpy` }),
  ];
}

function isentropicSteps(input: OperatingPointInput, result: OperatingPoint, own: Naming): readonly WorkingStep[] {
  const [inlet, isentropic] = result.points;
  return [
    workingStep(own(`points.${isentropic.name}.entropy`), 'loop.entropyKept', isentropic.entropy, {
      s_1: [inlet.entropy, own(`points.${inlet.name}.entropy`)],
    }),
    ...pointSteps(input, result, isentropic, 'entropy', own),
  ];
}

/** The real outlet by its enthalpy; its temperature is the discharge temperature. */
function dischargeSteps(input: OperatingPointInput, result: OperatingPoint, own: Naming): readonly WorkingStep[] {
  const [, , outlet] = result.points;
  const at = own(`points.${outlet.name}`);
  const discharge = own('dischargeTemperature');
  const found = pointSteps(input, result, outlet, 'enthalpy', own);
  return [
    workingStep(`${at}.enthalpy`, 'loop.enthalpyKept', outlet.enthalpy, {
      h_in: [outlet.enthalpy, own('compressor.dischargeEnthalpy')],
    }),
    ...found.flatMap((step) => {
      if (step.result !== `${at}.temperature`) return [step];
      const T_same: StepInput = [outlet.temperature, discharge];
      return [
        { ...step, result: discharge },
        workingStep(`${at}.temperature`, 'loop.temperatureKept', outlet.temperature, { T_same }),
      ];
    }),
  ];
}

function liquidSteps(
  input: OperatingPointInput,
  result: OperatingPoint,
  origins: OperatingOrigins,
  own: Naming,
): readonly WorkingStep[] {
  const [, , , liquid] = result.points;
  const { temperature, bubbleTemperature = temperature } = domeOf(input, result, 'condensing', own);
  return [
    workingStep(own(`points.${liquid.name}.temperature`), 'loop.liquidTemperature', liquid.temperature, {
      T_b: [result.condensing.bubbleTemperature, bubbleTemperature],
      dT_sc: [input.subcooling, origins.subcooling],
    }),
    ...pointSteps(input, result, liquid, 'temperature', own),
  ];
}

/** The valve leaves the enthalpy of the liquid as it is. */
function expandedSteps(input: OperatingPointInput, result: OperatingPoint, own: Naming): readonly WorkingStep[] {
  const [, , , liquid, expanded] = result.points;
  return [
    workingStep(own(`points.${expanded.name}.enthalpy`), 'loop.enthalpyKept', expanded.enthalpy, {
      h_in: [liquid.enthalpy, own(`points.${liquid.name}.enthalpy`)],
    }),
    ...pointSteps(input, result, expanded, 'enthalpy', own),
  ];
}

function heatSteps(result: OperatingPoint, own: Naming): readonly WorkingStep[] {
  const [inlet, , outlet, liquid, expanded] = result.points;
  const h = (point: CyclePoint): StepInput => [point.enthalpy, own(`points.${point.name}.enthalpy`)];
  const m: StepInput = [result.massFlow, own('compressor.massFlow')];
  const W: StepInput = [result.compressorPower, own('compressor.power')];
  const Q_c: StepInput = [result.heatDelivered, own('heatDelivered')];
  return [
    workingStep(own('heatDelivered'), 'loop.heatDelivered', result.heatDelivered, {
      m,
      h_2: h(outlet),
      h_3: h(liquid),
    }),
    workingStep(own('heatTaken'), 'loop.heatTaken', result.heatTaken, { m, h_1: h(inlet), h_4: h(expanded) }),
    workingStep(own('compressorCop'), 'loop.compressorCop', result.compressorCop, { Q_c, W }),
    workingStep(own('energyAccountResidual'), 'loop.energyAccountResidual', result.energyAccountResidual, {
      Q_e: [result.heatTaken, own('heatTaken')],
      W,
      Q_c,
      Q_shell: [result.shellHeat, own('compressor.shellHeat')],
    }),
  ];
}
