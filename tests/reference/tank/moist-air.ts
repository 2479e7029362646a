// Outside values of moist air, each with its source. Read by the tests and by the validation tables.

/** A saturation pressure over water or ice: °C, Pa, how near we must come (relative). */
export type SaturationRow = readonly [celsius: number, pascal: number, within: number];

/** ASHRAE Handbook Fundamentals 2017, chapter 1, table 3, thermodynamic properties of water at saturation (read for this). */
export const handbookSaturation: readonly SaturationRow[] = [
  [-60, 1.08, 5e-3],
  [-20, 103.24, 3e-4],
  [-5, 401.74, 3e-4],
  [5, 872.6, 3e-4],
  [25, 3169.7, 3e-4],
  [50, 12351.3, 3e-4],
  [100, 101418, 3e-4],
];

/** Over water, IAPWS R6-95(2018), evaluated with the open library CoolProp 8.0.0. */
export const iapwsSaturation: readonly SaturationRow[] = [
  [1, 657.0856, 3e-4],
  [10, 1228.1989, 3e-4],
  [20, 2339.3182, 3e-4],
  [30, 4246.9708, 3e-4],
  [40, 7384.9381, 3e-4],
  [45, 9594.9988, 3e-4],
  [80, 47414.474, 3e-4],
];

/**
 * Over ice, IAPWS R14-08(2011), sublimation pressure: its verification value 8.94735 Pa at 230 K, and the equation evaluated
 * (constants from memory of the release; they give the verification value). The older equation of the handbook stands 0.03 %
 * below it there.
 */
export const iapwsSublimation: readonly SaturationRow[] = [
  [-43.15, 8.94735, 4e-4],
  [-40, 12.84117, 4e-4],
  [-30, 38.00514, 3e-4],
  [-20, 103.23903, 3e-4],
  [-10, 259.87381, 3e-4],
  [0, 611.15348, 3e-4],
];

/** One worked psychrometric state: what is given and what is printed. SI; W kg/kg dry air, h J/kg dry air. */
export interface PsychrometricExample {
  readonly title: string;
  readonly source: string;
  readonly dryBulbCelsius: number;
  readonly pressure: number;
  readonly given: { readonly relativeHumidity: number } | { readonly wetBulbCelsius: number };
  readonly printed: Readonly<
    Partial<Record<'humidityRatio' | 'enthalpy' | 'volume' | 'relativeHumidity' | 'dewPointCelsius', number>>
  >;
  /** How near, absolute, in the unit of each printed number: half a printed digit, or what a chart can be read to. */
  readonly within: Readonly<
    Partial<Record<'humidityRatio' | 'enthalpy' | 'volume' | 'relativeHumidity' | 'dewPointCelsius', number>>
  >;
}

const textbook = 'Çengel & Boles, Thermodynamics, 7th ed., chapter 14, from memory of the source';
export const psychrometricExamples: readonly PsychrometricExample[] = [
  {
    title: 'handbook example 1, 40 °C with wet bulb 20 °C',
    source: 'ASHRAE Handbook Fundamentals 2017, chapter 1, example 1, read from the chart there',
    dryBulbCelsius: 40,
    pressure: 101325,
    given: { wetBulbCelsius: 20 },
    printed: { humidityRatio: 0.0065, enthalpy: 56.7e3, volume: 0.896, relativeHumidity: 0.14, dewPointCelsius: 7 },
    within: { humidityRatio: 1.2e-4, enthalpy: 100, volume: 5e-4, relativeHumidity: 5e-3, dewPointCelsius: 0.5 },
  },
  {
    title: 'textbook example 14-1, 25 °C 75 % at 100 kPa',
    source: textbook,
    dryBulbCelsius: 25,
    pressure: 100e3,
    given: { relativeHumidity: 0.75 },
    printed: { humidityRatio: 0.0152, enthalpy: 63.8e3 },
    within: { humidityRatio: 1e-4, enthalpy: 150 },
  },
  {
    title: 'textbook example 14-2, 20 °C 75 %: windows fog at 15.4 °C',
    source: textbook,
    dryBulbCelsius: 20,
    pressure: 101325,
    given: { relativeHumidity: 0.75 },
    printed: { dewPointCelsius: 15.4 },
    within: { dewPointCelsius: 0.06 },
  },
  {
    title: 'textbook example 14-3, 25 °C with adiabatic saturation at 15 °C',
    source: textbook,
    dryBulbCelsius: 25,
    pressure: 101325,
    given: { wetBulbCelsius: 15 },
    printed: { humidityRatio: 0.00653, relativeHumidity: 0.332, enthalpy: 41.8e3 },
    within: { humidityRatio: 4e-5, relativeHumidity: 2e-3, enthalpy: 100 },
  },
];

/**
 * Real moist air at 101325 Pa, ASHRAE research project 1485, evaluated with the open library CoolProp 8.0.0:
 * °C, relative humidity, W, wet bulb °C, dew point °C, h J/kg dry air, v m³/kg dry air.
 */
export const realMoistAir: readonly (readonly [number, number, number, number, number, number, number])[] = [
  [22, 0.5, 0.008260801, 15.41892, 11.11243, 43119.38, 0.84690219],
  [30, 0.6, 0.016116408, 23.8104, 21.39145, 71365.22, 0.88072925],
  [45, 0.3, 0.018279026, 28.69215, 23.40568, 92510.11, 0.92754884],
  [10, 1, 0.007662649, 10, 10, 29354.5, 0.81159622],
];

/** ASHRAE Handbook Fundamentals 2017, chapter 1, table 2, saturated moist air at 101.325 kPa (real gas): °C, W, h J/kg. */
export const handbookSaturatedAir: readonly (readonly [number, number, number])[] = [
  [5, 0.005425, 18639],
  [25, 0.020173, 76504],
  [50, 0.086863, 275353],
];

/** ASHRAE Handbook Fundamentals 2017, chapter 1, table 1, standard atmosphere: m, kPa. */
export const standardAtmosphere: readonly (readonly [number, number])[] = [
  [0, 101.325],
  [500, 95.461],
  [1000, 89.875],
  [4000, 61.64],
  [10000, 26.436],
];
