// Stages: tank, room and loop together at the coldest spell, and through twelve months.

import type { PlainDesign } from '../../design/index.ts';
import type { OperatingPoint } from '../../loop/index.ts';
import type { CompressorModel } from '../../parts/compressor/index.ts';
import {
  type MachineState,
  type PlantHardware,
  type PlantState,
  plantState,
  type TankHeat,
} from '../../plant/index.ts';
import type { MonthConditions } from '../../surroundings/index.ts';
import type { TankLoad } from '../../tank/index.ts';
import { type Year, yearOfMonths } from '../../year/index.ts';
import type { DesignSlice } from '../stage.ts';
import { operatingOrNull } from './machine.ts';
import type { SurroundingsResult } from './surroundings.ts';
import { tankLoadAt } from './tank.ts';

/** The parts of the design that decide what fan, pump and controls do to whom. */
export function plantHardware({
  source,
  machine,
  exchangers,
  power,
  engine,
}: DesignSlice<'source' | 'machine' | 'exchangers' | 'power' | 'engine'>): PlantHardware {
  return {
    sourceIsTankRoom: source.kind === 'roomAir',
    shellPlace: machine.shellPlace,
    fanPower: power.fan,
    loopPumpPower: exchangers.condenserArrangement === 'intermediateLoop' ? power.loopPump : 0,
    loopPumpShareToWater: engine.loopPumpShareToWater,
    controlsPower: power.controls,
    // A dry evaporator: every watt taken is sensible heat, which debits the room the most.
    sensibleShareOfHeatTaken: 1,
  };
}

export function machineState(operating: OperatingPoint): MachineState {
  return {
    condenserHeat: operating.heatDelivered,
    heatTaken: operating.heatTaken,
    compressorPower: operating.compressorPower,
    shellHeat: operating.shellHeat,
  };
}

export function tankHeat({ load, sensibleToRoom, latentToRoom }: TankLoad): TankHeat {
  return { load, sensibleToRoom, latentToRoom };
}

/** Tank, room and loop at the coldest spell. */
export function plantAtSpell(tank: TankLoad, operating: OperatingPoint, hardware: PlantHardware): PlantState {
  return plantState(tankHeat(tank), machineState(operating), hardware);
}

/** Load and operating point of one month. */
export interface MonthPoint {
  readonly conditions: MonthConditions;
  readonly tank: TankLoad;
  /** Null where the loop has no operating point under these conditions. */
  readonly operating: OperatingPoint | null;
}

/** Twelve months of load and operating point; months of equal temperatures are computed once. */
export function monthPoints(
  design: DesignSlice<'tank' | 'room' | 'machine' | 'exchangers'>,
  { months, atmosphericPressure }: SurroundingsResult,
  compressor: CompressorModel,
): readonly MonthPoint[] {
  const loads = new Map<number, TankLoad>();
  const points = new Map<number, OperatingPoint | null>();
  return months.map((conditions) => {
    const { roomTemperature, sourceTemperature } = conditions;
    const tank = remembered(loads, roomTemperature, () =>
      tankLoadAt(design.tank, design.room, roomTemperature, atmosphericPressure),
    );
    const operating = remembered(points, sourceTemperature, () =>
      operatingOrNull(design, compressor, sourceTemperature),
    );
    return { conditions, tank, operating };
  });
}

/** The year of those months. */
export function yearOf(points: readonly MonthPoint[], hardware: PlantHardware): Year {
  const byMonth = new Map(points.map((point) => [point.conditions.month, point]));
  return yearOfMonths({
    months: points.map((point) => point.conditions),
    loadAt: ({ month }) => tankHeat(byMonth.get(month)!.tank),
    machineAt: ({ month }) => {
      const { operating } = byMonth.get(month)!;
      return operating === null ? null : machineState(operating);
    },
    hardware,
  });
}

/** True when the source is the tank's own room. */
export function sourceIsTankRoom(source: PlainDesign['source']): boolean {
  return source.kind === 'roomAir';
}

function remembered<Value>(store: Map<number, Value>, key: number, compute: () => Value): Value {
  const known = store.get(key);
  if (known !== undefined) return known;
  const value = compute();
  store.set(key, value);
  return value;
}
