// Stages: tank, room and loop together at the coldest spell, and through twelve months.

import type { OperatingPoint } from '../../loop/index.ts';
import {
  type MachineState,
  ofAllMachines,
  type PlantHardware,
  type PlantState,
  plantState,
  severalMachines,
  type TankHeat,
} from '../../plant/index.ts';
import { type Dehumidifier, dehumidifier, type MonthConditions } from '../../surroundings/index.ts';
import type { TankLoad } from '../../tank/index.ts';
import { type Year, yearOfMonths } from '../../year/index.ts';
import type { StagedDesign } from './engine-assumptions.ts';
import { aroundShell, type CompressorResult, type LoopSlice, operatingOrNull } from './machine.ts';
import { remembered } from './remembered.ts';
import type { SurroundingsResult } from './surroundings/surroundings.ts';
import { differentMonths, type TankSlice, tankLoadIn } from './tank/tank.ts';

/** The parts of the design that decide what fan, pump and controls do to whom. */
export interface HardwareSlice {
  readonly source: Pick<StagedDesign['source'], 'kind'>;
  readonly machine: Pick<StagedDesign['machine'], 'shellPlace' | 'count'>;
  readonly exchangers: Pick<StagedDesign['exchangers'], 'condenserArrangement'>;
  readonly power: StagedDesign['power'];
  readonly engine: Pick<StagedDesign['engine'], 'loopPumpShareToWater'>;
}

/** What stands beside the loops, and how many machines alike there are, each with a circuit of its own. */
export interface PlantParts extends PlantHardware {
  readonly count: number;
}

export function plantHardware({ source, machine, exchangers, power, engine }: HardwareSlice): PlantParts {
  return {
    count: machine.count,
    sourceIsTankRoom: sourceIsTankRoom(source),
    shellPlace: machine.shellPlace,
    // Each machine has a fan and a crankcase heater of its own; water loop and controls are common.
    fanPower: ofAllMachines(machine.count, power.fan),
    loopPumpPower: exchangers.condenserArrangement === 'intermediateLoop' ? power.loopPump : 0,
    loopPumpShareToWater: engine.loopPumpShareToWater,
    controlsPower: power.controls,
    crankcaseHeaterPower: ofAllMachines(machine.count, power.crankcaseHeater),
    // A dry evaporator: every watt taken is sensible heat, which debits the room the most.
    sensibleShareOfHeatTaken: 1,
  };
}

/** One machine while it runs. */
export function machineState(operating: OperatingPoint): MachineState {
  return {
    condenserHeat: operating.heatDelivered,
    heatTaken: operating.heatTaken,
    compressorPower: operating.compressorPower,
    shellHeat: operating.shellHeat,
  };
}

export function tankHeat({ load, sensibleToRoom, latentToRoom }: TankHeat): TankHeat {
  return { load, sensibleToRoom, latentToRoom };
}

/** All machines while they run. */
export function allMachines(operating: OperatingPoint, count: number): MachineState {
  return severalMachines(machineState(operating), count);
}

/** Tank, room and loops at the coldest spell. */
export function plantAtSpell(tank: TankLoad, operating: OperatingPoint, hardware: PlantParts): PlantState {
  return plantState(tankHeat(tank), allMachines(operating, hardware.count), hardware);
}

/** The tank's heat balance in each of the months. */
export function monthLoads(tank: TankSlice, { months, atmosphericPressure }: SurroundingsResult): readonly TankLoad[] {
  const { different, ofMonth } = differentMonths(tank, months);
  const loads = different.map(tankLoadIn(tank, atmosphericPressure));
  return ofMonth.map((index) => loads[index]!);
}

/** The loop in each of the months, null where it has no operating point; months of the same temperatures are computed once. */
export function monthOperating(
  loop: LoopSlice,
  { months }: SurroundingsResult,
  known: CompressorResult,
): readonly (OperatingPoint | null)[] {
  const computed = new Map<string, OperatingPoint | null>();
  return months.map((month) =>
    remembered(computed, `${month.sourceTemperature} ${aroundShell(loop.machine.shellPlace, month)}`, () =>
      operatingOrNull(loop, known, month),
    ),
  );
}

/** Heat of the tank, and what it evaporates [kg/s]. */
export interface EvaporatingTank extends TankHeat {
  readonly evaporation: number;
}

/** The year of those months; `dryingEnergy` of a dehumidifier in the room [J/kg of water], null in a room without one. */
export function yearOf(
  months: readonly MonthConditions[],
  loads: readonly EvaporatingTank[],
  operating: readonly (OperatingPoint | null)[],
  hardware: PlantParts,
  dryingEnergy: number | null,
): Year {
  const place = new Map(months.map(({ month }, index) => [month, index]));
  return yearOfMonths({
    months,
    loadAt: ({ month }) => tankHeat(loads[place.get(month)!]!),
    machineAt: ({ month }) => {
      const point = operating[place.get(month)!]!;
      return point === null ? null : allMachines(point, hardware.count);
    },
    dehumidifierAt:
      dryingEnergy === null ? undefined : (month) => driedBy(month, loads[place.get(month.month)!]!, dryingEnergy),
    hardware,
  });
}

/** What a dehumidifier does about the tank's vapour in a month; the tank's load holds at the humidity it is set to. */
function driedBy({ roomTemperature }: MonthConditions, { evaporation }: EvaporatingTank, energy: number): Dehumidifier {
  return dehumidifier(evaporation, roomTemperature, energy);
}

/** Electricity of the room's dehumidifier for a mass of water [J/kg]; null in a room without one. */
export function dryingEnergyOf({ moisture }: Pick<StagedDesign['room'], 'moisture'>): number | null {
  return moisture.kind === 'dehumidifier' ? moisture.energyPerLitre : null;
}

/** True when the source is the tank's own room. */
export function sourceIsTankRoom(source: Pick<StagedDesign['source'], 'kind'>): boolean {
  return source.kind === 'roomAir';
}
