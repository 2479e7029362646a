// The steps that show how one steady state of tank, room and loop was computed.

import { type StepInput, type WorkingStep, workingStep } from '../quantities/index.ts';
import { deliveryMargin, pumpHeatToRoom, sensibleHeatTaken } from './delivery.ts';
import {
  type MachineState,
  type PlantHardware,
  type PlantState,
  restingHeatInRoom,
  severalMachines,
  shellHeatsTankRoom,
  type TankHeat,
} from './state.ts';

/**
 * Where the numbers a state was made from came from: a design path or the name of another step, by the symbol of the
 * formulas; `shellPlace` and `sourceKind` name the choices that decide whose room receives what. What is left out is not linked.
 */
export type PlantOrigins = Readonly<
  Partial<
    Record<
      | 'Q_c'
      | 'phi'
      | 'P_p'
      | 'L'
      | 'P_comp'
      | 'P_fan'
      | 'P_ctl'
      | 'P_cr'
      | 'Q_tank'
      | 'Q_latent'
      | 'P_sh'
      | 'Q_e'
      | 'shellPlace'
      | 'sourceKind',
      string
    >
  >
>;

type Named = (name: string, formula: string, value: number, inputs: Readonly<Record<string, StepInput>>) => WorkingStep;

/**
 * The steps behind a state, for the paper that shows the working.
 * @param tank      what the state was made from
 * @param machine   the same; null where the machine does not run
 * @param hardware  the same
 * @param state     the state itself
 * @param prefix    put before each result's name: 'coldestSpell' gives 'coldestSpell.runFraction'
 * @param origins   see PlantOrigins
 */
export function plantWorking(
  tank: TankHeat,
  machine: MachineState | null,
  hardware: PlantHardware,
  state: PlantState,
  prefix: string,
  origins: PlantOrigins = {},
): readonly WorkingStep[] {
  const step: Named = (name, formula, value, inputs) => workingStep(`${prefix}.${name}`, formula, value, inputs);
  const own = (name: string) => `${prefix}.${name}`;
  const runs = machine !== null && state.heatReachingWaterRunning !== null;
  const L: StepInput = [tank.load, origins.L];
  const Q_w: StepInput = [state.heatReachingWaterRunning ?? 0, runs ? own('heatReachingWater') : undefined];
  const x: StepInput = [state.runFraction, runs ? own('runFraction') : undefined];
  return [
    step('heatNeeded', 'plant.heatNeeded', state.heatNeeded, { L }),
    ...(runs ? runningSteps(machine, hardware, state, L, origins, step, own) : []),
    step('heatFromMachine', 'plant.heatFromMachine', state.heatFromMachine, { x, Q_w }),
    step('heatTaken', 'plant.heatTaken', state.heatTakenFromSource, {
      x,
      Q_e: [machine?.heatTaken ?? 0, runs ? origins.Q_e : undefined],
    }),
    step('backupHeat', 'plant.backupHeat', state.backupHeat, { L, Q_w }),
    step('restingHeat', 'plant.restingHeat', state.electricity.crankcaseHeater, {
      x,
      P_cr: [hardware.crankcaseHeaterPower, origins.P_cr],
    }),
    step('electricity', 'plant.electricity', state.electricity.total, {
      x,
      P_comp: [machine?.compressorPower ?? 0, runs ? origins.P_comp : undefined],
      P_fan: [hardware.fanPower, origins.P_fan],
      P_p: [hardware.loopPumpPower, origins.P_p],
      P_rest: [state.electricity.crankcaseHeater, own('restingHeat')],
      P_ctl: [hardware.controlsPower, origins.P_ctl],
      Q_b: [state.backupHeat, own('backupHeat')],
    }),
    ...roomSteps(tank, machine, hardware, state, x, origins, step, own),
  ];
}

/** What is known only of a machine that has an operating point. */
function runningSteps(
  machine: MachineState,
  hardware: PlantHardware,
  state: PlantState,
  L: StepInput,
  origins: PlantOrigins,
  step: Named,
  own: (name: string) => string,
): readonly WorkingStep[] {
  const { heatReachingWaterRunning: reaching, systemPowerRunning, systemCop } = state;
  if (reaching === null || systemPowerRunning === null || systemCop === null) return [];
  const P_p: StepInput = [hardware.loopPumpPower, origins.P_p];
  const Q_w: StepInput = [reaching, own('heatReachingWater')];
  const parts = {
    P_comp: [machine.compressorPower, origins.P_comp] as const,
    P_fan: [hardware.fanPower, origins.P_fan] as const,
    P_p,
    P_ctl: [hardware.controlsPower, origins.P_ctl] as const,
  };
  return [
    step('heatReachingWater', 'plant.heatReachingWater', reaching, {
      Q_c: [machine.condenserHeat, origins.Q_c],
      phi: [hardware.loopPumpShareToWater, origins.phi],
      P_p,
    }),
    step('runFraction', 'plant.runFraction', state.runFraction, { L, Q_w }),
    step('margin', 'plant.margin', deliveryMargin(reaching, L[0]), { Q_w, L }),
    step('systemPower', 'plant.systemPower', systemPowerRunning, parts),
    step('systemCop', 'plant.systemCop', systemCop, { Q_w, ...parts }),
  ];
}

/** The room of the tank: what it receives while the machine runs, and in the mean. */
function roomSteps(
  tank: TankHeat,
  machine: MachineState | null,
  hardware: PlantHardware,
  state: PlantState,
  x: StepInput,
  origins: PlantOrigins,
  step: Named,
  own: (name: string) => string,
): readonly WorkingStep[] {
  const { sourceIsTankRoom, sensibleShareOfHeatTaken: share, loopPumpPower, loopPumpShareToWater } = hardware;
  const toRoom = pumpHeatToRoom(loopPumpPower, loopPumpShareToWater);
  const takes = machine !== null && sourceIsTankRoom;
  const taken = takes ? sensibleHeatTaken(share, machine.heatTaken) : 0;
  const shell: StepInput = shellHeatsTankRoom(hardware)
    ? [machine?.shellHeat ?? 0, machine === null ? undefined : origins.P_sh]
    : [0, origins.shellPlace];
  return [
    step('pumpHeatToRoom', 'plant.pumpHeatToRoom', toRoom, {
      phi: [loopPumpShareToWater, origins.phi],
      P_p: [loopPumpPower, origins.P_p],
    }),
    ...(takes
      ? [
          step('sensibleHeatTaken', 'plant.sensibleHeatTaken', taken, {
            s: [share, undefined],
            Q_e: [machine.heatTaken, origins.Q_e],
          }),
        ]
      : []),
    step('roomNetHeat', 'plant.roomNetHeat', state.roomHeat.net, {
      Q_tank: [tank.sensibleToRoom, origins.Q_tank],
      x,
      P_sh: shell,
      P_f: sourceIsTankRoom ? [hardware.fanPower, origins.P_fan] : [0, origins.sourceKind],
      Q_pump: [toRoom, own('pumpHeatToRoom')],
      Q_taken: takes ? [taken, own('sensibleHeatTaken')] : [0, sourceIsTankRoom ? undefined : origins.sourceKind],
      Q_rest: shellHeatsTankRoom(hardware)
        ? [restingHeatInRoom(hardware, state.runFraction), own('restingHeat')]
        : [0, origins.shellPlace],
      P_ctl: [hardware.controlsPower, origins.P_ctl],
    }),
  ];
}

/** Where the numbers of one machine came from, and how many there are. */
export interface SeveralMachinesOrigins {
  readonly count: string;
  readonly machine: Readonly<Record<keyof MachineState, string>>;
}

/**
 * The steps that make several machines alike of one: `<prefix>.condenserHeat`, `.heatTaken`, `.compressorPower`, `.shellHeat`.
 * @param machine  one of them, running
 * @param count    how many
 * @param origins  where both came from
 * @param prefix   put before each result's name
 */
export function severalMachinesWorking(
  machine: MachineState,
  count: number,
  origins: SeveralMachinesOrigins,
  prefix: string,
): readonly WorkingStep[] {
  const all = severalMachines(machine, count);
  return (Object.keys(all) as (keyof MachineState)[]).map((name) =>
    workingStep(`${prefix}.${name}`, 'plant.ofAllMachines', all[name], {
      n: [count, origins.count],
      X_1: [machine[name], origins.machine[name]],
    }),
  );
}
