// Moist air against the handbook and IAPWS, fresh and sea water against IAPWS and EOS-80.

import {
  humidityRatio,
  moistAirEnthalpy,
  moistAirVolume,
  pressureAtAltitude,
  saturationVapourPressure,
  vapourPressure,
} from '../../../src/matter/air/index.ts';
import {
  waterConductivity,
  waterDensity,
  waterExpansion,
  waterHeatCapacity,
  waterViscosity,
} from '../../../src/matter/water/index.ts';
import { deviationInPercent, type ValidationRow } from '../validation.ts';
import {
  handbookSaturatedAir,
  handbookSaturation,
  iapwsSaturation,
  iapwsSublimation,
  realMoistAir,
  type SaturationRow,
  standardAtmosphere,
} from './moist-air.ts';
import { freshWater, iapwsSeaWater, unescoSeaWater } from './water.ts';

const atmosphere = 101325;
const kelvin = (celsius: number) => celsius + 273.15;
const realGas = 'Ideal gas: the enhancement factor of real moist air is left out';

function row(subject: string, source: string, quantity: string, published: number, ours: number, reason?: string) {
  return {
    subject,
    quantity,
    source,
    published,
    ours,
    deviation: deviationInPercent(ours, published),
    status: 'reference',
    ...(reason === undefined ? {} : { reason }),
  } as const satisfies ValidationRow;
}

export function airRows(): readonly ValidationRow[] {
  const handbook = 'ASHRAE Handbook Fundamentals 2017, chapter 1';
  const saturation = (rows: readonly SaturationRow[], over: string, source: string) =>
    rows.map(([celsius, published]) =>
      row(
        'Saturation vapour pressure',
        source,
        `over ${over} at ${celsius} °C [Pa]`,
        published,
        saturationVapourPressure(kelvin(celsius)),
      ),
    );
  return [
    ...saturation(handbookSaturation, 'water or ice', `${handbook}, table 3`),
    ...saturation(iapwsSaturation, 'water', 'IAPWS R6-95(2018), evaluated with CoolProp 8.0.0'),
    ...saturation(iapwsSublimation, 'ice', 'IAPWS R14-08(2011), constants from memory'),
    ...handbookSaturatedAir.flatMap(([celsius, ratio, enthalpy]) => {
      const ours = humidityRatio(saturationVapourPressure(kelvin(celsius)), atmosphere);
      const subject = 'Moist air, saturated';
      return [
        row(subject, `${handbook}, table 2`, `W at ${celsius} °C [kg/kg]`, ratio, ours, realGas),
        row(
          subject,
          `${handbook}, table 2`,
          `h at ${celsius} °C [J/kg]`,
          enthalpy,
          moistAirEnthalpy(kelvin(celsius), ours),
          realGas,
        ),
      ];
    }),
    ...realMoistAir.flatMap(([celsius, humidity, ratio, , , enthalpy, volume]) => {
      const ours = humidityRatio(vapourPressure(kelvin(celsius), humidity), atmosphere);
      const subject = 'Moist air';
      const source = 'ASHRAE research project 1485, real gas, evaluated with CoolProp 8.0.0';
      const at = `at ${celsius} °C, ${humidity * 100} %`;
      return [
        row(subject, source, `W ${at} [kg/kg]`, ratio, ours, realGas),
        row(subject, source, `h ${at} [J/kg]`, enthalpy, moistAirEnthalpy(kelvin(celsius), ours), realGas),
        row(subject, source, `v ${at} [m³/kg]`, volume, moistAirVolume(kelvin(celsius), ours, atmosphere), realGas),
      ];
    }),
    ...standardAtmosphere.map(([altitude, kilopascal]) =>
      row(
        'Standard atmosphere',
        `${handbook}, table 1`,
        `p at ${altitude} m [Pa]`,
        kilopascal * 1000,
        pressureAtAltitude(altitude),
      ),
    ),
  ];
}

export function waterRows(): readonly ValidationRow[] {
  const slope = 'The density is fitted, not its slope: below 10 °C the slope is small and badly known';
  const iapws = 'IAPWS R6-95(2018), R12-08, R15-11, evaluated with CoolProp 8.0.0';
  const fit = 'The fit allows 3 %';
  return [
    ...freshWater.flatMap(({ celsius, density, heatCapacity, viscosity, conductivity, expansion }) => {
      const [subject, T] = ['Fresh water', kelvin(celsius)];
      return [
        row(subject, iapws, `density at ${celsius} °C [kg/m³]`, density, waterDensity(T, 0)),
        row(subject, iapws, `specific heat at ${celsius} °C [J/(kg K)]`, heatCapacity, waterHeatCapacity(T, 0)),
        row(subject, iapws, `viscosity at ${celsius} °C [Pa s]`, viscosity, waterViscosity(T, 0)),
        row(subject, iapws, `conductivity at ${celsius} °C [W/(m K)]`, conductivity, waterConductivity(T, 0), fit),
        row(subject, iapws, `expansion at ${celsius} °C [1/K]`, expansion, waterExpansion(T, 0), slope),
      ];
    }),
    ...iapwsSeaWater.flatMap(([celsius, salinity, density, heatCapacity]) => {
      const [subject, source, T] = ['Sea water', 'IAPWS R13-08 (2008)', kelvin(celsius)];
      const at = `at ${celsius} °C, ${(salinity * 1000).toPrecision(4)} g/kg`;
      return [
        row(subject, source, `density ${at} [kg/m³]`, density, waterDensity(T, salinity)),
        row(subject, source, `specific heat ${at} [J/(kg K)]`, heatCapacity, waterHeatCapacity(T, salinity)),
      ];
    }),
    ...unescoSeaWater.flatMap(([celsius, density, expansion]) => {
      const [subject, source, T] = ['Sea water', 'EOS-80, UNESCO 1983, practical salinity 35', kelvin(celsius)];
      return [
        row(subject, source, `density at ${celsius} °C [kg/m³]`, density, waterDensity(T, 0.03516504)),
        row(subject, source, `expansion at ${celsius} °C [1/K]`, expansion, waterExpansion(T, 0.03516504), slope),
      ];
    }),
  ];
}
