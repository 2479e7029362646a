// The published R600a calorimeter rows as numbers in base SI, what they imply, and the model that two of them fix.

import { refrigerant, saturationAtTemperature, stateAt } from '../../../src/matter/refrigerants/index.ts';
import type { CompressorModel } from '../../../src/parts/compressor/index.ts';
import dataSet from './compressor-r600a.json';

export const kelvin = (celsius: number) => celsius + 273.15;

export const fluid = refrigerant(dataSet.refrigerant);
export const condensing = kelvin(dataSet.condensingCelsius);
export const returnGas = kelvin(dataSet.returnGasCelsius);
export const displacement = dataSet.displacementCubicCentimetres * 1e-6;
export const dischargePressure = saturationAtTemperature(fluid, condensing).vapour.pressure;

export interface Row {
  readonly evaporating: number;
  readonly capacity: number;
  readonly power: number;
  readonly massFlow: number;
}
export const rows: readonly Row[] = dataSet.rows.map((row) => {
  const [evaporating, capacity, power, perHour] = row as [number, number, number, number];
  return { evaporating: kelvin(evaporating), capacity, power, massFlow: perHour / 3600 };
});

export function suctionAt(row: Row) {
  const pressure = saturationAtTemperature(fluid, row.evaporating).vapour.pressure;
  return stateAt(fluid, { temperature: returnGas, pressure });
}

/** η_v at 60 revolutions per second and η_o, as the rows imply them. */
export function impliedEfficiencies(row: Row) {
  const suction = suctionAt(row);
  const isentropic = stateAt(fluid, { pressure: dischargePressure, entropy: suction.entropy }).enthalpy;
  return {
    volumetric: row.massFlow / (suction.density * displacement * 60),
    overall: (row.massFlow * (isentropic - suction.enthalpy)) / row.power,
    isentropicPower: row.massFlow * (isentropic - suction.enthalpy),
    ratio: dischargePressure / suction.pressure,
  };
}

/** f, C, η_c and p_f from two rows: two linear equations each, exponent and speed assumed. */
export function modelThroughRows(first: Row, last: Row): CompressorModel {
  const speed = 57.5;
  const exponent = 1.1;
  const [a, b] = [impliedEfficiencies(first), impliedEfficiencies(last)];
  const slip = 60 / speed;
  const [ea, eb] = [a.volumetric * slip, b.volumetric * slip];
  const [xa, xb] = [a.ratio ** (1 / exponent) - 1, b.ratio ** (1 / exponent) - 1];
  const product = (eb - ea) / (xa - xb);
  const fillingFactor = ea + product * xa;
  const proportional = (last.power - first.power) / (b.isentropicPower - a.isentropicPower);
  const constant = first.power - proportional * a.isentropicPower;
  return {
    displacement,
    speed,
    clearanceRatio: product / fillingFactor,
    reexpansionExponent: exponent,
    fillingFactor,
    compressionEfficiency: 1 / proportional,
    frictionPressure: constant / (displacement * speed),
    shellHeatShare: 0.45,
  };
}
