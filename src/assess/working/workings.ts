// Every printed number's working: the steps of each part of the engine in the order of computing, linked to the design's
// paths and to one another, and checked against the formula records by the tests.

import type { WorkingStep } from '../../quantities/index.ts';
import { limitMargins, limitSteps } from '../answers/limits.ts';
import type { TankResults } from '../answers/tank-values.ts';
import { machineLimits } from '../caution-facts.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import type { TankAloneResults } from '../stages/heater.ts';
import type { StageResults } from '../stages/index.ts';
import { accountSteps } from './accounts.ts';
import { operatingSteps, plantSteps, ratingSteps, sizingSteps, spellSource } from './machine.ts';
import { gainSteps, placeSteps, tankSteps } from './tank.ts';
import { yearSteps } from './year.ts';

/** All steps behind one assessment, likely values: the coldest spell, then the months, then the accounts. */
export function workingsOf(design: StagedDesign, results: StageResults): readonly WorkingStep[] {
  return [
    ...tankWorkings(design, results),
    ...ratingSteps(design, results),
    ...operatingSteps(design, results, results.operating, spellSource(design, results), 'operating'),
    ...limitSteps(limitMargins(results.operating, machineLimits(design)), 'machine.application'),
    ...plantSteps(design, results),
    ...sizingSteps(design, results),
    ...yearSteps(design, results),
    ...accountSteps(design, results),
  ];
}

/** The steps behind the tank alone, with a plain heater. */
export function tankAloneWorkings(
  design: StagedDesign,
  results: TankAloneResults,
  _falls: readonly number[],
): readonly WorkingStep[] {
  return tankWorkings(design, results);
}

/** The steps behind the tank's load at the coldest spell and the air pressure of the place. */
export function tankWorkings(design: StagedDesign, results: TankResults): readonly WorkingStep[] {
  const { roomTemperature } = results.surroundings.spell;
  return [
    ...placeSteps(design, results),
    ...gainSteps(design),
    ...tankSteps(design, results, results.tank, roomTemperature, 'room.coldest'),
  ];
}
