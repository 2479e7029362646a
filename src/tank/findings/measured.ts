// What the model of a measured tank leaves out or doubts, as findings; and what holds for any tank.

import type { Finding } from '../../quantities/index.ts';
import type { MeasuredTank } from '../description.ts';
import { look, note, value } from './codes.ts';

/** Below this measured difference of temperature a few tenths of a kelvin spoil the scaling, K. */
const SMALL_MEASURED_DIFFERENCE = 3;

export function measuredFindings(tank: MeasuredTank, load: number): readonly Finding[] {
  const found = [
    note(
      'measuredLoadScaled',
      { evaporationShare: value(tank.evaporationShare, 'fraction') },
      'own simplification, no source',
      'Scaled from the measured days: warmth with the temperature difference, vapour with the vapour pressure difference at the room humidity given here.',
    ),
  ];
  const difference = tank.waterTemperature - tank.roomTemperature;
  if (difference < SMALL_MEASURED_DIFFERENCE) {
    found.push(
      look(
        'measuredDifferenceSmall',
        { difference: value(difference, 'temperatureDifference') },
        'own judgement',
        'Measure again when the room is colder: with so small a difference a thermometer error of 0.5 K spoils the result.',
      ),
    );
  }
  return load < 0 ? [...found, noHeatNeeded(load)] : found;
}

export function noHeatNeeded(load: number): Finding {
  return note(
    'tankNeedsNoHeat',
    { surplus: value(-load, 'power') },
    'energy balance of the tank',
    'Pumps and lights alone would hold it warmer than asked; it would have to be cooled.',
  );
}
