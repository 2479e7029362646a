// The working of a running point: the model's own steps, what is known of the machine moving them, and what tells how good the
// point is. Without anything known the model's steps are the machine's.

import type { Refrigerant } from '../../matter/refrigerants/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import { isentropicWorkOf } from './hermetic/efficiencies.ts';
import { type EndOrigins, type HermeticOrigins, hermeticWorking } from './hermetic/working.ts';
import type { RunningMachine, RunningPoint } from './running.ts';

/** Where the correction of flow or power, the half width of its range and the place within it came from. */
export interface DoubtOrigins {
  readonly correction: string;
  readonly halfWidth: string;
  readonly place: string;
}

/** Where what a running machine is came from: design paths or names of other steps. */
export interface MachineOrigins extends HermeticOrigins {
  /** Asked only of a machine with something known of it. */
  readonly doubt: { readonly flow: DoubtOrigins; readonly power: DoubtOrigins };
}

/** Where both ends came from, and the isentropic end. */
export interface RunningEnds extends EndOrigins {
  /** Name of the step that gives h_2s. */
  readonly isentropicEnthalpy: string;
}

/**
 * Steps in the order of computing, named `<prefix>.massFlow` and so on; those of the model alone `<prefix>.modelled.massFlow`
 * where what is known of the machine moves them.
 * @param machine  the machine here
 * @param fluid    refrigerant in it
 * @param point    its running point
 * @param origins  where the machine came from
 * @param ends     where both ends came from
 * @param prefix   path of the point in the caller's result, as 'operating.compressor'
 */
export function runningWorking(
  machine: RunningMachine,
  fluid: Refrigerant,
  point: RunningPoint,
  origins: MachineOrigins,
  ends: RunningEnds,
  prefix = 'compressor',
): readonly WorkingStep[] {
  const { compressor, surroundings, supply } = machine;
  const { suction, discharge, doubt, modelled } = point;
  const at = { suction, dischargePressure: discharge.pressure, surroundings, supply };
  const ofModel = doubt === null ? prefix : `${prefix}.modelled`;
  return [
    ...hermeticWorking(compressor, fluid, at, modelled, origins, ends, ofModel),
    ...(doubt === null ? [] : movedSteps(machine, point, origins, prefix)),
    ...endSteps(machine, point, origins, ends, prefix, ofModel),
  ];
}

/** Flow and power times their factors, and what follows the power. */
function movedSteps(
  machine: RunningMachine,
  point: RunningPoint,
  origins: MachineOrigins,
  prefix: string,
): readonly WorkingStep[] {
  const { modelled, doubt, flowFactor, powerFactor } = point;
  const { known } = machine;
  if (doubt === null || known === null) return [];
  const own = (name: string) => `${prefix}.${name}`;
  const ofModel = (name: 'massFlow' | 'power' | 'shellHeat' | 'current'): StepInput => [
    modelled[name],
    own(`modelled.${name}`),
  ];
  const factorStep = (kind: 'flow' | 'power', value: number) =>
    workingStep(own(`${kind}Factor`), 'compressor.factorWithin', value, {
      c: [doubt[kind].correction, origins.doubt[kind].correction],
      z: [known[kind], origins.doubt[kind].place],
      H: [doubt[kind].halfWidth, origins.doubt[kind].halfWidth],
    });
  const ofFlow: StepInput = [flowFactor, own('flowFactor')];
  const ofPower: StepInput = [powerFactor, own('powerFactor')];
  return [
    factorStep('flow', flowFactor),
    factorStep('power', powerFactor),
    workingStep(own('massFlow'), 'compressor.movedFlow', point.massFlow, { k: ofFlow, m_0: ofModel('massFlow') }),
    workingStep(own('power'), 'compressor.movedPower', point.power, { k: ofPower, W_0: ofModel('power') }),
    workingStep(own('shellHeat'), 'compressor.movedShellHeat', point.shellHeat, {
      k: ofPower,
      Q_0: ofModel('shellHeat'),
    }),
    workingStep(own('motor.load'), 'compressor.movedLoad', point.motor.load, {
      k: ofPower,
      x_0: [modelled.motor.load, own('modelled.motor.load')],
    }),
    workingStep(own('wallTemperature'), 'compressor.wallAtShellHeat', point.wallTemperature, {
      T_amb: [machine.surroundings, origins.surroundings],
      Q_s: [point.shellHeat, own('shellHeat')],
      UA: [machine.compressor.shellConductance, origins.parameters.shellConductance],
    }),
    workingStep(own('current'), 'compressor.movedCurrent', point.current, {
      I_m: ofModel('current'),
      W: [point.power, own('power')],
      W_m: ofModel('power'),
      V: [machine.supply.voltage, origins.supply.voltage],
    }),
  ];
}

/** Discharge by the energy balance of the shell, pressure ratio and efficiencies. */
function endSteps(
  { compressor }: RunningMachine,
  point: RunningPoint,
  { parameters }: MachineOrigins,
  ends: RunningEnds,
  prefix: string,
  ofModel: string,
): readonly WorkingStep[] {
  const { suction, isentropic, discharge } = point;
  const own = (name: string) => `${prefix}.${name}`;
  const m: StepInput = [point.massFlow, own('massFlow')];
  const W: StepInput = [point.power, own('power')];
  const h_1: StepInput = [suction.enthalpy, `${ends.suction}.enthalpy`];
  const work = isentropicWorkOf(isentropic.enthalpy, suction.enthalpy);
  return [
    workingStep(own('dischargeEnthalpy'), 'compressor.enthalpyAfterShell', point.dischargeEnthalpy, {
      h_1,
      W,
      Q_s: [point.shellHeat, own('shellHeat')],
      m,
    }),
    workingStep(own('pressureRatio'), 'compressor.pressureRatio', point.pressureRatio, {
      p_d: [discharge.pressure, ends.dischargePressure],
      p_s: [suction.pressure, `${ends.suction}.pressure`],
    }),
    workingStep(own('volumetricEfficiency'), 'compressor.flowOverSwept', point.volumetricEfficiency, {
      m,
      rho_1: [suction.density, `${ends.suction}.density`],
      V_d: [compressor.displacement, parameters.displacement],
      N: [point.speed, `${ofModel}.speed`],
    }),
    workingStep(own('isentropicWork'), 'compressor.isentropicWork', work, {
      h_2s: [isentropic.enthalpy, ends.isentropicEnthalpy],
      h_1,
    }),
    workingStep(own('overallEfficiency'), 'compressor.overallEfficiency', point.overallEfficiency, {
      m,
      dh_s: [work, own('isentropicWork')],
      W,
    }),
  ];
}
