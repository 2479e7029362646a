// Every printed number's working: the steps of each part of the engine in the order of computing, linked to the design's
// paths and to one another, and checked against the formula records by the tests.

import type { WorkingStep } from '../../quantities/index.ts';
import { limitSteps } from '../answers/limits.ts';
import { type TankResults, usualFalls } from '../answers/tank-values.ts';
import { limitReaches } from '../caution-facts/caution-facts.ts';
import type { TankAloneResults } from '../stages/accounts/heater.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import type { StageResults } from '../stages/index.ts';
import { accountSteps, heaterAccountSteps } from './accounts.ts';
import { currentSteps, identifiedSteps } from './identified.ts';
import { operatingSteps, plantSteps, sizingSteps, spellPlace } from './machine.ts';
import { coolingSteps, gainSteps, meterSteps, placeSteps, spellOrigins, tankSteps } from './tank.ts';
import { heaterYearSteps, yearSteps } from './year.ts';

/** All steps behind one assessment, likely values: the coldest spell, then the months, then the accounts. */
export function workingsOf(design: StagedDesign, results: StageResults): readonly WorkingStep[] {
  return [
    ...tankWorkings(design, results),
    ...identifiedSteps(design, results),
    ...operatingSteps(design, results, results.operating, spellPlace(design, results), 'operating'),
    ...currentSteps(results),
    ...limitSteps(limitReaches(design, results)),
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
  falls: readonly number[],
): readonly WorkingStep[] {
  const { heaterYear, heaterAccount } = results;
  const steps = [
    ...tankWorkings(design, results, falls),
    ...heaterYearSteps(design, results),
    ...heaterAccountSteps(heaterAccount, heaterYear),
  ];
  // The year of a plant holds what only a machine has; of the tank alone nobody is told of it.
  return stepsBehind(steps, (name) => !name.startsWith('year.') || isOfTank(name));
}

function isOfTank(name: string): boolean {
  return /^year\.\w+\.(tank\.|energies\.heatNeeded$)|^year\.energies\.heatNeeded$/.test(name);
}

/** The steps that are told, and all that they go back to. */
function stepsBehind(steps: readonly WorkingStep[], isTold: (name: string) => boolean): readonly WorkingStep[] {
  const byName = new Map(steps.map((step) => [step.result, step]));
  const kept = new Set<string>();
  const open = steps.filter(({ result }) => isTold(result)).map(({ result }) => result);
  for (let name = open.pop(); name !== undefined; name = open.pop()) {
    const step = byName.get(name);
    if (step === undefined || kept.has(name)) continue;
    kept.add(name);
    open.push(...Object.values(step.from));
  }
  return steps.filter(({ result }) => kept.has(result));
}

/** The steps behind the tank at the coldest spell, how it cools, its meter, and the air pressure of the place. */
function tankWorkings(
  design: StagedDesign,
  results: TankResults,
  falls: readonly number[] = usualFalls,
): readonly WorkingStep[] {
  return [
    ...placeSteps(design, results),
    ...gainSteps(design),
    ...meterSteps(design, results),
    ...tankSteps(design, results, results.tank, results.surroundings.spell, spellOrigins),
    ...coolingSteps(design, results, falls),
  ];
}
