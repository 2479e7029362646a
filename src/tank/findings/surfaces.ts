// Where a water surface or the air over it lies outside what the methods of evaporation were made for.

import type { Finding } from '../../quantities/index.ts';
import type { BuiltTank } from '../built-tank.ts';
import type { TankConditions } from '../description.ts';
import type { BuiltIntermediates } from '../load.ts';
import { surfaceMethods } from '../water-surface/surface.ts';
import { note, value } from './codes.ts';

/** The data behind Shah's method: water and air [K], relative humidity [-]. */
const shahValidity = {
  water: { min: 280.15, max: 367.15 },
  air: { min: 279.15, max: 308.15 },
  humidity: { min: 0.28, max: 0.95 },
} as const;
/** The handbook's air speeds end here [m/s]. */
const HANDBOOK_AIR_SPEED = 0.3;
/** Below this pressure, some 550 m up, the handbook's sea-level constants are named [Pa]: own judgement. */
const HIGH_PLACE = 95e3;

/** Findings of the surfaces that evaporate into air that moves with the room: open ones and those under a hood. */
export function surfaceFindings(
  tank: BuiltTank,
  { vessels, night }: BuiltIntermediates,
  conditions: TankConditions,
): readonly Finding[] {
  const evaporating = tank.vessels.filter(({ name }) =>
    [...vessels, ...(night === undefined ? [] : [night.vessel])].some(
      (state) => state.name === name && (state.surface ?? state.hood) !== undefined,
    ),
  );
  const shares = evaporating.map(({ surface }) => surfaceMethods[surface].activeShare);
  const airSpeed = Math.max(0, ...evaporating.map((vessel) => vessel.airSpeed ?? 0));
  const found: Finding[] = [];
  if (airSpeed > HANDBOOK_AIR_SPEED) {
    const source = 'ASHRAE Handbook HVAC Applications, air speeds to 0.3 m/s; Smith, Löf & Jones 1993';
    const remedy = 'Moving air is carried on in a straight line from the handbook’s speeds; measure the water lost.';
    found.push(note('surfaceInMovingAir', { airSpeed: value(airSpeed, 'speed') }, source, remedy));
  }
  if (shares.some((share) => share < 1) && !isWithinShah(conditions)) {
    const facts = {
      waterTemperature: value(conditions.waterTemperature, 'temperature'),
      roomTemperature: value(conditions.roomTemperature, 'temperature'),
      relativeHumidity: value(conditions.roomRelativeHumidity, 'fraction'),
    };
    const source = 'Shah 2014: water 7 to 94 °C, air 6 to 35 °C, 28 to 95 % relative humidity';
    found.push(note('surfaceBeyondMethods', facts, source, 'Carried on beyond the data; take it as less certain.'));
  }
  if (shares.some((share) => share > 0) && conditions.atmosphericPressure < HIGH_PLACE) {
    const facts = { pressure: value(conditions.atmosphericPressure, 'pressure') };
    const source = 'ASHRAE Handbook HVAC Applications, constants near sea level';
    const remedy = 'In thin air stirred water evaporates some per cent more than the handbook’s constants say.';
    found.push(note('handbookNearSeaLevel', facts, source, remedy));
  }
  return found;
}

function isWithinShah({ waterTemperature, roomTemperature, roomRelativeHumidity }: TankConditions): boolean {
  const { water, air, humidity } = shahValidity;
  return (
    isWithin(waterTemperature, water) && isWithin(roomTemperature, air) && isWithin(roomRelativeHumidity, humidity)
  );
}

function isWithin(number: number, { min, max }: { readonly min: number; readonly max: number }): boolean {
  return number >= min && number <= max;
}
