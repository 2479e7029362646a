// Evaporation of the open surface, against the printed look-up table of its author and against the worked example of each method.

import { dryAirDensity, saturationVapourPressure, vapourPressure } from '../../../src/matter/air/index.ts';
import { latentHeat } from '../../../src/matter/water/index.ts';
import { analogyCoefficient, surfaceLength } from '../../../src/tank/water-surface/mass-transfer.ts';
import { quietCoefficientSmith1993 } from '../../../src/tank/water-surface/pools.ts';
import { activeCoefficientAshrae, quietCoefficientShah2014 } from '../../../src/tank/water-surface/surface.ts';
import { deviationInPercent, type ValidationRow } from '../validation.ts';
import { evaporationExample, shahTable } from './published.ts';

const atmosphere = 101325;
const kelvin = (celsius: number) => celsius + 273.15;

export function surfaceRows(): readonly ValidationRow[] {
  return [...shahRows(), ...exampleRows()];
}

function shahRows(): ValidationRow[] {
  return shahTable.map(([water, room, , published]): ValidationRow => {
    const waterVapour = saturationVapourPressure(kelvin(water));
    const roomVapour = vapourPressure(kelvin(room), 0.5);
    const coefficient = quietCoefficientShah2014(kelvin(water), waterVapour, kelvin(room), roomVapour, atmosphere);
    const ours = coefficient * (waterVapour - roomVapour) * 3600;
    const lift =
      dryAirDensity(kelvin(room), roomVapour, atmosphere) - dryAirDensity(kelvin(water), waterVapour, atmosphere);
    return {
      subject: 'Evaporation of undisturbed water',
      quantity: `E [kg/(m² h)], water ${water} °C, room ${room} °C 50 %, density difference ${lift.toFixed(4)} kg/m³`,
      source: 'Shah 2014, ASHRAE Transactions 120(2), SE-14-001, look-up table, read in an open transcription',
      published,
      ours,
      deviation: deviationInPercent(ours, published),
      status: 'reference',
      reason: 'Moist air is taken as an ideal gas here',
    };
  });
}

function exampleRows(): ValidationRow[] {
  const [water, room] = [kelvin(26), kelvin(22)];
  const [waterVapour, roomVapour] = [saturationVapourPressure(water), vapourPressure(room, 0.5)];
  const drive = (waterVapour - roomVapour) * 3600;
  const heat = latentHeat(water);
  const at = [water, waterVapour, room, roomVapour, atmosphere] as const;
  const rows: readonly (readonly [string, string, keyof typeof evaporationExample, number])[] = [
    ['ASHRAE at 0.1 m/s', 'ASHRAE HVAC Applications', 'handbookInMovingAir', activeCoefficientAshrae(0.1, heat)],
    ['ASHRAE at rest', 'ASHRAE HVAC Applications', 'handbookAtRest', activeCoefficientAshrae(0, heat)],
    [
      'quiet pools at rest',
      'Smith, Löf & Jones 1993',
      'quietPoolsAtRest',
      quietCoefficientSmith1993(activeCoefficientAshrae(0, heat)),
    ],
    ['undisturbed water', 'Shah 2014', 'shah', quietCoefficientShah2014(...at)],
    [
      'heat and mass transfer analogy, 1.2 m x 0.5 m',
      'textbook level plate',
      'massTransferAnalogy',
      analogyCoefficient(...at, surfaceLength(0.6, 3.4)),
    ],
  ];
  return rows.map(([quantity, source, key, coefficient]): ValidationRow => {
    const published = evaporationExample[key];
    const ours = coefficient * drive;
    return {
      subject: 'Evaporation at 26 °C into a room of 22 °C and 50 %, by each method',
      quantity: `${quantity}, E [kg/(m² h)]`,
      source: `${source}, formula evaluated with other software`,
      published,
      ours,
      deviation: deviationInPercent(ours, published),
      status: 'reference',
      reason: 'Air properties and the constants of unit conversion differ in the last digits',
    };
  });
}
