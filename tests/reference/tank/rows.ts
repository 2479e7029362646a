// The tank: evaporation against the printed look-up table of its author, air layers against the table of ISO 6946 (from
// memory of the source), and the rules of thumb that aquarium keepers repeat, which are reported and hold nothing.

import { dryAirDensity, saturationVapourPressure, vapourPressure } from '../../../src/matter/air/index.ts';
import { material } from '../../../src/matter/materials/index.ts';
import { airLayerResistance } from '../../../src/tank/films.ts';
import { type RectangularTank, type TankConditions, tankLoad } from '../../../src/tank/index.ts';
import { quietCoefficientShah2014 } from '../../../src/tank/surface.ts';
import { deviationInPercent, type ValidationRow } from '../validation.ts';

const atmosphere = 101325;
const kelvin = (celsius: number) => celsius + 273.15;

export function validationRows(): readonly ValidationRow[] {
  return [...evaporationRows(), ...airLayerRows(), ...rulesOfThumb()];
}

/** Water °C, room °C at 50 % relative humidity, printed kg/(m² h). */
const shahTable: readonly (readonly [number, number, number])[] = [
  [28, 28, 0.136],
  [28, 29, 0.1171],
  [28, 30, 0.0968],
  [29, 28, 0.1651],
  [29, 29, 0.1463],
  [29, 30, 0.1268],
  [30, 28, 0.1959],
  [30, 29, 0.1771],
  [30, 30, 0.1575],
];

function evaporationRows(): readonly ValidationRow[] {
  return shahTable.map(([water, room, published]): ValidationRow => {
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

/** Thickness mm, direction of the heat, printed R [m² K/W] at emissivities 0.9 and 10 °C. */
const layerTable: readonly (readonly [number, 'up' | 'horizontal' | 'down', number])[] = [
  [5, 'horizontal', 0.11],
  [10, 'horizontal', 0.15],
  [15, 'up', 0.16],
  [25, 'horizontal', 0.18],
  [25, 'down', 0.19],
  [100, 'down', 0.22],
];

function airLayerRows(): readonly ValidationRow[] {
  return layerTable.map(([thickness, flow, published]): ValidationRow => {
    const ours = airLayerResistance(thickness / 1000, flow, 0.9, 0.9, kelvin(10));
    return {
      subject: 'Sealed air layers',
      quantity: `R [m² K/W], ${thickness} mm, heat flow ${flow}`,
      source: 'ISO 6946, table of airspace resistances, from memory of the source',
      published,
      ours,
      deviation:
        Math.abs(ours - published) <= 0.005 ? 'inside the printed rounding' : deviationInPercent(ours, published),
      status: 'reference',
    };
  });
}

const openTank: RectangularTank = {
  kind: 'rectangular',
  length: 1.2,
  width: 0.5,
  height: 0.5,
  waterDepth: 0.46,
  salinity: 0,
  wall: { conductivity: material('glass').conductivity.likely, thickness: 0.01, emissivity: 0.9 },
  insulation: {},
  surface: 'rippled',
  lid: 'none',
  pumpHeat: 0,
  lightHeat: 0,
};
const livingRoom: TankConditions = {
  waterTemperature: kelvin(26),
  roomTemperature: kelvin(20),
  roomRelativeHumidity: 0.5,
  atmosphericPressure: atmosphere,
};

/** R in hour square feet degree Fahrenheit per BTU, of one square metre kelvin per watt. */
const usResistance = 5.678263;

function rulesOfThumb(): readonly ValidationRow[] {
  const open = tankLoad(openTank, livingRoom).load;
  const lidded = (name: string) => {
    const lidLayer = { conductivity: material(name).conductivity.likely, thickness: 0.004 };
    return tankLoad({ ...openTank, lid: 'tight', lidLayer }, livingRoom).load;
  };
  const concrete = (0.3048 / material('concrete').conductivity.high) * usResistance;
  const plywood = (0.0254 / material('plywood').conductivity.likely) * usResistance;
  const rule = (quantity: string, published: string, ours: number, low: number, high: number): ValidationRow => ({
    subject: 'Rules of thumb',
    quantity,
    source: 'common practice, no source',
    published,
    ours,
    deviation: ours >= low && ours <= high ? 'inside' : 'outside',
    status: 'common practice, no source',
  });
  return [
    rule(
      'share of an open glass tank’s heating that a tight lid saves',
      '0.5 to 0.67',
      1 - lidded('glass') / open,
      0.5,
      0.67,
    ),
    rule(
      'heating under an acrylic lid over that under a glass lid, 4 mm',
      'about 1',
      lidded('acrylic') / lidded('glass'),
      0.95,
      1.05,
    ),
    rule('R of a foot of dense concrete [US]', 'about 1', concrete, 0.8, 1.2),
    rule('R of an inch of plywood [US]', 'about 1', plywood, 0.8, 1.2),
  ];
}
