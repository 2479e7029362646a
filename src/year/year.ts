// A year as twelve monthly steady states: energies per month and per year of one plant.
// It is given functions that say what the tank needs and what the machine does under a month's conditions, so it knows
// no design. Left out: weather within a month, the thermostat's band, and anything that is not at rest.

import { InputError, requireFinite, requirePositive, requireWithin } from '../numerics/index.ts';
import type { MachineState, PlantElectricity, PlantHardware, PlantState, TankHeat } from '../plant/index.ts';
import { plantState } from '../plant/index.ts';
import type { Dehumidifier, MonthConditions } from '../surroundings/index.ts';

export interface YearInput {
  /** Usually twelve; any number from one up is accepted, for a part of a year. */
  readonly months: readonly MonthConditions[];
  readonly loadAt: (conditions: MonthConditions) => TankHeat;
  /** The loop while running, or null where it has no operating point. Asked only in months that need heat. */
  readonly machineAt: (conditions: MonthConditions) => MachineState | null;
  /** What a dehumidifier does about the tank's vapour; absent in a room without one. */
  readonly dehumidifierAt?: ((conditions: MonthConditions) => Dehumidifier) | undefined;
  readonly hardware: PlantHardware;
}

/** Energies [J] of a month or a year. */
export interface Energies {
  readonly heatNeeded: number;
  readonly heatFromMachine: number;
  readonly backupHeat: number;
  readonly surplusHeat: number;
  readonly electricity: PlantElectricity;
  readonly heatTakenFromSource: number;
  /** Sensible loss of the tank into its room. */
  readonly tankSensible: number;
  /** Heat that left the tank as vapour; warms the room only where a dehumidifier condenses it. */
  readonly tankLatent: number;
  /** Net sensible heat of tank, machine and dehumidifier into the tank's room; negative chills it. */
  readonly roomHeat: number;
  /** Electricity of a dehumidifier, in no other electricity here, and the heat it gives the room; 0 without one. */
  readonly dehumidifierElectricity: number;
  readonly dehumidifierHeat: number;
}

export interface MonthResult {
  readonly conditions: MonthConditions;
  /** What the state was made from; no machine where the month needs no heat or the loop has no operating point. */
  readonly tank: TankHeat;
  readonly machine: MachineState | null;
  /** Null in a room without one. */
  readonly dehumidifier: Dehumidifier | null;
  readonly state: PlantState;
  readonly energies: Energies;
  readonly runFraction: number;
  readonly seasonCop: number | null;
}

export interface Year {
  readonly months: readonly MonthResult[];
  readonly energies: Energies;
  /** `roomHeat` of the heated part of the year, and of the summer part [J]. */
  readonly roomHeatHeated: number;
  readonly roomHeatSummer: number;
  /** All heat to the water over all electricity, standby and backup included; null where no heat is needed or no electricity used. */
  readonly seasonCop: number | null;
  /** Share of the year's time the machine runs. */
  readonly runFraction: number;
  /** Share of the heat that the backup heater gives; 0 when no heat is needed. */
  readonly backupShare: number;
  /** Months that need heat and in which the machine has no operating point. */
  readonly monthsWithoutMachine: readonly string[];
}

/**
 * The year.
 * @throws InputError for impossible months; whatever `loadAt`, `machineAt` or the plant throw
 * Source: energy balances, month by month; accuracy is that of monthly means (loads close to linear in temperature).
 */
export function yearOfMonths(input: YearInput): Year {
  if (input.months.length === 0) throw new InputError('months', 0, 'at least one month');
  const months = input.months.map((conditions) => monthResult(conditions, input));
  const energies = addEnergies(months.map((month) => month.energies));
  const duration = months.reduce((total, month) => total + month.conditions.duration, 0);
  const running = months.reduce((total, month) => total + month.runFraction * month.conditions.duration, 0);
  return {
    months,
    energies,
    roomHeatHeated: weighted(months, (month) => month.conditions.heatedShare),
    roomHeatSummer: weighted(months, (month) => month.conditions.summerShare),
    seasonCop: seasonCopOf(energies),
    runFraction: running / duration,
    backupShare: energies.heatNeeded > 0 ? energies.backupHeat / energies.heatNeeded : 0,
    monthsWithoutMachine: months
      .filter((month) => month.state.heatNeeded > 0 && !month.state.machineRuns)
      .map((month) => month.conditions.month),
  };
}

/**
 * Season coefficient of performance.
 *     COP_season = (Q_m + Q_b) / E
 * @param heatFromMachine  Q_m [J], heat the machine brought to the water
 * @param backupHeat       Q_b [J], resistance heat
 * @param electricity      E [J], all electricity: machine, fan, pump, controls in standby too, backup
 * @returns                COP_season [-]
 * @throws InputError outside these ranges
 * Source: definition of this project. Worked value: 1.8e9, 0.2e9, 0.8e9 → 2.5.
 */
export function seasonCop(heatFromMachine: number, backupHeat: number, electricity: number): number {
  requireFinite('heatFromMachine', heatFromMachine);
  requireFinite('backupHeat', backupHeat);
  requirePositive('electricity', electricity);
  return (heatFromMachine + backupHeat) / electricity;
}

/** Energy E [J] = P t: mean power [W], duration [s]. Definition. */
export function energyOver(power: number, duration: number): number {
  return power * duration;
}

/** Part of a month's energy [J] = s E: share of the month [-], energy [J]. Spread evenly over the month. */
export function shareOfEnergy(share: number, energy: number): number {
  return share * energy;
}

/** Heat into the room [J] = Q + Q_d: of tank and machine [J], of a dehumidifier, 0 without one [J]. Energy balance. */
export function roomHeatWithDehumidifier(heat: number, dehumidifierHeat: number): number {
  return heat + dehumidifierHeat;
}

/** Sum of the months' energies [J], in their order. */
export function sumOfMonths(energies: readonly number[]): number {
  return energies.reduce((total, energy) => total + energy, 0);
}

function monthResult(conditions: MonthConditions, input: YearInput): MonthResult {
  requirePositive(`months.${conditions.month}.duration`, conditions.duration);
  requireWithin(`months.${conditions.month}.heatedShare`, conditions.heatedShare, 0, 1);
  requireWithin(`months.${conditions.month}.summerShare`, conditions.summerShare, 0, 1);
  const tank = input.loadAt(conditions);
  const machine = tank.load > 0 ? input.machineAt(conditions) : null;
  const state = plantState(tank, machine, input.hardware);
  const dehumidifier = input.dehumidifierAt?.(conditions) ?? null;
  const energies = energiesOf(state, dehumidifier, conditions.duration);
  const { runFraction, seasonCop: cop } = state;
  return { conditions, tank, machine, dehumidifier, state, energies, runFraction, seasonCop: cop };
}

function energiesOf(state: PlantState, dehumidifier: Dehumidifier | null, duration: number): Energies {
  const { electricity } = state;
  const over = (power: number) => energyOver(power, duration);
  const dehumidifierHeat = over(dehumidifier?.heatToRoom ?? 0);
  return {
    heatNeeded: over(state.heatNeeded),
    heatFromMachine: over(state.heatFromMachine),
    backupHeat: over(state.backupHeat),
    surplusHeat: over(state.surplusHeat),
    electricity: {
      compressor: over(electricity.compressor),
      fan: over(electricity.fan),
      loopPump: over(electricity.loopPump),
      controls: over(electricity.controls),
      crankcaseHeater: over(electricity.crankcaseHeater),
      backupHeater: over(electricity.backupHeater),
      total: over(electricity.total),
    },
    heatTakenFromSource: over(state.heatTakenFromSource),
    tankSensible: over(state.roomHeat.fromTank),
    tankLatent: over(state.latentToRoom),
    roomHeat: roomHeatWithDehumidifier(over(state.roomHeat.net), dehumidifierHeat),
    dehumidifierElectricity: over(dehumidifier?.electricity ?? 0),
    dehumidifierHeat,
  };
}

function addEnergies(parts: readonly Energies[]): Energies {
  const sum = (read: (energies: Energies) => number) => sumOfMonths(parts.map(read));
  return {
    heatNeeded: sum((e) => e.heatNeeded),
    heatFromMachine: sum((e) => e.heatFromMachine),
    backupHeat: sum((e) => e.backupHeat),
    surplusHeat: sum((e) => e.surplusHeat),
    electricity: {
      compressor: sum((e) => e.electricity.compressor),
      fan: sum((e) => e.electricity.fan),
      loopPump: sum((e) => e.electricity.loopPump),
      controls: sum((e) => e.electricity.controls),
      crankcaseHeater: sum((e) => e.electricity.crankcaseHeater),
      backupHeater: sum((e) => e.electricity.backupHeater),
      total: sum((e) => e.electricity.total),
    },
    heatTakenFromSource: sum((e) => e.heatTakenFromSource),
    tankSensible: sum((e) => e.tankSensible),
    tankLatent: sum((e) => e.tankLatent),
    roomHeat: sum((e) => e.roomHeat),
    dehumidifierElectricity: sum((e) => e.dehumidifierElectricity),
    dehumidifierHeat: sum((e) => e.dehumidifierHeat),
  };
}

function weighted(months: readonly MonthResult[], share: (month: MonthResult) => number): number {
  return sumOfMonths(months.map((month) => shareOfEnergy(share(month), month.energies.roomHeat)));
}

function seasonCopOf(energies: Energies): number | null {
  const { total } = energies.electricity;
  return energies.heatNeeded > 0 && total > 0 ? seasonCop(energies.heatFromMachine, energies.backupHeat, total) : null;
}
