// The tank: evaporation against the printed look-up table of its author, air layers against the table of ISO 6946 (from
// memory of the source), and the rules of thumb that aquarium keepers repeat, which are reported and hold nothing.

import { dryAirDensity, saturationVapourPressure, vapourPressure } from '../../../src/matter/air/index.ts';
import { airLayerResistance } from '../../../src/tank/stack/air-gap.ts';
import { quietCoefficientShah2014 } from '../../../src/tank/water-surface/surface.ts';
import { deviationInPercent, type ValidationRow } from '../validation.ts';
import { commonPracticeRows } from './common-practice.ts';
import { airLayerTable, shahTable } from './published.ts';

const atmosphere = 101325;
const kelvin = (celsius: number) => celsius + 273.15;

export function validationRows(): readonly ValidationRow[] {
  return [...evaporationRows(), ...airLayerRows(), ...rulesOfThumb()];
}

function evaporationRows(): readonly ValidationRow[] {
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

function airLayerRows(): readonly ValidationRow[] {
  return airLayerTable.map(([thickness, flow, published]): ValidationRow => {
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

function rulesOfThumb(): readonly ValidationRow[] {
  return commonPracticeRows().map(
    ({ claim, ours, claimed: [low, high], note }): ValidationRow => ({
      subject: 'Rules of thumb',
      quantity: claim,
      source: 'common practice, no source',
      published: `${low} to ${high}`,
      ours,
      deviation: ours >= low && ours <= high ? 'inside' : 'outside',
      status: 'common practice, no source',
      reason: note,
    }),
  );
}
