// Stage: a meter on the heater of a tank that is known by its sizes, and the model of the same tank as it stood then. The
// ratio of the two is computed anew in every variation of an input: what acts alike then and at the conditions asked for
// cancels, so that a load to which the measurement was carried has the doubt of the meter in place of that of the sizes.
// Simplifications, named in the result: humidity of the room, pumps, lights and lid as the design has them; outdoors, ground
// and water main as in the usual winter; water as warm at the end of the measurement as at its start.

import { InputError } from '../../../numerics/index.ts';
import { heatThatLeft, meanPower, measuredOverModelled, type TankLoad } from '../../../tank/index.ts';
import type { SurroundingsResult } from '../surroundings/surroundings.ts';
import { type TankPlace, type TankSlice, tankLoadAt } from './tank.ts';

export interface MeterResult {
  readonly roomTemperature: number;
  readonly waterTemperature: number;
  /** Of the heater [W]. */
  readonly meanPower: number;
  /** Heater, pumps, lights and ultraviolet lamp together kept the water warm [W]. */
  readonly measuredLoss: number;
  /** The model of the tank as it stood then, and what it loses [W]. */
  readonly modelled: TankLoad;
  readonly modelledLoss: number;
  /** Measured over modelled loss [-]. */
  readonly ratio: number;
  readonly isAdopted: boolean;
}

/** Null for a tank without a meter beside its sizes. */
export function meterOf(slice: TankSlice, surroundings: SurroundingsResult): MeterResult | null {
  const { load } = slice.tank;
  if (load.kind === 'measured' || load.meter === undefined) return null;
  const { energy, duration, roomTemperature, waterTemperature, adopt } = load.meter;
  const then = { ...slice, tank: { ...slice.tank, waterTemperature } };
  const modelled = tankLoadAt(then, placeOfMeter(surroundings, roomTemperature), surroundings.atmosphericPressure);
  if (!(modelled.loss > 0)) {
    throw new InputError(
      'tank.load.meter.roomTemperature',
      roomTemperature,
      `so far below the water's ${waterTemperature} K that the tank lost heat: else a heater's use says nothing about losses`,
      'measuredRoomTooWarm',
    );
  }
  const power = meanPower(energy, duration);
  const { pump, light, ultraviolet } = modelled.gains;
  const measuredLoss = heatThatLeft(power, pump + light + ultraviolet);
  return {
    roomTemperature,
    waterTemperature,
    meanPower: power,
    measuredLoss,
    modelled,
    modelledLoss: modelled.loss,
    ratio: measuredOverModelled(measuredLoss, modelled.loss),
    isAdopted: adopt === 'yes',
  };
}

/** The tank as the measurement, where it was adopted, has it. */
export function carriedBy(slice: TankSlice, meter: MeterResult | null): TankSlice {
  return meter?.isAdopted === true ? { ...slice, measuredOverModelled: meter.ratio } : slice;
}

/** What surrounded the tank while it was measured: the room as noted, all else as in the usual winter. */
export function placeOfMeter({ months }: SurroundingsResult, roomTemperature: number): TankPlace {
  const { outdoorTemperature, groundTemperature, mainsTemperature } = months.find(({ distance }) => distance === 0)!;
  return { roomTemperature, outdoorTemperature, groundTemperature, mainsTemperature };
}
