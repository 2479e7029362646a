// The working of a textbook cycle and of an operating point: each number of the result with its formula, the numbers put
// in and where they came from. Names follow the result object; states are named as 'points.compressorInlet.enthalpy'.

import { saturationPressureWorking, stateWorking, temperatureWorking } from '../matter/refrigerants/index.ts';
import { type CompressorOrigins, compressorWorking } from '../parts/compressor/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../quantities/index.ts';
import type { CyclePoint, TextbookCycle } from './cycle-result.ts';
import type { OperatingPoint, OperatingPointInput } from './operating-point.ts';

/** Where the inputs of an operating point came from: design paths or names of other steps. */
export interface OperatingOrigins {
  readonly sourceTemperature: string;
  readonly waterTemperature: string;
  readonly evaporatorApproach: string;
  readonly condenserApproach: string;
  readonly superheat: string;
  readonly subcooling: string;
  readonly model: CompressorOrigins['model'];
}

/**
 * Steps of a textbook cycle in the order of computing.
 * @param cycle   the answered cycle
 * @param prefix  put before every name: 'cycle' gives 'cycle.specificWork'
 */
export function textbookCycleWorking(cycle: TextbookCycle, prefix = 'cycle'): readonly WorkingStep[] {
  const [inlet, isentropic, outlet, liquid, expanded] = cycle.points;
  const own = (name: string) => `${prefix}.${name}`;
  const h = (point: CyclePoint): StepInput => [point.enthalpy, own(`points.${point.name}.enthalpy`)];
  const s = (point: CyclePoint): StepInput => [point.entropy, own(`points.${point.name}.entropy`)];
  const work: StepInput = [cycle.specificWork, own('specificWork')];
  const delivered: StepInput = [cycle.heatDelivered, own('heatDelivered')];
  const taken: StepInput = [cycle.heatTaken, own('heatTaken')];
  const { exergyBasis: basis, exergyDestruction: lost } = cycle;
  const T_0: StepInput = [basis.deadState, own('exergyBasis.deadState')];
  const sink: StepInput = [basis.sinkTemperature, own('exergyBasis.sinkTemperature')];
  const source: StepInput = [basis.sourceTemperature, own('exergyBasis.sourceTemperature')];
  const least: StepInput = [basis.minimumWork, own('exergyBasis.minimumWork')];
  const minusTaken: StepInput = [-cycle.heatTaken, own('heatTaken')];
  return [
    workingStep(own('pressureRatio'), 'loop.pressureRatio', cycle.pressureRatio, {
      p_d: [cycle.condensing.pressure, own('condensing.pressure')],
      p_s: [cycle.evaporating.pressure, own('evaporating.pressure')],
    }),
    compressionStep(cycle, own, h(inlet), h(isentropic), h(outlet)),
    workingStep(own('specificWork'), 'loop.specificWork', cycle.specificWork, { h_2: h(outlet), h_1: h(inlet) }),
    workingStep(own('heatDelivered'), 'loop.heatDeliveredPerMass', cycle.heatDelivered, {
      h_2: h(outlet),
      h_3: h(liquid),
    }),
    workingStep(own('heatTaken'), 'loop.heatTakenPerMass', cycle.heatTaken, { h_1: h(inlet), h_4: h(expanded) }),
    workingStep(own('heatingCop'), 'loop.heatingCop', cycle.heatingCop, { q_H: delivered, w: work }),
    workingStep(own('coolingCop'), 'loop.coolingCop', cycle.coolingCop, { q_L: taken, w: work }),
    workingStep(own('carnotHeatingCop'), 'loop.carnotHeatingCop', cycle.carnotHeatingCop, {
      T_h: [cycle.condensing.temperature, own('condensing.temperature')],
      T_c: [cycle.evaporating.temperature, own('evaporating.temperature')],
    }),
    workingStep(own('volumetricHeatingCapacity'), 'loop.volumetricHeatingCapacity', cycle.volumetricHeatingCapacity, {
      q_H: delivered,
      rho_1: [inlet.density, own('points.compressorInlet.density')],
    }),
    workingStep(own('exergyDestruction.compressor'), 'loop.exergyDestroyedAdiabatic', lost.compressor, {
      T_0,
      s_in: s(inlet),
      s_out: s(outlet),
    }),
    workingStep(own('exergyDestruction.condenser'), 'loop.exergyDestroyedWithHeat', lost.condenser, {
      T_0,
      s_in: s(outlet),
      s_out: s(liquid),
      q: delivered,
      T_body: sink,
    }),
    workingStep(own('exergyDestruction.expansion'), 'loop.exergyDestroyedAdiabatic', lost.expansion, {
      T_0,
      s_in: s(liquid),
      s_out: s(expanded),
    }),
    workingStep(own('exergyDestruction.evaporator'), 'loop.exergyDestroyedWithHeat', lost.evaporator, {
      T_0,
      s_in: s(expanded),
      s_out: s(inlet),
      q: minusTaken,
      T_body: source,
    }),
    workingStep(own('exergyBasis.minimumWork'), 'loop.minimumWork', basis.minimumWork, {
      q_H: delivered,
      q_L: taken,
      T_0,
      T_H: sink,
      T_L: source,
    }),
    workingStep(own('exergyDestruction.total'), 'loop.exergyDestruction', lost.total, { w: work, w_min: least }),
    workingStep(own('exergyBasis.secondLawEfficiency'), 'loop.secondLawEfficiency', basis.secondLawEfficiency, {
      w_min: least,
      w: work,
    }),
  ];
}

/** The efficiency gave the outlet, or the outlet's temperature gave the efficiency. */
function compressionStep(
  cycle: TextbookCycle,
  own: (name: string) => string,
  h_1: StepInput,
  h_2s: StepInput,
  h_2: StepInput,
): WorkingStep {
  if (cycle.compressionGiven === 'dischargeTemperature') {
    const efficiency = cycle.isentropicEfficiency;
    return workingStep(own('isentropicEfficiency'), 'loop.isentropicEfficiency', efficiency, { h_1, h_2s, h_2 });
  }
  const eta_s: StepInput = [cycle.isentropicEfficiency, own('isentropicEfficiency')];
  return workingStep(own('points.compressorOutlet.enthalpy'), 'loop.outletEnthalpy', h_2[0], { h_1, h_2s, eta_s });
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
  const [inlet, isentropic, outlet, liquid, expanded] = result.points;
  const own = (name: string) => `${prefix}.${name}`;
  const compressor = own('compressor');
  const temperatureOf = (point: CyclePoint) => own(`points.${point.name}.temperature`);
  const h = (point: CyclePoint): StepInput => [point.enthalpy, own(`points.${point.name}.enthalpy`)];
  const flow: StepInput = [result.massFlow, `${compressor}.massFlow`];
  const power: StepInput = [result.compressorPower, `${compressor}.power`];
  const shell: StepInput = [result.shellHeat, `${compressor}.shellHeat`];
  return [
    workingStep(own('evaporatingTemperature'), 'loop.evaporatingTemperature', result.evaporating.temperature, {
      T_source: [input.sourceTemperature, origins.sourceTemperature],
      dT_e: [input.evaporatorApproach, origins.evaporatorApproach],
    }),
    workingStep(own('condensingTemperature'), 'loop.condensingTemperature', result.condensing.temperature, {
      T_water: [input.waterTemperature, origins.waterTemperature],
      dT_c: [input.condenserApproach, origins.condenserApproach],
    }),
    saturationPressureWorking(
      input.fluid,
      result.evaporating.vapour,
      own('evaporatingPressure'),
      own('evaporatingTemperature'),
    ),
    saturationPressureWorking(
      input.fluid,
      result.condensing.vapour,
      own('condensingPressure'),
      own('condensingTemperature'),
    ),
    workingStep(temperatureOf(inlet), 'loop.suctionTemperature', inlet.temperature, {
      T_e: [result.evaporating.temperature, own('evaporatingTemperature')],
      dT_sh: [input.superheat, origins.superheat],
    }),
    workingStep(temperatureOf(liquid), 'loop.liquidTemperature', liquid.temperature, {
      T_b: [result.condensing.temperature, own('condensingTemperature')],
      dT_sc: [input.subcooling, origins.subcooling],
    }),
    ...[inlet, isentropic, liquid].flatMap((point) => stateWorking(input.fluid, point, own(`points.${point.name}`))),
    ...compressorWorking(
      input.compressor,
      result.compressor,
      {
        model: origins.model,
        suctionPressure: own('evaporatingPressure'),
        suctionDensity: own(`points.${inlet.name}.density`),
        suctionEnthalpy: own(`points.${inlet.name}.enthalpy`),
        dischargePressure: own('condensingPressure'),
        isentropicDischargeEnthalpy: own(`points.${isentropic.name}.enthalpy`),
      },
      compressor,
    ),
    ...dischargeTemperatureSteps(input, result, own),
    workingStep(own('heatDelivered'), 'loop.heatDelivered', result.heatDelivered, {
      m: flow,
      h_2: [outlet.enthalpy, `${compressor}.dischargeEnthalpy`],
      h_3: h(liquid),
    }),
    // The valve leaves the enthalpy of the liquid as it is.
    workingStep(own('heatTaken'), 'loop.heatTaken', result.heatTaken, {
      m: flow,
      h_1: h(inlet),
      h_4: [expanded.enthalpy, own(`points.${liquid.name}.enthalpy`)],
    }),
    workingStep(own('compressorCop'), 'loop.compressorCop', result.compressorCop, {
      Q_c: [result.heatDelivered, own('heatDelivered')],
      W: power,
    }),
    workingStep(own('energyAccountResidual'), 'loop.energyAccountResidual', result.energyAccountResidual, {
      Q_e: [result.heatTaken, own('heatTaken')],
      W: power,
      Q_c: [result.heatDelivered, own('heatDelivered')],
      Q_shell: shell,
    }),
  ];
}

/** From the enthalpy where the discharge is gas; where it is wet it stands at the condensing temperature, liquid and vapour alike. */
function dischargeTemperatureSteps(
  { fluid }: OperatingPointInput,
  { points: [, , outlet], condensing }: OperatingPoint,
  own: (name: string) => string,
): readonly WorkingStep[] {
  const name = own('dischargeTemperature');
  const dry = temperatureWorking(fluid, outlet, name, own('compressor.dischargeEnthalpy'));
  if (dry.length > 0 || outlet.quality === null) return dry;
  const side: StepInput = [condensing.temperature, own('condensingTemperature')];
  return [
    workingStep(name, 'refrigerants.mixtureTemperature', outlet.temperature, {
      x: [outlet.quality, own(`points.${outlet.name}.quality`)],
      y_liquid: side,
      y_vapour: side,
    }),
  ];
}
