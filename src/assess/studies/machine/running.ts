// The machine between two dew temperatures that are asked for, whatever exchangers would bring them about: the loop's own operating
// point with source and water set so that its approaches give them.

import { type OperatingPoint, operatingPoint } from '../../../loop/index.ts';
import { type Refrigerant, saturationAtDewTemperature } from '../../../matter/refrigerants/index.ts';
import { OutOfModelError } from '../../../numerics/index.ts';
import type { RunningMachine } from '../../../parts/compressor/index.ts';
import type { MapQuantity } from './answer.ts';

/** A machine as it is run: in which fluid, with how much superheat and subcooling [K]. */
export interface Run {
  readonly machine: RunningMachine;
  readonly fluid: Refrigerant;
  readonly superheat: number;
  readonly subcooling: number;
  /** Pressure that a valve before the compressor lets through at most [Pa]. */
  readonly suctionPressureLimit?: number;
}

/** Dew temperatures [K]. */
export interface Levels {
  readonly evaporating: number;
  readonly condensing: number;
}

/** Any approach serves: source and water are set by it, and nothing else depends on it [K]. */
const approach = 1;

/**
 * The loop of a machine between two dew temperatures.
 * @param run     the machine and how its gas and liquid are
 * @param levels  evaporating and condensing dew temperature [K]
 * @throws what operatingPoint throws; OutOfModelError 'condensingAboveCritical'
 */
export function runningAt(run: Run, levels: Levels): OperatingPoint {
  const { machine, fluid, superheat, subcooling, suctionPressureLimit } = run;
  return operatingPoint({
    fluid,
    machine,
    sourceTemperature: levels.evaporating + approach,
    waterTemperature: bubbleTemperature(fluid, levels.condensing) - approach,
    evaporatorApproach: approach,
    condenserApproach: approach,
    superheat,
    subcooling,
    ...(suctionPressureLimit === undefined ? {} : { suctionPressureLimit }),
  });
}

/**
 * Bubble temperature [K] at the pressure of a dew temperature [K]: of a blend the condenser's approach counts from it.
 * @throws OutOfModelError 'condensingAboveCritical'
 */
export function bubbleTemperature(fluid: Refrigerant, dew: number): number {
  const { critical, limits } = fluid;
  if (!(dew < critical.temperature)) {
    const code = 'condensingAboveCritical';
    throw new OutOfModelError('condensing temperature', dew, 'K', limits.temperatureMin, critical.temperature, code);
  }
  return fluid.bubbleAndDew === undefined ? dew : saturationAtDewTemperature(fluid, dew).liquid.temperature;
}

/** What the map tells of one running point; base SI. */
export function mapValues(point: OperatingPoint): Readonly<Record<MapQuantity, number>> {
  const { heatDelivered, compressorPower, compressorCop, dischargeTemperature, massFlow, compressor } = point;
  return {
    heat: heatDelivered,
    power: compressorPower,
    cop: compressorCop,
    current: compressor.current,
    dischargeTemperature,
    massFlow,
    motorLoad: compressor.motor.load,
  };
}
