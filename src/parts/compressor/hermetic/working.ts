// The working of a settled point of the model: each number with its formula, the numbers put in and where they came from. The
// point was found by passes until nothing moved; at what was found every relation holds, so that the steps lead round in a
// circle (the wall warms the gas, the gas is compressed, its losses warm the wall) and out of it to what was given.

import {
  type DomeOrigins,
  furtherPropertiesWorking,
  type Refrigerant,
  type Saturation,
  type State,
  saturatedSidesWorking,
  saturationAtPressure,
  saturationTemperatureWorking,
  stateWorking,
} from '../../../matter/refrigerants/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../../quantities/index.ts';
import {
  exchangedCapacity,
  heatCapacityOf,
  leakagePressureRatio,
  openingLoss,
  transferUnits,
  wallEffectiveness,
} from './gas-path.ts';
import { fluxRatio, magnetisingCurrent, motorBestPower, motorSlip } from './motor.ts';
import type { HermeticCompressor, HermeticParameter, Supply } from './parameters.ts';
import type { HermeticPoint, RunningConditions } from './point.ts';
import { lossesToWall } from './shell.ts';

/** Where what describes the machine and its place came from: design paths or names of other steps. */
export interface HermeticOrigins {
  readonly parameters: Readonly<Record<HermeticParameter, string>>;
  readonly ratedSupply: Readonly<Record<keyof Supply, string>>;
  readonly supply: Readonly<Record<keyof Supply, string>>;
  readonly surroundings: string;
}

/** Where both ends came from. */
export interface EndOrigins {
  /** Prefix of the steps of the suction gas: its pressure, temperature, density, enthalpy and entropy. */
  readonly suction: string;
  readonly dischargePressure: string;
}

/** What every group of steps is made from. */
interface Worked {
  readonly compressor: HermeticCompressor;
  readonly fluid: Refrigerant;
  readonly at: RunningConditions;
  readonly point: HermeticPoint;
  readonly ends: EndOrigins;
  /** Name of a step of this point. */
  readonly own: (name: string) => string;
  readonly parameter: (name: HermeticParameter) => StepInput;
  readonly frequency: StepInput;
  readonly voltage: StepInput;
  readonly ratedFrequency: StepInput;
  readonly ratedVoltage: StepInput;
  readonly surroundings: StepInput;
}

/**
 * Steps of a settled point in the order in which one pass goes, named `<prefix>.fillingPressure` and so on.
 * @param compressor  the machine
 * @param fluid       refrigerant in it
 * @param at          where it runs
 * @param point       its settled point
 * @param origins     where machine and place came from
 * @param ends        where both ends came from
 * @param prefix      path of the point in the caller's result, as 'operating.compressor'
 */
export function hermeticWorking(
  compressor: HermeticCompressor,
  fluid: Refrigerant,
  at: RunningConditions,
  point: HermeticPoint,
  origins: HermeticOrigins,
  ends: EndOrigins,
  prefix: string,
): readonly WorkingStep[] {
  const worked: Worked = {
    compressor,
    fluid,
    at,
    point,
    ends,
    own: (name) => `${prefix}.${name}`,
    parameter: (name) => [compressor[name], origins.parameters[name]],
    frequency: [at.supply.frequency, origins.supply.frequency],
    voltage: [at.supply.voltage, origins.supply.voltage],
    ratedFrequency: [compressor.ratedSupply.frequency, origins.ratedSupply.frequency],
    ratedVoltage: [compressor.ratedSupply.voltage, origins.ratedSupply.voltage],
    surroundings: [at.surroundings, origins.surroundings],
  };
  return [
    ...openingSteps(worked),
    ...suctionSteps(worked),
    ...leakageSteps(worked),
    ...cylinderSteps(worked),
    ...motorSteps(worked),
    ...wallSteps(worked),
  ];
}

function flowOf({ point, own }: Worked): StepInput {
  return [point.massFlow, own('massFlow')];
}

function openingSteps(worked: Worked): readonly WorkingStep[] {
  const { compressor, at, point, ends, own, parameter, ratedFrequency } = worked;
  const { suction, dischargePressure } = at;
  const lossAt = (
    name: string,
    velocity: 'suctionVelocity' | 'dischargeVelocity',
    [density, from]: readonly [number, string],
  ) => {
    const { displacement, ratedSupply } = compressor;
    const value = openingLoss(compressor[velocity], point.massFlow, density, displacement, ratedSupply.frequency);
    return workingStep(own(name), 'compressor.openingLoss', value, {
      u: parameter(velocity),
      m: flowOf(worked),
      rho: [density, from],
      V_d: parameter('displacement'),
      f_r: ratedFrequency,
    });
  };
  const suctionLoss = lossAt('suctionLoss', 'suctionVelocity', [suction.density, `${ends.suction}.density`]);
  const dischargeLoss = lossAt('dischargeLoss', 'dischargeVelocity', [
    point.compressedGas.density,
    own('compressedGas.density'),
  ]);
  return [
    suctionLoss,
    workingStep(own('fillingPressure'), 'compressor.fillingPressure', point.fillingPressure, {
      p_s: [suction.pressure, `${ends.suction}.pressure`],
      dp: [suctionLoss.value, suctionLoss.result],
    }),
    dischargeLoss,
    workingStep(own('emptyingPressure'), 'compressor.emptyingPressure', point.emptyingPressure, {
      p_d: [dischargePressure, ends.dischargePressure],
      dp: [dischargeLoss.value, dischargeLoss.result],
    }),
  ];
}

/** What gas and wall exchange for each kelvin between them: transfer units, effectiveness, capacity. */
function capacitySteps(
  worked: Worked,
  side: 'suction' | 'discharge',
  [heatCapacity, from]: readonly [number, string],
): readonly [WorkingStep, WorkingStep, WorkingStep] {
  const { compressor, point, own, parameter, ratedFrequency } = worked;
  const reference = side === 'suction' ? 'suctionHeatingUnits' : 'dischargeCoolingUnits';
  const { displacement, ratedSupply } = compressor;
  const units = transferUnits(compressor[reference], point.massFlow, displacement, ratedSupply.frequency);
  const effectiveness = wallEffectiveness(units);
  const m = flowOf(worked);
  return [
    workingStep(own(`${side}Units`), 'compressor.transferUnits', units, {
      NTU_r: parameter(reference),
      m,
      V_d: parameter('displacement'),
      f_r: ratedFrequency,
    }),
    workingStep(own(`${side}Effectiveness`), 'compressor.wallEffectiveness', effectiveness, {
      NTU: [units, own(`${side}Units`)],
    }),
    workingStep(
      own(`${side}Capacity`),
      'compressor.exchangedCapacity',
      exchangedCapacity(effectiveness, point.massFlow, heatCapacity),
      { eps: [effectiveness, own(`${side}Effectiveness`)], m, c_p: [heatCapacity, from] },
    ),
  ];
}

function suctionSteps(worked: Worked): readonly WorkingStep[] {
  const { fluid, at, point, ends, own } = worked;
  const { suction } = at;
  const capacity = capacitySteps(worked, 'suction', [heatCapacityOf(fluid, suction), `${ends.suction}.cp`]);
  const [, , exchanged] = capacity;
  return [
    ...heatCapacitySteps(fluid, suction, ends.suction),
    ...capacity,
    workingStep(own('suctionHeat'), 'compressor.heatAtWall', point.suctionHeat, {
      C_x: [exchanged.value, exchanged.result],
      T_hot: [point.wallTemperature, own('wallTemperature')],
      T_cold: [suction.temperature, `${ends.suction}.temperature`],
    }),
  ];
}

function leakageSteps({ point, own, parameter }: Worked): readonly WorkingStep[] {
  const { fillingPressure, emptyingPressure, compressedGas } = point;
  const p_e: StepInput = [emptyingPressure, own('emptyingPressure')];
  const ratio = leakagePressureRatio(fillingPressure, emptyingPressure);
  return [
    workingStep(own('leakagePressureRatio'), 'compressor.leakagePressureRatio', ratio, {
      p_f: [fillingPressure, own('fillingPressure')],
      p_e,
    }),
    workingStep(own('leakage'), 'compressor.leakage', point.leakage, {
      lambda: parameter('leakageRatio'),
      V_d: parameter('displacement'),
      p_e,
      rho_e: [compressedGas.density, own('compressedGas.density')],
      r_l: [ratio, own('leakagePressureRatio')],
    }),
  ];
}

/** The gas that fills, the gas compressed, the flow between them and what power it takes. */
function cylinderSteps(worked: Worked): readonly WorkingStep[] {
  const { at, point, ends, own, parameter } = worked;
  const { cylinderGas, compressedGas } = point;
  const m = flowOf(worked);
  const m_l: StepInput = [point.leakage, own('leakage')];
  const h_e: StepInput = [compressedGas.enthalpy, own('compressedGas.enthalpy')];
  const h_f: StepInput = [cylinderGas.enthalpy, own('cylinderGas.enthalpy')];
  return [
    workingStep(own('cylinderGas.enthalpy'), 'compressor.fillingEnthalpy', cylinderGas.enthalpy, {
      m,
      h_1: [at.suction.enthalpy, `${ends.suction}.enthalpy`],
      Q_su: [point.suctionHeat, own('suctionHeat')],
      m_l,
      h_e,
    }),
    ...gasSteps(worked, cylinderGas, 'cylinderGas', 'fillingPressure', { enthalpy: own('cylinderGas.enthalpy') }),
    ...gasSteps(worked, compressedGas, 'compressedGas', 'emptyingPressure', { entropy: own('cylinderGas.entropy') }),
    workingStep(own('massFlow'), 'compressor.pumpedFlow', point.massFlow, {
      rho_f: [cylinderGas.density, own('cylinderGas.density')],
      rho_e: [compressedGas.density, own('compressedGas.density')],
      V_d: parameter('displacement'),
      N: [point.speed, own('speed')],
      C: parameter('clearanceRatio'),
      m_l,
    }),
    workingStep(own('internalPower'), 'compressor.internalPower', point.internalPower, { m, m_l, h_e, h_f }),
    workingStep(own('shaftPower'), 'compressor.shaftPower', point.shaftPower, {
      W_in: [point.internalPower, own('internalPower')],
      alpha: parameter('proportionalLoss'),
      p_fr: parameter('frictionPressure'),
      V_d: parameter('displacement'),
      N: [point.speed, own('speed')],
    }),
  ];
}

/** A gas inside the machine from its pressure and enthalpy or entropy; where it is wet, both sides of the dome there. */
function gasSteps(
  { fluid, own }: Worked,
  gas: State,
  name: string,
  pressureName: string,
  found: { readonly enthalpy: string } | { readonly entropy: string },
): readonly WorkingStep[] {
  const pressure = own(pressureName);
  const origins = { pressure, ...found };
  if (gas.quality === null) return stateWorking(fluid, gas, own(name), origins);
  const saturation = saturationAtPressure(fluid, gas.pressure);
  const dome = domeOf(fluid, saturation, own(`${name}Dome`));
  return [...domeSteps(fluid, dome, pressure), ...stateWorking(fluid, gas, own(name), origins, dome)];
}

function domeOf(fluid: Refrigerant, saturation: Saturation, prefix: string): DomeOrigins {
  const lines = { saturation, prefix, temperature: `${prefix}.temperature` };
  return fluid.bubbleAndDew === undefined ? lines : { ...lines, bubbleTemperature: `${prefix}.bubbleTemperature` };
}

function domeSteps(fluid: Refrigerant, dome: DomeOrigins, pressure: string): readonly WorkingStep[] {
  const { saturation, prefix, temperature, bubbleTemperature } = dome;
  return [
    saturationTemperatureWorking(fluid, saturation, temperature, pressure),
    ...(bubbleTemperature === undefined
      ? []
      : [saturationTemperatureWorking(fluid, saturation, bubbleTemperature, pressure, 'bubble')]),
    ...saturatedSidesWorking(fluid, saturation, prefix, { ...dome, pressure }),
  ];
}

/** c_p of a gas, and what the equation makes it from. */
function heatCapacitySteps(fluid: Refrigerant, gas: State, prefix: string): readonly WorkingStep[] {
  const needed = ['stiffness', 'thermalPush', 'cp'].map((name) => `${prefix}.${name}`);
  return furtherPropertiesWorking(fluid, gas, prefix).filter(({ result }) => needed.includes(result));
}

function motorSteps({ compressor, at, point, own, parameter, ...mains }: Worked): readonly WorkingStep[] {
  const { frequency, voltage, ratedFrequency, ratedVoltage } = mains;
  const { displacement, motorPressure, motorEfficiency, powerFactor, ratedSupply, slip: ratedSlip } = compressor;
  const best = motorBestPower(motorPressure, displacement, ratedSupply.frequency);
  const flux = fluxRatio(at.supply.voltage, ratedSupply.voltage, at.supply.frequency, ratedSupply.frequency);
  const slip = motorSlip(ratedSlip, point.motor.load, flux);
  const magnetising = magnetisingCurrent(best, motorEfficiency, ratedSupply.voltage, powerFactor);
  const P_b: StepInput = [best, own('motorBestPower')];
  const phi: StepInput = [flux, own('fluxRatio')];
  const x: StepInput = [point.motor.load, own('motor.load')];
  const W_sh: StepInput = [point.shaftPower, own('shaftPower')];
  const eta_m = parameter('motorEfficiency');
  const [f, V, f_r, V_r] = [frequency, voltage, ratedFrequency, ratedVoltage];
  return [
    workingStep(own('motorBestPower'), 'compressor.motorBestPower', best, {
      p_m: parameter('motorPressure'),
      V_d: parameter('displacement'),
      f_r,
    }),
    workingStep(own('fluxRatio'), 'compressor.fluxRatio', flux, { V, V_r, f, f_r }),
    workingStep(own('motor.load'), 'compressor.motorLoad', point.motor.load, { W_sh, P_b, f, f_r }),
    workingStep(own('motor.losses'), 'compressor.motorLosses', point.motor.losses, { P_b, eta_m, phi, x, f, f_r }),
    workingStep(own('power'), 'compressor.electricPower', point.power, {
      W_sh,
      P_l: [point.motor.losses, own('motor.losses')],
    }),
    workingStep(own('slip'), 'compressor.motorSlip', slip, { s: parameter('slip'), x, phi }),
    workingStep(own('speed'), 'compressor.shaftSpeed', point.speed, { f, sigma: [slip, own('slip')] }),
    workingStep(own('magnetisingCurrent'), 'compressor.magnetisingCurrent', magnetising, {
      P_b,
      eta_m,
      V_r,
      pf: parameter('powerFactor'),
    }),
    workingStep(own('current'), 'compressor.current', point.current, {
      W: [point.power, own('power')],
      V,
      I_m: [magnetising, own('magnetisingCurrent')],
      phi,
    }),
  ];
}

/** The wall's balance: every loss and the discharge gas warm it, the suction gas and the surroundings cool it. */
function wallSteps(worked: Worked): readonly WorkingStep[] {
  const { fluid, at, point, ends, own, parameter, surroundings } = worked;
  const { compressedGas } = point;
  const losses = lossesToWall(point.power, point.internalPower);
  const { steps, heatCapacity } = compressedHeatCapacity(worked);
  const capacity = capacitySteps(worked, 'discharge', heatCapacity);
  const [, , exchanged] = capacity;
  const [, , ofSuction] = capacitySteps(worked, 'suction', [heatCapacityOf(fluid, at.suction), `${ends.suction}.cp`]);
  const C_ex: StepInput = [exchanged.value, exchanged.result];
  const T_e: StepInput = [compressedGas.temperature, own('compressedGas.temperature')];
  const T_w: StepInput = [point.wallTemperature, own('wallTemperature')];
  const UA = parameter('shellConductance');
  return [
    workingStep(own('lossesToWall'), 'compressor.lossesToWall', losses, {
      W: [point.power, own('power')],
      W_in: [point.internalPower, own('internalPower')],
    }),
    ...steps,
    ...capacity,
    workingStep(own('wallTemperature'), 'compressor.wallTemperature', point.wallTemperature, {
      P_w: [losses, own('lossesToWall')],
      UA,
      T_amb: surroundings,
      C_su: [ofSuction.value, ofSuction.result],
      T_1: [at.suction.temperature, `${ends.suction}.temperature`],
      C_ex,
      T_e,
    }),
    workingStep(own('dischargeHeat'), 'compressor.heatAtWall', point.dischargeHeat, {
      C_x: C_ex,
      T_hot: T_e,
      T_cold: T_w,
    }),
    workingStep(own('shellHeat'), 'compressor.heatOfShell', point.shellHeat, { UA, T_w, T_amb: surroundings }),
  ];
}

/** c_p of the compressed gas, or of the dry gas beside it where it is wet. */
function compressedHeatCapacity({ fluid, point, own }: Worked): {
  readonly steps: readonly WorkingStep[];
  readonly heatCapacity: readonly [number, string];
} {
  const gas = point.compressedGas;
  const prefix = gas.cp === null ? own('compressedGasDome.vapour') : own('compressedGas');
  const dry = gas.cp === null ? saturationAtPressure(fluid, gas.pressure).vapour : gas;
  return { steps: heatCapacitySteps(fluid, dry, prefix), heatCapacity: [heatCapacityOf(fluid, gas), `${prefix}.cp`] };
}
