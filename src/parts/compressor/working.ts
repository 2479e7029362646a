// The working of a compressor point: each number of the result with its formula, the numbers put in and where they came from.

import type { WorkingStep } from '../../quantities/index.ts';
import type { CompressorModel } from './model.ts';
import type { CompressorPoint } from './point.ts';

/** Where the inputs came from: a design path or the name of another step. */
export interface CompressorOrigins {
  readonly model: Readonly<Record<keyof CompressorModel, string>>;
  readonly suctionPressure: string;
  readonly suctionDensity: string;
  readonly suctionEnthalpy: string;
  readonly dischargePressure: string;
  /** Name of the step or state that gives h_2s. */
  readonly isentropicDischargeEnthalpy: string;
}

/**
 * Steps in the order of computing, named `<prefix>.pressureRatio` and so on.
 * @param model    the machine
 * @param point    its running point
 * @param origins  where the inputs came from
 * @param prefix   path of the point in the caller's result, as 'operating.compressor'
 */
export function compressorWorking(
  model: CompressorModel,
  point: CompressorPoint,
  origins: CompressorOrigins,
  prefix = 'compressor',
): readonly WorkingStep[] {
  const { suction, massFlow, power } = point;
  const isentropicWork = point.isentropicDischargeEnthalpy - suction.enthalpy;
  const own = (name: string) => `${prefix}.${name}`;
  const workOrigin = own('isentropicWork');
  const from = origins.model;
  return [
    {
      result: own('pressureRatio'),
      formula: 'compressor.pressureRatio',
      inputs: { p_d: point.discharge.pressure, p_s: suction.pressure },
      from: { p_d: origins.dischargePressure, p_s: origins.suctionPressure },
      value: point.pressureRatio,
    },
    {
      result: own('volumetricEfficiency'),
      formula: 'compressor.volumetricEfficiency',
      inputs: {
        f: model.fillingFactor,
        C: model.clearanceRatio,
        n: model.reexpansionExponent,
        r: point.pressureRatio,
      },
      from: {
        f: from.fillingFactor,
        C: from.clearanceRatio,
        n: from.reexpansionExponent,
        r: own('pressureRatio'),
      },
      value: point.volumetricEfficiency,
    },
    {
      result: own('massFlow'),
      formula: 'compressor.massFlow',
      inputs: {
        eta_v: point.volumetricEfficiency,
        V_d: model.displacement,
        N: model.speed,
        rho_s: suction.density,
      },
      from: {
        eta_v: own('volumetricEfficiency'),
        V_d: from.displacement,
        N: from.speed,
        rho_s: origins.suctionDensity,
      },
      value: massFlow,
    },
    {
      result: workOrigin,
      formula: 'compressor.isentropicWork',
      inputs: { h_2s: point.isentropicDischargeEnthalpy, h_1: suction.enthalpy },
      from: { h_2s: origins.isentropicDischargeEnthalpy, h_1: origins.suctionEnthalpy },
      value: isentropicWork,
    },
    {
      result: own('power'),
      formula: 'compressor.power',
      inputs: {
        m: massFlow,
        dh_s: isentropicWork,
        eta_c: model.compressionEfficiency,
        p_f: model.frictionPressure,
        V_d: model.displacement,
        N: model.speed,
      },
      from: {
        m: own('massFlow'),
        dh_s: workOrigin,
        eta_c: from.compressionEfficiency,
        p_f: from.frictionPressure,
        V_d: from.displacement,
        N: from.speed,
      },
      value: power,
    },
    {
      result: own('overallEfficiency'),
      formula: 'compressor.overallEfficiency',
      inputs: { m: massFlow, dh_s: isentropicWork, W: power },
      from: { m: own('massFlow'), dh_s: workOrigin, W: own('power') },
      value: point.overallEfficiency,
    },
    {
      result: own('shellHeat'),
      formula: 'compressor.shellHeat',
      inputs: { f_s: model.shellHeatShare, W: power },
      from: { f_s: from.shellHeatShare, W: own('power') },
      value: point.shellHeat,
    },
    {
      result: own('dischargeEnthalpy'),
      formula: 'compressor.dischargeEnthalpy',
      inputs: { h_1: suction.enthalpy, f_s: model.shellHeatShare, W: power, m: massFlow },
      from: {
        h_1: origins.suctionEnthalpy,
        f_s: from.shellHeatShare,
        W: own('power'),
        m: own('massFlow'),
      },
      value: point.dischargeEnthalpy,
    },
  ];
}
