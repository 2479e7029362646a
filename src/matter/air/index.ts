// Public names of moist air: its properties and formula records.

export { airFormulas } from './formulas.ts';
export {
  altitudeValidity,
  DRY_AIR_GAS_CONSTANT,
  DRY_AIR_HEAT_CAPACITY,
  dewPoint,
  dryAirDensity,
  humidityRatio,
  MOLAR_MASS_RATIO,
  moistAirDensity,
  moistAirEnthalpy,
  pressureAtAltitude,
  saturationValidity,
  saturationVapourPressure,
  VAPOUR_GAS_CONSTANT,
  VAPOUR_HEAT_CAPACITY,
  vapourDensity,
  vapourPressure,
  vapourPressureFromSaturation,
  virtualTemperature,
  wetBulb,
} from './moist-air.ts';
export { airConductivity, airViscosity, vapourDiffusivity } from './transport.ts';
