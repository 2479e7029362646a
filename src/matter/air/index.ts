// Public names of moist air: its properties and formula records.

export { dewPoint, dewPointIfAny } from './dew-point.ts';
export { airFormulas } from './formulas.ts';
export {
  altitudeValidity,
  DRY_AIR_GAS_CONSTANT,
  DRY_AIR_HEAT_CAPACITY,
  dryAirDensity,
  humidityRatio,
  MOLAR_MASS_RATIO,
  moistAirDensity,
  moistAirEnthalpy,
  moistAirHeatCapacity,
  moistAirVolume,
  pressureAtAltitude,
  relativeHumidityFromRatio,
  VAPOUR_GAS_CONSTANT,
  VAPOUR_HEAT_CAPACITY,
  vapourDensity,
  vapourPressure,
  vapourPressureFromRatio,
  vapourPressureFromSaturation,
  virtualTemperature,
} from './moist-air.ts';
export { saturationValidity, saturationVapourPressure } from './saturation.ts';
export { airConductivity, airViscosity, vapourDiffusivity } from './transport.ts';
export { wetBulb } from './wet-bulb.ts';
