// The year's energies of each scenario, tank and room together: a plain heater on the tank as it is, and on the tank wrapped;
// this loop; a complete certified heat pump of a typed-in coefficient of performance. Zero point of the room's part: the same room without a tank.
// Electricity of the tank's own pump and light is the same in every scenario and is not in any of them.

import { InputError, requireFinite, requirePositive } from '../numerics/index.ts';
import {
  type MonthResult,
  roomHeatWithDehumidifier,
  shareOfEnergy,
  sumOfMonths,
  type Year,
  type YearPart,
} from '../year/index.ts';

/** `insulationOnly`: a plain heater on the tank wrapped with what pays; there only where something does. */
export type ScenarioId = 'plainHeater' | 'insulationOnly' | 'thisLoop' | 'certifiedHeatPump';

/** What a scenario takes from the socket and does to the tank's room in a year [J]. */
export interface ScenarioEnergies {
  readonly scenario: ScenarioId;
  readonly heatToWater: number;
  readonly electricity: number;
  /** Net sensible heat into the tank's room in its heated months; negative is heat taken out of it. */
  readonly roomHeatHeated: number;
  /** The same in summer. */
  readonly roomHeatSummer: number;
  /** Of a dehumidifier that takes the tank's vapour out of the room, not in `electricity`; null in a room without one. */
  readonly dehumidifierElectricity: number | null;
}

/** A resistance heater turns every joule of electricity into heat. */
export const heaterCop = 1;

/** A resistance heater: every joule of electricity becomes heat in the water (coefficient of performance 1). */
export function plainHeaterEnergies(year: Year): ScenarioEnergies {
  return heaterEnergies('plainHeater', year);
}

/** The same heater on the tank wrapped. @param wrapped  the year of that tank */
export function insulationOnlyEnergies(wrapped: Year): ScenarioEnergies {
  return heaterEnergies('insulationOnly', wrapped);
}

function heaterEnergies(scenario: ScenarioId, year: Year): ScenarioEnergies {
  return {
    scenario,
    heatToWater: year.energies.heatNeeded,
    electricity: electricityAtCop(year.energies.heatNeeded, heaterCop),
    roomHeatHeated: inPart(year, 'heatedShare', heaterRoomHeat),
    roomHeatSummer: inPart(year, 'summerShare', heaterRoomHeat),
    dehumidifierElectricity: dehumidifierElectricity(year),
  };
}

/** This loop with its backup heater, as the year found it. */
export function thisLoopEnergies(year: Year): ScenarioEnergies {
  return {
    scenario: 'thisLoop',
    heatToWater: year.energies.heatFromMachine + year.energies.backupHeat,
    electricity: year.energies.electricity.total,
    roomHeatHeated: year.roomHeatHeated,
    roomHeatSummer: year.roomHeatSummer,
    dehumidifierElectricity: dehumidifierElectricity(year),
  };
}

/**
 * A complete certified heat pump that carries the whole load all year with one season coefficient of performance.
 * Taken from the same source as this loop: where that is the tank's room, the room is debited all of the heat taken.
 * All its electricity is taken to end in the water: `heatTakenAtCop` of every month's heat comes from the source.
 * @param year              the months with their heat needed and the tank's sensible loss
 * @param cop               season coefficient of performance, pumps, fans and standby included, ≥ 1
 * @param sourceIsTankRoom  true when the source is the air of the tank's own room
 * @throws InputError for a coefficient below 1 or not finite
 */
export function certifiedHeatPumpEnergies(year: Year, cop: number, sourceIsTankRoom: boolean): ScenarioEnergies {
  const roomHeat = (month: MonthResult) => certifiedRoomHeat(month, cop, sourceIsTankRoom);
  return {
    scenario: 'certifiedHeatPump',
    heatToWater: year.energies.heatNeeded,
    electricity: electricityAtCop(year.energies.heatNeeded, cop),
    roomHeatHeated: inPart(year, 'heatedShare', roomHeat),
    roomHeatSummer: inPart(year, 'summerShare', roomHeat),
    dehumidifierElectricity: dehumidifierElectricity(year),
  };
}

/** Whether the room has a dehumidifier. */
export function hasDehumidifier({ months }: Year): boolean {
  return months.some(({ dehumidifier }) => dehumidifier !== null);
}

/** Of a year [J]; null in a room without a dehumidifier. */
function dehumidifierElectricity(year: Year): number | null {
  return hasDehumidifier(year) ? year.energies.dehumidifierElectricity : null;
}

/** Net sensible heat of one month into the tank's room with a plain heater [J]. */
export function heaterRoomHeat({ energies }: MonthResult): number {
  return roomHeatWithDehumidifier(energies.tankSensible, energies.dehumidifierHeat);
}

/** Net sensible heat of one month into the tank's room with such a heat pump [J]. */
export function certifiedRoomHeat({ energies }: MonthResult, cop: number, sourceIsTankRoom: boolean): number {
  const taken = sourceIsTankRoom ? heatTakenAtCop(energies.heatNeeded, cop) : 0;
  return roomHeatWithDehumidifier(roomHeatLessTaken(energies.tankSensible, taken), energies.dehumidifierHeat);
}

/** Net sensible heat into the room [J] = Q_tank − Q_src: sensible loss of the tank, heat taken from the room's air. Energy balance. */
export function roomHeatLessTaken(tankSensible: number, taken: number): number {
  return tankSensible - taken;
}

/**
 * Electricity for a heat at a coefficient of performance.
 *     E = Q / COP
 * @param heat  Q [J]
 * @param cop   COP [-], ≥ 1
 * @returns     E [J]
 * @throws InputError outside these ranges
 * Source: definition. Worked value: 6e9 J at 4 → 1.5e9 J.
 */
export function electricityAtCop(heat: number, cop: number): number {
  requireFinite('heat', heat);
  requireCop(cop);
  return heat / cop;
}

/**
 * Heat taken from the source when all electricity ends in the heat delivered.
 *     Q_src = Q (1 − 1/COP)
 * @param heat  Q [J], heat delivered
 * @param cop   COP [-], ≥ 1
 * @returns     Q_src [J]
 * @throws InputError outside these ranges
 * Source: energy balance. Worked value: 6e9 J at 4 → 4.5e9 J.
 */
export function heatTakenAtCop(heat: number, cop: number): number {
  requireFinite('heat', heat);
  requireCop(cop);
  return heat * (1 - 1 / cop);
}

function requireCop(cop: number): void {
  requirePositive('cop', cop);
  if (cop < 1) throw new InputError('cop', cop, 'a coefficient of performance of 1 or more');
}

function inPart(year: Year, part: YearPart, read: (month: MonthResult) => number): number {
  return sumOfMonths(year.months.map((month) => shareOfEnergy(month.conditions[part], read(month))));
}
