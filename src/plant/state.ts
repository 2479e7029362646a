// One steady state of tank, room and loop together: how long the machine runs, where every watt of electricity goes,
// what is taken from the source, what the tank's room gains or loses, and what a backup heater must add.
// Method: energy balances on time means; both accounts (machine alone, whole plant) must close to 1e-9.
// Left out: losses at starts, heat lost by the pipes of an intermediate loop, the fan's warming of the source air before
// the evaporator, and any change of room temperature by the machine itself.

import { InputError, requireFinite, requireNonNegative, requireWithin } from '../numerics/index.ts';
import { closeAccount } from './account.ts';
import {
  backupHeat,
  heatFromMachine,
  heatNeeded,
  heatReachingWater,
  heatTakenInMean,
  meanElectricity,
  ofAllMachines,
  pumpHeatToRoom,
  restingHeat,
  roomNetHeat,
  runFraction,
  sensibleHeatTaken,
  systemCop,
  systemPower,
} from './delivery.ts';

/** What the tank asks for and gives away [W], from the tank's own model. */
export interface TankHeat {
  /** Net heat needed to hold the water's temperature; negative when pumps and lights already give too much. */
  readonly load: number;
  /** Sensible heat that leaves the tank into its room. */
  readonly sensibleToRoom: number;
  /** Heat that leaves as vapour. Warms the room only where it condenses; never credited. */
  readonly latentToRoom: number;
}

/** The loop while it runs [W]. Must close: heatTaken + compressorPower = condenserHeat + shellHeat. */
export interface MachineState {
  /** Heat leaving the refrigerant on the tank side. */
  readonly condenserHeat: number;
  /** Heat taken from the source by the evaporator. */
  readonly heatTaken: number;
  readonly compressorPower: number;
  /** Heat that the compressor's shell gives off to what surrounds it; negative where that is the warmer of the two. */
  readonly shellHeat: number;
}

export type ShellPlace = 'tankRoom' | 'sourceRoom' | 'outdoors';

export interface PlantHardware {
  /** True when the source is the air of the tank's own room. */
  readonly sourceIsTankRoom: boolean;
  readonly shellPlace: ShellPlace;
  readonly fanPower: number;
  readonly loopPumpPower: number;
  /** Share of the loop pump's electricity that ends in the tank water, 0 to 1. */
  readonly loopPumpShareToWater: number;
  /** Controls draw this all the time, running or not; their heat enters the tank's room. */
  readonly controlsPower: number;
  /** Crankcase heaters, on while the machine rests; their heat ends where the shell stands. */
  readonly crankcaseHeaterPower: number;
  /** Sensible share of the heat taken from the source, 0 to 1. 1 means a dry evaporator: the room is debited all of it. */
  readonly sensibleShareOfHeatTaken: number;
}

/** Electricity by part, mean over time [W]. */
export interface PlantElectricity {
  readonly compressor: number;
  readonly fan: number;
  readonly loopPump: number;
  readonly controls: number;
  readonly crankcaseHeater: number;
  readonly backupHeater: number;
  readonly total: number;
}

/** Sensible heat into the tank's room by cause, mean over time [W]; negative is heat taken out of it. */
export interface RoomHeat {
  readonly fromTank: number;
  readonly fromShell: number;
  readonly fromFan: number;
  readonly fromLoopPump: number;
  readonly fromControls: number;
  readonly fromCrankcaseHeater: number;
  readonly takenBySource: number;
  readonly net: number;
}

/** All flows are means over time [W] unless they say "running". */
export interface PlantState {
  readonly runFraction: number;
  /** False where no operating point exists; then the backup heater does everything. */
  readonly machineRuns: boolean;
  readonly heatNeeded: number;
  /** Heat that pumps and lights give beyond what the tank loses at its set temperature: the water will stand warmer. */
  readonly surplusHeat: number;
  readonly heatFromMachine: number;
  readonly backupHeat: number;
  /** Heat reaching the water while the machine runs; null where it cannot run. */
  readonly heatReachingWaterRunning: number | null;
  readonly electricity: PlantElectricity;
  /** Electricity while the machine runs, without backup; null where it cannot run. */
  readonly systemPowerRunning: number | null;
  readonly heatTakenFromSource: number;
  /** Shell heat by the place the shell stands in. */
  readonly shellHeat: Readonly<Record<ShellPlace, number>>;
  readonly roomHeat: RoomHeat;
  readonly latentToRoom: number;
  /** Heat reaching the water over compressor, fan, pump and controls while running; null where it cannot run. */
  readonly systemCop: number | null;
  /** All heat to the water over all electricity, standby and backup included; null where no heat is needed or no electricity used. */
  readonly seasonCop: number | null;
  /** Relative residuals of the two energy accounts. */
  readonly closure: { readonly machine: number; readonly plant: number };
}

/**
 * The steady state.
 * @param tank      heat the tank needs and gives away [W]
 * @param machine   the loop while running [W], or null where it has no operating point
 * @param hardware  fan, pump, controls, and where things stand
 * @throws InputError naming the impossible input; EnergyAccountError if an account does not close to 1e-9
 * Source: energy balances only.
 */
export function plantState(tank: TankHeat, machine: MachineState | null, hardware: PlantHardware): PlantState {
  requireTank(tank);
  requireHardware(hardware);
  const machineClosure = machine === null ? 0 : closeMachine(machine);
  const reaching = machine === null ? 0 : deliveredBy(machine, hardware);
  const share = reaching > 0 ? runFraction(tank.load, reaching) : 0;
  const backup = backupHeat(tank.load, reaching);
  const fromMachine = heatFromMachine(share, reaching);
  const electricity = electricityOf(machine, hardware, share, backup);
  const heatTakenFromSource = heatTakenInMean(share, machine?.heatTaken ?? 0);
  const shell = share * (machine?.shellHeat ?? 0);
  const roomHeat = roomHeatOf(tank, machine, hardware, share);
  const needed = heatNeeded(tank.load);
  const pumpHeatElsewhere = share * pumpHeatToRoom(hardware.loopPumpPower, hardware.loopPumpShareToWater);
  const plantClosure = closeAccount(
    'the whole plant',
    [electricity.total, heatTakenFromSource],
    [needed, shell, electricity.fan, pumpHeatElsewhere, electricity.controls, electricity.crankcaseHeater],
  );
  return {
    runFraction: share,
    machineRuns: machine !== null,
    heatNeeded: needed,
    surplusHeat: Math.max(0, -tank.load),
    heatFromMachine: fromMachine,
    backupHeat: backup,
    heatReachingWaterRunning: machine === null ? null : reaching,
    electricity,
    systemPowerRunning:
      machine === null
        ? null
        : systemPower(machine.compressorPower, hardware.fanPower, hardware.loopPumpPower, hardware.controlsPower),
    heatTakenFromSource,
    shellHeat: shellHeatByPlace(hardware.shellPlace, shell),
    roomHeat,
    latentToRoom: tank.latentToRoom,
    systemCop:
      machine === null
        ? null
        : systemCop(
            reaching,
            machine.compressorPower,
            hardware.fanPower,
            hardware.loopPumpPower,
            hardware.controlsPower,
          ),
    seasonCop: needed > 0 && electricity.total > 0 ? (fromMachine + backup) / electricity.total : null,
    closure: { machine: machineClosure, plant: plantClosure },
  };
}

/**
 * Several machines alike, running side by side, as one.
 * @param machine  one of them while it runs [W]
 * @param count    how many; a whole number of at least 1
 * @throws InputError unless count is one. Source: energy balance; each has its own circuit.
 */
export function severalMachines(machine: MachineState, count: number): MachineState {
  requireCount(count);
  return {
    condenserHeat: ofAllMachines(count, machine.condenserHeat),
    heatTaken: ofAllMachines(count, machine.heatTaken),
    compressorPower: ofAllMachines(count, machine.compressorPower),
    shellHeat: ofAllMachines(count, machine.shellHeat),
  };
}

function requireCount(count: number): void {
  if (Number.isInteger(count) && count >= 1) return;
  throw new InputError('machine.count', count, 'a whole number of machines, at least 1');
}

/** True when heat given off or taken in "the source's room" belongs to the tank's room. */
export function shellHeatsTankRoom(hardware: PlantHardware): boolean {
  return hardware.shellPlace === 'tankRoom' || (hardware.shellPlace === 'sourceRoom' && hardware.sourceIsTankRoom);
}

function deliveredBy(machine: MachineState, hardware: PlantHardware): number {
  return heatReachingWater(machine.condenserHeat, hardware.loopPumpPower, hardware.loopPumpShareToWater);
}

function closeMachine(machine: MachineState): number {
  requireNonNegative('machine.condenserHeat', machine.condenserHeat);
  requireNonNegative('machine.heatTaken', machine.heatTaken);
  requireFinite('machine.shellHeat', machine.shellHeat);
  if (!(Number.isFinite(machine.compressorPower) && machine.compressorPower > 0)) {
    throw new InputError('machine.compressorPower', machine.compressorPower, 'a finite number above 0');
  }
  return closeAccount(
    'the machine',
    [machine.heatTaken, machine.compressorPower],
    [machine.condenserHeat, machine.shellHeat],
  );
}

function electricityOf(
  machine: MachineState | null,
  hardware: PlantHardware,
  share: number,
  backup: number,
): PlantElectricity {
  const compressor = share * (machine?.compressorPower ?? 0);
  const fan = share * hardware.fanPower;
  const loopPump = share * hardware.loopPumpPower;
  const controls = hardware.controlsPower;
  const crankcaseHeater = restingHeat(share, hardware.crankcaseHeaterPower);
  const total = meanElectricity(
    share,
    machine?.compressorPower ?? 0,
    hardware.fanPower,
    hardware.loopPumpPower,
    controls,
    backup,
    crankcaseHeater,
  );
  return { compressor, fan, loopPump, controls, crankcaseHeater, backupHeater: backup, total };
}

function roomHeatOf(tank: TankHeat, machine: MachineState | null, hardware: PlantHardware, share: number): RoomHeat {
  const shell = shellHeatsTankRoom(hardware) ? (machine?.shellHeat ?? 0) : 0;
  const fan = hardware.sourceIsTankRoom ? hardware.fanPower : 0;
  const pump = pumpHeatToRoom(hardware.loopPumpPower, hardware.loopPumpShareToWater);
  const taken = hardware.sourceIsTankRoom
    ? sensibleHeatTaken(hardware.sensibleShareOfHeatTaken, machine?.heatTaken ?? 0)
    : 0;
  const resting = restingHeatInRoom(hardware, share);
  return {
    fromTank: tank.sensibleToRoom,
    fromShell: share * shell,
    fromFan: share * fan,
    fromLoopPump: share * pump,
    fromControls: hardware.controlsPower,
    fromCrankcaseHeater: resting,
    takenBySource: -share * taken,
    net: roomNetHeat(tank.sensibleToRoom, share, shell, fan, pump, taken, hardware.controlsPower, resting),
  };
}

/** Mean heat of the crankcase heaters that ends in the tank's room [W]. */
export function restingHeatInRoom(hardware: PlantHardware, runShare: number): number {
  return shellHeatsTankRoom(hardware) ? restingHeat(runShare, hardware.crankcaseHeaterPower) : 0;
}

function shellHeatByPlace(place: ShellPlace, heat: number): Readonly<Record<ShellPlace, number>> {
  return { tankRoom: 0, sourceRoom: 0, outdoors: 0, [place]: heat };
}

function requireTank(tank: TankHeat): void {
  requireFinite('tank.load', tank.load);
  requireFinite('tank.sensibleToRoom', tank.sensibleToRoom);
  requireFinite('tank.latentToRoom', tank.latentToRoom);
}

function requireHardware(hardware: PlantHardware): void {
  requireNonNegative('hardware.fanPower', hardware.fanPower);
  requireNonNegative('hardware.loopPumpPower', hardware.loopPumpPower);
  requireWithin('hardware.loopPumpShareToWater', hardware.loopPumpShareToWater, 0, 1);
  requireNonNegative('hardware.controlsPower', hardware.controlsPower);
  requireNonNegative('hardware.crankcaseHeaterPower', hardware.crankcaseHeaterPower);
  requireWithin('hardware.sensibleShareOfHeatTaken', hardware.sensibleShareOfHeatTaken, 0, 1);
  if (!['tankRoom', 'sourceRoom', 'outdoors'].includes(hardware.shellPlace)) {
    throw new InputError('hardware.shellPlace', hardware.shellPlace, 'tankRoom, sourceRoom or outdoors');
  }
}
