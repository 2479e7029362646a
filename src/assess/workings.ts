// Every printed number's working: the steps of each part of the engine in the order of computing, linked to the design's
// paths and to one another, and checked against the formula records by the tests.

import { accountsFormulas } from '../accounts/index.ts';
import { cautionsFormulas } from '../cautions/index.ts';
import { loopFormulas } from '../loop/index.ts';
import { airFormulas } from '../matter/air/index.ts';
import { refrigerantFormulas } from '../matter/refrigerants/index.ts';
import { waterFormulas } from '../matter/water/index.ts';
import { compressorFormulas } from '../parts/compressor/index.ts';
import { exchangerFormulas } from '../parts/exchangers/index.ts';
import { plantFormulas } from '../plant/index.ts';
import type { Formula, WorkingStep } from '../quantities/index.ts';
import { surroundingsFormulas } from '../surroundings/index.ts';
import { tankFormulas } from '../tank/index.ts';
import { yearFormulas } from '../year/index.ts';
import type { StagedDesign } from './stages/engine-assumptions.ts';
import type { StageResults } from './stages/index.ts';
import type { TankResults } from './values.ts';
import { accountSteps } from './working/accounts.ts';
import { operatingSteps, plantSteps, ratingSteps, sizingSteps, spellSource } from './working/machine.ts';
import { gainSteps, placeSteps, tankSteps } from './working/tank.ts';
import { yearSteps } from './working/year.ts';

/** Every formula record of the engine. */
export const allFormulas: readonly Formula[] = [
  ...refrigerantFormulas,
  ...airFormulas,
  ...waterFormulas,
  ...surroundingsFormulas,
  ...tankFormulas,
  ...compressorFormulas,
  ...exchangerFormulas,
  ...loopFormulas,
  ...plantFormulas,
  ...yearFormulas,
  ...accountsFormulas,
  ...cautionsFormulas,
];

const formulasById = new Map(allFormulas.map((formula) => [formula.id, formula]));

/** The formula of that id; undefined for an id nobody has. */
export function formulaById(id: string): Formula | undefined {
  return formulasById.get(id);
}

/** All steps behind one assessment, likely values: the coldest spell, then the months, then the accounts. */
export function workingsOf(design: StagedDesign, results: StageResults): readonly WorkingStep[] {
  return [
    ...tankWorkings(design, results),
    ...ratingSteps(design, results),
    ...operatingSteps(design, results, results.operating, spellSource(design, results), 'operating'),
    ...plantSteps(design, results),
    ...sizingSteps(design, results),
    ...yearSteps(design, results),
    ...accountSteps(design, results),
  ];
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
