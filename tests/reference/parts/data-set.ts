// The published R600a calorimeter rows as numbers in base SI, what they imply, and the machine that some of them identify.

import { refrigerant, saturationAtTemperature, stateAt } from '../../../src/matter/refrigerants/index.ts';
import {
  hermeticParameters,
  type IdentifiedMachine,
  identifyMachine,
  type MachineDescription,
  machinePrior,
} from '../../../src/parts/compressor/index.ts';
import type { Estimate } from '../../../src/quantities/index.ts';
import { type Predicted, predictedAt } from '../../parts/compressor/identification/prediction.ts';
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

/** Of one printed value (its digits, the stand's scatter), and of the stand as a whole: usual of calorimeters, no source. */
export const rowDoubt = { value: 0.01, flowFactor: 0.02, powerFactor: 0.01 };

export const supply = { frequency: dataSet.mainsHertz, voltage: 115 };

/** The air around the shell and the voltage are not printed: those of the rating convention and of such mains. */
export const surroundings = returnGas;

function within(likely: number, share: number): Estimate {
  return { low: likely * (1 - share), likely, high: likely * (1 + share), origin: 'measured' };
}

/** The machine from some of the rows: displacement as printed, everything else of any machine of its kind. */
export function identifiedFrom(known: readonly Row[]): IdentifiedMachine {
  const ranges = machinePrior({ madeFor: dataSet.refrigerant, application: 'low', frequency: supply.frequency });
  const prior = Object.fromEntries(
    hermeticParameters.map((name) => {
      const estimate = name === 'displacement' ? within(displacement, 0.001) : ranges[name];
      return [name, { path: `machine.compressor.${name}`, label: name, estimate }];
    }),
  ) as MachineDescription['prior'];
  const series = 'machine.compressor.tables.0';
  return identifyMachine({
    fluid,
    ratedSupply: supply,
    prior,
    series: [
      {
        path: series,
        label: 'calorimeter',
        flowFactor: within(1, rowDoubt.flowFactor),
        powerFactor: within(1, rowDoubt.powerFactor),
      },
    ],
    points: known.map((row, index) => ({
      path: `${series}.${index}`,
      label: `${(row.evaporating - 273.15).toFixed(0)} °C`,
      evaporating: row.evaporating,
      condensing,
      returnGas,
      liquid: returnGas,
      surroundings,
      supply,
      given: { massFlow: within(row.massFlow, rowDoubt.value), power: within(row.power, rowDoubt.value) },
      series,
    })),
  });
}

/** Flow and power of a row with their bands, from a machine that was identified from other rows. */
export function predictedRow(identified: IdentifiedMachine, row: Row): Predicted {
  return predictedAt(identified, fluid, { evaporating: row.evaporating, condensing, returnGas, surroundings, supply });
}
